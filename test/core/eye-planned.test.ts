import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FOCUSES, PLANNED_EYE, SCHEMATIC_EYES, crossSection, excessAt, leastConfusion, lineFoci, pencilOf, plannedBundle, residual, sectionAt, type Pencil, type PlannedBundle, type PlannedEye } from '../../core/eye.js';
import { fromPowerVector, toPowerVector } from '../../core/index.js';
import { extent, signChange, signedArea, throughAll, crossing, type Built, type Ray } from './eye-rays.js';
import { apart, meridianOf } from './eye-support.js';
import { RUNS, between } from './plans.js';

const near = (got: number, expected: number, allowed = 1e-9): void => expect(Math.abs(got - expected), `${got} against ${expected}`).toBeLessThanOrEqual(allowed);

const eye = fc.record({
  meanPower: between(38, 50),
  astigmatism: fc.record({ magnitude: between(0.2, 6), meridian: meridianOf }),
  pupil: between(1, 9),
  focus: fc.constantFrom(...FOCUSES),
});

const { lensDepth, index, axialLength } = PLANNED_EYE;

/** The same bundle by the functions for bundles of any kind, from the vergence that leaves the lens. */
function withPencil(given: PlannedEye): PlannedBundle & { pencil: Pencil } {
  const bundle = plannedBundle(given);
  const { steep, flat } = bundle.vergence;
  const j = 500 * index * (steep - flat);
  const doubled = (given.astigmatism.meridian * Math.PI) / 90;
  const vergence = { m: 500 * index * (steep + flat), j0: j * Math.cos(doubled), j45: j * Math.sin(doubled) };
  return { ...bundle, pencil: pencilOf({ vergence, pupil: given.pupil, index, from: lensDepth }) };
}

/** The same eye as built: one toric surface, and a lens of glass whose two faces touch. */
function built(given: { meanPower: number; astigmatism: { magnitude: number; meridian: number } }, lensPower: number): Built[] {
  const { meanPower, astigmatism: { magnitude, meridian } } = given;
  const radius = (power: number): number => (1000 * (index - 1)) / power;
  const glass = index + 0.2;
  const face = (2 * 1000 * 0.2) / lensPower;
  const round = { steepMeridian: 180, flatConic: 0, steepConic: 0, vertex: lensDepth };
  return [
    { vertex: 0, flatRadius: radius(meanPower - magnitude / 2), steepRadius: radius(meanPower + magnitude / 2), steepMeridian: meridian, flatConic: 0, steepConic: 0, indexBefore: 1, indexAfter: index },
    { ...round, flatRadius: face, steepRadius: face, indexBefore: index, indexAfter: glass },
    { ...round, flatRadius: -face, steepRadius: -face, indexBefore: glass, indexAfter: index },
  ];
}

/** Rays that cross the plane of the lens on a circle: where they have to enter follows from two of them, so near to the axis. */
function throughPupil(surfaces: Built[], radius: number): Ray[] {
  const enter = (x: number, y: number): Ray => ({ at: [x, y, -5], to: [0, 0, 1] });
  const atLens = (ray: Ray): [number, number] => crossing(throughAll(ray, surfaces.slice(0, 1)), lensDepth);
  const [[a, c], [b, d]] = [atLens(enter(radius, 0)), atLens(enter(0, radius))] as [[number, number], [number, number]];
  const size = (a * d - b * c) / radius;
  return Array.from({ length: 90 }, (_, i) => {
    const [x, y] = [radius * Math.cos((i * Math.PI) / 45), radius * Math.sin((i * Math.PI) / 45)];
    return throughAll(enter((d * x - b * y) / size, (a * y - c * x) / size), surfaces);
  });
}

describe('the bundle in an eye with a plan', () => {
  test('is that of real rays through a toric surface and a lens of glass, close to the axis: places, directions and lengths of the lines', () =>
    fc.assert(fc.property(eye, (given) => {
      const { pencil, lensPower } = withPencil(given);
      fc.pre(lensPower > 1);
      const [front, back] = lineFoci(pencil);
      const surfaces = built(given, lensPower);
      const fine = 1e-3;
      const rays = throughPupil(surfaces, fine);
      const middle = leastConfusion(pencil)!.position;
      const area = (z: number): number => signedArea(rays, z);
      const [first, second] = [signChange(area, front!.position - 1, middle), signChange(area, middle, back!.position + 1)];
      near(first, front!.position, 2e-5);
      near(second, back!.position, 2e-5);
      const [across, along] = [extent(rays, front!.position), extent(rays, back!.position)];
      near(apart(across.direction, front!.direction), 0, 1e-2);
      near(apart(along.direction, back!.direction), 0, 1e-2);
      near((across.longer * given.pupil) / 2 / fine, front!.length, 1e-5);
      near((along.longer * given.pupil) / 2 / fine, back!.length, 1e-5);
    }), { ...RUNS, numRuns: 100 }));

  test('is in closed form what it is by the functions for bundles of any kind', () =>
    fc.assert(fc.property(eye, between(6, 40), (given, z) => {
      const { pencil, ...bundle } = withPencil(given);
      const [front, back] = lineFoci(pencil);
      for (const [ours, theirs] of [[bundle.front, front!], [bundle.back, back!]] as const) {
        near(ours.position, theirs.position, 1e-8);
        near(ours.length, theirs.length, 1e-8);
        near(apart(ours.direction, theirs.direction), 0, 1e-5);
      }
      const circle = leastConfusion(pencil)!;
      near(bundle.circle.position, circle.position, 1e-6);
      near(bundle.circle.diameter, circle.diameter, 1e-6);
      const [a, b, c, d] = sectionAt(bundle, z);
      const theirs = crossSection(pencil, z);
      const [half, det] = [(a * a + b * b + c * c + d * d) / 2, a * d - b * c];
      // Squares of the half axes by trace and determinant of M·Mᵀ.
      const root = Math.sqrt(Math.max(0, half * half - det * det));
      near(2 * Math.sqrt(half + root), theirs.longer, 1e-6);
    }), RUNS));

  test('meets first where the cornea is steep, in a line across the steep meridian', () =>
    fc.assert(fc.property(eye, (given) => {
      const { front, back } = plannedBundle(given);
      expect(front.position).toBeLessThan(back.position);
      near(apart(front.direction, given.astigmatism.meridian), 90, 1e-6);
      near(apart(back.direction, given.astigmatism.meridian), 0, 1e-6);
    }), RUNS));

  test('of an eye steep at 90 has its front line at 180 and its back line at 90', () => {
    const { front, back } = plannedBundle({ meanPower: 43.5, astigmatism: { magnitude: 1, meridian: 90 }, pupil: 3, focus: 'least-blur' });
    expect([front.direction, back.direction]).toEqual([180, 90]);
  });

  test('has on the retina what was asked for', () =>
    fc.assert(fc.property(eye, (given) => {
      const { pencil } = withPencil(given);
      const [front, back] = lineFoci(pencil);
      near({ 'least-blur': leastConfusion(pencil)!.position, 'front-line': front!.position, 'back-line': back!.position }[given.focus], axialLength, 1e-7);
    }), RUNS));

  test('is round in the plane of the lens, as wide as the pupil', () =>
    fc.assert(fc.property(eye, (given) => {
      const { longer, shorter } = crossSection(withPencil(given).pencil, lensDepth);
      near(longer, given.pupil);
      near(shorter, given.pupil);
    }), RUNS));

  test('needs the correction that the functions on residuals find, by all of its matrices', () =>
    fc.assert(fc.property(eye, (given) => {
      const { lensPower, excess } = withPencil(given);
      const { meanPower, astigmatism: { magnitude, meridian } } = given;
      const cornea = fromPowerVector({ ...toPowerVector({ sphere: 0, cylinder: magnitude, axis: (meridian + 90) % 180 || 180 }), m: meanPower });
      const { cornea: needed } = residual({ surfaces: [{ lens: cornea, indexAfter: index, gapAfter: lensDepth }, { lens: { sphere: lensPower, cylinder: 0, axis: 180 } }], axialLength });
      // A minus cylinder acts across its axis, where the eye is too strong.
      near(needed.sphere, -excess.flat, 1e-7);
      near(needed.sphere + needed.cylinder, -excess.steep, 1e-7);
      near(apart(needed.axis, meridian), 90, 1e-5);
      near(excess.steep - excess.flat, magnitude, 1e-9);
    }), RUNS));

  test('tells every place in dioptres, each line by the excess of its meridian', () =>
    fc.assert(fc.property(eye, (given) => {
      const planned = withPencil(given);
      const [front, back] = lineFoci(planned.pencil);
      near(excessAt(planned, front!.position), planned.excess.steep, 1e-7);
      near(excessAt(planned, back!.position), planned.excess.flat, 1e-7);
      near(excessAt(planned, axialLength), 0, 1e-9);
    }), RUNS));

  test('comes to one point on the retina without astigmatism', () => {
    const { pencil, excess } = withPencil({ meanPower: 43, astigmatism: { magnitude: 0, meridian: 180 }, pupil: 3, focus: 'front-line' });
    const [front, back] = lineFoci(pencil);
    near(front!.position, axialLength, 1e-7);
    expect([front!.length, back!.length]).toEqual([0, 0]);
    near(excess.steep, 0);
  });

  test('lies in an eye as long as the published one, with the lens of an artificial eye of usual power', () => {
    expect(axialLength).toBe(SCHEMATIC_EYES.bennettRabbetts.axialLength);
    const { lensPower } = withPencil({ meanPower: 43, astigmatism: { magnitude: 0, meridian: 180 }, pupil: 3, focus: 'least-blur' });
    // n/(L − d) − K/(1 − K·d/n), by hand.
    near(lensPower, 1336 / 19.09 - 43 / (1 - (43 * 5) / 1336), 1e-9);
    expect(lensPower).toBeGreaterThan(15);
    expect(lensPower).toBeLessThan(23);
  });

  test('refuses what no eye has, naming field, value and limits', () => {
    const good = { meanPower: 43, astigmatism: { magnitude: 1, meridian: 90 }, pupil: 3, focus: 'least-blur' } as const;
    expect(() => withPencil({ ...good, meanPower: 7.8 })).toThrow(/meanPower.*7\.8.*20/);
    expect(() => withPencil({ ...good, astigmatism: { magnitude: 21, meridian: 90 } })).toThrow(/astigmatism.*21.*20/);
    expect(() => withPencil({ ...good, astigmatism: { magnitude: 1, meridian: 190 } })).toThrow(/meridian.*190.*180/);
    expect(() => withPencil({ ...good, pupil: 0 })).toThrow(/pupil.*0/);
  });

  test('stays finite, with both lines behind the lens, for every cornea that is drawn', () =>
    fc.assert(fc.property(between(28, 75), between(0, 20), meridianOf, fc.constantFrom(...FOCUSES), (meanPower, magnitude, meridian, focus) => {
      const planned = withPencil({ meanPower, astigmatism: { magnitude, meridian }, pupil: 9, focus });
      const [front, back] = lineFoci(planned.pencil);
      expect(front!.position).toBeGreaterThan(lensDepth);
      expect(back!.position).toBeLessThan(60);
      expect(Object.values(leastConfusion(planned.pencil)!).every(Number.isFinite)).toBe(true);
      expect(Number.isFinite(excessAt(planned, back!.position))).toBe(true);
    }), RUNS));
});
