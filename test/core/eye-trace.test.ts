import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { principalPowers, toricMatrix, trace, traceToric, type Cardinals, type EyeSystem, type Principal, type Surface, type ToricCardinals, type ToricSystem } from '../../core/eye.js';
import { combine, toPowerVector } from '../../core/index.js';
import { apart, meridianOf, system, toricEye, turnedBy } from './eye-support.js';
import { RUNS, between } from './plans.js';

/** Properties of a system with enough power that its foci are not kilometres away. */
function traced(given: EyeSystem): Cardinals {
  fc.pre(Math.abs(1000 * toricMatrix(given)[2]![0]!) > 2);
  return trace(given);
}

/** Foci of 500 mm can be had to some 1e-13 of their square. */
const ROUNDING = 1e-8;
const near = (got: number, expected: number, allowed = ROUNDING): void => expect(Math.abs(got - expected), `${got} against ${expected}`).toBeLessThanOrEqual(allowed);
const places = ['frontFocus', 'backFocus', 'frontPrincipal', 'backPrincipal', 'frontNodal', 'backNodal'] as const;
const lengthOf = ({ surfaces }: EyeSystem): number => surfaces.slice(0, -1).reduce((sum, { gapAfter = 0 }) => sum + gapAfter, 0);

describe('a centred system', () => {
  test('a single surface has its power, its nodal point in its centre and both principal points on it', () => {
    const { power, frontPrincipal, backPrincipal, frontNodal, backNodal } = trace({ surfaces: [{ radius: 8, indexAfter: 1.4, gapAfter: 3 }] });
    near(power, 50);
    for (const [got, expected] of [[frontPrincipal, 0], [backPrincipal, 0], [frontNodal, 8], [backNodal, 8]]) near(got!, expected!);
  });

  test('two thin lenses follow Gullstrand: F₁ + F₂ − d·F₁·F₂', () =>
    fc.assert(fc.property(between(-20, 40), between(-20, 40), between(0, 50), (first, second, mm) => {
      const power = first + second - (mm / 1000) * first * second;
      fc.pre(Math.abs(power) > 1e-3);
      const ball = (sphere: number) => ({ sphere, cylinder: 0, axis: 180 });
      near(trace({ surfaces: [{ lens: ball(first), gapAfter: mm }, { lens: ball(second) }] }).power, power, 1e-10);
    }), RUNS));

  test('seen from behind has the same power and its points in the mirror', () =>
    fc.assert(fc.property(system, (given) => {
      const ahead = traced(given);
      const indices = [given.indexBefore, ...given.surfaces.map(({ indexAfter }) => indexAfter)];
      const astern = trace({
        indexBefore: indices.at(-1)!,
        surfaces: given.surfaces.map((_, i) => {
          const turned = given.surfaces.length - 1 - i;
          return { radius: -given.surfaces[turned]!.radius, indexAfter: indices[turned]!, gapAfter: given.surfaces[turned - 1]?.gapAfter ?? 0 };
        }),
      });
      const length = lengthOf(given);
      near(astern.power, ahead.power);
      near(astern.frontFocus, length - ahead.backFocus, 1e-6);
      near(astern.backFocus, length - ahead.frontFocus, 1e-6);
      near(astern.frontPrincipal, length - ahead.backPrincipal, 1e-6);
      near(astern.backNodal, length - ahead.frontNodal, 1e-6);
    }), RUNS));

  test('is the same wherever it begins', () =>
    fc.assert(fc.property(system, between(0, 40), (given, shift) => {
      const here = traced(given);
      const there = trace({ ...given, surfaces: [{ radius: Infinity, indexAfter: given.indexBefore, gapAfter: shift }, ...given.surfaces] });
      near(there.power, here.power);
      for (const place of places) near(there[place], here[place] + shift, 1e-6);
    }), RUNS));

  test('is the same whatever lies behind its last surface, and however it is cut up', () =>
    fc.assert(fc.property(system, between(0, 900), between(0, 1), (given, gapAfter, share) => {
      const whole = traced(given);
      const last = given.surfaces.at(-1)!;
      for (const changed of [{ ...last, gapAfter }, { ...last, gapAfter: undefined }]) {
        expect(trace({ ...given, surfaces: [...given.surfaces.slice(0, -1), changed] })).toEqual(whole);
      }
      // A surface between equal media does nothing.
      const cut: Surface[] = given.surfaces.flatMap((surface) => [
        { ...surface, gapAfter: share * surface.gapAfter! },
        { radius: Infinity, indexAfter: surface.indexAfter, gapAfter: (1 - share) * surface.gapAfter! },
      ]);
      const pieces = trace({ ...given, surfaces: cut });
      near(pieces.power, whole.power);
      for (const place of places) near(pieces[place], whole[place], 1e-6);
    }), RUNS));

  test('has its points where the relations of Gauss put them', () =>
    fc.assert(fc.property(system, (given) => {
      const { power, frontFocus, backFocus, frontPrincipal, backPrincipal, frontNodal, backNodal } = traced(given);
      near(frontPrincipal - frontFocus, (1000 * given.indexBefore) / power, 1e-6);
      near(backFocus - backPrincipal, (1000 * given.surfaces.at(-1)!.indexAfter) / power, 1e-6);
      near(backNodal - frontNodal, backPrincipal - frontPrincipal, 1e-6);
      near(frontNodal - frontFocus, backFocus - backPrincipal, 1e-6);
    }), RUNS));
});

describe('a graded index', () => {
  const gap = (gradient: { axial: number; axialSquare: number; radial: number } | undefined, gapAfter = 4, indexAfter = 1.4): EyeSystem => ({
    surfaces: [{ radius: 8, indexAfter, gapAfter, gradient }, { radius: -6, indexAfter: 1.336, gapAfter: 0 }],
  });

  test('that does not change is an even one', () => {
    const [graded, even] = [trace(gap({ axial: 0, axialSquare: 0, radial: 0 })), trace(gap(undefined))];
    for (const place of places) near(graded[place], even[place], 1e-12);
  });

  test('across the axis alone bends rays to sines: closed form', () => {
    // y″ = −g²·y with g² = −2·radial/n: a rod of power n·g·sin(g·t) between its two flat ends.
    const [n, radial, t] = [1.4, -0.005, 4];
    const g = Math.sqrt((-2 * radial) / n);
    const rod = trace({ indexBefore: n, surfaces: [{ radius: Infinity, indexAfter: n, gapAfter: t, gradient: { axial: 0, axialSquare: 0, radial } }, { radius: Infinity, indexAfter: n, gapAfter: 0 }] });
    near(rod.power, 1000 * n * g * Math.sin(g * t), 1e-8);
    near(rod.backFocus, t + Math.cos(g * t) / (g * Math.sin(g * t)), 1e-8);
  });

  test('along the axis alone is a pile of thin even layers, whose reduced lengths add up', () => {
    const [axial, axialSquare, layers] = [0.03, -0.006, 4000];
    let reduced = 0;
    for (let i = 0; i < layers; i += 1) {
      const z = (4 * (i + 0.5)) / layers;
      reduced += 4 / layers / (1.4 + axial * z + axialSquare * z * z);
    }
    const [first, last] = [0.4 / 8, (1.336 - (1.4 + axial * 4 + axialSquare * 16)) / -6];
    near(trace(gap({ axial, axialSquare, radial: 0 })).power / 1000, first + last - reduced * first * last, 1e-9);
  });
});

describe('an astigmatic system', () => {
  const points = ['power', ...places] as const;
  const toric = ({ radius, ...medium }: Surface, steepMeridian: number) => ({ ...medium, flatRadius: radius, steepRadius: radius, steepMeridian });

  test('with equal radii is the spherical one, in every meridian', () =>
    fc.assert(fc.property(system, meridianOf, (given, meridian) => {
      const plain = traced(given);
      const both = traceToric({ ...given, surfaces: given.surfaces.map((surface) => toric(surface, meridian)) });
      for (const point of points) {
        near(both[point].flat, plain[point], 1e-6);
        near(both[point].steep, plain[point], 1e-6);
      }
    }), { ...RUNS, numRuns: 200 }));

  test('whose meridians agree is two spherical ones', () =>
    fc.assert(fc.property(toricEye, meridianOf, (eye, meridian) => {
      const surfaces = eye.surfaces.map((surface) => ({ ...surface, steepMeridian: meridian }));
      const both = traceToric({ surfaces });
      const alone = (radius: 'flatRadius' | 'steepRadius') => trace({ surfaces: surfaces.map((surface) => ({ radius: surface[radius], indexAfter: surface.indexAfter, gapAfter: surface.gapAfter })) });
      const [flat, steep] = [alone('flatRadius'), alone('steepRadius')].sort((a, b) => a.power - b.power) as [Cardinals, Cardinals];
      fc.pre(steep.power - flat.power > 0.01);
      near(both.asymmetry, 0, 1e-9);
      for (const point of ['power', 'frontPrincipal', 'backPrincipal', 'frontNodal', 'backNodal'] as const) {
        near(both[point].flat, flat[point], 1e-7);
        near(both[point].steep, steep[point], 1e-7);
      }
      near(Math.min(both.backFocus.flat, both.backFocus.steep), Math.min(flat.backFocus, steep.backFocus), 1e-7);
      near(Math.max(both.frontFocus.flat, both.frontFocus.steep), Math.max(flat.frontFocus, steep.frontFocus), 1e-7);
      // Which of the two is the strong one depends on the signs of its surfaces; the direction is one of the two.
      near(Math.min(apart(both.power.steepMeridian, meridian), apart(both.power.steepMeridian, meridian + 90)), 0, 1e-6);
    }), { ...RUNS, numRuns: 200 }));

  test('turned as a whole turns its results and nothing else', () =>
    fc.assert(fc.property(toricEye, between(0, 179), (eye, degrees) => {
      const [before, after] = [traceToric(eye), traceToric({ surfaces: eye.surfaces.map(turnedBy(degrees)) })];
      near(after.asymmetry, before.asymmetry, 1e-9);
      for (const point of points) {
        near(after[point].flat, before[point].flat, 1e-7);
        near(after[point].steep, before[point].steep, 1e-7);
      }
      for (const point of ['power', 'frontFocus', 'backFocus'] as const) {
        if (Math.abs(before[point].steep - before[point].flat) > 0.02) near(apart(after[point].steepMeridian, before[point].steepMeridian + degrees), 0, 1e-6);
      }
    }), { ...RUNS, numRuns: 200 }));

  test('seen from behind exchanges its foci, and has the transposed power', () =>
    fc.assert(fc.property(toricEye, (eye) => {
      const ahead = traceToric(eye);
      const indices = [1, ...eye.surfaces.map(({ indexAfter }) => indexAfter)];
      const length = lengthOf(eye as unknown as EyeSystem);
      const astern = traceToric({
        indexBefore: indices.at(-1)!,
        surfaces: eye.surfaces.map((_, i) => {
          const turned = eye.surfaces.length - 1 - i;
          const { flatRadius, steepRadius, steepMeridian } = eye.surfaces[turned]!;
          return { flatRadius: -flatRadius, steepRadius: -steepRadius, steepMeridian, indexAfter: indices[turned]!, gapAfter: eye.surfaces[turned - 1]?.gapAfter ?? 0 };
        }),
      });
      near(astern.asymmetry, -ahead.asymmetry, 1e-9);
      for (const meridian of ['flat', 'steep'] as const) {
        near(astern.power[meridian], ahead.power[meridian], 1e-7);
        near(astern.frontFocus[meridian], length - ahead.backFocus[meridian], 1e-7);
        near(astern.backPrincipal[meridian], length - ahead.frontPrincipal[meridian], 1e-7);
      }
    }), { ...RUNS, numRuns: 200 }));

  test('equal cylinders crossed at right angles make a sphere', () =>
    fc.assert(fc.property(between(-10, 10), meridianOf, (power, axis) => {
      fc.pre(Math.abs(power) > 0.01);
      const made = traceToric({ surfaces: [0, 90].map((turn) => ({ lens: { sphere: 0, cylinder: power, axis: (axis + turn) % 180 }, gapAfter: 0 })) });
      near(made.power.flat, power, 1e-10);
      near(made.power.steep, power, 1e-10);
      near(made.backFocus.flat, 1000 / power, 1e-6);
    }), { ...RUNS, numRuns: 200 }));

  test('eigenvectors find for crossed thin lenses what power vectors find', () =>
    fc.assert(fc.property(fc.array(fc.record({ sphere: between(-10, 10), cylinder: between(-8, 8), axis: meridianOf }), { minLength: 1, maxLength: 4 }), (lenses) => {
      const matrix = lenses.map(toPowerVector).reduce((sum, { m, j0, j45 }) => [[sum[0]![0]! + m + j0, sum[0]![1]! + j45], [sum[1]![0]! + j45, sum[1]![1]! + m - j0]], [[0, 0], [0, 0]]);
      const { flat, steep, steepMeridian }: Principal = principalPowers(matrix);
      const one = combine(...lenses);
      near(steep, one.sphere, 1e-9);
      near(flat, one.sphere + one.cylinder, 1e-9);
      if (steep - flat > 1e-6) near(apart(steepMeridian, one.axis), 0, 1e-6);
    }), { ...RUNS, numRuns: 200 }));

  test('is asymmetric only where surfaces at a distance are crossed obliquely', () => {
    const lens = (axis: number, gapAfter: number) => ({ lens: { sphere: 20, cylinder: -6, axis }, gapAfter });
    const asymmetry = (degrees: number, gap: number): number => (traceToric({ surfaces: [lens(0, gap), lens(degrees, 0)] }) as ToricCardinals).asymmetry;
    // t·F₂·F₁ of two cylinders: its mixed terms differ by 2·t·(C/2)·(C/2)·sin 2δ.
    for (const degrees of [20, 45, 80]) near(Math.abs(asymmetry(degrees, 10)), 0.01 * 9 * Math.sin((2 * degrees * Math.PI) / 180), 1e-12);
    for (const [degrees, gap] of [[45, 0], [0, 10], [90, 10]] as const) near(asymmetry(degrees, gap), 0, 1e-12);
  });

  test('the 4 × 4 matrix keeps the area of a bundle: it is symplectic', () =>
    fc.assert(fc.property(toricEye, (eye: ToricSystem) => {
      const m = toricMatrix(eye);
      // Mᵀ·J·M = J with J the exchange of heights and slopes.
      const j = (a: number, b: number): number => (b === a + 2 ? 1 : a === b + 2 ? -1 : 0);
      for (let r = 0; r < 4; r += 1) {
        for (let c = 0; c < 4; c += 1) {
          let sum = 0;
          for (let a = 0; a < 4; a += 1) for (let b = 0; b < 4; b += 1) sum += m[a]![r]! * j(a, b) * m[b]![c]!;
          near(sum, j(r, c), 1e-12);
        }
      }
    }), { ...RUNS, numRuns: 100 }));
});
