import { RefusedValue, within } from './check.js';
import type { Limits } from './limits.js';
import { toPowerVector } from './refraction.js';
import type { PowerVector, Refraction } from './types.js';

/** What the functions on sight accept. "Assumed": wide enough for any eye and screen, narrow enough to catch a slip. */
export const SIGHT_LIMITS = {
  pupil: { min: 1, max: 9, unit: 'mm' },
  wavelength: { min: 380, max: 780, unit: 'nm' },
  sphere: { min: -30, max: 30, unit: 'D' },
  cylinder: { min: -15, max: 15, unit: 'D' },
  /** Width or height of a picture. */
  side: { min: 1, max: 2048, unit: 'px' },
  degreesPerPixel: { min: 0.0001, max: 1, unit: '°' },
  /** How far light may stray from its place along a row or a column. */
  reach: { min: 0, max: 1024, unit: 'px' },
  /** An amount of astigmatism for which acuity is asked. */
  astigmatism: { min: 0, max: 15, unit: 'D' },
  viewingDistance: { min: 0.1, max: 100, unit: 'm' },
  /** Decimal acuity. */
  acuity: { min: 0.01, max: 4, unit: '' },
} as const satisfies Record<string, Limits>;

/** The value itself when it lies within the limits of its kind; else it is refused. */
export function allowed(kind: keyof typeof SIGHT_LIMITS, field: string, value: unknown): number {
  const { min, max, unit } = SIGHT_LIMITS[kind];
  return within(field, value, min, max, unit);
}

/** Power vector of an error in focus within the limits. */
export function focusError(refraction: Refraction): PowerVector {
  if (typeof refraction !== 'object' || refraction === null) throw new RefusedValue('refraction', refraction, 'a sphere, a cylinder and an axis');
  allowed('sphere', 'sphere', refraction.sphere);
  allowed('cylinder', 'cylinder', refraction.cylinder);
  return toPowerVector(refraction);
}
