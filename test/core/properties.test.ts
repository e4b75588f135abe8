import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  atVertex, change, combine, flatteningAndTorque, fromPowerVector, fromVector, meridianDistance, sum, toPowerVector,
  toVector, transpose, type Astigmatism, type PowerVector, type Refraction, type Vector,
} from '../../core/index.js';
import { RUNS, between } from './plans.js';

const dioptres = between(-30, 30);
const direction = between(-360, 540);
const size = between(0, 20);
const astigmatism: fc.Arbitrary<Astigmatism> = fc.record({ magnitude: size, meridian: direction });
const refraction: fc.Arbitrary<Refraction> = fc.record({ sphere: dioptres, cylinder: dioptres, axis: direction });
const halfTurns = fc.integer({ min: -3, max: 3 });

/** Rounding of sums of some tens of dioptres. */
const ROUNDING = 1e-11;

const turned = (a: Astigmatism, turns: number): Astigmatism => ({ ...a, meridian: a.meridian + 180 * turns });

function near(a: object, b: object): void {
  for (const [key, value] of Object.entries(a)) {
    expect(Math.abs(value - (b as Record<string, number>)[key]!), key).toBeLessThan(ROUNDING);
  }
}

/** The same astigmatism: compared as vectors, for a size near 0 has no direction. */
const same = (a: Astigmatism, b: Astigmatism): void => near(toVector(a), toVector(b));

/** The same lens, whatever the sign of its cylinder. */
const sameLens = (a: Refraction, b: Refraction): void => near(toPowerVector(a), toPowerVector(b));

describe('a meridian has no ends: 180° more or less changes nothing', () => {
  test('in toVector', () => fc.assert(fc.property(astigmatism, halfTurns, (a, n) => near(toVector(a), toVector(turned(a, n)))), RUNS));

  test('in sum and change', () =>
    fc.assert(fc.property(astigmatism, astigmatism, halfTurns, halfTurns, (a, b, m, n) => {
      same(sum(a, b), sum(turned(a, m), turned(b, n)));
      same(change(a, b), change(turned(a, m), turned(b, n)));
    }), RUNS));

  test('in flatteningAndTorque', () =>
    fc.assert(fc.property(astigmatism, direction, halfTurns, halfTurns, (a, along, m, n) =>
      near(flatteningAndTorque(a, along), flatteningAndTorque(turned(a, m), along + 180 * n))), RUNS));

  test('in toPowerVector and combine', () =>
    fc.assert(fc.property(refraction, refraction, halfTurns, (a, b, n) => {
      const other = { ...a, axis: a.axis + 180 * n };
      near(toPowerVector(a), toPowerVector(other));
      sameLens(combine(a, b), combine(other, b));
    }), RUNS));
});

describe('astigmatism', () => {
  test('goes to the double-angle plane and back', () =>
    fc.assert(fc.property(astigmatism, (a) => {
      const back = fromVector(toVector(a));
      same(back, a);
      expect(Math.abs(back.magnitude - a.magnitude)).toBeLessThan(ROUNDING);
      if (a.magnitude > 0.001) expect(meridianDistance(back.meridian, a.meridian)).toBeLessThan(1e-9);
    }), RUNS));

  test('prints a size of 0 or more and a meridian above 0 and up to 180', () =>
    fc.assert(fc.property(between(-20, 20), between(-20, 20), (x, y) => {
      const { magnitude, meridian } = fromVector({ x, y });
      expect(magnitude).toBeGreaterThanOrEqual(0);
      expect(meridian).toBeGreaterThan(0);
      expect(meridian).toBeLessThanOrEqual(180);
    }), RUNS));

  test('what was before and the change add up to what is after', () =>
    fc.assert(fc.property(astigmatism, astigmatism, (before, after) => same(sum(before, change(before, after)), after)), RUNS));

  test('the order of a sum is of no importance', () =>
    fc.assert(fc.property(astigmatism, astigmatism, astigmatism, (a, b, c) => same(sum(a, b, c), sum(c, sum(b, a)))), RUNS));

  test('flattening and torque keep the size', () =>
    fc.assert(fc.property(astigmatism, direction, (a, along) => {
      const { flattening, torque } = flatteningAndTorque(a, along);
      expect(Math.abs(Math.hypot(flattening, torque) - a.magnitude)).toBeLessThan(ROUNDING);
    }), RUNS));

  test('a null vector has the direction 180', () => {
    expect(fromVector({ x: 0, y: 0 })).toEqual({ magnitude: 0, meridian: 180 });
    expect(sum()).toEqual({ magnitude: 0, meridian: 180 });
    expect(fromVector({ x: -0, y: -0 } satisfies Vector)).toEqual({ magnitude: 0, meridian: 180 });
  });

  test('has a size also where its square is beyond all numbers', () => {
    expect(fromVector({ x: 3e200, y: 4e200 }).magnitude).toBeCloseTo(5e200, -188);
    expect(fromVector({ x: 0, y: -1.5e308 }).magnitude).toBe(1.5e308);
  });
});

describe('refraction', () => {
  test('written twice the other way round it is itself', () =>
    fc.assert(fc.property(refraction, (r) => {
      const twice = transpose(transpose(r));
      near({ sphere: twice.sphere, cylinder: twice.cylinder }, r);
      expect(meridianDistance(twice.axis, r.axis)).toBeLessThan(1e-9);
    }), RUNS));

  test('written the other way round it is the same lens', () => fc.assert(fc.property(refraction, (r) => sameLens(transpose(r), r)), RUNS));

  test('goes to a power vector and back in either form', () =>
    fc.assert(fc.property(refraction, (r) => {
      const p: PowerVector = toPowerVector(r);
      const [minus, plus] = [fromPowerVector(p), fromPowerVector(p, 'plus')];
      sameLens(minus, r);
      sameLens(plus, r);
      expect(minus.cylinder).toBeLessThanOrEqual(0);
      expect(plus.cylinder).toBeGreaterThanOrEqual(0);
    }), RUNS));

  test('a lens and its opposite leave nothing', () =>
    fc.assert(fc.property(refraction, (r) => sameLens(combine(r, { ...r, sphere: -r.sphere, cylinder: -r.cylinder }), { sphere: 0, cylinder: 0, axis: 180 })), RUNS));

  // Going back is the same rule with the distance of the other sign: F = Fc / (1 + d·Fc).
  test('moved to the cornea and back by hand it is itself', () =>
    fc.assert(fc.property(refraction, between(0, 15), (r, mm) => {
      const moved = atVertex(r, mm);
      const back = (power: number) => power / (1 + (mm / 1000) * power);
      expect(Math.abs(back(moved.sphere) - r.sphere)).toBeLessThan(1e-9);
      expect(Math.abs(back(moved.sphere + moved.cylinder) - (r.sphere + r.cylinder))).toBeLessThan(1e-9);
      expect(meridianDistance(moved.axis, r.axis)).toBeLessThan(1e-9);
    }), RUNS));

  test('does not move over no distance', () => fc.assert(fc.property(refraction, (r) => sameLens(atVertex(r, 0), r)), RUNS));
});
