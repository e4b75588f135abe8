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

/** What one step sets together. A step leaves some of it as it was. */
const GROUPS = [
  ['flatK', 'steepK', 'steepMeridian'],
  ['backSurface'],
  ['incisionSite', 'incisionWidth', 'incisionFlattening'],
  ['arcSite', 'arcCount', 'arcLength', 'arcZone', 'arcFlattening'],
  ['lensCylinder', 'lensMeridian'],
] as const satisfies (keyof EyePlan)[][];

/** What the movement cannot halve changes at once; here it is the same on both sides. */
const pairs = fc.tuple(anyPlan, anyPlan, fc.subarray([...GROUPS])).map(([a, b, kept]): [Shown, Shown] => {
  const same = { ownFigures: null, risks: '', eye: a.eye, arcMethod: a.arcMethod } as const;
  const rest = Object.fromEntries(kept.flat().map((field) => [field, a[field]]));
  return [shown({ ...a, ...same }), shown({ ...b, ...rest, ...same, age: a.age === null ? null : (b.age ?? a.age) })];
});

/** A back surface on the way is written with four decimals. */
const ROUNDING = 2e-3;
const PARTS = 100;

const PLACES = { incision: ['incisionSite', 360], arcs: ['arcSite', 360], lens: ['lensMeridian', 180] } as const;

/** Between two directions the shorter way, radians. */
const turn = (a: number, b: number, round: number): number => (Math.abs(((((a - b) % round) + 1.5 * round) % round) - round / 2) * Math.PI) / 180;

/** The longest way that the arrow of what remains can go: each of its parts turns, at twice the angle, and grows. */
function wayOf(from: Shown, to: Shown): number {
  const part = (a: number, b: number, turned: number): number => 2 * turned * Math.max(a, b) + Math.abs(a - b);
  const vector = ({ outcome }: Shown, source: string): Vector => outcome.steps.find((step) => step.source === source)?.vector ?? { x: 0, y: 0 };
  const size = (one: Shown, source: string): number => Math.hypot(vector(one, source).x, vector(one, source).y);
  const front = part(from.outcome.before.magnitude, to.outcome.before.magnitude, turn(from.plan.steepMeridian, to.plan.steepMeridian, 180));
  return Object.entries(PLACES).reduce((way, [source, [field, round]]) => {
    const [a, b] = [from.plan[field], to.plan[field]];
    return way + part(size(from, source), size(to, source), a === null || b === null ? 0 : turn(a, b, round));
  }, front + apart(vector(from, 'backSurface'), vector(to, 'backSurface')));
}

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
        const most = (wayOf(from, to) * 1.01) / PARTS + ROUNDING;
        const ways = Array.from({ length: PARTS + 1 }, (_, part) => arrow(between(from, to, part / PARTS)));
        const all = [arrow(from.plan), ...ways, arrow(to.plan)];
        for (let part = 1; part < all.length; part += 1) expect(apart(all[part]!, all[part - 1]!)).toBeLessThan(most);
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
