/** The bundle of light in an eye whose cornea is known and whose lens was chosen for it: plain arithmetic, to be redrawn while something is dragged. */
import { within } from './check.js';
import { allowed } from './eye-limits.js';
import { pencilOf, type Pencil } from './eye-pencil.js';
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

export interface PlannedEye {
  /** Mean power of the cornea, 20–100 D. */
  meanPower: number;
  /** Of the whole cornea, with all that acts at its plane; up to 20 D. */
  astigmatism: Astigmatism;
  /** Diameter of the pupil in the plane of the lens, mm. */
  pupil: number;
  focus: Focus;
}

export interface PlannedPencil {
  pencil: Pencil;
  /** Power of the spherical lens that brings `focus` to the retina, D. */
  lensPower: number;
  /** Power of a cornea that would be in focus on the retina, D. */
  inFocus: number;
  /** Of the steep and the flat meridian, by how much the cornea is too strong for the retina, D: their difference is the astigmatism. */
  excess: { steep: number; flat: number };
}

/**
 * A thin toric cornea, and behind it a thin spherical lens of just the power that brings the circle of least confusion, or
 * one of the line foci, to the retina. A meridian of power K arrives at the lens with the vergence K/(1 − K·d/n); the lens
 * adds the same to both. The pupil lies in the plane of the lens.
 * @throws RangeError for a value out of range.
 */
export function plannedPencil({ meanPower, astigmatism: { magnitude, meridian }, pupil, focus }: PlannedEye): PlannedPencil {
  const { lensDepth, index, axialLength } = PLANNED_EYE;
  const mean = within('meanPower', meanPower, 20, 100, 'D');
  const half = within('astigmatism', magnitude, 0, STRONGEST, 'D') / 2;
  const along = allowed('meridian', 'meridian', meridian) * (Math.PI / 90);
  const depth = lensDepth / 1000 / index;
  const arriving = (power: number): number => power / (1 - power * depth);
  const [steep, flat] = [arriving(mean + half), arriving(mean - half)];
  const focused = focus === 'front-line' ? steep : focus === 'back-line' ? flat : (steep + flat) / 2;
  const lensPower = (1000 * index) / (axialLength - lensDepth) - focused;
  const inFocus = focused / (1 + focused * depth);
  const j = (steep - flat) / 2;
  const vergence = { m: lensPower + (steep + flat) / 2, j0: j * Math.cos(along), j45: j * Math.sin(along) };
  return {
    pencil: pencilOf({ vergence, pupil, index, from: lensDepth }),
    lensPower,
    inFocus,
    excess: { steep: mean + half - inFocus, flat: mean - half - inFocus },
  };
}

/** By how much a cornea is too strong for the retina whose light meets in the plane `z`, mm from the cornea: the place in dioptres, > 0 in front of the retina. */
export function excessAt({ lensPower, inFocus }: PlannedPencil, z: number): number {
  const { lensDepth, index } = PLANNED_EYE;
  const arriving = (1000 * index) / (z - lensDepth) - lensPower;
  return arriving / (1 + (arriving * lensDepth) / 1000 / index) - inFocus;
}

/** Beyond this the far line would lie far behind the eye, D. */
export const STRONGEST = 20;
