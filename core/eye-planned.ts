/** The bundle of light in an eye whose cornea is known and whose lens was chosen for it: plain arithmetic, to be redrawn while something is dragged. */
import { meridian } from './angle.js';
import { within } from './check.js';
import { alongMeridian, type Matrix } from './eye-matrix.js';
import type { LeastConfusion, LineFocus } from './eye-pencil.js';
import { MODEL } from './model.js';
import type { Astigmatism } from './types.js';

/** What of the bundle lies on the retina. */
export const FOCUSES = ['least-blur', 'front-line', 'back-line'] as const;
export type Focus = (typeof FOCUSES)[number];

/**
 * The eye of the picture: depth of the lens and index as elsewhere in the model, the length that of the eye of Bennett &
 * Rabbetts (`SCHEMATIC_EYES.bennettRabbetts`), all in mm.
 */
export const PLANNED_EYE = {
  lensDepth: MODEL.eye.lensDepth,
  index: MODEL.eye.aqueousIndex,
  axialLength: 24.09,
} as const;

const { lensDepth, index, axialLength } = PLANNED_EYE;

/** From the cornea to the lens over the index, m. */
const REDUCED = lensDepth / 1000 / index;

export interface PlannedEye {
  /** Mean power of the cornea, 20–100 D. */
  meanPower: number;
  /** Of the whole cornea, with all that acts at its plane; up to 20 D. */
  astigmatism: Astigmatism;
  /** Diameter of the pupil in the plane of the lens, 0.1–10 mm. */
  pupil: number;
  focus: Focus;
}

/** The bundle behind the lens. Places in mm from the cornea. */
export interface PlannedBundle {
  /** Power of the spherical lens that brings `focus` to the retina, D. */
  lensPower: number;
  /** Power of a cornea that would be in focus on the retina, D. */
  inFocus: number;
  /** Of the steep and the flat meridian, by how much the cornea is too strong for the retina, D: their difference is the astigmatism. */
  excess: { steep: number; flat: number };
  /** Of the steep and the flat meridian, the vergence in the plane of the lens over the index, 1/mm. */
  vergence: { steep: number; flat: number };
  /** Of the cornea, degrees. */
  steepMeridian: number;
  /** mm. */
  pupil: number;
  /** Where the light of the steep meridian comes together, and that of the flat one: each line lies across its meridian. */
  front: LineFocus;
  back: LineFocus;
  circle: Pick<LeastConfusion, 'position' | 'diameter'>;
}

/**
 * A thin toric cornea, and behind it a thin spherical lens of just the power that brings the circle of least confusion, or
 * one of the line foci, to the retina. A meridian of power K arrives at the lens with the vergence K/(1 − K·d/n); the lens
 * adds the same to both. The pupil lies in the plane of the lens, so that all else follows by similar triangles. What
 * `eye-pencil.ts` says of bundles of any kind, for this one in closed form, fit to be loaded with a drawing.
 * @throws RangeError for a value out of range.
 */
export function plannedBundle({ meanPower, astigmatism: { magnitude, meridian: steepMeridian }, pupil, focus }: PlannedEye): PlannedBundle {
  const mean = within('meanPower', meanPower, 20, 100, 'D');
  const half = within('astigmatism', magnitude, 0, STRONGEST, 'D') / 2;
  within('meridian', steepMeridian, 0, 180, '°');
  within('pupil', pupil, 0.1, 10, 'mm');
  const arriving = (power: number): number => power / (1 - power * REDUCED);
  const [steep, flat] = [arriving(mean + half), arriving(mean - half)];
  const focused = focus === 'front-line' ? steep : focus === 'back-line' ? flat : (steep + flat) / 2;
  const lensPower = (1000 * index) / (axialLength - lensDepth) - focused;
  const inFocus = focused / (1 + focused * REDUCED);
  const [strong, weak] = [steep, flat].map((power) => (power + lensPower) / (1000 * index)) as [number, number];
  return {
    lensPower,
    inFocus,
    excess: { steep: mean + half - inFocus, flat: mean - half - inFocus },
    vergence: { steep: strong, flat: weak },
    steepMeridian,
    pupil,
    front: { position: lensDepth + 1 / strong, length: pupil * (1 - weak / strong), direction: meridian(steepMeridian + 90) },
    back: { position: lensDepth + 1 / weak, length: pupil * (strong / weak - 1), direction: meridian(steepMeridian) },
    circle: { position: lensDepth + 2 / (strong + weak), diameter: (pupil * (strong - weak)) / (strong + weak) },
  };
}

/** Section of the bundle in the plane `z`, mm from the cornea, as the image of a circle of radius 1; mm. */
export function sectionAt({ vergence: { steep, flat }, steepMeridian, pupil }: PlannedBundle, z: number): Matrix {
  const half = (vergence: number): number => (pupil / 2) * (1 - (z - lensDepth) * vergence);
  return alongMeridian(half(flat), half(steep), steepMeridian);
}

/** By how much a cornea is too strong for the retina whose light meets in the plane `z`, mm from the cornea: the place in dioptres, > 0 in front of the retina. */
export function excessAt({ lensPower, inFocus }: PlannedBundle, z: number): number {
  const arriving = (1000 * index) / (z - lensDepth) - lensPower;
  return arriving / (1 + arriving * REDUCED) - inFocus;
}

/** Beyond this the far line would lie far behind the eye, D. */
export const STRONGEST = 20;
