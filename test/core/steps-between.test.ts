import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../components/steps/steps.plan.js';
import type { Shown } from '../../components/steps/steps.plan.js';
import { FIELDS, evaluatePlan, toVector } from '../../core/index.js';
import type { CompletePlan, EyePlan, Vector } from '../../core/index.js';
import { completePlan } from '../../core/fields.js';
import { RUNS, anyPlan } from './plans.js';

const shown = (plan: EyePlan): Shown => ({ plan: completePlan(plan), outcome: evaluatePlan(plan) });
const arrow = (plan: EyePlan): Vector => toVector(evaluatePlan(plan).after);
const apart = (a: Vector, b: Vector): number => Math.hypot(a.x - b.x, a.y - b.y);

/** What the movement cannot halve changes at once; here it is the same on both sides. */
const pairs = fc.tuple(anyPlan, anyPlan).map(([a, b]): [Shown, Shown] => {
  const same = { ownFigures: null, risks: '', eye: a.eye, arcMethod: a.arcMethod } as const;
  return [shown({ ...a, ...same }), shown({ ...b, ...same, age: a.age === null ? null : (b.age ?? a.age) })];
});

/** A back surface on the way is written with four decimals. */
const ROUNDING = 2e-3;
const PARTS = 100;

describe('the movement between two steps', () => {
  it('is of plans that can be shown, and begins and ends where the steps are', () => {
    fc.assert(
      fc.property(pairs, fc.double({ min: 0, max: 1, noNaN: true }), ([from, to], share) => {
        expect(() => evaluatePlan(between(from, to, share))).not.toThrow();
        expect(apart(arrow(between(from, to, 0)), arrow(from.plan))).toBeLessThan(ROUNDING);
        expect(apart(arrow(between(from, to, 1)), arrow(to.plan))).toBeLessThan(ROUNDING);
      }),
      RUNS,
    );
  });

  it('never jumps: what remains goes no faster than its parts can turn and grow', () => {
    fc.assert(
      fc.property(pairs, ([from, to]) => {
        const sizes = [from, to].map(({ plan, outcome }) => plan.steepK - plan.flatK + outcome.steps.reduce((sum, { vector }) => sum + Math.hypot(vector.x, vector.y), 0));
        // A site turns by half a circle at most, and its vector by a whole one.
        const most = ((2 * Math.PI + 1) * Math.max(...sizes)) / PARTS + ROUNDING;
        const ways = Array.from({ length: PARTS + 1 }, (_, part) => arrow(between(from, to, part / PARTS)));
        for (let part = 1; part <= PARTS; part += 1) expect(apart(ways[part]!, ways[part - 1]!)).toBeLessThan(most);
      }),
      { ...RUNS, numRuns: 100 },
    );
  });

  it('lets the back surface come little by little', () => {
    const [none, typical] = [shown({ flatK: 43, steepK: 44, steepMeridian: 180 }), shown({ flatK: 43, steepK: 44, steepMeridian: 180, backSurface: 'typical' })];
    const half = between(none, typical, 0.5);
    expect(half.backSurface).toBe('0.135@180');
    expect(evaluatePlan(half).after.magnitude).toBeCloseTo(1.135, 10);
  });

  it('leaves alone what both steps have', () => {
    fc.assert(
      fc.property(pairs, ([from]) => {
        const plan: CompletePlan = between(from, from, 0.5);
        for (const field of FIELDS) {
          const [had, has] = [from.plan[field], plan[field]];
          if (typeof had === 'number') expect(((has as number) - had) % 180, field).toBeCloseTo(0, 9);
          else expect(has, field).toEqual(had);
        }
      }),
      RUNS,
    );
  });
});
