/** Statistics of series: what is defined when, what must stay the same under a turn of the dial, and a second method. */
import fc from 'fast-check';
import * as math from 'mathjs';
import { describe, expect, test } from 'vitest';
import { eigenPairs, inverse, product } from '../../core/algebra.js';
import { SHARE_LIMITS, summarise, type OutcomeSummary } from '../../core/outcomes.js';
import { fisherQuantile, fisherTail, normalQuantile, wilson } from '../../core/outcomes-quantiles.js';
import { normal } from '../../core/spread.js';
import type { Vector } from '../../core/types.js';
import { between } from './plans.js';
import { numbersIn } from './outcomes-support.js';

const RUNS = { seed: 20240229, numRuns: 300 } as const;
const vector = fc.record({ x: between(-3, 3), y: between(-3, 3) });
/** Rounded to a quarter, as many tables are, so that eyes coincide. */
const quarters = fc.record({ x: fc.integer({ min: -8, max: 8 }), y: fc.integer({ min: -8, max: 8 }) }).map(({ x, y }) => ({ x: x / 4, y: y / 4 }));
const series = fc.oneof(fc.array(vector, { minLength: 3, maxLength: 40 }), fc.array(quarters, { minLength: 3, maxLength: 40 }));

const close = (got: number, want: number, tolerance: number, what = ''): void =>
  expect(Math.abs(got - want), `${what} ${got} against ${want}`).toBeLessThanOrEqual(tolerance * Math.max(1, Math.abs(want)));

const given = (summary: OutcomeSummary) => Object.entries(summary).filter(([, value]) => value !== null && !(Array.isArray(value) && value.length === 0)).map(([name]) => name);

describe('short series', () => {
  test('no eye: nothing, with the reason', () => {
    const none = summarise([]);
    expect(given(none)).toEqual(['n', 'p', 'omitted']);
    expect(none.omitted[0]!.reason.text).toBe('There is no eye.');
    expect([...none.omitted[0]!.figures].sort()).toEqual(Object.keys(none).filter((name) => !['n', 'p', 'omitted', 'meanAgainstCentroid'].includes(name)).sort());
  });

  test('one eye: itself, without scatter', () => {
    const one = summarise([{ x: 0.3, y: -0.4 }]);
    expect(given(one)).toEqual(['n', 'p', 'centroid', 'meanMagnitude', 'medianMagnitude', 'within', 'omitted']);
    expect([one.centroid, one.meanMagnitude, one.medianMagnitude]).toEqual([{ x: 0.3, y: -0.4 }, 0.5, 0.5]);
    expect(one.omitted.map(({ reason }) => reason.id)).toEqual(['oneEye']);
  });

  test('two eyes: a covariance, no ellipse', () => {
    const two = summarise([{ x: 0, y: 0 }, { x: 1, y: 1 }]);
    expect(two.covariance).toEqual([[0.5, 0.5], [0.5, 0.5]]);
    expect([two.ellipseOfMean, two.ellipseOfEyes, two.t2, two.pValue, two.robust]).toEqual([null, null, null, null, null]);
    expect(two.omitted.map(({ reason }) => reason.id)).toEqual(['twoEyes']);
  });

  test.each([
    ['on one line', [{ x: 0, y: 1 }, { x: 1, y: 1 }, { x: 3, y: 1 }]],
    ['on a slanting line', [0.1, 0.2, 0.7, 0.9].map((t) => ({ x: t, y: 0.3 + t / 3 }))],
    ['all alike', [{ x: 0.1, y: 0.2 }, { x: 0.1, y: 0.2 }, { x: 0.1, y: 0.2 }]],
    ['all 0', [{ x: 0, y: 0 }, { x: 0, y: 0 }, { x: 0, y: 0 }]],
  ])('eyes %s have no T², but ellipses as flat as they are', (_, eyes) => {
    const summary = summarise(eyes);
    expect([summary.t2, summary.pValue]).toEqual([null, null]);
    expect(summary.omitted.map(({ reason }) => reason.id)).toEqual(['inLine']);
    expect(summary.ellipseOfEyes!.b).toBeLessThan(1e-7);
    expect([...numbersIn(summary)].every(Number.isFinite)).toBe(true);
  });

  test('every series: whatever is null has a reason, and nothing is not a number', () =>
    fc.assert(fc.property(fc.array(fc.oneof(vector, quarters), { maxLength: 6 }), (eyes) => {
      const summary = summarise(eyes);
      const explained = new Set(summary.omitted.flatMap(({ figures }) => figures));
      for (const [name, value] of Object.entries(summary)) {
        if (name === 'omitted' || name === 'meanAgainstCentroid') continue;
        expect([name, explained.has(name as never)]).toEqual([name, value === null || (Array.isArray(value) && value.length === 0)]);
      }
      expect([...numbersIn(summary)].every(Number.isFinite)).toBe(true);
    }), { ...RUNS, numRuns: 2000 }));

  test.each([[[{ x: NaN, y: 0 }], 0.95, /^x: NaN is refused/], [[{ x: 0, y: Infinity }], 0.95, /^y: Infinity is refused/], [[], 1, /^p: 1 is refused/], [[], 0, /^p: 0/], [[], 95, /^p: 95/]])(
    'refused: %j, %d', (eyes, p, message) => expect(() => summarise(eyes, p)).toThrow(message));
});

describe('what must be so', () => {
  test('the mean of the magnitudes is never less than the magnitude of the mean', () =>
    fc.assert(fc.property(series, (eyes) => {
      const { centroid, meanMagnitude, meanAgainstCentroid } = summarise(eyes);
      expect(meanMagnitude!).toBeGreaterThanOrEqual(Math.hypot(centroid!.x, centroid!.y) - 1e-12);
      expect(meanAgainstCentroid!.id).toBe('meanAgainstCentroid');
    }), RUNS));

  test('opposite changes cancel in the centroid alone', () => {
    const { centroid, meanMagnitude, medianMagnitude, meanAgainstCentroid } = summarise([{ x: 0.5, y: 0 }, { x: -0.5, y: 0 }]);
    expect([centroid, meanMagnitude, medianMagnitude]).toEqual([{ x: 0, y: 0 }, 0.5, 0.5]);
    expect(meanAgainstCentroid!.text).toMatch(/centroid \(0\.00 D\) .* mean magnitude \(0\.50 D\)/);
  });

  /** Turning the dial, mirroring it and doubling all dioptres must do to the figures what it does to the eyes. */
  test('nothing depends on where 0° is', () =>
    fc.assert(fc.property(series, between(0, 360), fc.constantFrom(-1, 1), between(0.5, 2), (eyes, degrees, side, size) => {
      const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const turned = ({ x, y }: Vector): Vector => ({ x: size * (c * x - s * side * y), y: size * (s * x + c * side * y) });
      const [one, other] = [summarise(eyes), summarise(eyes.map(turned))];
      const points = (summary: OutcomeSummary): Vector[] => [summary.centroid!, summary.robust!.spatialMedian];
      points(one).map(turned).forEach((point, index) => {
        const there = points(other)[index]!;
        // The median of eyes on a line is not unique.
        if (index === 0 || one.t2 !== null) close(Math.hypot(point.x - there.x, point.y - there.y), 0, index === 0 ? 1e-12 : 1e-4, `point ${index}`);
      });
      close(other.meanMagnitude!, size * one.meanMagnitude!, 1e-12);
      // The short axis is a small difference of large numbers, squared.
      for (const name of ['ellipseOfMean', 'ellipseOfEyes'] as const) {
        for (const axis of ['a', 'b'] as const) expect(Math.abs(other[name]![axis] ** 2 - (size * one[name]![axis]) ** 2)).toBeLessThanOrEqual(1e-12 * other[name]!.a ** 2);
      }
      if (one.t2 !== null && other.t2 !== null && one.ellipseOfEyes!.b > 1e-3) close(other.t2, one.t2, 1e-6, 't2');
    }), RUNS));

  test('nor on the order of the eyes', () =>
    fc.assert(fc.property(series, (eyes) => {
      const [one, other] = [summarise(eyes), summarise([...eyes].reverse())];
      close(other.centroid!.x, one.centroid!.x, 1e-12);
      expect(other.within).toEqual(one.within);
      expect(other.medianMagnitude).toBe(one.medianMagnitude);
      if (one.t2 !== null) close(other.robust!.winsorisedCentroid.x, one.robust!.winsorisedCentroid.x, 1e-6);
    }), RUNS));

  test('the ellipse of the eyes is √(n+1) times that of the mean, about the same centre', () =>
    fc.assert(fc.property(series, between(0.01, 0.99), (eyes, p) => {
      const { ellipseOfMean: mean, ellipseOfEyes: each, centroid } = summarise(eyes, p);
      close(each!.a, Math.sqrt(eyes.length + 1) * mean!.a, 1e-12);
      expect([each!.cx, each!.cy, each!.angle]).toEqual([mean!.cx, mean!.cy, mean!.angle]);
      expect([each!.cx, each!.cy]).toEqual([centroid!.x, centroid!.y]);
    }), RUNS));

  test('0 lies on the ellipse of the mean whose level is 1 − P', () =>
    fc.assert(fc.property(series, (eyes) => {
      const { pValue, t2, ellipseOfMean: whole } = summarise(eyes);
      if (t2 === null || whole!.b < 1e-2 || pValue! < 1e-5 || pValue! > 0.999) return;
      const { cx, cy, a, b, angle } = summarise(eyes, 1 - pValue!).ellipseOfMean!;
      const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
      close(Math.hypot((c * cx + s * cy) / a, (c * cy - s * cx) / b), 1, 1e-6);
    }), RUNS));

  test('shares are counted with the limit, rounding forgiven', () => {
    const { within } = summarise([0.3 - 0.05, 0.25, 0.5, 0.5000001, 0.75, 1, 1.01, 3].map((x) => ({ x, y: 0 })));
    expect(within.map(({ limit, eyes }) => [limit, eyes])).toEqual([[0.25, 2], [0.5, 3], [0.75, 5], [1, 6]]);
    expect(within.map(({ limit }) => limit)).toEqual([...SHARE_LIMITS]);
    for (const { share, low, high, eyes } of within) {
      expect(share).toBe(eyes / 8);
      expect(low).toBeLessThan(share);
      expect(high).toBeGreaterThan(share);
    }
  });
});

describe('by mathjs', () => {
  test('means, median, covariance, T² and ellipses', () =>
    fc.assert(fc.property(series, between(0.05, 0.99), (eyes, p) => {
      const n = eyes.length;
      const ours = summarise(eyes, p);
      const [xs, ys] = [eyes.map(({ x }) => x), eyes.map(({ y }) => y)];
      const mean = [math.mean(xs) as number, math.mean(ys) as number];
      const magnitudes = eyes.map(({ x, y }) => math.abs(math.complex(x, y)) as unknown as number);
      close(ours.centroid!.x, mean[0]!, 1e-12);
      close(ours.meanMagnitude!, math.mean(magnitudes) as number, 1e-12);
      close(ours.medianMagnitude!, math.median(magnitudes) as number, 1e-12);
      const covariance = product([xs.map((x) => x - mean[0]!), ys.map((y) => y - mean[1]!)], eyes.map((_, i) => [xs[i]! - mean[0]!, ys[i]! - mean[1]!])).map((row) => row.map((value) => value / (n - 1)));
      ours.covariance!.forEach((row, i) => row.forEach((value, j) => close(value, covariance[i]![j]!, 1e-12, `covariance ${i}${j}`)));
      close(ours.covariance![0][0], math.variance(xs) as unknown as number, 1e-12);

      const [small, large] = eigenPairs(covariance);
      const scale = ((2 * (n - 1)) / (n * (n - 2))) * fisherQuantile(p, n - 2);
      close(ours.ellipseOfMean!.a ** 2, scale * large!.value, 1e-9, 'long axis');
      close(ours.ellipseOfMean!.b ** 2, scale * Math.max(0, small!.value), 1e-9, 'short axis');
      if (large!.value - small!.value > 1e-3) {
        const along = (ours.ellipseOfMean!.angle * Math.PI) / 180;
        close(Math.abs(large!.direction[0]! * Math.cos(along) + large!.direction[1]! * Math.sin(along)), 1, 1e-9, 'direction');
      }
      if (ours.t2 !== null && small!.value > 1e-4) close(ours.t2, n * product([mean], inverse(covariance), mean.map((value) => [value]))[0]![0]!, 1e-8, 't2');
    }), RUNS));

  test('the density of F, integrated, gives back p; and so does the tail', () => {
    for (const m of [1, 2, 3, 8, 18, 98]) {
      // F(2, m) = (Γ(1 + m/2)/Γ(m/2))·(2/m)·(1 + 2f/m)^(−1−m/2), from the density of F with any degrees of freedom.
      const factor = ((math.gamma(1 + m / 2) as unknown as number) / ((math.gamma(1) as unknown as number) * (math.gamma(m / 2) as unknown as number))) * (2 / m);
      for (const p of [0.05, 0.5, 0.9, 0.95, 0.99]) {
        const end = fisherQuantile(p, m);
        let area = 0;
        const steps = 200_000;
        for (let i = 0; i <= steps; i += 1) {
          // Steps that grow, for the tail is long.
          const f = end * (i / steps) ** 3;
          const slope = 3 * (end / steps) * (i / steps) ** 2;
          area += factor * (1 + (2 * f) / m) ** (-1 - m / 2) * slope * (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) / 3;
        }
        close(area, p, 1e-9, `m ${m}, p ${p}`);
        close(fisherTail(end, m), 1 - p, 1e-12);
      }
    }
  });

  test('the tail beyond a quantile of F is what is left of 1', () => {
    for (const m of [1, 2, 3, 8, 18, 98]) for (const p of [0.05, 0.5, 0.9, 0.95, 0.99]) close(fisherTail(fisherQuantile(p, m), m), 1 - p, 1e-12, `m ${m}, p ${p}`);
    for (const f of [0, 0.5, 1, 4, 19]) close(fisherTail(f, 2), 1 / (1 + f), 1e-12);
  });

  test('normal quantiles of p and 1 − p are each other’s mirror image, as far out as you like', () => {
    for (const power of [2, 4, 10, 20, 40]) expect(normalQuantile(1 - 2 ** -power)).toBe(-normalQuantile(2 ** -power));
    // Within 0.1 % of the tail by its asymptotic series, φ(z)/z·(1 − 1/z² + 3/z⁴).
    const z = -normalQuantile(2 ** -40);
    close((Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) / z) * (1 - z ** -2 + 3 * z ** -4) * 2 ** 40, 1, 1e-3);
  });

  test('the normal quantile is the root of the error function', () => {
    for (const p of [1e-7, 0.001, 0.025, 0.2, 0.5, 0.8, 0.975, 0.9999]) {
      const z = normalQuantile(p);
      close(0.5 * (1 + (math.erf(z / Math.SQRT2) as number)), p, 1e-12);
      close(normal(z), p, 1e-14);
    }
    close(normalQuantile(0.975), 1.959963984540054, 1e-14);
  });

  test('Wilson’s limits are the shares from which the count is just z standard errors away', () =>
    fc.assert(fc.property(fc.integer({ min: 1, max: 500 }), between(0, 1), between(0.5, 0.999), (n, part, p) => {
      const hits = Math.round(part * n);
      const { low, high } = wilson(hits, n, p);
      const z = normalQuantile((1 + p) / 2);
      for (const limit of [low, high]) {
        if (limit === 0 || limit === 1) continue;
        close(Math.abs(hits / n - limit), z * Math.sqrt((limit * (1 - limit)) / n), 1e-9);
      }
      expect(low).toBeLessThanOrEqual(hits / n);
      expect(high).toBeGreaterThanOrEqual(hits / n);
      expect(low === 0).toBe(hits === 0);
      expect(high === 1).toBe(hits === n);
    }), { ...RUNS, numRuns: 1000 }));

  test('Wilson for 8 of 10 is the figure of the textbooks, 0.490 to 0.943', () => {
    const { low, high } = wilson(8, 10, 0.95);
    close(low, 0.4902, 5e-5);
    close(high, 0.9433, 5e-5);
  });
});

describe('the robust centres', () => {
  const sumOfDistances = (eyes: readonly Vector[], { x, y }: Vector): number => eyes.reduce((sum, eye) => sum + Math.hypot(eye.x - x, eye.y - y), 0);

  test('no point near or far has a smaller sum of distances than the spatial median', () =>
    fc.assert(fc.property(series, (eyes) => {
      const { spatialMedian } = summarise(eyes).robust!;
      const least = sumOfDistances(eyes, spatialMedian);
      const others = [...eyes, ...[1e-4, 1e-3, 0.01, 0.1, 1].flatMap((r) => [0, 45, 90, 135, 180, 225, 270, 315].map((angle) => ({
        x: spatialMedian.x + r * Math.cos((angle * Math.PI) / 180), y: spatialMedian.y + r * Math.sin((angle * Math.PI) / 180),
      })))];
      for (const other of others) expect(sumOfDistances(eyes, other)).toBeGreaterThanOrEqual(least - 1e-9);
    }), { ...RUNS, numRuns: 1000 }));

  test('stays at an eye that more than half of the others share', () => {
    const { spatialMedian } = summarise([...Array.from({ length: 6 }, () => ({ x: 0.25, y: 0.5 })), { x: 3, y: 0 }, { x: -1, y: 2 }, { x: 0, y: -4 }, { x: 5, y: 5 }, { x: 0, y: 1 }]).robust!;
    close(Math.hypot(spatialMedian.x - 0.25, spatialMedian.y - 0.5), 0, 1e-8);
  });

  test.each([0, 37, 90, 245])('leaves an eye in which the centroid lies when the others pull away from it, turned by %d°', (degrees) => {
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const turned = (x: number, y: number): Vector => ({ x: c * x - s * y, y: s * x + c * y });
    // Of five eyes three share a place: that is the median, though the mean of all is where another eye is.
    const { robust } = summarise([turned(0, 0), turned(3, 0), turned(-1, 0), turned(-1, 0), turned(-1, 0)]);
    close(Math.hypot(robust!.spatialMedian.x - turned(-1, 0).x, robust!.spatialMedian.y - turned(-1, 0).y), 0, 1e-8);
    // A mirrored kite whose mean is at an eye: the median lies on its axis, where the pulls are in balance.
    const kite = summarise([turned(0, 0), turned(6, 0), turned(-2, 1), turned(-2, -1), turned(-2, 0)]).robust!.spatialMedian;
    const along = c * kite.x + s * kite.y;
    close(s * kite.x - c * kite.y, 0, 1e-8);
    expect(sumOfDistances([turned(0, 0), turned(6, 0), turned(-2, 1), turned(-2, -1), turned(-2, 0)], kite))
      .toBeLessThanOrEqual(Math.min(...[-1, -0.01, 0.01, 1].map((step) => sumOfDistances([turned(0, 0), turned(6, 0), turned(-2, 1), turned(-2, -1), turned(-2, 0)], turned(along + step, 0)))) + 1e-12);
  });

  test('of the corners of a triangle is the point that sees all sides at 120°', () => {
    const corners = [{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 0.3, y: 0.8 }];
    const { spatialMedian: { x, y } } = summarise(corners).robust!;
    const angles = corners.map((corner) => (Math.atan2(corner.y - y, corner.x - x) * 180) / Math.PI).sort((a, b) => a - b);
    close(angles[1]! - angles[0]!, 120, 1e-6);
    close(angles[2]! - angles[1]!, 120, 1e-6);
  });

  test('the Winsorised centroid is where the pulls of all eyes, those from afar being no stronger than at the reach, are in balance', () =>
    fc.assert(fc.property(series, (eyes) => {
      const { spatialMedian, winsorisedCentroid: centre, drawnIn } = summarise(eyes).robust!;
      const distances = eyes.map(({ x, y }) => Math.hypot(x - spatialMedian.x, y - spatialMedian.y)).sort((a, b) => a - b);
      const reach = Math.sqrt(Math.log(0.1) / Math.log(0.5)) * distances[distances.length >> 1]!;
      if (reach < 1e-6) {
        close(Math.hypot(centre.x - spatialMedian.x, centre.y - spatialMedian.y), 0, 1e-8);
        return;
      }
      const pulls = eyes.map(({ x, y }) => {
        const distance = Math.hypot(x - centre.x, y - centre.y);
        const weight = Math.min(1, reach / distance);
        return { x: weight * (x - centre.x), y: weight * (y - centre.y), far: distance > reach + 1e-8, near: distance > reach - 1e-8 };
      });
      close(pulls.reduce((sum, { x }) => sum + x, 0), 0, 1e-8 * eyes.length);
      close(pulls.reduce((sum, { y }) => sum + y, 0), 0, 1e-8 * eyes.length);
      expect(drawnIn).toBeGreaterThanOrEqual(pulls.filter(({ far }) => far).length);
      expect(drawnIn).toBeLessThanOrEqual(pulls.filter(({ near }) => near).length);
    }), RUNS));

  test('it is the centroid where no eye lies far off', () => {
    const ring = Array.from({ length: 18 }, (_, index) => ({ x: Math.cos((index * Math.PI) / 9), y: 1 + Math.sin((index * Math.PI) / 9) }));
    const { robust } = summarise(ring);
    expect(robust!.drawnIn).toBe(0);
    close(Math.hypot(robust!.winsorisedCentroid.x, robust!.winsorisedCentroid.y - 1), 0, 1e-9);
  });

  test('one slip of 90° in twenty moves them a third or less as far as the centroid', () => {
    const good = Array.from({ length: 19 }, (_, index) => ({ x: -0.2 + 0.2 * Math.cos(index * 2.4), y: 0.2 * Math.sin(index * 2.4) }));
    const clean = summarise(good);
    const { centroid, robust } = summarise([...good, { x: 4, y: 0 }]);
    const moved = (from: Vector, to: Vector): number => Math.hypot(to.x - from.x, to.y - from.y);
    const pulled = moved(clean.centroid!, centroid!);
    expect(pulled).toBeGreaterThan(0.2);
    expect(moved(clean.robust!.spatialMedian, robust!.spatialMedian)).toBeLessThan(pulled / 3);
    expect(moved(clean.robust!.winsorisedCentroid, robust!.winsorisedCentroid)).toBeLessThan(pulled / 3);
  });
});
