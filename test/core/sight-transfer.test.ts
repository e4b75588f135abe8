import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  besselJ1, cutOffFrequency, discTransform, refractionOf, transfer, wavefront, type TransferOptions,
} from '../../core/sight.js';
import type { Refraction } from '../../core/types.js';
import { quickDiscTransform } from '../../core/sight-bessel.js';
import { pointsFor, waveTransfer } from '../../core/sight-wave.js';
import { gaussRule } from '../../core/sight-quadrature.js';
import { RUNS, between } from './plans.js';
import { RADIANS, SHARP, rimRay } from './sight-support.js';

const refraction = fc.record({ sphere: between(-6, 6), cylinder: between(-4, 4), axis: between(0, 180) });
const pupil = between(1, 9);
const frequency = between(-60, 60);

describe('J1', () => {
  // J1(x) = (1/π)·∫ cos(t − x·sin t) dt from 0 to π; the rectangle rule is exact to rounding for a periodic integrand.
  const bessel = (x: number, n = 4000): number => {
    let total = 0;
    for (let i = 0; i < n; i += 1) total += Math.cos((2 * Math.PI * i) / n - x * Math.sin((2 * Math.PI * i) / n));
    return total / n;
  };

  test('is its integral, on both sides of where the formula changes and far out', () => {
    let worst = 0;
    for (let x = 0; x <= 200; x += 0.173) worst = Math.max(worst, Math.abs(besselJ1(x) - bessel(x)));
    for (const x of [13.999999, 14, 14.000001, 500, 1000]) worst = Math.max(worst, Math.abs(besselJ1(x) - bessel(x)));
    console.log(`J1: worst error ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-10);
  });

  test('is odd, and the disc made of it even, 1 at 0 and continuous there', () => {
    for (const x of [1e-9, 0.3, 5, 20]) {
      expect(besselJ1(-x)).toBe(-besselJ1(x));
      expect(discTransform(-x)).toBe(discTransform(x));
    }
    expect(besselJ1(0)).toBe(0);
    expect(discTransform(0)).toBe(1);
    expect(Math.abs(discTransform(1e-5) - 1)).toBeLessThan(1e-10);
  });

  test('from the table is within 5e-9, between its points and beyond its end', () => {
    const quick = quickDiscTransform();
    let worst = 0;
    for (let x = 0; x < 300; x += 0.00731) worst = Math.max(worst, Math.abs(quick(x) - discTransform(x)));
    console.log(`2·J1(x)/x from the table: worst error ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(5e-9);
  });
});

test.each([1, 2, 5, 16, 96, 512])('Gauss’s rule of %d points adds up to 1 and is exact for a high power', (n) => {
  const { at, weight } = gaussRule(n);
  const power = Math.min(2 * n - 1, 60);
  let [one, moment] = [0, 0];
  at.forEach((x, i) => {
    one += weight[i]!;
    moment += weight[i]! * x ** power;
  });
  expect(Math.abs(one - 1)).toBeLessThan(1e-13);
  expect(Math.abs(moment - 1 / (power + 1))).toBeLessThan(1e-13);
});

describe('the wavefront', () => {
  test('and its refraction are each other’s inverse', () => {
    fc.assert(fc.property(refraction, pupil, (r, mm) => {
      const back = wavefront(refractionOf(wavefront(r, mm), mm), mm);
      const there = wavefront(r, mm);
      expect(Math.max(...(['c20', 'c22', 'c2m2'] as const).map((c) => Math.abs(back[c] - there[c])))).toBeLessThan(1e-9);
    }), RUNS);
  });

  test('of an eye without an error is three zeros without a sign', () => {
    for (const axis of [45, 90, 135, 180]) expect([axis, wavefront({ ...SHARP, axis }, 4)]).toEqual([axis, { c20: 0, c22: 0, c2m2: 0 }]);
  });

  test('has its refraction in minus cylinders, or in plus cylinders where these are asked for', () => {
    const found = wavefront({ sphere: 1, cylinder: -2, axis: 30 }, 5);
    for (const [sign, sphere, cylinder, axis] of [[undefined, 1, -2, 30], ['minus', 1, -2, 30], ['plus', -1, 2, 120]] as const) {
      const back = refractionOf(found, 5, sign);
      expect([back.sphere - sphere, back.cylinder - cylinder, back.axis - axis].map((off) => Math.abs(off) < 1e-9)).toEqual([true, true, true]);
    }
  });

  test('of an eye that needs a minus lens has c20 > 0; a minus cylinder at 45 has c2m2 < 0', () => {
    expect(wavefront({ sphere: -1, cylinder: 0, axis: 180 }, 6).c20).toBeGreaterThan(0);
    expect(wavefront({ sphere: 0, cylinder: -1, axis: 45 }, 6).c2m2).toBeLessThan(0);
  });
});

/**
 * The mean of exp(i·2π·[W(x + s/2) − W(x − s/2)]/λ) over the overlap of two pupils by Simpson's rule in two dimensions,
 * W from the Zernike coefficients: it shares the wavefront with the core and nothing else.
 */
function byAutocorrelation({ refraction: r, pupilMm, wavelengthNm }: Required<Omit<TransferOptions, 'model'>>, fx: number, fy: number): number {
  const { c20, c22, c2m2 } = wavefront(r, pupilMm);
  const W = (x: number, y: number): number =>
    c20 * Math.sqrt(3) * (2 * (x * x + y * y) - 1) + c22 * Math.sqrt(6) * (x * x - y * y) + c2m2 * 2 * Math.sqrt(6) * x * y;
  const f = Math.hypot(fx, fy);
  const [ux, uy] = [fx / f, fy / f];
  // Half the shift, in radii of the pupil.
  const shift = f / cutOffFrequency(pupilMm, wavelengthNm);
  const end = Math.acos(shift);
  const steps = 240;
  const weight = (i: number): number => (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) / (3 * steps);
  let total = 0;
  for (let i = 0; i <= steps; i += 1) {
    const angle = end * ((2 * i) / steps - 1);
    const [across, half] = [Math.sin(angle), Math.cos(angle) - shift];
    let chord = 0;
    for (let j = 0; j <= steps; j += 1) {
      const along = half * ((2 * j) / steps - 1);
      const at = (a: number): number => W(a * ux - across * uy, a * uy + across * ux);
      chord += weight(j) * Math.cos((2 * Math.PI * (at(along + shift) - at(along - shift))) / (wavelengthNm / 1000));
    }
    total += weight(i) * chord * 2 * half * Math.cos(angle) * 2 * end;
  }
  return total / Math.PI;
}

describe('the transfer', () => {
  test.each(['geometric', 'wave'] as const)('%s is 1 at 0, even, at most 1, and the same for the opposite error', (model) => {
    fc.assert(fc.property(refraction, pupil, frequency, frequency, (r, pupilMm, fx, fy) => {
      const made = transfer({ refraction: r, pupilMm, model });
      const opposite = transfer({ refraction: { sphere: -r.sphere, cylinder: -r.cylinder, axis: r.axis }, pupilMm, model });
      expect(made(0, 0)).toBe(1);
      expect(Math.abs(made(fx, fy) - made(-fx, -fy))).toBeLessThan(1e-12);
      expect(Math.abs(made(fx, fy) - opposite(fx, fy))).toBeLessThan(1e-12);
      expect(Math.abs(made(fx, fy))).toBeLessThanOrEqual(1 + 1e-12);
    }), RUNS);
  });

  test('as waves is the autocorrelation of the pupil, cylinders aslant included', () => {
    let worst = 0;
    const cases: [Refraction, number, number][] = [
      [{ sphere: 0, cylinder: -1, axis: 30 }, 3, 555], [{ sphere: 0.75, cylinder: -1.5, axis: 110 }, 4, 450],
      [{ sphere: -0.5, cylinder: 0.25, axis: 75 }, 6, 650], [SHARP, 2, 555], [{ sphere: 1, cylinder: -3, axis: 180 }, 3, 780],
    ];
    for (const [r, pupilMm, wavelengthNm] of cases) {
      const made = transfer({ refraction: r, pupilMm, wavelengthNm, model: 'wave' });
      for (const [fx, fy] of [[3, 0], [0, 3], [8, 5], [-7, 12], [20, -3], [30, 30]] as const) {
        worst = Math.max(worst, Math.abs(made(fx, fy) - byAutocorrelation({ refraction: r, pupilMm, wavelengthNm }, fx, fy)));
      }
    }
    console.log(`transfer against the two-dimensional autocorrelation: worst error ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-7);
  });

  /** The integral behind `waveTransfer`, by Simpson's rule. */
  function bySimpson(apart: number, along: number, across: number, steps: number): number {
    const end = Math.acos(apart);
    let total = 0;
    for (let i = 0; i <= steps; i += 1) {
      const t = (end * i) / steps;
      const half = Math.cos(t) - apart;
      const chord = along * half === 0 ? half : Math.sin(along * half) / along;
      total += chord * Math.cos(t) * Math.cos(across * Math.sin(t)) * (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2);
    }
    return (4 / Math.PI) * ((total * end) / (3 * steps));
  }

  test('as waves keeps its accuracy however often the phase turns: the same integral by 200 000 steps', () => {
    let worst = 0;
    for (const [apart, along, across] of [[0.01, 0, 5], [0.1, 300, 20], [0.3, -40, 900], [0.02, 2500, 1500], [0.7, 3, -8], [0.999, 50, 50], [0.4, 1e-5, 4]] as const) {
      worst = Math.max(worst, Math.abs(waveTransfer(apart, along, across) - bySimpson(apart, along, across, 200_000)));
    }
    console.log(`transfer as waves, up to 4000 radians of phase: worst error ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-10);
  });

  // Where the chord is hardly longer than rounding, and for as much phase along the shift as across it: 5000 steps are enough.
  test('as waves takes points enough for the phase along the shift, across it, and for both', () => {
    let worst = 0;
    for (const [apart, along, across] of [[0.01, 1.009e-4, 0], [0.4, 60, 0], [0.1, 45, 45], [0.02, 0, 60], [0.3, -40, 30], [0.6, 90, 20], [0.9, 300, 80]] as const) {
      worst = Math.max(worst, Math.abs(waveTransfer(apart, along, across) - bySimpson(apart, along, across, 5000)));
    }
    console.log(`transfer as waves, some dozens of radians of phase: worst error ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-10);
  });

  test('as waves takes the smallest rule that has 0.6 points a radian and 16 beside', () => {
    const sizes = Array.from({ length: 12 }, (_, k) => [16 * 2 ** k, 24 * 2 ** k]).flat();
    // 32 / 0.6 wants 48 points to the bit.
    for (const phase of [0, 1, 13.3, 13.4, 32 / 0.6, 80, 186, 187, 3386, ...Array.from({ length: 200 }, (_, i) => i * 37.7)]) {
      expect([phase, pointsFor(phase)]).toEqual([phase, sizes.find((points) => points >= 16 + 0.6 * phase)]);
    }
  });

  test('as waves ends at the cut-off and is 0 beyond it', () => {
    for (const r of [SHARP, { sphere: 1, cylinder: -2, axis: 20 }]) {
      const made = transfer({ refraction: r, pupilMm: 2, model: 'wave' });
      const end = cutOffFrequency(2);
      expect(made(0.999 * end, 0)).not.toBe(0);
      for (const share of [1, 1.001, 3]) expect(Math.abs(made(0, share * end))).toBeLessThan(1e-12);
    }
  });

  test('by rays is the transform of the blur: the mean of cos(2π·f·ray) over all rays', () => {
    let worst = 0;
    fc.assert(fc.property(refraction, between(1, 6), between(-5, 5), between(-5, 5), (r, pupilMm, fx, fy) => {
      const shown = { refraction: r, pupilMm, degreesPerPixel: 1 };
      const spokes = 96;
      let total = 0;
      for (let spoke = 0; spoke < spokes; spoke += 1) {
        const [dx, dy] = rimRay(shown, (2 * Math.PI * spoke) / spokes);
        const { at, weight } = gaussRule(32);
        at.forEach((radius, i) => (total += weight[i]! * 2 * radius * Math.cos(2 * Math.PI * radius * (fx * dx + fy * dy))));
      }
      worst = Math.max(worst, Math.abs(transfer(shown)(fx, fy) - total / spokes));
    }), { ...RUNS, numRuns: 100 });
    console.log(`transfer by rays against the mean over rays: worst error ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-9);
  });

  test('of a cylinder with axis 180 lets upright gratings through and blurs level ones: its power stands upright', () => {
    const made = transfer({ refraction: { sphere: 0, cylinder: -1, axis: 180 }, pupilMm: 4 });
    expect(made(20, 0)).toBe(1);
    expect(Math.abs(made(0, 20))).toBeLessThan(0.2);
  });

  test('of an oblique cylinder lets through the gratings that vary along its axis on the dial', () => {
    const made = transfer({ refraction: { sphere: 0, cylinder: -2, axis: 30 }, pupilMm: 4 });
    const along = (degrees: number): number => made(15 * Math.cos(degrees * RADIANS), 15 * Math.sin(degrees * RADIANS));
    expect(Math.abs(along(30) - 1)).toBeLessThan(1e-12);
    for (const other of [0, 60, 90, 120, 150]) expect(Math.abs(along(other)), `${other}°`).toBeLessThan(0.3);
  });
});

describe('rays and waves', () => {
  const gap = (r: Refraction, pupilMm: number, end: number): number => {
    const [rays, waves] = (['geometric', 'wave'] as const).map((model) => transfer({ refraction: r, pupilMm, model })) as [ReturnType<typeof transfer>, ReturnType<typeof transfer>];
    let worst = 0;
    for (let f = 0; f <= end; f += 0.25) {
      for (let angle = 0; angle < 180; angle += 15) {
        const [fx, fy] = [f * Math.cos(angle * RADIANS), f * Math.sin(angle * RADIANS)];
        worst = Math.max(worst, Math.abs(rays(fx, fy) - waves(fx, fy)));
      }
    }
    return worst;
  };

  // The two differ by the overlap of the shifted pupils: at most about 4/π times the share of the cut-off.
  test.each([
    [{ sphere: 3, cylinder: 0, axis: 180 }, 6], [{ sphere: 1, cylinder: -2, axis: 35 }, 6], [{ sphere: 0, cylinder: -3, axis: 80 }, 8],
  ] as const)('agree where the blur is wide: %o, %d mm', (r, pupilMm) => {
    const end = 10;
    const share = end / cutOffFrequency(pupilMm, 555);
    const found = gap(r, pupilMm, end);
    console.log(`rays and waves, ${r.sphere}/${r.cylinder} at ${pupilMm} mm, up to ${end} cycles/°: ${found.toFixed(4)}`);
    expect(found).toBeLessThan((4 / Math.PI) * share);
  });

  test('differ where diffraction rules: in focus, and the more the smaller the pupil', () => {
    const [wide, middle, small] = [6, 3, 1.5].map((mm) => gap(SHARP, mm, 30)) as [number, number, number];
    expect(small).toBeGreaterThan(0.7);
    expect(middle).toBeGreaterThan(wide + 0.15);
    expect(small).toBeGreaterThan(middle + 0.15);
  });
});
