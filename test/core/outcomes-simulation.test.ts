/** Simulated series whose truth is known. Every draw is seeded; every allowance is a multiple of the simulation's own error. */
import { describe, expect, test } from 'vitest';
import { summarise } from '../../core/outcomes.js';
import type { Ellipse, Spread, Vector } from '../../core/types.js';
import { normal } from '../../core/spread.js';
import { drawFrom, normals, spreadOf } from './random.js';

/** Standard errors that a share or a ratio may be off; more in one of 16 000 runs. */
const ALLOWED = 4;

const inside = ({ cx, cy, a, b, angle }: Ellipse, { x, y }: Vector): boolean => {
  const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  return Math.hypot((c * (x - cx) + s * (y - cy)) / a, (c * (y - cy) - s * (x - cx)) / b) <= 1;
};

function share(hits: number, of: number, expected: number, what: string): void {
  const error = Math.sqrt((expected * (1 - expected)) / of);
  console.log(`${what.padEnd(60)} ${((100 * hits) / of).toFixed(2)} % (${(100 * expected).toFixed(1)} ± ${(100 * error).toFixed(2)})`);
  expect(Math.abs(hits / of - expected), what).toBeLessThanOrEqual(ALLOWED * error);
}

const draw = (spread: Spread, n: number, normal: () => number): Vector[] => Array.from({ length: n }, () => drawFrom(spread, normal));

describe.each([
  ['round', spreadOf({ x: -0.14, y: 0.02 }, 0.3, 0.3, 0)],
  ['long and slanting', spreadOf({ x: 0.4, y: -0.3 }, 0.8, 0.2, 35)],
])('eyes that scatter %s', (name, spread) => {
  test.each([[3, 0.95], [5, 0.95], [20, 0.95], [20, 0.5], [60, 0.95]])('%d eyes: the ellipses at level %d hold the truth and the next eye that often', (n, p) => {
    const series = n === 60 ? 5000 : 20_000;
    const normal = normals(`${name} ${n} ${p}`);
    let [mean, next] = [0, 0];
    for (let i = 0; i < series; i += 1) {
      const { ellipseOfMean, ellipseOfEyes } = summarise(draw(spread, n, normal), p);
      mean += Number(inside(ellipseOfMean!, spread.mean));
      next += Number(inside(ellipseOfEyes!, drawFrom(spread, normal)));
    }
    share(mean, series, p, `${name}, ${n} eyes: true mean`);
    share(next, series, p, `${name}, ${n} eyes: next eye`);
  }, 120_000);

  test('without any effect P is below 0.05, 0.2 and 0.5 just so often', () => {
    const still = { ...spread, mean: { x: 0, y: 0 } };
    const normal = normals(`${name}, none`);
    const found = Array.from({ length: 20_000 }, () => summarise(draw(still, 12, normal)).pValue!);
    for (const level of [0.05, 0.2, 0.5]) share(found.filter((value) => value < level).length, found.length, level, `${name}, no effect: P < ${level}`);
  }, 120_000);
});

describe('the robust centres', () => {
  /** Relative efficiency: variance of the centroid over that of the other centre. */
  const SERIES = 6000;
  const EYES = 60;

  test('use π/4 and 99 % of the information in a normal series', () => {
    const next = normals('efficiency');
    const round = spreadOf({ x: 0, y: 0 }, 1, 1, 0);
    const squares = { centroid: 0, median: 0, winsorised: 0 };
    for (let i = 0; i < SERIES; i += 1) {
      const { centroid, robust } = summarise(draw(round, EYES, next));
      squares.centroid += centroid!.x ** 2 + centroid!.y ** 2;
      squares.median += robust!.spatialMedian.x ** 2 + robust!.spatialMedian.y ** 2;
      squares.winsorised += robust!.winsorisedCentroid.x ** 2 + robust!.winsorisedCentroid.y ** 2;
    }
    const median = squares.centroid / squares.median;
    const winsorised = squares.centroid / squares.winsorised;
    // Asymptotically (E div ψ/2)² / (E ψ²/2), with ψ = x·min(1, c/r) and c the radius that holds 90 %.
    const c = Math.sqrt(-2 * Math.log(0.1));
    const slope = 0.9 + (c * Math.sqrt(2 * Math.PI) * (1 - normal(c))) / 2;
    const power = 1 - 0.1 * (1 + (c * c) / 2) + (0.1 * c * c) / 2;
    const expected = slope ** 2 / power;
    console.log(`efficiency of the spatial median ${median.toFixed(4)} (${(Math.PI / 4).toFixed(4)}), of the Winsorised centroid ${winsorised.toFixed(4)} (${expected.toFixed(4)})`);
    // Two components a series. The ratio of the variances of two estimates with the correlation √e is known to about √(4·(1 − e)/(2·SERIES)); the rest is 1/n.
    const error = (efficiency: number): number => Math.sqrt((4 * (1 - efficiency)) / (2 * SERIES));
    expect(Math.abs(median - Math.PI / 4)).toBeLessThanOrEqual(ALLOWED * error(Math.PI / 4) + 1 / EYES);
    expect(Math.abs(winsorised - expected)).toBeLessThanOrEqual(ALLOWED * error(expected) + 1 / EYES);
    expect(expected).toBeCloseTo(0.988, 3);
  }, 120_000);
});

test('a hundred thousand eyes come to the truth within their error', () => {
  const spread = spreadOf({ x: -0.14, y: 0.02 }, 0.4, 0.3, 20);
  const n = 100_000;
  const { centroid, covariance, robust, within } = summarise(draw(spread, n, normals('many')));
  for (const centre of [centroid!, robust!.spatialMedian, robust!.winsorisedCentroid]) {
    expect(Math.abs(centre.x - spread.mean.x)).toBeLessThanOrEqual((ALLOWED * 0.4 * 1.13) / Math.sqrt(n));
    expect(Math.abs(centre.y - spread.mean.y)).toBeLessThanOrEqual((ALLOWED * 0.4 * 1.13) / Math.sqrt(n));
  }
  covariance!.forEach((row, i) => row.forEach((value, j) => expect(Math.abs(value - spread.covariance[i]![j]!)).toBeLessThanOrEqual((ALLOWED * 0.16 * Math.SQRT2) / Math.sqrt(n))));
  expect(robust!.drawnIn).toBeGreaterThan(n / 20);
  expect(robust!.drawnIn).toBeLessThan(n / 5);
  for (const { low, high, share: part } of within) expect([low < part, part < high, high - low < 0.01]).toEqual([true, true, true]);
});
