import { RADIANS } from './angle.js';
import { within } from './check.js';
import type { Ellipse, Spread, Vector } from './types.js';

/** Principal variances and the direction of the larger one. */
interface Principal {
  /** Standard deviation along the long axis, D. */
  long: number;
  /** Standard deviation along the short axis, D. */
  short: number;
  /** Direction of the long axis, radians from x. */
  angle: number;
}

/** Most points of the sum; a spread of a hundred-thousandth of the disc asks for more. */
const MOST_POINTS = 1000;

/**
 * Probability that a bivariate normal residual has a magnitude of at most `limit` dioptres. The long axis is integrated
 * in closed form, the short one numerically over the disc, with x = limit·sin t. In t all is smooth, even about the ends of
 * the disc and next to nothing where the normal density is: equal steps of at most one standard deviation are exact to
 * 1e-10 (Trefethen & Weideman, "The exponentially convergent trapezoidal rule", SIAM Review 2014, from memory). Not the
 * other way round: across a narrow spread the edge of the disc is a step.
 * @throws RangeError for a limit that is negative or not finite.
 */
export function chanceWithin(spread: Spread, limit: number): number {
  const radius = within('limit', limit, 0, 1e6, 'D');
  if (radius === 0) return 0;
  const { long, short, angle } = principal(spread);
  const turned = rotated(spread.mean, -angle);
  if (short < 1e-9) return chanceOnLine(turned, long, radius);
  const mean = { x: turned.y, y: turned.x };
  // Only the part of the disc where the density is above 1e-17 of its peak matters; it is all that is summed.
  const from = Math.asin(clamp((mean.x - 8.5 * short) / radius));
  const extent = Math.asin(clamp((mean.x + 8.5 * short) / radius)) - from;
  const points = Math.min(MOST_POINTS, Math.ceil(6 + (extent * radius) / short));
  let total = 0;
  for (let point = 0.5; point < points; point += 1) {
    const t = from + (point * extent) / points;
    const across = radius * Math.cos(t);
    const z = (radius * Math.sin(t) - mean.x) / short;
    total += across * Math.exp((-z * z) / 2) * (normal((across - mean.y) / long) - normal((-across - mean.y) / long));
  }
  return Math.min(1, Math.max(0, (extent * total) / (points * short * Math.sqrt(2 * Math.PI))));
}

/** Ellipse that holds the share `p` (0–1) of a bivariate normal: semi-axes √(-2·ln(1 − p)) standard deviations. */
export function ellipse(spread: Spread, p: number): Ellipse {
  const scale = Math.sqrt(-2 * Math.log(1 - within('p', p, 0, 1 - 1e-12, '')));
  const { long, short, angle } = principal(spread);
  return { cx: spread.mean.x, cy: spread.mean.y, a: scale * long, b: scale * short, angle: angle / RADIANS };
}

/** Covariance with the standard deviations `along` and `across` the direction `angle` (radians from x). */
export function covarianceAlong(along: number, across: number, angle: number): [number, number, number] {
  return covarianceBy(along, across, Math.cos(angle), Math.sin(angle));
}

function covarianceBy(along: number, across: number, c: number, s: number): [number, number, number] {
  const a = along * along;
  const b = across * across;
  return [a * c * c + b * s * s, (a - b) * c * s, a * s * s + b * c * c];
}

/**
 * What an angular error does to a vector: with a normal error of `sd` degrees on the eye the vector turns by twice as
 * much. The first two moments are exact: the mean shrinks by e^(-2σ²); variances follow from E cos and E cos².
 */
export function turnedBy(v: Vector, sd: number): { mean: Vector; covariance: [number, number, number] } {
  const variance = (sd * RADIANS) ** 2;
  const shrink = Math.exp(-2 * variance);
  const square = shrink * shrink;
  const along = (1 - square) / Math.SQRT2;
  const across = Math.sqrt((1 - square * square) / 2);
  // The covariance of a vector of the length 1 in the same direction, times the square of its own: without its angle.
  return { mean: { x: v.x * shrink, y: v.y * shrink }, covariance: covarianceBy(along, across, v.x, v.y) };
}

/** What the same angular error does to a covariance: it smears its directions, E cos 4δ = e^(-8σ²), and keeps its trace. */
export function smearedBy([xx, xy, yy]: readonly [number, number, number], sd: number): [number, number, number] {
  const keep = Math.exp(-8 * (sd * RADIANS) ** 2);
  const half = (xx + yy) / 2;
  const difference = (keep * (xx - yy)) / 2;
  return [half + difference, keep * xy, half - difference];
}

function principal({ covariance: [[xx, xy], [, yy]] }: Spread): Principal {
  const half = (xx + yy) / 2;
  const difference = Math.hypot((xx - yy) / 2, xy);
  return {
    long: Math.sqrt(half + difference),
    short: Math.sqrt(Math.max(0, half - difference)),
    angle: Math.atan2(2 * xy, xx - yy) / 2,
  };
}

function chanceOnLine(mean: Vector, sd: number, radius: number): number {
  if (Math.abs(mean.y) > radius) return 0;
  const half = Math.sqrt(radius * radius - mean.y * mean.y);
  if (sd < 1e-9) return Math.abs(mean.x) <= half ? 1 : 0;
  return normal((half - mean.x) / sd) - normal((-half - mean.x) / sd);
}

function rotated({ x, y }: Vector, angle: number): Vector {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return { x: x * c - y * s, y: x * s + y * c };
}

function clamp(value: number): number {
  return Math.min(1, Math.max(-1, value));
}

/**
 * Standard normal distribution function. Hart's rational approximation as given by G. West, "Better approximations to
 * cumulative normal functions" (2005), recalled from memory and checked in the tests against mathjs: error below 1e-14.
 */
export function normal(z: number): number {
  const x = Math.abs(z);
  if (x > 37) return z > 0 ? 1 : 0;
  const density = Math.exp((-x * x) / 2);
  let tail: number;
  if (x < 7.07106781186547) {
    const top = ((((((3.52624965998911e-2 * x + 0.700383064443688) * x + 6.37396220353165) * x + 33.912866078383) * x + 112.079291497871) * x + 221.213596169931) * x + 220.206867912376);
    const bottom = (((((((8.83883476483184e-2 * x + 1.75566716318264) * x + 16.064177579207) * x + 86.7807322029461) * x + 296.564248779674) * x + 637.333633378831) * x + 793.826512519948) * x + 440.413735824752);
    tail = (density * top) / bottom;
  } else {
    tail = density / (x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))))) / Math.sqrt(2 * Math.PI);
  }
  return z > 0 ? 1 - tail : tail;
}
