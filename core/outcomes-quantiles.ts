import { normal } from './spread.js';

/**
 * Quantiles that have a closed form, or nearly: with two components χ² and Fisher's F need no tables.
 */

/** Quantile of F with 2 and m degrees of freedom: (m/2)·((1 − p)^(−2/m) − 1). */
export function fisherQuantile(p: number, m: number): number {
  return (m / 2) * Math.expm1((-2 / m) * Math.log1p(-p));
}

/** Chance that F with 2 and m degrees of freedom is larger than f: (1 + 2f/m)^(−m/2). */
export function fisherTail(f: number, m: number): number {
  return Math.exp((-m / 2) * Math.log1p((2 * f) / m));
}

/** Standard normal quantile for 0 < p < 1, by Newton's method on the distribution function. */
export function normalQuantile(p: number): number {
  if (p > 0.5) return -normalQuantile(1 - p);
  // Below 0 the distribution function is convex, so that from above the root no step passes it.
  let z = 0;
  for (let step = 0; step < 60; step += 1) {
    const change = ((normal(z) - p) * Math.sqrt(2 * Math.PI)) / Math.exp((-z * z) / 2);
    z -= change;
    if (Math.abs(change) < 1e-15) break;
  }
  return z;
}

/** Wilson's interval (1927) of a share: `hits` of `n`, at the two-sided level p. It stays within 0–1 and holds for few eyes. */
export function wilson(hits: number, n: number, p: number): { low: number; high: number } {
  const z = normalQuantile((1 + p) / 2);
  const share = hits / n;
  const square = (z * z) / n;
  const centre = (share + square / 2) / (1 + square);
  const half = (Math.sqrt(square) * Math.sqrt(share * (1 - share) + square / 4)) / (1 + square);
  return { low: hits === 0 ? 0 : Math.max(0, centre - half), high: hits === n ? 1 : Math.min(1, centre + half) };
}
