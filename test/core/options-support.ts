/** Eyes to plan for, a search without any cleverness, and what it is to do more surgery. */
import { cautionsFor, completePlan, evaluatePlan, mirrorMeridian, mirrorSite, type CompletePlan, type EyePlan, type Surgery } from '../../core/index.js';

/** With, against and oblique, low and high, right and left, with and without a back surface or own figures. */
export const EYES: [name: string, eye: EyePlan][] = [
  ['with the rule, 2 D', { eye: 'right', flatK: 43, steepK: 45, steepMeridian: 100, age: 70, backSurface: 'typical' }],
  ['against the rule, 1 D, left', { eye: 'left', flatK: 43, steepK: 44, steepMeridian: 175, age: 74 }],
  ['against the rule, 1.5 D', { eye: 'right', flatK: 42.5, steepK: 44, steepMeridian: 5, age: 68, backSurface: '0.35@178' }],
  ['oblique, 3 D, left', { eye: 'left', flatK: 42, steepK: 45, steepMeridian: 48, age: 60, arcMethod: 'laser' }],
  ['oblique, 1.25 D', { eye: 'right', flatK: 44, steepK: 45.25, steepMeridian: 133, backSurface: 'typical' }],
  ['3.75 D', { eye: 'right', flatK: 41, steepK: 44.75, steepMeridian: 93, age: 81, backSurface: 'typical' }],
  ['half a dioptre', { eye: 'left', flatK: 43.5, steepK: 44, steepMeridian: 85, age: 77 }],
  ['own figures', {
    eye: 'right', flatK: 43, steepK: 44.75, steepMeridian: 62, age: 66, backSurface: 'typical',
    ownFigures: { incision: { flattening: 0.25, torque: 0.08, sd: 0.22, eyes: 80 }, arcs: { share: 0.7, sdAlong: 0.3, sdAcross: 0.25 } },
  }],
  ['more than arcs may answer', { eye: 'left', flatK: 42, steepK: 46.5, steepMeridian: 15, age: 59, backSurface: 'typical' }],
];

/** Lengths of arc in the published table, degrees. */
export const LENGTHS = [30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90];

/** As documented: 1 to 4 D in half dioptres. */
export const LENSES = [1, 1.5, 2, 2.5, 3, 3.5, 4];

export interface Grid {
  sites: readonly number[];
  widths: readonly number[];
  lenses: readonly number[];
  arcs?: 0 | 1 | 2;
}

export interface Tried {
  plan: CompletePlan;
  ofHundred: number;
  surgery: Surgery;
}

/** Every plan of the documented grid with its chance; arcs and lenses lie on the meridian that is left, in whole degrees. */
export function tryAll(eye: EyePlan, { sites, widths, lenses, arcs = 2 }: Grid): Tried[] {
  const all: Tried[] = [];
  const note = (plan: EyePlan): void => {
    const complete = completePlan(plan);
    all.push({ plan: complete, ofHundred: Math.round(100 * evaluatePlan(plan).chanceWithin(0.5)), surgery: surgeryIn(complete) });
    if (plan.lensCylinder) return;
    const lensMeridian = Math.round(evaluatePlan(plan).after.meridian);
    for (const lensCylinder of lenses) note({ ...plan, lensCylinder, lensMeridian });
  };
  for (const incisionSite of sites) {
    for (const incisionWidth of widths) {
      const entered: EyePlan = { ...eye, incisionSite, incisionWidth, arcCount: 0, arcSite: null, lensCylinder: null, lensMeridian: null };
      note(entered);
      const arcSite = Math.round(evaluatePlan(entered).after.meridian);
      for (const arcCount of [1, 2] as const) {
        for (const arcLength of LENGTHS) {
          const cut: EyePlan = { ...entered, arcCount, arcSite, arcLength };
          const stopped = cautionsFor(cut).some(({ level }) => level === 'stop');
          if (arcCount <= arcs && !stopped) note(cut);
        }
      }
    }
  }
  return all;
}

export function surgeryIn({ arcCount, arcLength, lensCylinder, incisionWidth }: CompletePlan): Surgery {
  return { arcs: arcCount, arcDegrees: arcCount * arcLength, lens: lensCylinder ?? 0, width: incisionWidth };
}

/** Whether the first does no more of anything: arcs, their length together, a lens at all, width. */
export function noMore(a: Surgery, b: Surgery): boolean {
  return a.arcs <= b.arcs && a.arcDegrees <= b.arcDegrees && !(a.lens > 0 && b.lens === 0) && a.width <= b.width;
}

/** No more of anything, and less of something. */
export function less(a: Surgery, b: Surgery): boolean {
  return noMore(a, b) && !noMore(b, a);
}

/** In words for a failure. */
export function said({ ofHundred, plan }: Pick<Tried, 'ofHundred' | 'plan'>): string {
  const arcs = plan.arcCount ? `${plan.arcCount} × ${plan.arcLength}° at ${plan.arcSite}` : 'no arcs';
  const lens = plan.lensCylinder ? `lens ${plan.lensCylinder} at ${plan.lensMeridian}` : 'no lens';
  return `${ofHundred} of 100: ${plan.incisionWidth} mm at ${plan.incisionSite}, ${arcs}, ${lens}`;
}

/** The fellow eye in a mirror. */
export function mirroredEye(eye: EyePlan): EyePlan {
  const [dioptres, along] = (eye.backSurface ?? 'omitted').split('@');
  const entry = eye.ownFigures?.incision;
  return {
    ...eye,
    eye: eye.eye === 'left' ? 'right' : 'left',
    steepMeridian: mirrorMeridian(eye.steepMeridian!),
    ...(along !== undefined && { backSurface: `${dioptres}@${180 - Number(along)}` as `${number}@${number}` }),
    ...(eye.ownFigures && { ownFigures: { ...eye.ownFigures, ...(entry && { incision: { ...entry, torque: -(entry.torque ?? 0) } }) } }),
  };
}

/** What is done, seen in a mirror. */
export function mirroredSurgery({ incisionSite, arcSite, lensMeridian }: CompletePlan) {
  return {
    incisionSite: incisionSite === null ? null : mirrorSite(incisionSite),
    arcSite: arcSite === null ? null : mirrorSite(arcSite),
    lensMeridian: lensMeridian === null ? null : mirrorMeridian(lensMeridian),
  };
}
