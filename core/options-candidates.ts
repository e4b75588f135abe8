import { meridian, site, temporalSite, turn } from './angle.js';
import { oneOf, within } from './check.js';
import { judge } from './effects.js';
import { LIMITS } from './limits.js';
import type { CompletePlan, EyeSide } from './types.js';

/** A place where the surgeon may enter: by its name in the eye at hand, or in degrees. */
export type EntrySite = 'temporal' | 'superior' | 'steep' | number;

/** What the surgeon has and allows. Everything that is left out takes the default. */
export interface PlanLimits {
  /** Where the eye may be entered; by default temporal, superior, and on the steep meridian, at the end that is in reach. */
  sites?: readonly EntrySite[] | undefined;
  /** Widths of the blades at hand, mm; by default the width in the plan. */
  widths?: readonly number[] | undefined;
  /** Most arcs; by default 2. */
  arcs?: 0 | 1 | 2 | undefined;
  /** Cylinders of the toric lenses at hand, D at the corneal plane; by default 1 to 4 D in half dioptres, none when empty. */
  lenses?: readonly number[] | undefined;
}

/** Lengths of arc that are tried, degrees: those of the published table. */
const ARC_LENGTHS = Array.from({ length: 13 }, (_, index) => 30 + 5 * index);

/** Where the eye may be entered unless the surgeon says otherwise. */
export const DEFAULT_SITES = ['temporal', 'superior', 'steep'] as const satisfies readonly EntrySite[];
const DEFAULT_LENSES = [1, 1.5, 2, 2.5, 3, 3.5, 4];

/** Every plan that the limits allow for this eye, in a fixed order. */
export function* candidates(eye: CompletePlan, limits: PlanLimits, arcsAllowed: boolean): Generator<CompletePlan> {
  const { steepMeridian } = eye;
  const bare: CompletePlan = { ...eye, incisionSite: null, arcCount: 0, arcSite: null, lensCylinder: null, lensMeridian: null };
  const lenses = checkedLenses(limits.lenses ?? DEFAULT_LENSES);
  const asked = oneOf('arcs', limits.arcs ?? 2, [0, 1, 2]);
  const most = arcsAllowed ? asked : 0;
  for (const incisionSite of sitesOf(limits.sites ?? DEFAULT_SITES, eye, steepMeridian)) {
    for (const width of limits.widths ?? [eye.incisionWidth]) {
      const { min, max, unit } = LIMITS.incisionWidth;
      const entered = { ...bare, incisionSite, incisionWidth: within('widths', width, min, max, unit) };
      const along = Math.round(judge(entered).after.meridian);
      for (const cut of arcPlans(entered, along, most)) {
        yield cut;
        if (lenses.length === 0) continue;
        const lensMeridian = meridian(Math.round(judge(cut).after.meridian));
        for (const lensCylinder of lenses) yield { ...cut, lensCylinder, lensMeridian };
      }
    }
  }
}

/** The entered eye without arcs, then with one and with two on the meridian that the entry leaves steep. */
function* arcPlans(entered: CompletePlan, along: number, most: 0 | 1 | 2): Generator<CompletePlan> {
  yield entered;
  // One arc does the same at either end of the meridian; it lies where the incision is not.
  const [a, b] = [along, along + 180].map((end) => Math.abs(turn(end, entered.incisionSite!))) as [number, number];
  // At equal distance the end nearer the temporal side is taken, so that both eyes of a patient are planned alike.
  const nearer = Math.abs(turn(along, temporalSite(entered.eye))) <= 90 ? along : along + 180;
  const away = a === b ? nearer : a > b ? along : along + 180;
  for (const arcCount of [1, 2] as const) {
    if (arcCount > most) return;
    for (const arcLength of ARC_LENGTHS) yield { ...entered, arcCount, arcLength, arcSite: site(away) };
  }
}

function sitesOf(sites: readonly EntrySite[], { eye }: CompletePlan, steep: number): number[] {
  const places = sites.flatMap((name) => {
    if (name === 'temporal') return [temporalSite(eye)];
    if (name === 'superior') return [90];
    if (name === 'steep') return reachableEnds(steep, eye);
    return [site(within('sites', name, LIMITS.incisionSite.min, LIMITS.incisionSite.max, '°, temporal, superior or steep'))];
  });
  return [...new Set(places)];
}

/**
 * The end of a meridian that is nearer to the temporal or the superior side, from where eyes are entered: nose and lower lid
 * are in the way of the other one (common practice). Both where neither is nearer.
 */
function reachableEnds(meridian: number, eye: EyeSide): number[] {
  const distance = (end: number): number => Math.min(...[temporalSite(eye), 90].map((reached) => Math.abs(turn(end, reached))));
  const [a, b] = [site(meridian), site(meridian + 180)];
  return distance(a) === distance(b) ? [a, b] : [distance(a) < distance(b) ? a : b];
}

function checkedLenses(lenses: readonly number[]): readonly number[] {
  const { min, max, unit } = LIMITS.lensCylinder;
  return lenses.map((cylinder) => within('lenses', cylinder, min, max, unit)).filter((cylinder) => cylinder > 0);
}
