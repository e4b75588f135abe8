import { RADIANS } from './angle.js';
import { add } from './astigmatism.js';
import { chanceWithin, smearedBy, turnedBy } from './spread.js';
import type { Spread, Vector } from './types.js';

export type Covariance = [xx: number, xy: number, yy: number];

/** All that is uncertain of a result, with the error of the marks on the eye kept apart from the rest. */
export interface Scatter {
  /** What nobody places: the cornea as measured, front and back, D. */
  start: Vector;
  /** Variance of that per component, D². */
  base: number;
  /** Sum of what is placed by the marks, on its mean, D. */
  placed: Vector;
  /** Covariance of that in its own right, D². */
  own: Covariance;
  /** Standard deviation of the marks, degrees on the eye: they turn all that is placed, scatter and all, as one. */
  turning: number;
}

/** Mean and covariance of the result, exactly; that it is normally distributed is an approximation. */
export function momentsOf({ start, base, placed, own, turning }: Scatter): Spread {
  const { mean, covariance } = turnedBy(placed, turning);
  const smeared = smearedBy(own, turning);
  const xy = covariance[1] + smeared[1];
  return {
    mean: add(start, mean),
    covariance: [[covariance[0] + smeared[0] + base, xy], [xy, covariance[2] + smeared[2] + base]],
  };
}

type Marks = readonly (readonly [z: number, weight: number])[];

/** The normal error of the marks in steps of so many standard deviations, with their weights. */
function marks(step: number): Marks {
  const reach = 5.5;
  return Array.from({ length: Math.round((2 * reach) / step) + 1 }, (_, index) => {
    const z = index * step - reach;
    return [z, (step * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI)] as const;
  });
}

const STEPS = [1, 0.5, 0.25, 0.125, 0.0625].map((step) => ({ step, marks: marks(step) }));

/**
 * With steps of h, and a mean that moves by r standard deviations of the rest for each of the marks, the error of the sum
 * is about exp(−2π²/(h²(1 + r²))). Up to this h·√(1 + r²) it stays under 1e-6.
 */
const SMOOTH = 1.15;

/**
 * Probability that what remains is at most `limit` dioptres. The marks' error enters as it is: for each error the rest
 * is normal, and these chances are averaged. A strong lens that is turned bends the distribution too much for one normal.
 */
export function chanceOf(scatter: Scatter, limit: number): number {
  const { start, base, placed, own, turning } = scatter;
  const strength = Math.hypot(placed.x, placed.y);
  // What is round and stands in the middle can be turned without any change.
  if (strength === 0 && own[1] === 0 && own[0] === own[2]) return chanceWithin(momentsOf(scatter), limit);
  const sweep = (2 * RADIANS * turning * strength) / Math.sqrt(base);
  const { marks: errors } = STEPS.find(({ step }) => step * Math.hypot(1, sweep) <= SMOOTH) ?? STEPS.at(-1)!;
  let chance = 0;
  for (const [z, weight] of errors) {
    const angle = 2 * RADIANS * turning * z;
    const c = Math.cos(angle);
    const s = Math.sin(angle);
    const mean = { x: start.x + placed.x * c - placed.y * s, y: start.y + placed.x * s + placed.y * c };
    const [xx, xy, yy] = turnedTensor(own, c, s);
    chance += weight * chanceWithin({ mean, covariance: [[xx + base, xy], [xy, yy + base]] }, limit);
  }
  return Math.min(1, chance);
}

/** R·C·Rᵀ for a rotation with the given cosine and sine. */
function turnedTensor([xx, xy, yy]: Covariance, c: number, s: number): Covariance {
  const both = 2 * c * s * xy;
  return [c * c * xx - both + s * s * yy, c * s * (xx - yy) + (c * c - s * s) * xy, s * s * xx + both + c * c * yy];
}
