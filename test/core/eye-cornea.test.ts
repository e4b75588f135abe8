import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EYE_CONSTANTS, corneaPowers, eyeReferences, traceToric, type CornealPowers, type CornealSide } from '../../core/eye.js';
import { dioptresFromRadius, fromReadings, sum, toVector } from '../../core/index.js';
import { apart, meridianOf } from './eye-support.js';
import { RUNS, between } from './plans.js';

const near = (got: number, expected: number, allowed = 1e-9): void => expect(Math.abs(got - expected), `${got} against ${expected}`).toBeLessThanOrEqual(allowed);
const side = (min: number, max: number) => fc.record({ flat: between(min, max), share: between(0.85, 1), steepMeridian: meridianOf }).map(({ flat, share, steepMeridian }): CornealSide => ({ flatRadius: flat, steepRadius: flat * share, steepMeridian }));
const front = side(7, 8.6);
const back = side(5.8, 7.2);
const thickness = between(0.35, 0.75);

describe('the cornea with both sides', () => {
  test('has the keratometric power of the readings', () =>
    fc.assert(fc.property(front, back, thickness, (f, b, t) => {
      const { keratometric } = corneaPowers({ front: f, back: b, thickness: t });
      const read = fromReadings({ flat: dioptresFromRadius(f.flatRadius), steep: dioptresFromRadius(f.steepRadius), steepMeridian: f.steepMeridian });
      near(keratometric.magnitude, read.magnitude);
      if (read.magnitude > 1e-3) near(apart(keratometric.meridian, read.meridian), 0, 1e-5);
      near(keratometric.mean, (dioptresFromRadius(f.flatRadius) + dioptresFromRadius(f.steepRadius)) / 2);
    }), RUNS));

  test('has the total power that the 4 × 4 trace finds', () =>
    fc.assert(fc.property(front, back, thickness, (f, b, t) => {
      const { total } = corneaPowers({ front: f, back: b, thickness: t });
      const { power } = traceToric({ surfaces: [{ ...f, indexAfter: 1.376, gapAfter: t }, { ...b, indexAfter: 1.336 }] });
      near(total.mean, (power.flat + power.steep) / 2);
      near(total.magnitude, power.steep - power.flat);
      if (total.magnitude > 1e-2) near(apart(total.meridian, power.steepMeridian), 0, 1e-5);
    }), RUNS));

  test('what its back adds makes the total of what the keratometer says', () =>
    fc.assert(fc.property(front, back, thickness, (f, b, t) => {
      const { keratometric, total, backAdds, meanError } = corneaPowers({ front: f, back: b, thickness: t });
      const [made, whole] = [toVector(sum(keratometric, backAdds)), toVector(total)];
      near(made.x, whole.x);
      near(made.y, whole.y);
      near(meanError, total.mean - keratometric.mean);
    }), RUNS));

  test('turns as a whole', () =>
    fc.assert(fc.property(front, back, thickness, between(0, 179), (f, b, t, degrees) => {
      const turn = (given: CornealSide): CornealSide => ({ ...given, steepMeridian: (given.steepMeridian + degrees) % 180 });
      const [here, there] = [corneaPowers({ front: f, back: b, thickness: t }), corneaPowers({ front: turn(f), back: turn(b), thickness: t })];
      for (const kind of ['keratometric', 'front', 'back', 'total', 'backAdds'] as const satisfies (keyof CornealPowers)[]) {
        near(there[kind].magnitude, here[kind].magnitude);
        if (here[kind].magnitude > 1e-3) near(apart(there[kind].meridian, here[kind].meridian + degrees), 0, 1e-5);
      }
    }), RUNS));

  test('a back steep at 90 adds against the rule, and a spherical cornea is overrated by the keratometer', () => {
    const steep: CornealSide = { flatRadius: 7.8, steepRadius: 7.8, steepMeridian: 90 };
    const { back: behind, backAdds, meanError, total } = corneaPowers({ front: steep, back: { flatRadius: 6.5, steepRadius: 6.2, steepMeridian: 90 }, thickness: 0.55 });
    near(behind.meridian, 180);
    near(backAdds.meridian, 180);
    near(total.meridian, 180);
    // 40 · (1/6.2 − 1/6.5): the 0.3 D of a typical back.
    near(behind.magnitude, 0.2978, 1e-4);
    expect(meanError).toBeLessThan(-0.5);
    expect(meanError).toBeGreaterThan(-1.6);
  });

  test('has no direction where its back takes away all that its front has, whatever rounding leaves', () =>
    fc.assert(fc.property(between(7.2, 8.6), between(0.94, 0.99), meridianOf, thickness, (flat, share, steepMeridian, t) => {
      // F₁ + F₂ − (t/n)·F₁F₂ made 43 D in either meridian by the radius of the back; powers in 1/mm.
      const [frontFlat, frontSteep] = [flat, flat * share];
      const behind = (radius: number): number => -0.04 / ((0.043 - 0.376 / radius) / (1 - (t / 1.376) * (0.376 / radius)));
      fc.pre(behind(frontFlat) > 3 && behind(frontFlat) < 20 && behind(frontSteep) > 3);
      const { total, front: alone } = corneaPowers({
        front: { flatRadius: frontFlat, steepRadius: frontSteep, steepMeridian }, back: { flatRadius: behind(frontFlat), steepRadius: behind(frontSteep), steepMeridian }, thickness: t,
      });
      expect(alone.magnitude).toBeGreaterThan(0.3);
      near(total.mean, 43);
      expect([total.magnitude, total.meridian]).toEqual([0, 180]);
    }), RUNS));

  test('every constant has a source', () => {
    for (const { value, source, note } of Object.values(EYE_CONSTANTS)) {
      expect(value).toBeGreaterThan(1);
      expect(note).not.toBe('');
      for (const id of source) expect(Object.keys(eyeReferences)).toContain(id);
    }
  });
});
