/** What the tracing of eyes and the shape of the cornea refuse, word for word; zeros, spheres, and limits that count as within. */
import { expect, test } from 'vitest';
import {
  SCHEMATIC_EYES, atSpectacles, crossSection, lensToFit, pencilOf, pencilThrough, plannedBundle, principalPowers, rayAt, residual, trace, traceToric, widthAlong,
} from '../../core/eye.js';
import { cornealSurface, shapeFactors, shapeBefore } from '../../core/shape.js';
import { allowed, curvature, isNone } from '../../core/eye-limits.js';
import { imageOfCircle } from '../../core/eye-matrix.js';
import { refusalOf } from './refusal.js';

const good = { radius: 7.8, indexAfter: 1.336, gapAfter: 3 };
const toric = { flatRadius: 7.8, steepRadius: 7.5, steepMeridian: 45, indexAfter: 1.336 };
const pencil = pencilOf({ vergence: { m: 50, j0: 0, j45: 0 }, pupil: 4 });
const planned = { meanPower: 43, astigmatism: { magnitude: 1, meridian: 90 }, pupil: 4, focus: 'least-blur' } as const;

test.each<[string, () => unknown]>([
  ['surfaces: object is refused; allowed is a list of surfaces.', () => trace({ surfaces: {} } as never)],
  ['surfaces[0]: none is refused; allowed is a surface or a thin lens.', () => trace({ surfaces: [null] } as never)],
  ['surfaces[0]: 3 is refused; allowed is a surface or a thin lens.', () => trace({ surfaces: [3] } as never)],
  ['surfaces[0]: “a toric surface” is refused; allowed is a spherical one here; traceToric takes both.', () => trace({ surfaces: [toric] } as never)],
  ['surfaces[0]: “a toric surface” is refused; allowed is a spherical one here; traceToric takes both.', () => trace({ surfaces: [{ ...toric, steepMeridian: 90 }] } as never)],
  ['surfaces[0].steepRadius: 7.9 is refused; allowed is of the sign of flatRadius (7.8 mm) and not larger in size.', () => traceToric({ surfaces: [{ ...toric, steepRadius: 7.9 }] })],
  ['surfaces[0].steepRadius: none is refused; allowed is 1 mm or more in size, of either sign; Infinity for a flat surface.', () => traceToric({ surfaces: [{ ...toric, steepRadius: undefined as never }] })],
  ['surfaces[0].lens: 3 is refused; allowed is a sphere, a cylinder and an axis.', () => traceToric({ surfaces: [{ lens: 3 as never }] })],
  ['surfaces[0].lens.cylinder: 201 is refused; allowed is -200 to 200 D.', () => traceToric({ surfaces: [{ lens: { sphere: 1, cylinder: 201, axis: 0 } }] })],
  ['radius: “7.8” is refused; allowed is 1 mm or more in size, of either sign; Infinity for a flat surface.', () => curvature('radius', '7.8')],
  ['radius: 0.99 is refused; allowed is 1 mm or more in size, of either sign; Infinity for a flat surface.', () => curvature('radius', 0.99)],
  ['pupil: 0 is refused; allowed is 0.1 to 100 mm.', () => pencilOf({ vergence: { m: 1, j0: 0, j45: 0 }, pupil: 0 })],
  ['from: NaN is refused; allowed is -100000 to 100000 mm.', () => pencilOf({ vergence: { m: 1, j0: 0, j45: 0 }, pupil: 4, from: NaN })],
  ['direction: NaN is refused; allowed is a finite number of °.', () => widthAlong(pencil, 1, NaN)],
  ['z: NaN is refused; allowed is -100000 to 100000 mm.', () => widthAlong(pencil, NaN, 0)],
  ['z: 1000000 is refused; allowed is -100000 to 100000 mm.', () => crossSection(pencil, 1e6)],
  ['x: NaN is refused; allowed is a finite number.', () => rayAt(pencil, { x: NaN, y: 0 }, 1)],
  ['y: NaN is refused; allowed is a finite number.', () => rayAt(pencil, { x: 0, y: NaN }, 1)],
  ['meanPower: 7.8 is refused; allowed is 20 to 100 D.', () => plannedBundle({ ...planned, meanPower: 7.8 })],
  ['astigmatism: 21 is refused; allowed is 0 to 20 D.', () => plannedBundle({ ...planned, astigmatism: { magnitude: 21, meridian: 90 } })],
  ['meridian: 190 is refused; allowed is 0 to 180 °.', () => plannedBundle({ ...planned, astigmatism: { magnitude: 1, meridian: 190 } })],
  ['pupil: 11 is refused; allowed is 0.1 to 10 mm.', () => plannedBundle({ ...planned, pupil: 11 })],
  ['surfaces: “light that is in focus before the lens” is refused; allowed is light that is not in focus in front of the lens or in it.', () => lensToFit({ surfaces: [{ lens: { sphere: 100, cylinder: 0, axis: 0 }, gapAfter: 12 }], axialLength: 24 })],
  ['surfaces: “light that is in focus before the lens” is refused; allowed is light that is not in focus in front of the lens or in it.', () => lensToFit({ surfaces: [{ lens: { sphere: 100, cylinder: -40, axis: 0 }, gapAfter: 12 }], axialLength: 24 })],
  ['vertex: 31 is refused; allowed is 0 to 30 mm.', () => atSpectacles({ sphere: 1, cylinder: 0, axis: 90 }, 31)],
  ['vertex: 20 is refused; allowed is below 20.0 mm, for a far point lies between glasses and eye.', () => atSpectacles({ sphere: -50, cylinder: 0, axis: 90 }, 20)],
  ['axialLength: 10 is refused; allowed is more than 10 mm, where the lens or last surface is.', () => lensToFit({ surfaces: [{ ...good, gapAfter: 10 }], axialLength: 10 })],
  ['direction: NaN is refused; allowed is a finite number of °.', () => cornealSurface({ flatRadius: 7.8, steepRadius: 7.8, steepMeridian: 90 })({ distance: 1, direction: NaN })],
  ['shape factor: “q, p” is refused; allowed is just one of q, p and e.', () => shapeFactors({ q: 0, p: 1 })],
  ['q: NaN is refused; allowed is a finite number.', () => shapeFactors({ q: NaN })],
  ['q: 1.5 is refused; allowed is -2 to 1.', () => shapeFactors({ p: 2.5 })],
  ['flatK: 7.8 is refused; allowed is 28 to 75 D.', () => shapeBefore({ flatK: 7.8 })],
])('%s', (message, call) => expect(call).toThrow(message));

test('limits count as within, on either side', () => {
  expect([curvature('radius', 1), curvature('radius', -1), curvature('radius', Infinity), curvature('radius', -Infinity)]).toEqual([1, -1, 0, 0]);
  expect([allowed('axialLength', 'axialLength', 10), allowed('vertex', 'vertex', 0), allowed('vertex', 'vertex', 30)]).toEqual([10, 0, 30]);
  // 1e-9 D and less is none; powers are in 1/mm.
  expect([0, 0.9e-12, -0.9e-12, 1.1e-12, -1.1e-12, 1e-6].map(isNone)).toEqual([true, true, true, false, false, false]);
});

test('an even gap may have the least and the greatest index there is', () => {
  const gradient = { axial: 0, axialSquare: 0, radial: 0 };
  for (const index of [1, 2.5]) {
    const [graded, plain] = [{ gradient }, {}].map((more) => trace({ indexBefore: 1.4, surfaces: [{ radius: 8, indexAfter: index, gapAfter: 3, ...more }, { radius: -9, indexAfter: 1.4 }] } as never).power);
    expect(graded).toBeCloseTo(plain!, 9);
  }
});

test('an index may change until it is the least or the greatest one there is', () => {
  // F₁ + F₂ − t·F₁F₂, where t = ∫dz/n of an index n₁ + axial·z is ln(n₂/n₁)/axial.
  for (const [first, last] of [[2, 2.5], [1.5, 1]] as const) {
    const axial = (last - first) / 4;
    const { power } = trace({ indexBefore: 1.4, surfaces: [{ radius: 8, indexAfter: first, gapAfter: 4, gradient: { axial, axialSquare: 0, radial: 0 } }, { radius: -9, indexAfter: 1.4 }] });
    const [front, back] = [(first - 1.4) / 8, (1.4 - last) / -9];
    expect(power).toBeCloseTo(1000 * (front + back - (Math.log(last / first) / axial) * front * back), 6);
  }
});

test('a lens of a hundred-thousandth of a dioptre has foci, and crossed cylinders that make a sphere have their meridian at 180°', () => {
  expect(traceToric({ surfaces: [{ lens: { sphere: 1e-5, cylinder: 0, axis: 180 } }] }).backFocus.flat).toBeCloseTo(1e8, 0);
  const crossed = traceToric({ surfaces: [{ lens: { sphere: 21, cylinder: -1, axis: 31 }, gapAfter: 0 }, { lens: { sphere: 20, cylinder: -1, axis: 121 } }] }).power;
  expect(crossed.flat).toBeCloseTo(40, 9);
  expect(crossed.steepMeridian).toBe(180);
  expect(principalPowers([[0, 0], [0, 0]])).toEqual({ flat: 0, steep: 0, steepMeridian: 180 });
});

test.each([1, -1])('a power too small for foci is refused with its sign: %d', (sign) => {
  // 336/r: a third of a billionth of a dioptre.
  const { field, value } = refusalOf(() => trace({ surfaces: [{ radius: sign * 1e12, indexAfter: 1.336 }] }));
  expect([field, value]).toEqual(['power', expect.closeTo(sign * 3.36e-10, 15)]);
});

test('what makes a circle of a circle has no direction, however it is turned over; a tiny ellipse has its own', () => {
  const round = pencilOf({ vergence: { m: 50, j0: 0, j45: 0 }, pupil: 4 });
  expect([0, 10, 19, 21, 30].map((z) => crossSection(round, z).direction)).toEqual([180, 180, 180, 180, 180]);
  for (const size of [1, 1e-6, 1e6]) expect(imageOfCircle([size, 0, 0, 2 * size]).direction).toBe(90);
  // Nor has a point, whatever signs its zeros have.
  for (let signs = 0; signs < 16; signs += 1) {
    const [a, b, c, d] = [1, 2, 4, 8].map((bit) => (signs & bit ? -0 : 0)) as [number, number, number, number];
    expect(imageOfCircle([a, b, c, d])).toEqual({ longer: 0, shorter: 0, direction: 180 });
  }
});

test('nothing is never −0', () => {
  expect(shapeFactors({ q: -0 })).toEqual({ q: 0, p: 1, e: 0 });
  expect(shapeFactors({ e: 0 })).toEqual({ q: 0, p: 1, e: 0 });
  expect(atSpectacles({ sphere: -3, cylinder: 0, axis: 90 }).cylinder).toBe(0);
  expect(trace({ surfaces: [good] }).frontPrincipal).toBe(0);
  const { frontPrincipal, backPrincipal, asymmetry } = traceToric({ surfaces: [toric] });
  expect([frontPrincipal.flat, frontPrincipal.steep, backPrincipal.flat, asymmetry]).toEqual([0, 0, 0, 0]);
  const ball = lensToFit({ surfaces: [{ lens: { sphere: 43, cylinder: 0, axis: 180 }, gapAfter: 5 }], axialLength: 22.3 });
  expect([ball.cylinder, ball.cornealCylinder, ball.meridian]).toEqual([0, 0, 180]);
});

test('a sphere in the words of a toric surface is one', () => {
  expect(trace({ surfaces: [{ flatRadius: 7.8, steepRadius: 7.8, steepMeridian: 30, indexAfter: 1.336 }] } as never).power).toBeCloseTo(336 / 7.8, 9);
});

test('an eye with curves that are no circles has them, one without does not', () => {
  const withConic = Object.values(SCHEMATIC_EYES).filter((eye) => 'conic' in eye);
  expect(withConic.length).toBeGreaterThan(0);
  expect(withConic.length).toBeLessThan(Object.keys(SCHEMATIC_EYES).length);
  for (const { conic } of withConic) expect(Object.keys(conic!).length).toBeGreaterThan(0);
});

test('the pupil may be in any surface of the list and in no other', () => {
  const eye = { surfaces: [good, { ...good, radius: 10 }] };
  for (const stop of [0, 1]) expect(crossSection(pencilThrough(eye, { pupil: 4, stop }), 10).longer).toBeGreaterThan(0);
  for (const stop of [-1, 2, 0.5, NaN]) expect(() => pencilThrough(eye, { pupil: 4, stop })).toThrow(/^stop: /);
});

test('the glasses of a long eye: −3.00 at the cornea are −3.11 at 12 mm', () => {
  expect(atSpectacles({ sphere: -3, cylinder: 0, axis: 90 }).sphere).toBeCloseTo(-3 / (1 - 0.036), 12);
  expect(residual({ surfaces: [{ ...good, gapAfter: 0 }], axialLength: 24 }).cornea.sphere).toBeCloseTo(1336 / 24 - 336 / 7.8, 9);
});
