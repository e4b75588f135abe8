import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  LIMITS, cautionsFor, evaluatePlan, meridianDistance, mirrorMeridian, mirrorSite, toVector, type EyePlan, type PlanOutcome,
} from '../../core/index.js';
import { RUNS, anyPlan, between, gridPlan, numbersIn } from './plans.js';

/** Rounding of sums of some tens of dioptres. */
const ROUNDING = 1e-10;

/** The same plan in the fellow eye, seen in a mirror: temporal stays temporal, up stays up. */
function mirrored(plan: EyePlan): EyePlan {
  const site = (degrees?: number | null) => (degrees == null ? null : mirrorSite(degrees));
  const [dioptres, along] = plan.backSurface!.split('@');
  // A mirror turns counter-clockwise into clockwise.
  const entry = plan.ownFigures?.incision;
  return {
    ...plan,
    eye: plan.eye === 'right' ? 'left' : 'right',
    steepMeridian: mirrorMeridian(plan.steepMeridian!),
    incisionSite: site(plan.incisionSite),
    arcSite: site(plan.arcSite),
    lensMeridian: plan.lensMeridian == null ? null : mirrorMeridian(plan.lensMeridian),
    backSurface: along === undefined ? plan.backSurface! : (`${dioptres}@${180 - Number(along)}` as `${number}@${number}`),
    ownFigures: { ...plan.ownFigures, incision: entry && { ...entry, torque: entry.torque == null ? null : -entry.torque } },
  };
}

const close = (a: number, b: number, what: string): void => expect(Math.abs(a - b), what).toBeLessThan(ROUNDING);

/** What can be written down; the function is judged at the limits that people ask for. */
const written = (outcome: PlanOutcome): string =>
  JSON.stringify({ ...outcome, chances: [0.25, 0.5, 0.75, 1, 2].map((limit) => outcome.chanceWithin(limit)) });

function frozen<T>(value: T): T {
  if (value !== null && typeof value === 'object') Object.values(Object.freeze(value)).forEach(frozen);
  return value;
}

describe('an outcome', () => {
  test('is finite in every number', () =>
    fc.assert(fc.property(anyPlan, between(0, 10), (plan, limit) => {
      const outcome = evaluatePlan(plan);
      const found = [...numbersIn(outcome), ['chance', outcome.chanceWithin(limit)] as const];
      expect(found.length).toBeGreaterThan(12);
      for (const [path, value] of found) expect(Number.isFinite(value), `${path} is ${value}`).toBe(true);
    }), RUNS));

  test('is finite with every field at its lower and at its upper limit', () => {
    for (const edge of ['min', 'max'] as const) {
      const plan = Object.fromEntries(Object.entries(LIMITS).map(([field, limits]) => [field, limits[edge]])) as EyePlan;
      for (const [path, value] of numbersIn(evaluatePlan(plan))) expect(Number.isFinite(value), `${path} is ${value}`).toBe(true);
    }
  });

  test('has steps that lead from before to after, as expected and as intended', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      const { before, after, afterIntended, steps } = evaluatePlan(plan);
      for (const [end, part] of [[after, 'vector'], [afterIntended, 'intended']] as const) {
        const [from, to] = [toVector(before), toVector(end)];
        close(steps.reduce((sum, step) => sum + step[part].x, 0), to.x - from.x, `${part}.x`);
        close(steps.reduce((sum, step) => sum + step[part].y, 0), to.y - from.y, `${part}.y`);
      }
    }), RUNS));

  test('has a step for everything that is planned, in the order in which it happens, and for nothing else', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      const planned = [
        plan.backSurface !== 'omitted' && 'backSurface',
        plan.incisionSite !== null && 'incision',
        plan.arcCount !== 0 && 'arcs',
        plan.lensCylinder !== null && plan.lensCylinder !== 0 && 'lens',
      ].filter(Boolean);
      expect(evaluatePlan(plan).steps.map(({ source }) => source)).toEqual(planned);
    }), RUNS));

  test('has a symmetric covariance that cannot be negative in any direction', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      const [[xx, xy], [yx, yy]] = evaluatePlan(plan).spread.covariance;
      expect(xy).toBe(yx);
      expect(xx).toBeGreaterThan(0);
      expect(xx * yy - xy * xy).toBeGreaterThan(0);
    }), RUNS));

  test('is the same for the plan as text and back', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      expect(written(evaluatePlan(JSON.parse(JSON.stringify(plan))))).toBe(written(evaluatePlan(plan)));
    }), RUNS));

  test('leaves the plan as it was, and can be had of a frozen one', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      const text = JSON.stringify(plan);
      expect(written(evaluatePlan(frozen(plan)))).toBe(written(evaluatePlan(plan)));
      expect(JSON.stringify(plan)).toBe(text);
    }), RUNS));

  test('has the cautions that cautionsFor gives', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      expect(evaluatePlan(plan).cautions).toEqual(cautionsFor(plan));
    }), RUNS));

  test('has chances between 0 and 1 that grow with the limit', () =>
    fc.assert(fc.property(anyPlan, between(0, 6), between(0, 6), (plan, a, b) => {
      const { chanceWithin } = evaluatePlan(plan);
      const [less, more] = [chanceWithin(Math.min(a, b)), chanceWithin(Math.max(a, b))];
      expect(less).toBeGreaterThanOrEqual(0);
      expect(more).toBeLessThanOrEqual(1);
      // The integration is documented to be good to 2e-8; no step down as large as a twentieth of that is seen.
      expect(more - less).toBeGreaterThan(-1e-9);
    }), RUNS));
});

describe('a mirrored eye has the mirrored outcome', () => {
  test('in sizes, meridians, mean power, spread, chances and cautions', () =>
    fc.assert(fc.property(gridPlan, (plan) => {
      const here = evaluatePlan(plan);
      const there = evaluatePlan(mirrored(plan));
      for (const end of ['before', 'after', 'afterIntended'] as const) {
        close(here[end].magnitude, there[end].magnitude, end);
        if (here[end].magnitude > 0.001) {
          expect(meridianDistance(mirrorMeridian(here[end].meridian), there[end].meridian), end).toBeLessThan(1e-6);
        }
      }
      close(here.meanPowerShift, there.meanPowerShift, 'mean power');
      close(here.spread.mean.x, there.spread.mean.x, 'mean x');
      close(here.spread.mean.y, -there.spread.mean.y, 'mean y');
      const [[[xx, xy], [, yy]], [[xx2, xy2], [, yy2]]] = [here.spread.covariance, there.spread.covariance];
      close(xx, xx2, 'variance x');
      close(yy, yy2, 'variance y');
      close(xy, -xy2, 'covariance');
      close(here.chanceWithin(0.5), there.chanceWithin(0.5), 'chance');
      expect(there.cautions.map(({ id, level }) => [id, level])).toEqual(here.cautions.map(({ id, level }) => [id, level]));
    }), RUNS));
});
