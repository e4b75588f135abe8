/** The surgeon's own results in place of the default model. */
import fc from 'fast-check';
import * as math from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  OWN_LIMITS, arcFlattening, completePlan, evaluatePlan, flatteningAndTorque, fromVector, incisionFlattening, mirrorSite, type EyePlan,
  type OwnFigures, type PlanStep, type StepSource, type Vector,
} from '../../core/index.js';
import { RUNS, anyPlan, between, ownFigures } from './plans.js';

const EYE: EyePlan = {
  eye: 'right', flatK: 43, steepK: 45, steepMeridian: 80, age: 70, backSurface: 'typical', incisionSite: 200, incisionWidth: 2.4,
  arcSite: 80, arcLength: 50, arcCount: 1,
};

const INCISION = { flattening: 0.3, torque: -0.2, sd: 0.25 };
const ARCS = { share: 0.7, sdAlong: 0.5, sdAcross: 0.2 };

const stepOf = (plan: EyePlan, source: StepSource): PlanStep => evaluatePlan(plan).steps.find((step) => step.source === source)!;

/** What can be written down, chances included. */
const written = (plan: EyePlan): string => {
  const outcome = evaluatePlan(plan);
  return JSON.stringify({ ...outcome, chances: [0.25, 0.5, 1].map((limit) => outcome.chanceWithin(limit)) });
};

const limited = (figure: 'flattening' | 'torque') => between(OWN_LIMITS[figure].min, OWN_LIMITS[figure].max);
const site = between(0, 360);

/** Flattening takes away along the cut, torque adds a quarter turn further on: (−F + iT)·exp(2iφ). */
const inFrame = (flattening: number, torque: number, degrees: number): math.Complex =>
  math.multiply(math.complex(-flattening, torque), math.exp(math.complex(0, (2 * degrees * Math.PI) / 180)) as math.Complex) as math.Complex;

function agree({ x, y }: Vector, { re, im }: math.Complex): void {
  expect(Math.abs(x - re)).toBeLessThan(1e-12);
  expect(Math.abs(y - im)).toBeLessThan(1e-12);
}

describe('the own incision', () => {
  test('flattens and turns in the frame of the entry', () =>
    fc.assert(fc.property(limited('flattening'), limited('torque'), site, (flattening, torque, incisionSite) => {
      const { vector, intended } = stepOf({ incisionSite, ownFigures: { incision: { flattening, torque, sd: 0.3 } } }, 'incision');
      agree(vector, inFrame(flattening, torque, incisionSite));
      expect(intended).toEqual(vector);
      const back = flatteningAndTorque(fromVector(vector), incisionSite);
      expect(Math.abs(back.flattening - flattening)).toBeLessThan(1e-11);
      expect(Math.abs(back.torque - torque)).toBeLessThan(1e-11);
    }), RUNS));

  test('torque above 0 turns what is there counter-clockwise', () => {
    const after = (torque: number) => evaluatePlan({ steepK: 45, steepMeridian: 90, incisionSite: 90, ownFigures: { incision: { flattening: 0, torque, sd: 0.3 } } }).after.meridian;
    expect(after(0.3)).toBeGreaterThan(90);
    expect(after(-0.3)).toBeLessThan(90);
    expect(after(0.3) + after(-0.3)).toBeCloseTo(180, 10);
  });

  test('without torque only flattens', () => {
    for (const torque of [undefined, null, 0]) {
      agree(stepOf({ ...EYE, ownFigures: { incision: { flattening: 0.3, torque, sd: 0.3 } } }, 'incision').vector, inFrame(0.3, 0, 200));
    }
  });

  test('in the fellow eye does the mirrored thing with the torque of the other sign', () =>
    fc.assert(fc.property(limited('flattening'), limited('torque'), site, (flattening, torque, incisionSite) => {
      const right = stepOf({ eye: 'right', incisionSite, ownFigures: { incision: { flattening, torque, sd: 0.3 } } }, 'incision').vector;
      const left = stepOf({ eye: 'left', incisionSite: mirrorSite(incisionSite), ownFigures: { incision: { flattening, torque: -torque, sd: 0.3 } } }, 'incision').vector;
      agree(left, math.complex(right.x, -right.y));
    }), RUNS));

  test('does the same wherever and however wide it is', () => {
    const of = (plan: EyePlan) => flatteningAndTorque(fromVector(stepOf({ ...plan, ownFigures: { incision: INCISION } }, 'incision').vector), plan.incisionSite!);
    for (const incisionWidth of [1.8, 2.4, 3.5]) {
      for (const incisionSite of [0, 90, 200]) {
        const { flattening, torque } = of({ ...EYE, incisionWidth, incisionSite });
        expect(flattening).toBeCloseTo(0.3, 12);
        expect(torque).toBeCloseTo(-0.2, 12);
      }
    }
  });

  test('gives way to the flattening of the plan for its mean, and keeps its torque and its scatter', () => {
    const both: EyePlan = { ...EYE, incisionFlattening: 0.45, ownFigures: { incision: INCISION } };
    agree(stepOf(both, 'incision').vector, inFrame(0.45, -0.2, 200));
    expect(evaluatePlan(both).spread).toEqual(evaluatePlan({ ...EYE, ownFigures: { incision: { ...INCISION, flattening: 0.45 } } }).spread);
    agree(stepOf({ ...both, incisionFlattening: 0 }, 'incision').vector, inFrame(0, -0.2, 200));
  });
});

describe('the own arcs', () => {
  test('reach their share of what the table intends', () => {
    for (const arcCount of [1, 2] as const) {
      for (const arcMethod of ['blade', 'laser'] as const) {
        const table = arcFlattening({ length: 50, count: arcCount, age: 70, rule: 'with', method: arcMethod }).intended;
        const { vector, intended } = stepOf({ ...EYE, arcCount, arcMethod, ownFigures: { arcs: ARCS } }, 'arcs');
        agree(vector, inFrame(0.7 * table, 0, 80));
        agree(intended, inFrame(table, 0, 80));
      }
    }
  });

  test('of half the intended effect do what the blade does by default', () => {
    const own = stepOf({ ...EYE, ownFigures: { arcs: { share: 0.5, sdAlong: 0.3, sdAcross: 0.3 } } }, 'arcs');
    const model = stepOf(EYE, 'arcs');
    agree(own.vector, math.complex(model.vector.x, model.vector.y));
  });

  test('give way to the flattening of the plan for their mean, and keep their scatter', () => {
    const both: EyePlan = { ...EYE, incisionSite: null, arcFlattening: 0.8, ownFigures: { arcs: ARCS } };
    agree(stepOf(both, 'arcs').vector, inFrame(0.8, 0, 80));
    const table = arcFlattening({ length: 50, count: 1, age: 70, rule: 'with', method: 'blade' }).intended;
    const sameMean = evaluatePlan({ ...both, arcFlattening: null, ownFigures: { arcs: { ...ARCS, share: 0.8 / table } } });
    evaluatePlan(both).spread.covariance.flat().forEach((value, index) => expect(value).toBeCloseTo(sameMean.spread.covariance.flat()[index]!, 12));
  });
});

describe('the own scatter', () => {
  const MARKS = (5 * Math.PI) / 180;
  const READINGS = 0.15 ** 2 + 0.15 ** 2;

  /** Covariance of what is left, by adding up the turned parts over the error of the marks. */
  function covariance(mean: math.Complex, along: number, across: number, degrees: number): [number, number, number] {
    let [x, y, xx, xy, yy] = [0, 0, 0, 0, 0];
    for (let step = -1000; step <= 1000; step += 1) {
      const z = step / 100;
      const weight = Math.exp((-z * z) / 2) / 100 / Math.sqrt(2 * Math.PI);
      const m = math.multiply(mean, math.exp(math.complex(0, 2 * MARKS * z)) as math.Complex) as math.Complex;
      const angle = (2 * degrees * Math.PI) / 180 + 2 * MARKS * z;
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      x += weight * m.re;
      y += weight * m.im;
      xx += weight * (m.re * m.re + (along * c) ** 2 + (across * s) ** 2);
      xy += weight * (m.re * m.im + (along * along - across * across) * c * s);
      yy += weight * (m.im * m.im + (along * s) ** 2 + (across * c) ** 2);
    }
    return [xx - x * x + READINGS, xy - x * y, yy - y * y + READINGS];
  }

  function has(plan: EyePlan, expected: [number, number, number]): void {
    const [[xx, xy], [, yy]] = evaluatePlan(plan).spread.covariance;
    [xx, xy, yy].forEach((value, index) => expect(Math.abs(value - expected[index]!)).toBeLessThan(1e-12));
  }

  test.each([0, 0.1, 0.25, 2])('of the incision, %d D, takes the place of the model’s whatever the width', (sd) => {
    for (const incisionWidth of [1.8, 2.75, 3.2]) {
      const plan: EyePlan = { ...EYE, incisionWidth, arcCount: 0, ownFigures: { incision: { ...INCISION, sd } } };
      has(plan, covariance(inFrame(0.3, -0.2, 200), sd, sd, 200));
    }
  });

  test.each([[0.5, 0.2], [0.2, 0.5], [0, 0], [2, 0]])('of the arcs, %d D along and %d D across, lies in the frame of the cut', (sdAlong, sdAcross) => {
    const plan: EyePlan = { ...EYE, incisionSite: null, ownFigures: { arcs: { share: 0.7, sdAlong, sdAcross } } };
    const table = arcFlattening({ length: 50, count: 1, age: 70, rule: 'with', method: 'blade' }).intended;
    has(plan, covariance(inFrame(0.7 * table, 0, 80), sdAlong, sdAcross, 80));
  });
});

describe('what a step stands on', () => {
  const basis = (plan: EyePlan): Record<string, string> => Object.fromEntries(evaluatePlan({ ...EYE, ...plan }).steps.map((step) => [step.source, step.basis]));

  test.each<[string, EyePlan, Record<string, string>]>([
    ['the model', {}, { backSurface: 'model', incision: 'model', arcs: 'model' }],
    ['own figures', { ownFigures: { incision: INCISION, arcs: ARCS } }, { backSurface: 'model', incision: 'own', arcs: 'own' }],
    ['own figures of the incision', { ownFigures: { incision: INCISION } }, { backSurface: 'model', incision: 'own', arcs: 'model' }],
    ['own figures of the arcs', { ownFigures: { incision: null, arcs: ARCS } }, { backSurface: 'model', incision: 'model', arcs: 'own' }],
    ['the figures of the plan', { incisionFlattening: 0, arcFlattening: 0 }, { backSurface: 'model', incision: 'own', arcs: 'own' }],
    ['a measurement', { backSurface: '0.3@180' }, { backSurface: 'measured', incision: 'model', arcs: 'model' }],
    ['a lens', { backSurface: 'omitted', lensCylinder: 1, lensMeridian: 80 }, { incision: 'model', arcs: 'model', lens: 'measured' }],
  ])('%s', (_, plan, expected) => expect(basis(plan)).toEqual(expected));
});

describe('parts that are missing', () => {
  test('keep the model, to the last digit', () => {
    for (const nothing of [null, undefined, {}, { incision: null }, { incision: null, arcs: null }] as (OwnFigures | null | undefined)[]) {
      expect(written({ ...EYE, ownFigures: nothing })).toBe(written(EYE));
    }
  });

  test('do not touch the other part', () => {
    expect(stepOf({ ...EYE, ownFigures: { arcs: ARCS } }, 'incision')).toEqual(stepOf(EYE, 'incision'));
    expect(stepOf({ ...EYE, ownFigures: { incision: INCISION } }, 'arcs')).toEqual(stepOf(EYE, 'arcs'));
  });

  test('figures for what is not planned change nothing', () =>
    fc.assert(fc.property(anyPlan, ownFigures, (plan, figures) => {
      const bare: EyePlan = { ...plan, incisionSite: null, arcCount: 0 };
      expect(written({ ...bare, ownFigures: figures })).toBe(written({ ...bare, ownFigures: null }));
    }), RUNS));

  test('the model’s own figures entered as the surgeon’s come to the same as the model', () => {
    const { flattening, sd } = incisionFlattening({ width: 2.4, site: 200, eye: 'right' });
    const { expected, intended, sdAlong, sdAcross } = arcFlattening({ length: 50, count: 1, age: 70, rule: 'with', method: 'blade' });
    const own = evaluatePlan({ ...EYE, ownFigures: { incision: { flattening, sd }, arcs: { share: expected / intended, sdAlong, sdAcross } } });
    expect(own.spread).toEqual(evaluatePlan(EYE).spread);
    expect(own.after).toEqual(evaluatePlan(EYE).after);
  });
});

describe('the figures as data', () => {
  const shuffled = (value: object): object =>
    Object.fromEntries(Object.entries(value).reverse().map(([key, inner]) => [key, inner !== null && typeof inner === 'object' ? shuffled(inner) : inner]));

  test('in another order are the same plan, as text too', () =>
    fc.assert(fc.property(anyPlan, ownFigures, (plan, figures) => {
      const [one, other] = [{ ...plan, ownFigures: figures }, { ...plan, ownFigures: shuffled(figures) as OwnFigures }];
      expect(JSON.stringify(completePlan(other))).toBe(JSON.stringify(completePlan(one)));
      expect(written(other)).toBe(written(one));
    }), RUNS));

  test('survive being written down and read', () =>
    fc.assert(fc.property(ownFigures, (figures) => {
      const plan: EyePlan = { ...EYE, ownFigures: figures };
      expect(completePlan(JSON.parse(JSON.stringify(plan)))).toEqual(completePlan(plan));
      expect(written(JSON.parse(JSON.stringify(plan)))).toBe(written(plan));
    }), RUNS));

  test('the number of eyes is kept and changes nothing else', () => {
    const plan = (eyes: number | null): EyePlan => ({ ...EYE, ownFigures: { incision: { ...INCISION, eyes }, arcs: { ...ARCS, eyes } } });
    expect(completePlan(plan(120)).ownFigures).toMatchObject({ incision: { eyes: 120 }, arcs: { eyes: 120 } });
    expect(written(plan(120))).toBe(written(plan(null)));
  });
});
