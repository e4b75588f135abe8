/** The cornea as it is, with two surfaces and a thickness, against what a keratometer makes of its front alone. */
import { RADIANS, meridian } from './angle.js';
import { change } from './astigmatism.js';
import { within } from './check.js';
import { EYE_CONSTANTS } from './eye-constants.js';
import { EYE_LIMITS, allowed } from './eye-limits.js';
import { NULL, UNIT, mixed, powerVector, type Matrix } from './eye-matrix.js';
import { stepsOf, through } from './eye-system.js';
import type { ToricSurface } from './eye-types.js';
import { KERATOMETRIC_CONSTANT } from './keratometry.js';
import type { Astigmatism, PowerVector } from './types.js';

/** One side of the cornea: radii in mm, and its steep meridian in degrees, 0–180. */
export type CornealSide = Pick<ToricSurface, 'flatRadius' | 'steepRadius' | 'steepMeridian'>;

export interface Cornea {
  front: CornealSide;
  back: CornealSide;
  /** mm, 0.1–2. */
  thickness: number;
  /** Index of the cornea; 1.376 when left out. */
  index?: number;
  /** Index of the aqueous; 1.336 when left out. */
  aqueousIndex?: number;
}

/** Mean power, and the astigmatism by its amount and the meridian of the *most* power. Dioptres. */
export interface CornealPower extends Astigmatism {
  mean: number;
}

export interface CornealPowers {
  /** Of the front radii by 337.5/r (ISO 10343), which stands in for the back surface by an index of 1.3375. */
  keratometric: CornealPower;
  /** Of the front surface, by the index of the cornea. */
  front: CornealPower;
  /** Of the back surface: a minus lens, so the meridian of the most power is its *flat* one. */
  back: CornealPower;
  /** Of both: F₁ + F₂ − (t/n)·F₂·F₁, the equivalent power. */
  total: CornealPower;
  /** What the true cornea adds to the keratometric astigmatism, in the convention of the setting `backSurface`. */
  backAdds: Astigmatism;
  /** Mean of the total minus mean of the keratometric power. */
  meanError: number;
}

/**
 * Powers of a real cornea. Obliquely crossed sides make the power matrix of the whole a little asymmetric; the total is
 * that of its symmetric part.
 * @throws RangeError for a value out of range.
 */
export function corneaPowers({ front, back, thickness, index = EYE_CONSTANTS.corneaIndex.value, aqueousIndex = EYE_CONSTANTS.aqueousIndex.value }: Cornea): CornealPowers {
  side('front', front);
  side('back', back);
  const gapAfter = allowed('thickness', 'thickness', thickness);
  const made = stepsOf({ surfaces: [{ ...front, indexAfter: index, gapAfter }, { ...back, indexAfter: aqueousIndex, gapAfter: 0 }] });
  const total = powerOf(mixed(-1, through(made, { height: UNIT, slope: NULL }).slope, 0, UNIT));
  const keratometric = powerOf(stepsOf({ surfaces: [{ ...front, indexAfter: 1 + KERATOMETRIC_CONSTANT / 1000, gapAfter: 0 }] }).steps[0]!.power);
  return {
    keratometric,
    front: powerOf(made.steps[0]!.power),
    back: powerOf(made.steps[1]!.power),
    total,
    backAdds: change(keratometric, total),
    meanError: total.mean - keratometric.mean,
  };
}

function side(name: string, given: CornealSide): void {
  const { min, max, unit } = EYE_LIMITS.cornealRadius;
  within(`${name}.flatRadius`, given.flatRadius, min, max, unit);
  within(`${name}.steepRadius`, given.steepRadius, min, given.flatRadius, unit);
  allowed('meridian', `${name}.steepMeridian`, given.steepMeridian);
}

function powerOf(perMm: Matrix): CornealPower {
  const { m, j0, j45 }: PowerVector = powerVector(perMm, 1000);
  const magnitude = 2 * Math.hypot(j0, j45);
  return magnitude < 1e-12 ? { mean: m, magnitude: 0, meridian: 180 } : { mean: m, magnitude, meridian: meridian(Math.atan2(j45, j0) / (2 * RADIANS)) };
}
