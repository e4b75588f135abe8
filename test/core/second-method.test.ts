/**
 * The same answers by another road: complex numbers, matrices, the law of cosines and the error function, all of them
 * from a general mathematics library or a textbook and none from the core.
 */
import fc from 'fast-check';
import * as math from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  arcFlattening, backSurface, change, combine, evaluatePlan, flatteningAndTorque, incisionFlattening, misplacedLens,
  ruleOf, sum, type Astigmatism, type EyePlan, type Refraction,
} from '../../core/index.js';
import { normal } from '../../core/spread.js';
import { RUNS, anyPlan, between } from './plans.js';

const dioptres = between(-15, 15);
const direction = between(0, 360);
const astigmatism = fc.record({ magnitude: between(0, 15), meridian: direction });
const refraction = fc.record({ sphere: dioptres, cylinder: dioptres, axis: direction });

const ROUNDING = 1e-10;

/** A corneal astigmatism is the complex number C·exp(2iθ). */
const phasor = (dioptres: number, degrees: number): math.Complex =>
  math.multiply(dioptres, math.exp(math.complex(0, (2 * degrees * Math.PI) / 180)) as math.Complex) as math.Complex;

const complexOf = ({ magnitude, meridian }: Astigmatism): math.Complex => phasor(magnitude, meridian);

/** Flattening takes away. */
const flatten = (dioptres: number, degrees: number): math.Complex => phasor(-dioptres, degrees);

const plus = (...parts: math.Complex[]): math.Complex => parts.reduce((a, b) => math.add(a, b), math.complex(0, 0));

const minus = (a: math.Complex, b: math.Complex): math.Complex => math.subtract(a, b);

function agree(ours: Astigmatism, theirs: math.Complex): void {
  expect(math.abs(minus(complexOf(ours), theirs)) as unknown as number).toBeLessThan(ROUNDING);
  expect(Math.abs(ours.magnitude - (math.abs(theirs) as unknown as number))).toBeLessThan(ROUNDING);
}

describe('by complex numbers', () => {
  test('sums', () =>
    fc.assert(fc.property(fc.array(astigmatism, { maxLength: 6 }), (parts) => agree(sum(...parts), plus(...parts.map(complexOf)))), RUNS));

  test('changes', () =>
    fc.assert(fc.property(astigmatism, astigmatism, (before, after) => agree(change(before, after), minus(complexOf(after), complexOf(before)))), RUNS));

  test('flattening and torque are the two parts after turning the meridian to 0', () =>
    fc.assert(fc.property(astigmatism, direction, (a, along) => {
      const turned = math.multiply(complexOf(a), math.conj(phasor(1, along)) as math.Complex) as math.Complex;
      const { flattening, torque } = flatteningAndTorque(a, along);
      expect(Math.abs(flattening + turned.re)).toBeLessThan(ROUNDING);
      expect(Math.abs(torque - turned.im)).toBeLessThan(ROUNDING);
    }), RUNS));

  test('what a plan leaves, expected and intended', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      const { before, after, afterIntended } = evaluatePlan(plan);
      agree(before, phasor(plan.steepK! - plan.flatK!, plan.steepMeridian!));
      agree(after, left(plan, 'expected'));
      agree(afterIntended, left(plan, 'intended'));
    }), RUNS));
});

/** What a plan leaves, summed by complex numbers from the sizes of its parts. */
function left(plan: EyePlan, wanted: 'expected' | 'intended'): math.Complex {
  const front = phasor(plan.steepK! - plan.flatK!, plan.steepMeridian!);
  const parts = [front, complexOf(backSurface(plan.backSurface!))];
  if (plan.incisionSite != null) {
    const model = incisionFlattening({ width: plan.incisionWidth!, site: plan.incisionSite, eye: plan.eye! });
    const own = plan.ownFigures?.incision;
    parts.push(flatten(plan.incisionFlattening ?? own?.flattening ?? model.flattening, plan.incisionSite));
    // Torque works a quarter turn further on in the doubled plane: a factor of i.
    parts.push(math.multiply(math.complex(0, own?.torque ?? 0), phasor(1, plan.incisionSite)) as math.Complex);
  }
  if (plan.arcCount && plan.arcSite != null) {
    const rule = ruleOf({ meridian: plan.steepMeridian! });
    const model = arcFlattening({ length: plan.arcLength!, count: plan.arcCount, age: plan.age, rule, method: plan.arcMethod! });
    const own = plan.ownFigures?.arcs;
    const reached = own && wanted === 'expected' ? own.share * model.intended : model[wanted];
    parts.push(flatten(plan.arcFlattening ?? reached, plan.arcSite));
  }
  if (plan.lensCylinder && plan.lensMeridian != null) parts.push(flatten(plan.lensCylinder, plan.lensMeridian));
  return plus(...parts);
}

/** Power matrix of a thin lens (Long 1976, from memory): the power along every direction, in one symmetric matrix. */
function powerMatrix({ sphere, cylinder, axis }: Refraction): number[][] {
  const s = Math.sin((axis * Math.PI) / 180);
  const c = Math.cos((axis * Math.PI) / 180);
  return [[sphere + cylinder * s * s, -cylinder * s * c], [-cylinder * s * c, sphere + cylinder * c * c]];
}

describe('by power matrices', () => {
  test('crossed cylinders: the matrix of the sum is the sum of the matrices', () =>
    fc.assert(fc.property(fc.array(refraction, { minLength: 1, maxLength: 5 }), (lenses) => {
      const theirs = lenses.map(powerMatrix).reduce((a, b) => math.add(a, b) as number[][]);
      const difference = math.subtract(theirs, powerMatrix(combine(...lenses))) as number[][];
      expect(math.max(math.abs(difference) as number[][])).toBeLessThan(ROUNDING);
    }), RUNS));

  test('crossed cylinders: the principal powers are the eigenvalues', () =>
    fc.assert(fc.property(refraction, refraction, (a, b) => {
      const matrix = math.add(powerMatrix(a), powerMatrix(b)) as number[][];
      // The library refuses to decompose a matrix that is a multiple of the identity up to rounding.
      fc.pre(Math.hypot(matrix[0]![0]! - matrix[1]![1]!, 2 * matrix[0]![1]!) > 1e-6);
      const [low, high] = (math.eigs(matrix).values as number[]).sort((x, y) => x - y) as [number, number];
      const { sphere, cylinder } = combine(a, b);
      expect(Math.abs(sphere - high)).toBeLessThan(1e-9);
      expect(Math.abs(sphere + cylinder - low)).toBeLessThan(1e-9);
    }), RUNS));
});

test('a misplaced lens leaves what the law of cosines says', () =>
  fc.assert(fc.property(between(0, 12), direction, direction, (cylinder, meridian, placed) => {
    const apart = (2 * (placed - meridian) * Math.PI) / 180;
    const square = 2 * cylinder * cylinder * (1 - Math.cos(apart));
    const { magnitude } = misplacedLens({ cylinder, meridian, placed });
    // The law of cosines itself cancels for small angles, so squares are compared.
    expect(Math.abs(magnitude * magnitude - square)).toBeLessThan(ROUNDING);
    expect(Math.abs(magnitude - Math.abs(2 * cylinder * Math.sin(apart / 2)))).toBeLessThan(ROUNDING);
  }), RUNS));

describe('the normal distribution function, by the error function', () => {
  test('agrees to 1e-14 from -10 to 10', () => {
    let worst = 0;
    for (let step = -10_000; step <= 10_000; step += 1) {
      const z = step / 1000;
      worst = Math.max(worst, Math.abs(normal(z) - (1 + math.erf(z / Math.SQRT2)) / 2));
    }
    expect(worst).toBeLessThan(1e-14);
  });

  test('ends at 0 and 1 and is a half in the middle', () => {
    expect([normal(-40), normal(0), normal(40)]).toEqual([0, 0.5, 1]);
    expect(normal(-Infinity)).toBe(0);
    expect(normal(Infinity)).toBe(1);
  });

  // Where 1 + erf has lost every digit, Laplace's continued fraction for the tail, taken far enough to have settled.
  // The bound of 1e-8 is ours: what is asked of the tail is to shrink smoothly, also where the two formulas meet.
  test.each([4, 6, 7, 7.0710678, 7.0710679, 8, 10, 20, 35])('keeps its relative size in the far tail, at -%d', (z) => {
    let fraction = z;
    for (let term = 400; term >= 1; term -= 1) fraction = z + term / fraction;
    const tail = Math.exp((-z * z) / 2) / fraction / Math.sqrt(2 * Math.PI);
    expect(Math.abs(normal(-z) / tail - 1)).toBeLessThan(1e-8);
  });
});
