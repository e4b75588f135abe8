import { RefusedValue, within } from './check.js';
import type { Limits } from './limits.js';

/** What the tracing of eyes accepts. "Assumed": wide enough for any eye and its glasses, narrow enough to catch a slip. */
export const EYE_LIMITS = {
  /** Size of a radius; a flat surface has Infinity. */
  radius: { min: 1, max: Infinity, unit: 'mm' },
  index: { min: 1, max: 2.5, unit: '' },
  gap: { min: 0, max: 1000, unit: 'mm' },
  meridian: { min: 0, max: 180, unit: '°' },
  lensPower: { min: -200, max: 200, unit: 'D' },
  /** Change of the index in a gradient, a mm or a square mm. */
  gradient: { min: -0.5, max: 0.5, unit: '' },
  surfaces: { min: 1, max: 50, unit: 'surfaces' },
  axialLength: { min: 10, max: 50, unit: 'mm' },
  thickness: { min: 0.1, max: 2, unit: 'mm' },
  cornealRadius: { min: 3, max: 20, unit: 'mm' },
  vertex: { min: 0, max: 30, unit: 'mm' },
  /** Of an eye, or of a lens on a bench. */
  pupil: { min: 0.1, max: 100, unit: 'mm' },
  vergence: { min: -200, max: 200, unit: 'D' },
  place: { min: -100_000, max: 100_000, unit: 'mm' },
} as const satisfies Record<string, Limits>;

/** The value itself when it lies within the limits of its kind; else it is refused. */
export function allowed(kind: keyof typeof EYE_LIMITS, field: string, value: unknown): number {
  const { min, max, unit } = EYE_LIMITS[kind];
  return within(field, value, min, max, unit);
}

/** Curvature of a radius, 1/mm. */
export function curvature(field: string, radius: unknown): number {
  const { min, unit } = EYE_LIMITS.radius;
  if (typeof radius === 'number' && Math.abs(radius) >= min) return 1 / radius + 0;
  throw new RefusedValue(field, radius, `${min} ${unit} or more in size, of either sign; Infinity for a flat surface`);
}

/** Smallest power and vergence that is told from none, D: its focus is 10⁹ km away. */
const NONE = 1e-9;

/** Whether a power in 1/mm is nothing but rounding. */
export const isNone = (perMm: number): boolean => Math.abs(perMm) < NONE / 1000;
