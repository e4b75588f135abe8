/** From a published entry on the statistics of a series to what `summarise` says about one; one reader a kind of entry. */
import { summarise } from '../../core/outcomes.js';
import { ellipse } from '../../core/spread.js';
import type { Vector } from '../../core/types.js';
import outcomes from '../fixtures/outcomes.json' with { type: 'json' };
import type { Entry } from './published.js';

export const entries = outcomes.entries as unknown as Entry[];

/** `n` eyes round 0 whose sample covariance is the unit matrix: the corners of a regular polygon. */
export function polygon(n: number): Vector[] {
  const radius = Math.sqrt((2 * (n - 1)) / n);
  return Array.from({ length: n }, (_, index) => ({ x: radius * Math.cos((2 * Math.PI * index) / n), y: radius * Math.sin((2 * Math.PI * index) / n) }));
}

const READERS: [kind: RegExp, read: (inputs: Entry['inputs']) => Record<string, number>][] = [
  // The ellipse of the mean of n eyes with unit covariance has semi-axes √(2(n−1)/(n(n−2))·F(2, n−2)).
  [/^F-2-/, ({ p, df2 }) => {
    const n = df2 + 2;
    return { F: (summarise(polygon(n), p).ellipseOfMean!.a ** 2 * n * (n - 2)) / (2 * (n - 1)) };
  }],
  [/^T2-scale/, ({ n, p }) => {
    const { ellipseOfMean, ellipseOfEyes, covariance } = summarise(polygon(n), p);
    const known = covariance!.map((row) => row.map((value) => value / n)) as [[number, number], [number, number]];
    return { meanScale: ellipseOfMean!.a, predictionScale: ellipseOfEyes!.a, knownCovMeanScale: ellipse({ mean: { x: 0, y: 0 }, covariance: known }, p).a };
  }],
];

export function compute({ id, inputs }: Entry): Record<string, number> | null {
  return READERS.find(([kind]) => kind.test(id))?.[1](inputs) ?? null;
}
