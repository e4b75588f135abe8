/** What follows from one eye, against the functions that a plan uses and against complex numbers. */
import fc from 'fast-check';
import * as math from 'mathjs';
import { describe, expect, test } from 'vitest';
import { change, evaluatePlan, flattening, flatteningAndTorque, fromVector, siteName, toVector, type EyePlan, type Vector } from '../../core/index.js';
import { eyeResult, groupsOf, planOf, vectorsOf, type OutcomeRecord } from '../../core/outcomes.js';
import { at, recordOf } from './outcomes-support.js';
import { between } from './plans.js';

const RUNS = { seed: 20240229, numRuns: 500 } as const;
const astigmatism = fc.record({ magnitude: between(0, 6), meridian: between(0.25, 180) });
const record: fc.Arbitrary<OutcomeRecord> = fc.record({
  line: fc.constant(1), label: fc.constant(null), eye: fc.constantFrom('right' as const, 'left' as const), before: astigmatism, after: astigmatism, readings: fc.constant(null),
  incision: fc.option(fc.record({ site: between(0, 359), width: between(1.8, 3.5) })),
  arcs: fc.option(fc.record({ count: fc.constantFrom(1 as const, 2 as const), site: between(0, 359), length: between(15, 120), method: fc.constantFrom('blade' as const, 'laser' as const) })),
  lens: fc.option(fc.record({ cylinder: between(0.5, 6), meridian: between(1, 180) })),
  age: fc.option(between(20, 100)), predicted: fc.option(astigmatism),
});

const apart = (a: Vector, b: Vector): number => Math.hypot(a.x - b.x, a.y - b.y);
const plus = (...vectors: Vector[]): Vector => vectors.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }), { x: 0, y: 0 });

describe('an eye', () => {
  test('by hand: 1.00 D at 90° becomes 0.50 D at 90° after an entry at 90°', () => {
    const result = eyeResult(recordOf(at(1, 90), { x: 0.5, y: 0 }, { incision: { site: 90, width: 2.4 } }));
    expect(result.induced).toEqual({ x: 0.5, y: 0 });
    expect(result.incision!.flattening).toBeCloseTo(0.5, 12);
    expect(result.incision!.torque).toBeCloseTo(0, 12);
  });

  test('an entry at 180° that flattens adds against the other sign', () => {
    const { incision } = eyeResult(recordOf(at(1, 90), { x: -0.25, y: 0 }));
    expect(incision!.flattening).toBeCloseTo(0.25, 12);
    expect(eyeResult(recordOf(at(1, 90), { x: 0, y: 0.2 })).incision!.torque).toBeCloseTo(0.2, 12);
    // In the doubled plane y > 0 is steep at 45°; at 90° the same change turns the other way.
    expect(eyeResult(recordOf(at(1, 90), { x: 0, y: 0.2 }, { incision: { site: 90, width: 2.4 } })).incision!.torque).toBeCloseTo(-0.2, 12);
  });

  test('the induced change is what has to be added to before to give after', () =>
    fc.assert(fc.property(record, (eye) => {
      const { induced } = eyeResult(eye);
      expect(apart(plus(toVector(eye.before), induced), toVector(eye.after))).toBeLessThan(1e-12);
      const theirs = change(eye.before, eye.after);
      expect(apart(toVector(theirs), induced)).toBeLessThan(1e-12);
    }), RUNS));

  test('in the frame of the incision it is the same change, turned', () =>
    fc.assert(fc.property(record, (eye) => {
      const { induced, incision } = eyeResult(eye);
      if (!eye.incision) {
        expect(incision).toBeNull();
        return;
      }
      const theirs = flatteningAndTorque(change(eye.before, eye.after), eye.incision.site);
      expect(Math.abs(incision!.flattening - theirs.flattening)).toBeLessThan(1e-12);
      expect(Math.abs(incision!.torque - theirs.torque)).toBeLessThan(1e-12);
      const back = plus(flattening(incision!.flattening, eye.incision.site), flattening(incision!.torque, eye.incision.site + 135));
      expect(apart(back, induced)).toBeLessThan(1e-11);
      // By complex numbers: the change divided by the direction of the site.
      const turned = math.divide(math.complex(induced.x, induced.y), math.exp(math.complex(0, (2 * eye.incision.site * Math.PI) / 180)) as math.Complex) as math.Complex;
      expect(Math.hypot(turned.re + incision!.flattening, turned.im - incision!.torque)).toBeLessThan(1e-11);
      const [framed] = vectorsOf([eyeResult(eye)], 'atIncision');
      expect(apart(framed!, { x: turned.re, y: turned.im })).toBeLessThan(1e-11);
    }), RUNS));

  test('remaining is predicted plus error, and the cornea with its lens', () =>
    fc.assert(fc.property(record, fc.constantFrom('omitted' as const, 'typical' as const), (eye, backSurface) => {
      const { remaining, predicted, error, basis } = eyeResult(eye, { backSurface });
      expect(apart(plus(predicted!, error), remaining)).toBeLessThan(1e-12);
      const lens = eye.lens ? flattening(eye.lens.cylinder, eye.lens.meridian) : { x: 0, y: 0 };
      const back = backSurface === 'typical' ? { x: 0.27, y: 0 } : { x: 0, y: 0 };
      expect(apart(plus(toVector(eye.after), lens, back), remaining)).toBeLessThan(1e-12);
      expect(basis).toBe(eye.predicted ? 'table' : 'model');
      if (eye.predicted) expect(predicted).toEqual(toVector(eye.predicted));
    }), RUNS));

  test('without a prediction in the table it is that of evaluatePlan', () =>
    fc.assert(fc.property(record, fc.constantFrom('omitted' as const, 'typical' as const), (eye, backSurface) => {
      const { predicted } = eyeResult({ ...eye, predicted: null }, { backSurface });
      const plan: EyePlan = {
        eye: eye.eye, flatK: 44, steepK: 44 + eye.before.magnitude, steepMeridian: eye.before.meridian, age: eye.age, backSurface,
        incisionSite: eye.incision?.site, incisionWidth: eye.incision?.width, arcCount: eye.arcs?.count, arcSite: eye.arcs?.site, arcLength: eye.arcs?.length, arcMethod: eye.arcs?.method,
        lensCylinder: eye.lens?.cylinder, lensMeridian: eye.lens?.meridian,
      };
      expect(apart(toVector(evaluatePlan(plan).after), predicted!)).toBeLessThan(1e-10);
      expect(apart(toVector(evaluatePlan(planOf(eye, { backSurface })).after), predicted!)).toBeLessThan(1e-12);
    }), RUNS));

  test('the back surface changes no error of the model, and that of a table by what it adds', () => {
    const eye = recordOf(at(1.5, 70), { x: 0.2, y: 0.1 });
    expect(apart(eyeResult(eye).error, eyeResult(eye, { backSurface: 'typical' }).error)).toBeLessThan(1e-12);
    const planned = { ...eye, predicted: at(0.5, 90) };
    expect(eyeResult(planned, { backSurface: 'typical' }).error.x - eyeResult(planned).error.x).toBeCloseTo(0.27, 12);
  });

  test('own figures of the time change what was expected', () => {
    const eye = recordOf(at(1.5, 180), { x: -0.4, y: 0 });
    expect(eyeResult(eye, { ownFigures: { incision: { flattening: 0.4, sd: 0.3 } } }).error.x).toBeCloseTo(0, 12);
    expect(eyeResult(eye).error.x).toBeCloseTo(-0.4 + 0.144, 12);
  });

  test('outside the limits of a plan is refused by name', () => {
    expect(() => eyeResult(recordOf(at(1, 90), { x: 0, y: 0 }, { incision: { site: 180, width: 9 } }))).toThrow(/^incisionWidth: 9 is refused/);
  });

  test('one that has been read opens as a plan with its own readings', () => {
    expect(planOf({ ...recordOf(at(1.25, 90), { x: 0, y: 0 }), readings: { flat: 42, steep: 43.25 } })).toMatchObject({ flatK: 42, steepK: 43.25, steepMeridian: 90, incisionSite: 180, incisionWidth: 2.4 });
  });
});

describe('groups', () => {
  const eyes = [
    recordOf(at(1, 90), { x: 0, y: 0 }), recordOf(at(1, 90), { x: 0, y: 0 }, { eye: 'left', incision: { site: 0, width: 2.41 } }),
    recordOf(at(1, 90), { x: 0, y: 0 }, { incision: { site: 90, width: 2.75 } }), recordOf(at(1, 90), { x: 0, y: 0 }, { incision: null }),
    recordOf(at(1, 90), { x: 0, y: 0 }, { arcs: { count: 2, site: 90, length: 45, method: 'blade' } }),
  ].map((record) => eyeResult(record));
  const keys = (by: 'width' | 'site' | 'arcs') => groupsOf(eyes, by).map(({ key, results }) => [key, results.length]);

  test('by width, to 0.1 mm', () => expect(keys('width')).toEqual([[2.4, 3], [2.8, 1], [null, 1]]));
  test('by site, temporal in both eyes', () => expect(keys('site')).toEqual([['temporal', 3], ['superior', 1], [null, 1]]));
  test('by number of arcs', () => expect(keys('arcs')).toEqual([[0, 4], [2, 1]]));

  test('the largest comes first, whichever is met first', () => {
    expect(groupsOf(eyes.toReversed(), 'width').map(({ key, results }) => [key, results.length])).toEqual([[2.4, 3], [null, 1], [2.8, 1]]);
    expect(groupsOf(eyes.toReversed(), 'arcs').map(({ key, results }) => [key, results.length])).toEqual([[0, 4], [2, 1]]);
    expect(groupsOf([eyes[2]!, ...eyes], 'site').map(({ key, results }) => [key, results.length])).toEqual([['temporal', 3], ['superior', 2], [null, 1]]);
  });

  test('hold every eye once', () => fc.assert(fc.property(fc.array(record, { maxLength: 30 }), fc.constantFrom('width' as const, 'site' as const, 'arcs' as const), (records, by) => {
    const results = records.map((one) => eyeResult(one));
    const groups = groupsOf(results, by);
    expect(new Set(groups.flatMap(({ results: members }) => members)).size).toBe(results.length);
    expect(groups.reduce((sum, { results: members }) => sum + members.length, 0)).toBe(results.length);
    if (by === 'site') for (const { key, results: members } of groups) for (const { record: { incision, eye } } of members) expect(incision ? siteName(incision.site, eye) : null).toBe(key);
  }), { ...RUNS, numRuns: 200 }));

  test('vectors at the incision leave out eyes without one', () => {
    expect(vectorsOf(eyes, 'atIncision')).toHaveLength(4);
    expect(vectorsOf(eyes.map((eye) => ({ ...eye, incision: { flattening: 0, torque: 0 } })), 'atIncision')[0]).toEqual({ x: 0, y: 0 });
    expect(vectorsOf(eyes, 'induced')).toHaveLength(5);
    expect(fromVector(vectorsOf(eyes, 'remaining')[0]!).magnitude).toBeCloseTo(1, 12);
  });
});
