import { RADIANS, meridian } from './angle.js';
import { within } from './check.js';
import { normal } from './spread.js';
import type { Spread } from './types.js';

/** Where the steep meridian of what remains may lie. */
export interface MeridianSpread {
  /** Meridian of the mean, degrees. */
  meridian: number;
  /** Half of the sector around it that holds the asked share, degrees on the eye; 90 is any direction. */
  halfWidth: number;
}

/** Steps of the doubled angle in which the density is summed, degrees. */
const STEP = 1;

/**
 * Sector of the eye, centred on the mean, that holds the share `p` of all remaining steep meridians. Sums the density of
 * the direction of a bivariate normal vector, which has a closed form.
 * @throws RangeError for a share outside 0–1.
 */
export function meridianSpread(spread: Spread, p: number): MeridianSpread {
  const share = within('p', p, 0, 1, '');
  const { x, y } = spread.mean;
  const centre = Math.atan2(y, x) / RADIANS;
  const density = directionDensity(spread);
  // Midpoints on both sides of the centre at once; normalised by their own sum.
  const pairs = Array.from({ length: 180 / STEP }, (_, index) => {
    const away = (index + 0.5) * STEP;
    return density((centre + away) * RADIANS) + density((centre - away) * RADIANS);
  });
  const whole = pairs.reduce((sum, pair) => sum + pair, 0);
  let held = 0;
  for (const [index, pair] of pairs.entries()) {
    const next = held + pair / whole;
    // All eyes are never held before all directions are: a normal spread ends nowhere, and rounding may come to 1 too early.
    if (share < 1 && next >= share) return { meridian: meridian(centre / 2), halfWidth: ((index + (share - held) / (next - held)) * STEP) / 2 };
    held = next;
  }
  return { meridian: meridian(centre / 2), halfWidth: 90 };
}

/** Density of the direction of a bivariate normal vector (projected normal distribution), up to a constant factor. */
function directionDensity({ mean, covariance: [[xx, xy], [, yy]] }: Spread): (radians: number) => number {
  const determinant = xx * yy - xy * xy;
  const inverse = (ax: number, ay: number, bx: number, by: number): number => (ax * (yy * bx - xy * by) + ay * (xx * by - xy * bx)) / determinant;
  const centre = inverse(mean.x, mean.y, mean.x, mean.y);
  return (radians) => {
    const c = Math.cos(radians);
    const s = Math.sin(radians);
    const a = inverse(c, s, c, s);
    const z = inverse(c, s, mean.x, mean.y) / Math.sqrt(a);
    // exp(-centre/2)·[1 + z·Φ(z)/φ(z)] / a, written so that neither factor overflows.
    return (Math.exp(-centre / 2) + z * normal(z) * Math.sqrt(2 * Math.PI) * Math.exp((z * z - centre) / 2)) / a;
  };
}
