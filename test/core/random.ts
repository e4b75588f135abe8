/** Seeded draws and an independent integration, for the tests of the spread. */
import seedrandom from 'seedrandom';
import { type Spread, type Vector } from '../../core/index.js';

/** Standard normal draws by the polar method of Marsaglia (from memory; its moments are tested where it is used). */
export function normals(seed: string): () => number {
  const uniform = seedrandom(seed);
  let spare: number | null = null;
  return () => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const [u, v] = [2 * uniform() - 1, 2 * uniform() - 1];
      const square = u * u + v * v;
      if (square > 0 && square < 1) {
        const scale = Math.sqrt((-2 * Math.log(square)) / square);
        spare = v * scale;
        return u * scale;
      }
    }
  };
}

/** A spread from standard deviations along and across a direction in degrees. */
export function spreadOf(mean: Vector, long: number, short: number, degrees: number): Spread {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const [a, b] = [long * long, short * short];
  return { mean, covariance: [[a * c * c + b * s * s, (a - b) * c * s], [(a - b) * c * s, a * s * s + b * c * c]] };
}

/** One draw from a spread, by the Cholesky factor of its covariance. */
export function drawFrom({ mean, covariance: [[xx, xy], [, yy]] }: Spread, normal: () => number): Vector {
  const l11 = Math.sqrt(xx);
  const l21 = l11 === 0 ? 0 : xy / l11;
  const [p, q] = [normal(), normal()];
  return { x: mean.x + l11 * p, y: mean.y + l21 * p + Math.sqrt(Math.max(0, yy - l21 * l21)) * q };
}

/** First and second moments of many draws, with the standard error of each. */
export function moments(count: number, draw: () => Vector): Record<'x' | 'y' | 'xx' | 'xy' | 'yy', { value: number; error: number }> {
  const xs = new Float64Array(count);
  const ys = new Float64Array(count);
  for (let i = 0; i < count; i += 1) ({ x: xs[i], y: ys[i] } = draw());
  const average = (of: (i: number) => number): { value: number; error: number } => {
    let sum = 0;
    let squares = 0;
    for (let i = 0; i < count; i += 1) {
      const value = of(i);
      sum += value;
      squares += value * value;
    }
    const value = sum / count;
    return { value, error: Math.sqrt(Math.max(0, squares / count - value * value) / count) };
  };
  const [x, y] = [average((i) => xs[i]!), average((i) => ys[i]!)];
  const about = (i: number) => [xs[i]! - x.value, ys[i]! - y.value] as const;
  return {
    x,
    y,
    xx: average((i) => about(i)[0] ** 2),
    xy: average((i) => about(i)[0] * about(i)[1]),
    yy: average((i) => about(i)[1] ** 2),
  };
}

/**
 * Chance of a magnitude up to `limit`, by the density itself in polar coordinates about the origin: trapezoid rule
 * round the circle, where it converges fastest, and Simpson's rule along the radius. There are `fineness`
 * steps to the smaller standard deviation.
 */
export function chanceByQuadrature({ mean, covariance: [[xx, xy], [, yy]] }: Spread, limit: number, fineness = 24): number {
  const determinant = xx * yy - xy * xy;
  const smallest = Math.sqrt((xx + yy) / 2 - Math.hypot((xx - yy) / 2, xy));
  const radii = 2 * Math.ceil(Math.max(120, (fineness * limit) / smallest) / 2);
  const angles = Math.ceil(Math.max(240, (2 * Math.PI * limit * 3) / smallest));
  let total = 0;
  for (let a = 0; a < angles; a += 1) {
    const [c, s] = [Math.cos((2 * Math.PI * a) / angles), Math.sin((2 * Math.PI * a) / angles)];
    for (let i = 1; i <= radii; i += 1) {
      const r = (limit * i) / radii;
      const [x, y] = [r * c - mean.x, r * s - mean.y];
      const weight = i === radii ? 1 : i % 2 ? 4 : 2;
      total += weight * r * Math.exp(-(yy * x * x - 2 * xy * x * y + xx * y * y) / (2 * determinant));
    }
  }
  return (total * (limit / radii / 3) * ((2 * Math.PI) / angles)) / (2 * Math.PI * Math.sqrt(determinant));
}
