import { dioptres } from './caution.js';
import { finite, within } from './check.js';
import { said } from './outcomes-text.js';
import { fisherQuantile, fisherTail, wilson } from './outcomes-quantiles.js';
import { spatialMedian, winsorisedCentroid } from './outcomes-robust.js';
import type { OutcomeSummary, ShareWithin } from './outcomes-types.js';
import { ellipse } from './spread.js';
import type { Ellipse, Spread, Vector } from './types.js';

/** Limits of which the shares are counted, D. */
export const SHARE_LIMITS = [0.25, 0.5, 0.75, 1] as const;

/** A limit and a magnitude that differ by less are equal: 0.3 − 0.05 is 0.25 to everyone but the computer, D. */
const ROUNDING = 1e-9;

/** Below this share of the larger principal variance the smaller one is rounding noise. */
const SINGULAR = 1e-12;

const NOTHING = {
  centroid: null, meanMagnitude: null, medianMagnitude: null, covariance: null, ellipseOfMean: null, ellipseOfEyes: null,
  t2: null, pValue: null, robust: null, within: [], omitted: [], meanAgainstCentroid: null,
};

/**
 * Statistics of double-angle vectors, D: induced changes, errors of plans, or what remains. About 1 µs an eye.
 * All sums run over plain numbers and the two-dimensional algebra is in closed form; mathjs does the same 15 to 600 times
 * slower, so it is what the tests compare with.
 * @param p level of ellipses and intervals, above 0 and below 1.
 * @throws RangeError for a vector that is not finite or a level out of range.
 */
export function summarise(vectors: readonly Vector[], p = 0.95): OutcomeSummary {
  const level = within('p', p, 1e-6, 1 - 1e-6, '');
  const n = vectors.length;
  if (n === 0) {
    return { n, p: level, ...NOTHING, omitted: [{ figures: ['centroid', 'meanMagnitude', 'medianMagnitude', 'covariance', 'ellipseOfMean', 'ellipseOfEyes', 't2', 'pValue', 'robust', 'within'], reason: said('noEyes') }] };
  }
  const xs = Float64Array.from(vectors, ({ x }) => finite('x', x, 'D'));
  const ys = Float64Array.from(vectors, ({ y }) => finite('y', y, 'D'));
  const magnitudes = xs.map((x, i) => Math.hypot(x, ys[i]!)).sort();
  const centroid = { x: mean(xs), y: mean(ys) };
  const meanMagnitude = mean(magnitudes);
  return {
    n,
    p: level,
    ...NOTHING,
    centroid,
    meanMagnitude,
    medianMagnitude: (magnitudes[(n - 1) >> 1]! + magnitudes[n >> 1]!) / 2,
    within: SHARE_LIMITS.map((limit) => shareWithin(magnitudes, limit, level)),
    meanAgainstCentroid: n === 1 ? null : said('meanAgainstCentroid', { centroid: dioptres(Math.hypot(centroid.x, centroid.y)), mean: dioptres(meanMagnitude) }),
    ...scatter(xs, ys, centroid, level),
  };
}

type Scattered = Pick<OutcomeSummary, 'covariance' | 'ellipseOfMean' | 'ellipseOfEyes' | 't2' | 'pValue' | 'robust' | 'omitted'>;

/** What takes more than one eye. */
function scatter(xs: Float64Array, ys: Float64Array, centroid: Vector, p: number): Partial<Scattered> {
  const n = xs.length;
  if (n === 1) return { omitted: [{ figures: ['covariance', 'ellipseOfMean', 'ellipseOfEyes', 't2', 'pValue', 'robust'], reason: said('oneEye') }] };
  const covariance = covarianceOf(xs, ys, centroid);
  if (n === 2) return { covariance, omitted: [{ figures: ['ellipseOfMean', 'ellipseOfEyes', 't2', 'pValue', 'robust'], reason: said('twoEyes') }] };
  const spread: Spread = { mean: centroid, covariance };
  const middle = spatialMedian(xs, ys, centroid);
  const { mean: calm, drawnIn } = winsorisedCentroid(xs, ys, middle);
  return {
    covariance,
    ...ellipses(spread, n, p),
    ...hotelling(spread, n),
    robust: { spatialMedian: middle, winsorisedCentroid: calm, drawnIn },
  };
}

/**
 * With the sample covariance S of n eyes the true mean lies within n·(c − µ)ᵀS⁻¹(c − µ) ≤ 2(n−1)/(n−2)·F(2, n−2), and
 * the next eye in an ellipse that is √(n+1) times as wide (Hotelling; Johnson & Wichern, chapter 5).
 */
function ellipses(spread: Spread, n: number, p: number): { ellipseOfMean: Ellipse; ellipseOfEyes: Ellipse } {
  const scale = Math.sqrt(((2 * (n - 1)) / (n * (n - 2))) * fisherQuantile(p, n - 2));
  // The ellipse of one standard deviation, so that these are drawn just like the ellipse of a plan.
  const unit = ellipse(spread, -Math.expm1(-0.5));
  const times = (factor: number): Ellipse => ({ ...unit, a: factor * unit.a, b: factor * unit.b });
  return { ellipseOfMean: times(scale), ellipseOfEyes: times(scale * Math.sqrt(n + 1)) };
}

function hotelling({ mean: { x, y }, covariance: [[xx, xy], [, yy]] }: Spread, n: number): Partial<Scattered> {
  const determinant = xx * yy - xy * xy;
  if (determinant <= SINGULAR * (xx + yy) ** 2) return { omitted: [{ figures: ['t2', 'pValue'], reason: said('inLine') }] };
  const t2 = (n * (yy * x * x - 2 * xy * x * y + xx * y * y)) / determinant;
  return { t2, pValue: fisherTail((t2 * (n - 2)) / (2 * (n - 1)), n - 2) };
}

function covarianceOf(xs: Float64Array, ys: Float64Array, { x, y }: Vector): [[number, number], [number, number]] {
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = 0; i < xs.length; i += 1) {
    const dx = xs[i]! - x;
    const dy = ys[i]! - y;
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
  }
  const freedom = xs.length - 1;
  return [[xx / freedom, xy / freedom], [xy / freedom, yy / freedom]];
}

function shareWithin(sorted: Float64Array, limit: number, p: number): ShareWithin {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! <= limit + ROUNDING) low = middle + 1;
    else high = middle;
  }
  return { limit, eyes: low, share: low / sorted.length, ...wilson(low, sorted.length, p) };
}

/** Mean, summed in the frame of the first value so that equal values have exactly that mean. */
function mean(values: Float64Array): number {
  const first = values[0]!;
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += values[i]! - first;
  return first + sum / values.length;
}
