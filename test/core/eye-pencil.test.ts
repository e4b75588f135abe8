import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inverse, product, type Rows } from '../../core/algebra.js';
import { crossSection, leastConfusion, lineFoci, pencilOf, pencilThrough, rayAt, toricMatrix, traceToric, widthAlong, type Pencil, type ToricSystem } from '../../core/eye.js';
import { atVertex, toPowerVector } from '../../core/index.js';
import { blurEllipse } from '../../core/sight.js';
import { apart, meridianOf, toricEye, turnedBy } from './eye-support.js';
import { RUNS, between } from './plans.js';

const near = (got: number, expected: number, allowed = 1e-9): void => expect(Math.abs(got - expected), `${got} against ${expected}`).toBeLessThanOrEqual(allowed);

const vergence = fc.record({ m: between(20, 80), j0: between(-5, 5), j45: between(-5, 5) });
const block = (m: Rows, r: number, c: number): number[][] => [0, 1].map((i) => [0, 1].map((j) => m[r + i]![c + j]!));
const plus = (a: Rows, b: Rows, k: number): number[][] => a.map((row, i) => row.map((value, j) => value + k * b[i]![j]!));

describe('the bundle by plain arithmetic', () => {
  test('is that of the 4 × 4 matrices, whatever the pupil’s place and the light’s vergence', () =>
    fc.assert(fc.property(toricEye, between(1, 8), fc.integer({ min: 0, max: 3 }), between(-4, 4), between(0, 25), (eye, pupil, stop, incoming, behind) => {
      const pencil = pencilThrough(eye, { pupil, stop, vergence: incoming });
      // From the first surface to the stop: the matrix of what lies in front, then an empty surface in its plane.
      const ahead: ToricSystem = { surfaces: [...eye.surfaces.slice(0, stop), { radius: Infinity, indexAfter: stop ? eye.surfaces[stop - 1]!.indexAfter : 1, gapAfter: 0 }] };
      const heights = (m: Rows): number[][] => plus(block(m, 0, 0), block(m, 0, 2), -incoming / 1000);
      const slopes = (m: Rows): number[][] => plus(block(m, 2, 0), block(m, 2, 2), -incoming / 1000);
      const whole = toricMatrix(eye);
      const toStop = inverse(heights(toricMatrix(ahead)));
      const section = product(plus(heights(whole), slopes(whole), behind / eye.surfaces.at(-1)!.indexAfter), toStop);
      for (const point of [{ x: 1, y: 0 }, { x: 0, y: 1 }, { x: 0.3, y: -0.8 }]) {
        const ours = rayAt(pencil, point, pencil.from + behind);
        near(ours.x, (pupil / 2) * (section[0]![0]! * point.x + section[0]![1]! * point.y), 1e-11);
        near(ours.y, (pupil / 2) * (section[1]![0]! * point.x + section[1]![1]! * point.y), 1e-11);
      }
    }), RUNS));

  test('has its line foci where the vertex powers of `traceToric` put them, each line across its meridian', () =>
    fc.assert(fc.property(toricEye, between(1, 8), (eye, pupil) => {
      const { backFocus } = traceToric(eye);
      const [first, second] = lineFoci(pencilThrough(eye, { pupil }));
      near(first!.position, backFocus.steep, 1e-8);
      near(second!.position, backFocus.flat, 1e-8);
      if (backFocus.flat - backFocus.steep > 0.01) {
        near(apart(first!.direction, backFocus.steepMeridian), 90, 1e-5);
        near(apart(second!.direction, backFocus.steepMeridian), 0, 1e-5);
      }
    }), RUNS));

  test('turned as a whole turns every section', () =>
    fc.assert(fc.property(toricEye, between(0, 179), between(0, 25), (eye, degrees, behind) => {
      const [here, there] = [pencilThrough(eye, { pupil: 4 }), pencilThrough({ surfaces: eye.surfaces.map(turnedBy(degrees)) }, { pupil: 4 })];
      const [a, b] = [crossSection(here, here.from + behind), crossSection(there, there.from + behind)];
      near(a.longer, b.longer);
      near(a.shorter, b.shorter);
      if (a.longer - a.shorter > 1e-3) near(apart(a.direction + degrees, b.direction), 0, 1e-5);
    }), RUNS));
});

describe('a section', () => {
  test('is the hull of its rays, by any direction', () =>
    fc.assert(fc.property(toricEye, between(0, 25), meridianOf, (eye, behind, direction) => {
      const pencil = pencilThrough(eye, { pupil: 5, stop: 2 });
      const z = pencil.from + behind;
      const [c, s] = [Math.cos((direction * Math.PI) / 180), Math.sin((direction * Math.PI) / 180)];
      let widest = 0;
      for (let i = 0; i < 720; i += 1) {
        const { x, y } = rayAt(pencil, { x: Math.cos((i * Math.PI) / 360), y: Math.sin((i * Math.PI) / 360) }, z);
        widest = Math.max(widest, 2 * Math.abs(c * x + s * y));
      }
      const width = widthAlong(pencil, z, direction);
      near(widest, width, 1e-4 * width + 1e-9);
      expect(widest).toBeLessThanOrEqual(width + 1e-12);
      const { longer, shorter, direction: main } = crossSection(pencil, z);
      near(widthAlong(pencil, z, main), longer, 1e-7);
      near(widthAlong(pencil, z, main + 90), shorter, 1e-7);
    }), { ...RUNS, numRuns: 200 }));

  test('on the retina of an eye with an error is the blur ellipse of the functions on sight', () =>
    fc.assert(fc.property(fc.record({ sphere: between(-6, 6), cylinder: between(-4, 0), axis: meridianOf }), between(2, 7), (refraction, pupil) => {
      // A reduced eye that needs this correction has the error with the other sign: its power is 60 D minus the correction.
      const { m, j0, j45 } = toPowerVector(refraction);
      const pencil = pencilOf({ vergence: { m: 60 - m, j0: -j0, j45: -j45 }, pupil, index: 4 / 3 });
      const seen = crossSection(pencil, 200 / 9);
      const blur = blurEllipse({ refraction, pupilMm: pupil });
      // From mm on the retina to an angle at the nodal point, 1000/60 mm in front of it.
      const degrees = (mm: number): number => ((mm / (1000 / 60)) * 180) / Math.PI;
      near(degrees(seen.longer), blur.longer, 1e-10);
      near(degrees(seen.shorter), blur.shorter, 1e-10);
      if (blur.longer - blur.shorter > 1e-4) near(apart(seen.direction, blur.direction), 0, 1e-5);
    }), RUNS));
});

describe('line foci and least confusion', () => {
  test('of a round pupil are those of similar triangles', () =>
    fc.assert(fc.property(vergence, between(1, 9), between(1, 1.5), between(-5, 30), (given, pupil, index, from) => {
      const j = Math.hypot(given.j0, given.j45);
      fc.pre(j > 1e-3);
      const [strong, weak] = [given.m + j, given.m - j];
      const pencil = pencilOf({ vergence: given, pupil, index, from });
      const [first, second] = lineFoci(pencil);
      near(first!.position, from + (1000 * index) / strong, 1e-8);
      near(second!.position, from + (1000 * index) / weak, 1e-8);
      near(first!.length, pupil * (1 - weak / strong), 1e-9);
      near(second!.length, pupil * (strong / weak - 1), 1e-9);
      const steep = (Math.atan2(given.j45, given.j0) * 90) / Math.PI;
      near(apart(first!.direction, steep), 90, 1e-4);
      near(apart(second!.direction, steep), 0, 1e-4);
      const least = leastConfusion(pencil)!;
      near(least.position, from + (2000 * index) / (strong + weak), 1e-9);
      near(least.diameter, (pupil * (strong - weak)) / (strong + weak), 1e-9);
      near(least.roundness, 1, 1e-6);
    }), RUNS));

  test('the circle is the narrowest section all round, and between the lines, in any eye', () =>
    fc.assert(fc.property(toricEye, fc.integer({ min: 0, max: 3 }), between(-1, 1), (eye, stop, step) => {
      const pencil = pencilThrough(eye, { pupil: 4, stop });
      const [first, second] = lineFoci(pencil);
      const least = leastConfusion(pencil)!;
      expect(least.position).toBeGreaterThanOrEqual(first!.position);
      expect(least.position).toBeLessThanOrEqual(second!.position);
      expect(least.roundness).toBeGreaterThan(0.9);
      expect(crossSection(pencil, least.position + step).longer).toBeGreaterThanOrEqual(least.diameter - 1e-12);
    }), RUNS));

  test('without astigmatism are one point', () => {
    const pencil = pencilOf({ vergence: { m: 50, j0: 0, j45: 0 }, pupil: 4 });
    const [first, second] = lineFoci(pencil);
    expect(first).toEqual({ position: 20, length: 0, direction: 180 });
    expect(second).toEqual(first);
    expect(leastConfusion(pencil)).toEqual({ position: 20, diameter: 0, roundness: 1 });
    expect(crossSection(pencil, 10)).toEqual({ longer: 2, shorter: 2, direction: 180 });
  });

  test('of a lone cylinder are one line and one at infinity, and nothing is least', () => {
    // Power along 90 only.
    const pencil = pencilOf({ vergence: { m: 5, j0: -5, j45: 0 }, pupil: 20 });
    const [first, second] = lineFoci(pencil);
    expect(second).toBeNull();
    near(first!.position, 100);
    near(first!.length, 20);
    expect(first!.direction).toBe(180);
    expect(leastConfusion(pencil)).toBeNull();
    expect(leastConfusion(pencilOf({ vergence: { m: 0, j0: 5, j45: 0 }, pupil: 20 }))).toBeNull();
  });

  test('of diverging light are virtual, in front of the lens', () => {
    const [first, second] = lineFoci(pencilOf({ vergence: { m: -10, j0: 2, j45: 0 }, pupil: 4 }));
    near(first!.position, -125);
    near(second!.position, -1000 / 12);
    near(leastConfusion(pencilOf({ vergence: { m: -10, j0: 2, j45: 0 }, pupil: 4 }))!.position, -100, 1e-6);
  });

  test('stay finite for any light that is accepted', () =>
    fc.assert(fc.property(between(-200, 200), between(-200, 200), between(-200, 200), between(0.1, 100), (m, j0, j45, pupil) => {
      const pencil: Pencil = pencilOf({ vergence: { m, j0, j45 }, pupil });
      const told = [...lineFoci(pencil), leastConfusion(pencil), crossSection(pencil, 20)].flatMap((one) => (one ? Object.values(one) : []));
      expect(told.every(Number.isFinite), JSON.stringify(told)).toBe(true);
    }), RUNS));
});

describe('the power of glasses at the cornea', () => {
  test('is the vergence of their bundle there', () =>
    fc.assert(fc.property(between(-15, 10), between(-6, 0), meridianOf, between(8, 16), (sphere, cylinder, axis, vertex) => {
      const glasses = { sphere, cylinder, axis };
      const { m, j0, j45 } = toPowerVector(atVertex(glasses, vertex));
      const ours = pencilThrough({ surfaces: [{ lens: glasses, gapAfter: vertex }, { radius: Infinity, indexAfter: 1 }] }, { pupil: 4, stop: 1 });
      const there = pencilOf({ vergence: { m, j0, j45 }, pupil: 4, from: vertex });
      for (const z of [20, 60]) near(crossSection(ours, z).longer, crossSection(there, z).longer, 1e-9);
      near(ours.growth[1], there.growth[1], 1e-12);
    }), RUNS));
});
