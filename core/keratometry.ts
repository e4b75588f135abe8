import { meridian } from './angle.js';
import { allowed, refused, within } from './check.js';
import { LIMITS } from './limits.js';
import type { Astigmatism } from './types.js';

/** Keratometric constant of ISO 10343: dioptres times millimetres. It stands for an index of 1.3375. */
export const KERATOMETRIC_CONSTANT = 337.5;

/** Radii that a cornea can have, mm; wider than the limits of a plan. */
const RADIUS = { min: 3, max: 20 } as const;

/** Keratometric power of a radius, D. @throws RangeError outside 3–20 mm. */
export function dioptresFromRadius(mm: number): number {
  return KERATOMETRIC_CONSTANT / within('radius', mm, RADIUS.min, RADIUS.max, 'mm');
}

/** Radius of a keratometric power, mm. @throws RangeError outside 16.875–112.5 D, which are 20 and 3 mm. */
export function radiusFromDioptres(dioptres: number): number {
  const { min, max } = RADIUS;
  return KERATOMETRIC_CONSTANT / within('power', dioptres, KERATOMETRIC_CONSTANT / max, KERATOMETRIC_CONSTANT / min, 'D');
}

/**
 * Corneal astigmatism of two keratometer readings in dioptres.
 * @throws RangeError for a reading outside the limits, or a steep reading below the flat one.
 */
export function fromReadings(readings: { flat: number; steep: number; steepMeridian: number }): Astigmatism {
  const flat = allowed(LIMITS.flatK, readings.flat);
  const steep = allowed(LIMITS.steepK, readings.steep);
  refuseSteepBelowFlat(flat, steep);
  const along = allowed(LIMITS.steepMeridian, readings.steepMeridian);
  return { magnitude: steep - flat, meridian: meridian(along) };
}

/** Readings that are each possible, but the wrong way round. */
export function refuseSteepBelowFlat(flat: number, steep: number): void {
  if (steep < flat) throw refused('steepK', steep, 'steepBelowFlat', { min: flat, max: LIMITS.steepK.max });
}
