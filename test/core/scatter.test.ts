/** Chances over the error of the marks, against independent integrals and the moments that they belong to. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceWithin, completePlan, evaluatePlan, type EyePlan, type Spread } from '../../core/index.js';
import { judge } from '../../core/effects.js';
import { chanceOf, momentsOf, type Scatter } from '../../core/scatter.js';
import { APPROXIMATE, ASKED, EXACT } from './nested-cases.js';
import { discChance, exactChance, planOf, type Described } from './nested.js';
import { RUNS, anyPlan, between } from './plans.js';
import { chanceByQuadrature, spreadOf } from './random.js';

const scatterOf = (plan: EyePlan): Scatter => judge(completePlan(plan)).scatter;

const cases = [...EXACT, ...APPROXIMATE].map(([name, eye]) => [name, eye] as [string, Described]);

describe('the reference itself', () => {
  test('agrees with the density summed in polar coordinates', () => {
    const spreads = [spreadOf({ x: 0.2, y: -0.1 }, 0.5, 0.3, 30), spreadOf({ x: 1.1, y: 0.4 }, 0.9, 0.21, 100), spreadOf({ x: 0, y: 0 }, 0.22, 0.22, 0)];
    for (const spread of spreads) {
      const { mean, covariance: [[xx, xy], [, yy]] } = spread;
      for (const limit of ASKED) expect(Math.abs(discChance(mean, [xx, xy, yy], limit) - chanceByQuadrature(spread, limit, 120))).toBeLessThan(1e-9);
    }
  });

  test.each(cases)('does not change with twice the steps: %s', (_, eye) => {
    for (const limit of ASKED) expect(Math.abs(exactChance(eye, limit) - exactChance(eye, limit, { steps: 1000 }))).toBeLessThan(1e-12);
  });
});

test('what has no mean but a slanting scatter is turned with the marks too', () => {
  const scatter: Scatter = { start: { x: 0.3, y: -0.2 }, base: 0.04, placed: { x: 0, y: 0 }, own: [0.2, 0.15, 0.2], turning: 12 };
  // Simpson's rule over the error of the marks, ±6 standard deviations.
  const steps = 240;
  let total = 0;
  for (let i = 0; i <= steps; i += 1) {
    const z = (12 * i) / steps - 6;
    const turn = (2 * scatter.turning * z * Math.PI) / 180;
    const weight = (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) * Math.exp((-z * z) / 2);
    // The covariance 0.2 ± 0.15 along and across 45°, turned.
    const [xx, xy, yy] = [0.2 - 0.15 * Math.sin(2 * turn), 0.15 * Math.cos(2 * turn), 0.2 + 0.15 * Math.sin(2 * turn)];
    total += weight * discChance(scatter.start, [xx + scatter.base, xy, yy + scatter.base], 0.5);
  }
  const expected = (total * (12 / steps / 3)) / Math.sqrt(2 * Math.PI);
  expect(Math.abs(chanceOf(scatter, 0.5) - expected)).toBeLessThan(1e-6);
});

// The marks are summed by Simpson's rule in 2000 steps, each with a disc integral that shares nothing with the core's.
describe('the chance of a plan is that of an independent integration to 1e-6', () => {
  test.each(cases.flatMap(([name, eye]) => ASKED.map((limit) => [name, limit, eye] as const)))('%s, at most %d D', (_, limit, eye) => {
    expect(Math.abs(evaluatePlan(planOf(eye)).chanceWithin(limit) - exactChance(eye, limit))).toBeLessThan(1e-6);
  });

  test('for lenses of every strength that a plan may have', () => {
    const worst = Array.from({ length: 24 }, (_, i) => (i + 1) / 2).map((cylinder) => {
      const eye: Described = { front: [cylinder, 90], lens: { cylinder, meridian: 90 } };
      const chance = evaluatePlan(planOf(eye));
      return [cylinder, Math.max(...ASKED.map((limit) => Math.abs(chance.chanceWithin(limit) - exactChance(eye, limit))))] as const;
    });
    expect(worst.filter(([, error]) => error >= 1e-6).map(([cylinder, error]) => `${cylinder} D: ${error.toExponential(1)}`)).toEqual([]);
  });
});

describe('a lens beside cuts turns against its marks as a normal would', () => {
  test.each(APPROXIMATE)('%s', (_, eye, most) => {
    const { chanceWithin: chance } = evaluatePlan(planOf(eye));
    const gaps = ASKED.map((limit) => Math.abs(chance(limit) - exactChance(eye, limit, { steps: 160, inner: 80 })));
    expect(Math.max(...gaps)).toBeLessThan(most);
  });
});

describe('without anything that is placed', () => {
  test('the chance is that of the normal, to the last digit', () =>
    fc.assert(fc.property(anyPlan, between(0, 6), (plan, limit) => {
      const outcome = evaluatePlan({ ...plan, incisionSite: null, arcCount: 0, lensCylinder: null });
      expect(outcome.chanceWithin(limit)).toBe(chanceWithin(outcome.spread, limit));
    }), RUNS));

  // A cut that is expected to do nothing still scatters in its own frame, which the marks turn.
  test.each([[0.25, 0.35], [1, 0.1], [2, 0]])('and a cut that does nothing scatters as one that does next to nothing: %d D along, %d D across', (sdAlong, sdAcross) => {
    const plan = (share: number): EyePlan => ({
      steepK: 43.5, arcSite: 90, arcCount: 1, arcLength: 60, ownFigures: { arcs: { share, sdAlong, sdAcross } },
    });
    for (const limit of ASKED) {
      expect(Math.abs(evaluatePlan(plan(0)).chanceWithin(limit) - evaluatePlan(plan(1e-9)).chanceWithin(limit)), `limit ${limit}`).toBeLessThan(1e-6);
    }
  });
});

describe('a chance', () => {
  /** Two errors of the disc integral as documented, 2e-8 each. */
  const NOISE = 4e-8;

  test('lies between 0 and 1, is 0 at 0 and grows with the limit', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      const scatter = scatterOf(plan);
      let before = chanceOf(scatter, 0);
      expect(before).toBe(0);
      for (let step = 1; step <= 60; step += 1) {
        const chance = chanceOf(scatter, (step / 60) ** 2 * 8);
        expect(chance).toBeGreaterThanOrEqual(before - NOISE);
        expect(chance).toBeLessThanOrEqual(1);
        before = chance;
      }
    }), { ...RUNS, numRuns: 60 }));

  test('comes to all but a millionth once the limit is far beyond the eye', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      expect(chanceOf(scatterOf(plan), 200)).toBeGreaterThan(1 - 1e-6);
    }), RUNS));

  test('is refused a limit that is none', () => {
    for (const limit of [-0.01, NaN, Infinity]) expect(() => evaluatePlan({ lensCylinder: 3, lensMeridian: 90 }).chanceWithin(limit)).toThrow(RangeError);
  });

  test('with marks that never err is that of the normal', () =>
    fc.assert(fc.property(anyPlan, between(0.1, 2), (plan, limit) => {
      const still: Scatter = { ...scatterOf(plan), turning: 0 };
      expect(Math.abs(chanceOf(still, limit) - chanceWithin(momentsOf(still), limit))).toBeLessThan(1e-6);
    }), RUNS));

  test('does not change when everything is turned together', () =>
    fc.assert(fc.property(anyPlan, between(0, 360), (plan, degrees) => {
      const scatter = scatterOf(plan);
      const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const turn = ({ x, y }: { x: number; y: number }) => ({ x: x * c - y * s, y: x * s + y * c });
      const [xx, xy, yy] = scatter.own;
      const own = [c * c * xx - 2 * c * s * xy + s * s * yy, c * s * (xx - yy) + (c * c - s * s) * xy, s * s * xx + 2 * c * s * xy + c * c * yy] as const;
      const other: Scatter = { ...scatter, start: turn(scatter.start), placed: turn(scatter.placed), own: [...own] };
      for (const limit of ASKED) expect(Math.abs(chanceOf(other, limit) - chanceOf(scatter, limit))).toBeLessThan(NOISE);
    }), { ...RUNS, numRuns: 100 }));
});

test('one normal would not do for a strong lens: it is 0.5 of a hundred or more off at 0.5 D from 3 D on', () => {
  for (const cylinder of [3, 6, 12]) {
    const eye: Described = { front: [cylinder, 90], lens: { cylinder, meridian: 90 } };
    const spread: Spread = evaluatePlan(planOf(eye)).spread;
    expect(Math.abs(chanceWithin(spread, 0.5) - exactChance(eye, 0.5)), `${cylinder} D`).toBeGreaterThan(0.005);
  }
});
