import { add, fromVector, meridian, toVector } from '../../core/numbers.js';
import type { Astigmatism, PlanOutcome, Refraction } from '../../core/numbers.js';

/** The two pictures. */
export const SIDES = ['before', 'after'] as const;
export type Side = (typeof SIDES)[number];

/** What of the bundle of light lies on the retina. */
export const FOCUSES = ['least-blur', 'front-line', 'back-line'] as const;
export type Focus = (typeof FOCUSES)[number];

/** How much too strong the flat meridian is, as a share of the astigmatism. The steep one has the whole of it more. */
const FLAT_EXCESS: Record<Focus, number> = { 'least-blur': -0.5, 'front-line': -1, 'back-line': 0 };

/**
 * Error in focus of an eye whose only error is the astigmatism of its cornea, as the lens that would correct it.
 *
 * The steep meridian has the power that is too much, so the minus cylinder has to act along it: its axis is the **flat**
 * meridian. With the circle of least blur on the retina the spherical equivalent is zero and a point becomes a disc, blurred
 * alike in every direction. With a focal line on it one direction stays sharp: with the back line, which is made by the
 * flat meridian, that of the steep meridian; with the front line that of the flat one.
 */
export function focusError({ magnitude, meridian: steep }: Astigmatism, focus: Focus): Refraction {
  return { sphere: -FLAT_EXCESS[focus] * magnitude + 0, cylinder: -magnitude + 0, axis: meridian(steep + 90) };
}

/** Width of the blur of a point, minutes of arc: pupil × error in focus, of the meridian with the greater one. */
export function blurMinutes(magnitude: number, pupilMm: number, focus: Focus): number {
  const worst = Math.max(Math.abs(FLAT_EXCESS[focus]), Math.abs(FLAT_EXCESS[focus] + 1)) * magnitude;
  return (pupilMm / 1000) * worst * (180 / Math.PI) * 60;
}

/** The cornea before surgery: front, and the back surface where the plan counts it, since the light passes through both. */
export function corneaBefore({ before, steps }: PlanOutcome): Astigmatism {
  const back = steps.find(({ source }) => source === 'backSurface');
  return back ? fromVector(add(toVector(before), back.vector)) : before;
}
