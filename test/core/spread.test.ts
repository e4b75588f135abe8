import fc from 'fast-check';
import seedrandom from 'seedrandom';
import { describe, expect, test } from 'vitest';
import { chanceWithin, ellipse, evaluatePlan, type Spread } from '../../core/index.js';
import { covarianceAlong, smearedBy, turnedBy } from '../../core/spread.js';
import { RUNS, anyPlan } from './plans.js';
import { meanMagnitude } from './published.js';
import { chanceByQuadrature, drawFrom, moments, normals, spreadOf } from './random.js';

const LIMITS_ASKED = [0.25, 0.5, 0.75, 1, 2];

/** A general case: mean (0.2, -0.1), covariance [[0.09, 0.03], [0.03, 0.16]]; by quadrature and 4 million draws. */
const GENERAL: Spread = { mean: { x: 0.2, y: -0.1 }, covariance: [[0.09, 0.03], [0.03, 0.16]] };

describe('chanceWithin', () => {
  test('answers the general elliptical case (quadrature and simulation of the published figures)', () => {
    expect(Math.abs(chanceWithin(GENERAL, 0.5) - 0.559977)).toBeLessThanOrEqual(5e-7);
    expect(Math.abs(meanMagnitude(GENERAL, 5) - 0.48734)).toBeLessThanOrEqual(5e-6);
  });

  test('is quickly checked by quadrature: where the mean lies off both axes, and for a spread that is wider than most', () => {
    expect(Math.abs(chanceWithin(GENERAL, 0.5) - chanceByQuadrature(GENERAL, 0.5))).toBeLessThan(1e-7);
    const wide = spreadOf({ x: 1.5, y: -2 }, 4, 2, 25);
    for (const limit of [1, 20]) expect(Math.abs(chanceWithin(wide, limit) - chanceByQuadrature(wide, limit)), `${limit} D`).toBeLessThan(1e-7);
    // Only the part of the disc about so tight a spread is summed: all of it lies on one side of the centre.
    const tight = spreadOf({ x: 0.3, y: 0.2 }, 0.02, 0.02, 0);
    expect(chanceWithin(tight, 0.5)).toBeCloseTo(1, 9);
    for (const limit of [0.34, 0.36, 0.38]) expect(Math.abs(chanceWithin(tight, limit) - chanceByQuadrature(tight, limit)), `${limit} D`).toBeLessThan(1e-7);
  });

  test.each([
    ['as wide as those of plans', 0.2, 1],
    ['as tight as a mean of many eyes', 0.02, 0.2],
  ])('agrees with a quadrature in polar coordinates over a seeded grid of spreads %s', (name, least, most) => {
    const random = seedrandom(name);
    const between = (from: number, to: number) => from + (to - from) * random();
    for (let i = 0; i < 80; i += 1) {
      const short = between(least, most);
      const spread = spreadOf({ x: between(-1.5, 1.5), y: between(-1.5, 1.5) }, between(short, most), short, between(0, 180));
      for (const limit of LIMITS_ASKED) {
        const difference = chanceWithin(spread, limit) - chanceByQuadrature(spread, limit);
        expect(Math.abs(difference), `${JSON.stringify(spread)} ${limit}`).toBeLessThan(1e-6);
      }
    }
  });

  test('is good to 1e-9 for the spreads of these plans; the worst of any spread is in spread-rules.test.ts', () => {
    fc.assert(fc.property(anyPlan, fc.constantFrom(...LIMITS_ASKED), (plan, limit) => {
      const { spread } = evaluatePlan(plan);
      expect(Math.abs(chanceWithin(spread, limit) - chanceByQuadrature(spread, limit, 120))).toBeLessThan(1e-9);
    }), { ...RUNS, numRuns: 60 });
  });

  // A plan never comes to less than 0.21 D, the readings and the back surface alone; the function takes any spread.
  test.each([
    ['round, centred, 0.01 D against 1 D', { x: 0, y: 0 }, 0.01, 0.01, 0],
    ['round, on the edge, 0.01 D against 1 D', { x: 0.6, y: -0.8 }, 0.01, 0.01, 0],
    ['round, just inside the edge, 0.01 D', { x: 0.99, y: 0 }, 0.01, 0.01, 0],
    ['narrow, through the centre', { x: 0, y: 0 }, 0.5, 0.01, 30],
    ['narrow, across the edge', { x: 0.3, y: 0.2 }, 0.5, 0.01, 117],
    ['narrow, along the edge', { x: 0.7, y: 0.7 }, 0.3, 0.01, 135],
    ['narrow, beyond the edge', { x: 0, y: 1.005 }, 0.3, 0.01, 0],
    ['nearly a line', { x: 0.1, y: 0.95 }, 0.4, 0.004, 0],
    ['far away', { x: 5, y: 5 }, 0.4, 0.2, 10],
    ['far away, but wide', { x: 5, y: -5 }, 3, 2, 80],
  ] as const)('agrees with it where the spread is %s', (_, mean, long, short, degrees) => {
    const spread = spreadOf(mean, long, short, degrees);
    for (const limit of LIMITS_ASKED) {
      expect(Math.abs(chanceWithin(spread, limit) - chanceByQuadrature(spread, limit)), `limit ${limit}`).toBeLessThan(1e-6);
    }
  });

  test.each([
    ['general', GENERAL],
    ['oblique', spreadOf({ x: -0.4, y: 0.3 }, 0.6, 0.25, 35)],
    ['tight', spreadOf({ x: 0.45, y: 0.1 }, 0.1, 0.05, 110)],
  ] as const)('agrees with a million draws within four standard errors: %s', (name, spread) => {
    const normal = normals(name);
    const sizes = Array.from({ length: 1_000_000 }, () => {
      const { x, y } = drawFrom(spread, normal);
      return Math.hypot(x, y);
    });
    for (const limit of LIMITS_ASKED) {
      const chance = chanceWithin(spread, limit);
      const counted = sizes.reduce((hits, size) => hits + Number(size <= limit), 0) / sizes.length;
      const error = Math.sqrt((chance * (1 - chance)) / sizes.length);
      expect(Math.abs(counted - chance), `limit ${limit}`).toBeLessThanOrEqual(4 * error + 1e-9);
    }
  });

  test('knows a point, a line, no limit and every limit', () => {
    const point = (x: number): Spread => ({ mean: { x, y: 0 }, covariance: [[0, 0], [0, 0]] });
    expect(chanceWithin(point(0.4), 0.5)).toBe(1);
    expect(chanceWithin(point(0.6), 0.5)).toBe(0);
    // On the line, within one standard deviation either way: 0.682689 (tables of the normal distribution).
    expect(Math.abs(chanceWithin({ mean: { x: 0, y: 0 }, covariance: [[0.25, 0], [0, 0]] }, 0.5) - 0.682689)).toBeLessThan(5e-7);
    expect(chanceWithin({ mean: { x: 0, y: 0.6 }, covariance: [[0.25, 0], [0, 0]] }, 0.5)).toBe(0);
    expect(chanceWithin(GENERAL, 0)).toBe(0);
    expect(Math.abs(chanceWithin(GENERAL, 1e6) - 1)).toBeLessThan(1e-9);
    for (const limit of [-0.01, NaN, Infinity]) expect(() => chanceWithin(GENERAL, limit)).toThrow(RangeError);
  });
});

describe('ellipse', () => {
  test('has the axes of the covariance (eigenvalues 0.0789023 and 0.1710977 of the published general case)', () => {
    const { a, b, cx, cy } = ellipse(GENERAL, 1 - Math.exp(-0.5));
    expect(Math.abs(a * a - 0.1710977)).toBeLessThanOrEqual(5e-8);
    expect(Math.abs(b * b - 0.0789023)).toBeLessThanOrEqual(5e-8);
    expect([cx, cy]).toEqual([0.2, -0.1]);
  });

  // Chi-square with two degrees of freedom (A&S 26.8, from memory; 5.99, 4.61 and 9.21 read in a printed table).
  test.each([[0.9, 4.60517], [0.95, 5.991465], [0.99, 9.21034]])('for %d has semi-axes of √%d standard deviations', (p, square) => {
    const { a, b, angle } = ellipse(spreadOf({ x: 1, y: 2 }, 0.5, 0.2, 150), p);
    expect(Math.abs((a / 0.5) ** 2 - square)).toBeLessThanOrEqual(1e-6);
    expect(Math.abs((b / 0.2) ** 2 - square)).toBeLessThanOrEqual(1e-6);
    expect(Math.abs((((angle - 150) % 180) + 180) % 180)).toBeLessThan(1e-9);
  });

  test.each([0.5, 0.9, 0.95])('for %d holds that share of a million draws', (p) => {
    const spread = spreadOf({ x: -0.3, y: 0.6 }, 0.5, 0.2, 25);
    const { cx, cy, a, b, angle } = ellipse(spread, p);
    const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    const normal = normals(`ellipse ${p}`);
    let inside = 0;
    for (let i = 0; i < 1_000_000; i += 1) {
      const drawn = drawFrom(spread, normal);
      const [x, y] = [drawn.x - cx, drawn.y - cy];
      if (((x * c + y * s) / a) ** 2 + ((y * c - x * s) / b) ** 2 <= 1) inside += 1;
    }
    expect(Math.abs(inside / 1_000_000 - p)).toBeLessThanOrEqual(4 * Math.sqrt((p * (1 - p)) / 1_000_000));
  });

  test('of nothing is a point; of everything it is refused', () => {
    const { a, b } = ellipse(GENERAL, 0);
    expect(Math.max(Math.abs(a), Math.abs(b))).toBe(0);
    for (const p of [-0.1, 1, NaN]) expect(() => ellipse(GENERAL, p)).toThrow(RangeError);
  });
});

describe('a vector turned by an uncertain angle', () => {
  const vector = { x: -1.2, y: 0.7 };
  const turnedOnce = (degrees: number) => {
    const [c, s] = [Math.cos((2 * degrees * Math.PI) / 180), Math.sin((2 * degrees * Math.PI) / 180)];
    return { x: vector.x * c - vector.y * s, y: vector.x * s + vector.y * c };
  };

  test.each([1, 3, 5, 20])('has the moments of the integral over a normal angle of %d°', (sd) => {
    const sums = [0, 0, 0, 0, 0, 0];
    for (let step = -1200; step <= 1200; step += 1) {
      const z = step / 100;
      const weight = Math.exp((-z * z) / 2) / 100 / Math.sqrt(2 * Math.PI);
      const { x, y } = turnedOnce(sd * z);
      [1, x, y, x * x, x * y, y * y].forEach((value, index) => (sums[index]! += weight * value));
    }
    const [one, x, y, xx, xy, yy] = sums as [number, number, number, number, number, number];
    expect(Math.abs(one - 1)).toBeLessThan(1e-12);
    const { mean, covariance } = turnedBy(vector, sd);
    [mean.x - x, mean.y - y].forEach((error) => expect(Math.abs(error)).toBeLessThan(1e-12));
    [xx - x * x, xy - x * y, yy - y * y].forEach((value, index) => expect(Math.abs(covariance[index]! - value)).toBeLessThan(1e-12));
  });

  test.each([3, 5])('has the moments of a million draws with %d°', (sd) => {
    const normal = normals(`turned ${sd}`);
    const drawn = moments(1_000_000, () => turnedOnce(sd * normal()));
    const { mean, covariance: [xx, xy, yy] } = turnedBy(vector, sd);
    for (const [key, value] of Object.entries({ ...mean, xx, xy, yy })) {
      const { value: seen, error } = drawn[key as keyof typeof drawn];
      expect(Math.abs(seen - value), key).toBeLessThanOrEqual(4 * error);
    }
  });

  test('stays a vector without an error', () => {
    const { mean, covariance } = turnedBy(vector, 0);
    expect(mean).toEqual(vector);
    covariance.forEach((value) => expect(Math.abs(value)).toBe(0));
  });
});

test('a covariance along a direction has these deviations along and across it', () => {
  const [xx, xy, yy] = covarianceAlong(0.5, 0.2, Math.PI / 5);
  const variance = (angle: number) => xx * Math.cos(angle) ** 2 + 2 * xy * Math.cos(angle) * Math.sin(angle) + yy * Math.sin(angle) ** 2;
  expect(variance(Math.PI / 5)).toBeCloseTo(0.25, 12);
  expect(variance(Math.PI / 5 + Math.PI / 2)).toBeCloseTo(0.04, 12);
});

test.each([1, 5, 20])('a scatter turned by an uncertain angle of %d° is the average of its turned selves', (sd) => {
  const given: [number, number, number] = [0.3, -0.08, 0.1];
  const sums: [number, number, number] = [0, 0, 0];
  for (let step = -1200; step <= 1200; step += 1) {
    const z = step / 100;
    const weight = Math.exp((-z * z) / 2) / 100 / Math.sqrt(2 * Math.PI);
    const [c, s] = [Math.cos((2 * sd * z * Math.PI) / 180), Math.sin((2 * sd * z * Math.PI) / 180)];
    const [xx, xy, yy] = given;
    sums[0] += weight * (c * c * xx - 2 * c * s * xy + s * s * yy);
    sums[1] += weight * (c * s * (xx - yy) + (c * c - s * s) * xy);
    sums[2] += weight * (s * s * xx + 2 * c * s * xy + c * c * yy);
  }
  smearedBy(given, sd).forEach((value, index) => expect(Math.abs(value - sums[index]!)).toBeLessThan(1e-12));
});
