import { siteName } from './angle.js';
import type { SiteName } from './angle.js';
import { add, flattening, flatteningAndTorque, fromVector, subtract, toVector } from './astigmatism.js';
import { backSurface } from './backSurface.js';
import { judge } from './effects.js';
import { completePlan } from './fields.js';
import type { EyeResult, OutcomeRecord } from './outcomes-types.js';
import type { BackSurface, EyePlan, OwnFigures, Vector } from './types.js';

export interface JudgeOptions {
  /** What the plans were made with; it is added to what is expected and to what remains alike. */
  backSurface?: BackSurface;
  /** The figures that the plans were made with; without them, those of the model. */
  ownFigures?: OwnFigures | null;
}

/** Flat reading of an eye of which only the astigmatism is known. Nothing of a plan's result depends on it. */
const ANY_FLAT = 43;

/** What was done to an eye, as a plan; readings that are not known stand at 43 D. */
export function planOf(record: OutcomeRecord, options: JudgeOptions = {}): EyePlan {
  const { eye, before, readings, incision, arcs, lens, age } = record;
  return {
    eye,
    flatK: readings?.flat ?? ANY_FLAT,
    steepK: readings?.steep ?? ANY_FLAT + before.magnitude,
    steepMeridian: before.meridian,
    age,
    backSurface: options.backSurface ?? 'omitted',
    ...(incision && { incisionSite: incision.site, incisionWidth: incision.width }),
    ...(arcs && { arcCount: arcs.count, arcSite: arcs.site, arcLength: arcs.length, arcMethod: arcs.method }),
    ...(lens && { lensCylinder: lens.cylinder, lensMeridian: lens.meridian }),
    ownFigures: options.ownFigures ?? null,
  };
}

/** What follows from one eye. Vectors in the double-angle plane, D. @throws RangeError for a record outside the limits. */
export function eyeResult(record: OutcomeRecord, options: JudgeOptions = {}): EyeResult {
  const { before, after, incision, lens, predicted } = record;
  const induced = subtract(toVector(after), toVector(before));
  const back = toVector(backSurface(options.backSurface ?? 'omitted'));
  const withLens = lens ? add(toVector(after), flattening(lens.cylinder, lens.meridian)) : toVector(after);
  const remaining = add(withLens, back);
  const expected = toVector(predicted ?? judge(completePlan(planOf(record, options))).after);
  return {
    record,
    induced,
    incision: incision && flatteningAndTorque(fromVector(induced), incision.site),
    remaining,
    predicted: expected,
    basis: predicted ? 'table' : 'model',
    error: subtract(remaining, expected),
  };
}

export type OutcomeVector = 'induced' | 'atIncision' | 'remaining' | 'error';

/**
 * One vector of each eye that has it. `atIncision` is the induced change with every incision turned to 0°, so that right
 * and left eyes, and all sites, can be put together: x is minus the flattening, y the torque.
 */
export function vectorsOf(results: readonly EyeResult[], which: OutcomeVector): Vector[] {
  if (which !== 'atIncision') return results.map((result) => result[which]);
  return results.flatMap(({ incision }) => (incision ? [{ x: -incision.flattening + 0, y: incision.torque }] : []));
}

export type Grouping = 'width' | 'site' | 'arcs';

/** Eyes that belong together. */
export interface OutcomeGroup {
  by: Grouping;
  /** Width to 0.1 mm, name of the site, number of arcs; null for eyes of which it is not known. */
  key: number | SiteName | null;
  results: EyeResult[];
}

/** Parts the eyes by width, by site as named from the eye's own temporal side, or by arcs; the largest group first. */
export function groupsOf(results: readonly EyeResult[], by: Grouping): OutcomeGroup[] {
  const groups = new Map<OutcomeGroup['key'], EyeResult[]>();
  for (const result of results) {
    const key = keyOf(result.record, by);
    const group = groups.get(key);
    if (group) group.push(result);
    else groups.set(key, [result]);
  }
  return [...groups].map(([key, members]) => ({ by, key, results: members })).sort((a, b) => b.results.length - a.results.length);
}

function keyOf({ eye, incision, arcs }: OutcomeRecord, by: Grouping): OutcomeGroup['key'] {
  if (by === 'arcs') return arcs?.count ?? 0;
  if (!incision) return null;
  return by === 'width' ? Math.round(incision.width * 10) / 10 : siteName(incision.site, eye);
}
