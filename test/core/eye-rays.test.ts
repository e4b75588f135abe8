/** The Gaussian figures against real rays of tiny height. */
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { SCHEMATIC_EYES, crossSection, leastConfusion, lineFoci, pencilThrough, trace, traceToric, type Cardinals, type SchematicEye } from '../../core/eye.js';
import { bundle, crossing, extent, refract, signChange, signedArea, throughAll, type Built, type Ray } from './eye-rays.js';
import { apart, built, system, toricEye } from './eye-support.js';
import { RUNS, between } from './plans.js';

/** Height of the rays, mm. Aberrations grow with its square, rounding with its inverse. */
const HEIGHT = 1e-3;

const worst: Record<string, number> = {};
function near(what: string, got: number, expected: number, allowed: number): void {
  const error = Math.abs(got - expected);
  worst[what] = Math.max(worst[what] ?? 0, error);
  expect(error, `${what}: ${got} against ${expected}`).toBeLessThanOrEqual(allowed);
}

afterAll(() => {
  for (const [what, error] of Object.entries(worst)) console.log(`${what.padEnd(48)} worst ${error.toExponential(1)}`);
});

const conics = fc.array(between(-2, 0.5), { minLength: 10, maxLength: 10 });

/** Foci, principal and nodal points as real rays make them: none of the formulae of the core, but meetings of lines. */
function measured(surfaces: Built[]): Cardinals {
  const backwards = reversed(surfaces);
  const [front, back] = [measuredBehind(backwards), measuredBehind(surfaces)];
  const last = surfaces.at(-1)!;
  const power = (1000 * last.indexAfter) / back.focal;
  // A ray aimed at the front nodal point leaves from the back one in its own direction; so far they are from the foci.
  return {
    power,
    frontFocus: last.vertex - front.focus,
    backFocus: back.focus,
    frontPrincipal: last.vertex - front.principal,
    backPrincipal: back.principal,
    frontNodal: last.vertex - front.focus + back.focal,
    backNodal: back.focus - front.focal,
  };
}

/**
 * Focus and principal plane behind a system: a ray parallel to the axis meets it there, and its own height here. Two
 * heights, so that the aberration, which grows with their square, can be taken out.
 */
function measuredBehind(surfaces: Built[]): { focus: number; principal: number; focal: number } {
  const [low, high] = [meetings(surfaces, HEIGHT), meetings(surfaces, 2 * HEIGHT)];
  const [focus, principal] = [(4 * low.focus - high.focus) / 3, (4 * low.principal - high.principal) / 3];
  return { focus, principal, focal: focus - principal };
}

function meetings(surfaces: Built[], height: number): { focus: number; principal: number } {
  const { at, to } = throughAll({ at: [height, 0, -5], to: [0, 0, 1] }, surfaces);
  return { focus: at[2] - (at[0] * to[2]) / to[0], principal: at[2] - ((at[0] - height) * to[2]) / to[0] };
}

function reversed(surfaces: Built[]): Built[] {
  const end = surfaces.at(-1)!.vertex;
  return [...surfaces].reverse().map((s) => ({ ...s, vertex: end - s.vertex, flatRadius: -s.flatRadius, steepRadius: -s.steepRadius, indexBefore: s.indexAfter, indexAfter: s.indexBefore }));
}

describe('real rays through spherical and conical surfaces', () => {
  test('find the cardinal points of any system', () =>
    fc.assert(fc.property(system, conics, (given, q) => {
      let ours: Cardinals;
      try {
        ours = trace(given);
      } catch {
        return fc.pre(false);
      }
      fc.pre(Math.abs(ours.power) > 5);
      // An angle is right to 1e-13 or so, over a height of 1e-3 mm; long focal lengths magnify that by their square.
      const allowed = 1e-9 * Math.max(1, (1000 / ours.power) ** 2 / 100);
      const found = measured(built(given, q));
      near('power, D', ours.power, found.power, 1e-7);
      for (const key of Object.keys(found) as (keyof Cardinals)[]) {
        if (key !== 'power') near('cardinal points, mm', ours[key], found[key], allowed);
      }
    }), { ...RUNS, numRuns: 2000 }));

  test.each(Object.entries(SCHEMATIC_EYES) as [string, SchematicEye][])('find the cardinal points of the schematic eye %s', (_, eye) => {
    if (eye.surfaces.some(({ gradient }) => gradient)) return;
    const found = measured(built(eye, (eye.conic ?? []).flatMap((q) => [q, q])));
    const ours = trace(eye);
    for (const key of Object.keys(found) as (keyof Cardinals)[]) near(`schematic eyes, ${key === 'power' ? 'D' : 'mm'}`, ours[key], found[key], key === 'power' ? 1e-5 : 1e-6);
  });
});

describe('real rays through a graded index', () => {
  const eye: SchematicEye = SCHEMATIC_EYES.liouBrennan;

  /** d²r/dt² = n·∇n with ds = n·dt (Sharma, Kumar & Ghatak 1982), fourth order; stops at the flat plane `end`, which the ray crosses within the last step. */
  function graded(ray: Ray, vertex: number, end: (ray: Ray) => number, index: number, g: { axial: number; axialSquare: number; radial: number }): Ray {
    const n = ([x, y, z]: readonly number[]): number => index + g.axial * (z! - vertex) + g.axialSquare * (z! - vertex) ** 2 + g.radial * (x! ** 2 + y! ** 2);
    const pull = (p: readonly number[]): number[] => {
      const m = n(p);
      return [2 * m * g.radial * p[0]!, 2 * m * g.radial * p[1]!, m * (g.axial + 2 * g.axialSquare * (p[2]! - vertex))];
    };
    let [p, v] = [[...ray.at], ray.to.map((c) => c * n(ray.at))];
    const step = (h: number): [number[], number[]] => {
      const plus = (a: number[], k: number, b: number[]): number[] => a.map((value, i) => value + k * b[i]!);
      const a1 = pull(p), v1 = v;
      const v2 = plus(v, h / 2, a1), a2 = pull(plus(p, h / 2, v1));
      const v3 = plus(v, h / 2, a2), a3 = pull(plus(p, h / 2, v2));
      const v4 = plus(v, h, a3), a4 = pull(plus(p, h, v3));
      return [p.map((value, i) => value + (h / 6) * (v1[i]! + 2 * v2[i]! + 2 * v3[i]! + v4[i]!)), v.map((value, i) => value + (h / 6) * (a1[i]! + 2 * a2[i]! + 2 * a3[i]! + a4[i]!))];
    };
    const here = (): Ray => {
      const size = Math.hypot(...v);
      return { at: [p[0]!, p[1]!, p[2]!], to: [v[0]! / size, v[1]! / size, v[2]! / size] };
    };
    for (let i = 0; i < 400 && end(here()) > 1e-13; i += 1) [p, v] = step(Math.min(0.01, end(here()) / v[2]!));
    return here();
  }

  test('find the back focus of the eye of Liou and Brennan', () => {
    const surfaces = built({ ...eye, surfaces: eye.surfaces.map(({ radius, indexAfter, gapAfter }) => ({ radius, indexAfter, gapAfter })) }, eye.conic!.flatMap((q) => [q, q]));
    const [, , , , last] = surfaces as [Built, Built, Built, Built, Built];
    const plane = surfaces[3]!.vertex;
    let ray: Ray = { at: [HEIGHT, 0, -5], to: [0, 0, 1] };
    for (const surface of surfaces.slice(0, 3)) ray = refract(ray, surface);
    const [first, second] = [eye.surfaces[2]!, eye.surfaces[3]!];
    ray = graded(ray, surfaces[2]!.vertex, ({ at }) => plane - at[2], first.indexAfter, first.gradient!);
    // The two halves of the lens agree in index where they meet, so nothing is refracted there.
    expect(first.indexAfter + first.gradient!.axial * first.gapAfter! + first.gradient!.axialSquare * first.gapAfter! ** 2).toBeCloseTo(second.indexAfter, 4);
    ray = graded(ray, plane, ({ at }) => last.vertex - HEIGHT ** 2 / 16 - at[2], second.indexAfter, second.gradient!);
    const indexThere = second.indexAfter + second.gradient!.axialSquare * second.gapAfter! ** 2;
    const out = refract(ray, { ...last, indexBefore: indexThere });
    near('focus of Liou & Brennan, mm', trace(eye).backFocus, out.at[2] - (out.at[0] * out.to[2]) / out.to[0], 1e-5);
  });
});

describe('real rays through toric surfaces crossed at any angle', () => {
  test('make the line foci, the cross-sections and the circle of least confusion', () =>
    fc.assert(fc.property(toricEye, conics, (eye, q) => {
      const surfaces = built(eye, q);
      const rays = bundle(surfaces, HEIGHT);
      const pencil = pencilThrough(eye, { pupil: 2 * HEIGHT * 1000 });
      const foci = lineFoci(pencil);
      const [first, second] = [foci[0]!, foci[1]!];
      fc.pre(second.position - first.position > 0.05);

      const middle = (first.position + second.position) / 2;
      const area = (z: number): number => signedArea(rays, z);
      near('line foci, mm', first.position, signChange(area, pencil.from, middle), 2e-5);
      near('line foci, mm', second.position, signChange(area, middle, 2 * second.position), 2e-5);
      for (const line of [first, second]) {
        const seen = extent(rays, line.position);
        near('length of a line, share', seen.longer * 1000, line.length, 1e-5 * Math.max(1, line.length));
        near('direction of a line, °', apart(seen.direction, line.direction), 0, 0.002);
      }
      for (const share of [0, 0.3, 0.8, 1.1]) {
        const z = pencil.from + share * (second.position - pencil.from);
        const [seen, ours] = [extent(rays, z), crossSection(pencil, z)];
        near('axes of a section, share', seen.longer * 1000, ours.longer, 1e-5);
        near('axes of a section, share', seen.shorter * 1000, ours.shorter, 2e-5);
        if (ours.longer - ours.shorter > 0.02) near('direction of a section, °', apart(seen.direction, ours.direction), 0, 0.005);
      }
      const least = leastConfusion(pencil)!;
      const seen = extent(rays, least.position);
      near('least confusion, share', seen.longer * 1000, least.diameter, 2e-5);
      for (const step of [-0.02, 0.02]) expect(extent(rays, least.position + step * (second.position - first.position)).longer * 1000).toBeGreaterThan(least.diameter);
    }), { ...RUNS, numRuns: 300 }));

  test('agree with the 4 × 4 matrices on where light from afar comes together, and light from the back', () =>
    fc.assert(fc.property(toricEye, conics, (eye, q) => {
      const ours = traceToric(eye);
      const surfaces = built(eye, q);
      const ahead = bundle(surfaces, HEIGHT);
      const astern = bundle(reversed(surfaces), HEIGHT);
      const length = surfaces.at(-1)!.vertex;
      fc.pre(Math.abs(ours.backFocus.flat - ours.backFocus.steep) > 0.05 && Math.abs(ours.frontFocus.flat - ours.frontFocus.steep) > 0.05);
      const backMiddle = (ours.backFocus.flat + ours.backFocus.steep) / 2;
      near('back foci, mm', ours.backFocus.steep, signChange((z) => signedArea(ahead, z), length, backMiddle), 2e-5);
      near('back foci, mm', ours.backFocus.flat, signChange((z) => signedArea(ahead, z), backMiddle, 60), 2e-5);
      const frontMiddle = length - (ours.frontFocus.flat + ours.frontFocus.steep) / 2;
      near('front foci, mm', length - ours.frontFocus.steep, signChange((z) => signedArea(astern, z), length, frontMiddle), 2e-5);
      near('front foci, mm', length - ours.frontFocus.flat, signChange((z) => signedArea(astern, z), frontMiddle, 90), 2e-5);
      const line = extent(ahead, ours.backFocus.steep);
      near('line across its meridian, °', apart(line.direction, ours.backFocus.steepMeridian), 90, 0.002);
    }), { ...RUNS, numRuns: 200 }));

  test('see a steep vertical meridian make its line first, and horizontal', () => {
    const surfaces = built({ surfaces: [{ flatRadius: 8, steepRadius: 7.6, steepMeridian: 90, indexAfter: 1.336, gapAfter: 0 }] });
    const rays = bundle(surfaces, HEIGHT);
    const foci = lineFoci(pencilThrough({ surfaces: [{ flatRadius: 8, steepRadius: 7.6, steepMeridian: 90, indexAfter: 1.336, gapAfter: 0 }] }, { pupil: 4 }));
    expect(foci[0]!.position).toBeLessThan(foci[1]!.position);
    expect(foci[0]!.direction).toBeCloseTo(180, 9);
    const points = rays.map((ray) => crossing(ray, foci[0]!.position));
    expect(Math.max(...points.map(([x]) => x))).toBeGreaterThan(1000 * Math.max(...points.map(([, y]) => Math.abs(y))));
  });
});
