import FFT from 'fft.js';
import seedrandom from 'seedrandom';
import { describe, expect, test } from 'vitest';
import { factorsOf, fourierPlan, invertLanes, makeLanes, transformLanes } from '../../core/sight-fourier.js';
import { paddedSide } from '../../core/sight-planes.js';
import { transfer } from '../../core/sight.js';
import { blurredPlane, meanOverBlur, type Shown } from './sight-support.js';

const LANES = 3;

function noise(length: number, seed: string): Float64Array {
  const draw = seedrandom(seed);
  return Float64Array.from({ length }, () => draw() - 0.5);
}

/** The definition, column by column. */
function slowly(re: Float64Array, im: Float64Array, n: number): [Float64Array, Float64Array] {
  const out: [Float64Array, Float64Array] = [new Float64Array(re.length), new Float64Array(re.length)];
  for (let lane = 0; lane < LANES; lane += 1) {
    for (let k = 0; k < n; k += 1) {
      for (let j = 0; j < n; j += 1) {
        const angle = (-2 * Math.PI * ((j * k) % n)) / n;
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        out[0][k * LANES + lane]! += re[j * LANES + lane]! * c - im[j * LANES + lane]! * s;
        out[1][k * LANES + lane]! += re[j * LANES + lane]! * s + im[j * LANES + lane]! * c;
      }
    }
  }
  return out;
}

const furthest = (a: ArrayLike<number>, b: ArrayLike<number>): number => Array.from(a).reduce((worst, value, i) => Math.max(worst, Math.abs(value - b[i]!)), 0);

describe('the transform', () => {
  test.each([1, 2, 3, 4, 5, 6, 8, 9, 10, 12, 15, 16, 25, 30, 40, 48, 64, 72, 90, 128, 160, 240])('of length %d is the sum that defines it, and its inverse leads back', (n) => {
    const [re, im] = [noise(n * LANES, `re${n}`), noise(n * LANES, `im${n}`)];
    const lanes = makeLanes(n, LANES);
    lanes.re.set(re);
    lanes.im.set(im);
    const [wantRe, wantIm] = slowly(re, im, n);
    transformLanes(fourierPlan(n), lanes);
    expect(furthest(lanes.re, wantRe)).toBeLessThan(1e-11);
    expect(furthest(lanes.im, wantIm)).toBeLessThan(1e-11);
    invertLanes(fourierPlan(n), lanes);
    expect(furthest(lanes.re.map((value) => value / n), re)).toBeLessThan(1e-14);
    expect(furthest(lanes.im.map((value) => value / n), im)).toBeLessThan(1e-14);
  });

  // By eight first, which reads them where they lie, and by other factors, for which they are brought together before.
  test.each([[8, 2, 23], [16, 7, 2], [64, 3, 200], [12, 2, 31], [15, 7, 2]])('of length %d takes numbers that lie %d apart in columns that lie %d apart', (n, step, laneStep) => {
    const length = 1 + (n - 1) * step + (LANES - 1) * laneStep;
    const [re, im] = [noise(length, `far re${n}`), noise(length, `far im${n}`)];
    const inLine = (from: Float64Array): Float64Array => Float64Array.from({ length: n * LANES }, (_, i) => from[Math.floor(i / LANES) * step + (i % LANES) * laneStep]!);
    const [wantRe, wantIm] = slowly(inLine(re), inLine(im), n);
    const lanes = makeLanes(n, LANES);
    transformLanes(fourierPlan(n), lanes, { re, im, step, laneStep, lanesIn: LANES });
    expect(furthest(lanes.re, wantRe)).toBeLessThan(1e-11);
    expect(furthest(lanes.im, wantIm)).toBeLessThan(1e-11);
  });

  test.each([256, 512, 1024, 2048, 4096])('of length %d agrees with fft.js', (n) => {
    const [re, im] = [noise(n, `a${n}`), noise(n, `b${n}`)];
    const theirs = new FFT(n);
    const out = theirs.createComplexArray();
    theirs.transform(out, Array.from({ length: 2 * n }, (_, i) => (i % 2 ? im[(i - 1) / 2]! : re[i / 2]!)));
    const lanes = makeLanes(n, 1);
    lanes.re.set(re);
    lanes.im.set(im);
    transformLanes(fourierPlan(n), lanes);
    expect(furthest(lanes.re, out.filter((_, i) => i % 2 === 0))).toBeLessThan(1e-11);
    expect(furthest(lanes.im, out.filter((_, i) => i % 2 === 1))).toBeLessThan(1e-11);
  });

  test('knows which lengths it can do, and every padded side is one, even and wide enough', () => {
    expect([factorsOf(0), factorsOf(1), factorsOf(7), factorsOf(22), factorsOf(640)]).toEqual([null, [], null, null, [8, 8, 5, 2]]);
    expect(() => fourierPlan(14)).toThrow(/14/);
    for (let side = 1; side <= 2048; side += 13) {
      for (const reach of [0, 0.2, 3, 31, 400, 1024]) {
        const padded = paddedSide(side, reach);
        expect(factorsOf(padded)).not.toBeNull();
        expect(padded % 2).toBe(0);
        expect(padded).toBeGreaterThanOrEqual(side + 2 * reach);
      }
    }
  });
});

describe('a plane of light', () => {
  const CASES: [string, Shown][] = [
    ['rays, oblique', { refraction: { sphere: 0.5, cylinder: -1.5, axis: 25 }, pupilMm: 5, degreesPerPixel: 1 / 60 }],
    ['rays, dial', { refraction: { sphere: 0.5, cylinder: -1.5, axis: 25 }, pupilMm: 5, degreesPerPixel: 1 / 60, frame: 'dial' }],
    ['waves, oblique', { refraction: { sphere: 0.25, cylinder: -0.5, axis: 70 }, pupilMm: 3, degreesPerPixel: 1 / 90, model: 'wave' }],
  ];

  // Every frequency of the plane by its definition, times the transfer, and back by its definition.
  test.each(CASES)('is multiplied by the transfer at each frequency: %s', (_, shown) => {
    const [width, height] = [20, 18];
    const plane = noise(width * height, 'plane');
    const made = transfer(shown);
    const upward = shown.frame === 'dial' ? -1 : 1;
    const signed = (k: number, n: number): number => (k <= n / 2 ? k : k - n);
    const want = new Float64Array(width * height);
    for (let ky = 0; ky < height; ky += 1) {
      for (let kx = 0; kx < width; kx += 1) {
        const fx = signed(kx, width) / (width * shown.degreesPerPixel);
        const fy = (upward * signed(ky, height)) / (height * shown.degreesPerPixel);
        const edge = 2 * kx === width || 2 * ky === height;
        const factor = edge ? (made(fx, fy) + made(fx, -fy)) / 2 : made(fx, fy);
        let [re, im] = [0, 0];
        const angle = (x: number, y: number): number => 2 * Math.PI * ((kx * x) / width + (ky * y) / height);
        plane.forEach((value, i) => {
          re += value * Math.cos(angle(i % width, Math.floor(i / width)));
          im -= value * Math.sin(angle(i % width, Math.floor(i / width)));
        });
        for (let i = 0; i < want.length; i += 1) {
          const at = angle(i % width, Math.floor(i / width));
          want[i]! += (factor * (re * Math.cos(at) - im * Math.sin(at))) / (width * height);
        }
      }
    }
    const worst = furthest(blurredPlane(plane, width, height, shown), want);
    console.log(`plane against its definition, ${_}: worst error ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(2e-8);
  });

  test.each(CASES)('keeps the sum of its light to 1e-9: %s', (_, shown) => {
    const plane = noise(96 * 80, 'energy').map((value) => value + 0.5);
    const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);
    const [before, after] = [sum(plane), sum(blurredPlane(plane, 96, 80, shown))];
    console.log(`light after over light before, ${_}: 1 + ${(after / before - 1).toExponential(1)}`);
    expect(Math.abs(after / before - 1)).toBeLessThan(1e-9);
  });

  // A soft spot, narrow enough to be 0 at the edges and wide enough for its pixels to tell all about it.
  test.each([['patient', -1], ['dial', 1]] as const)('by rays is the mean of the scene over the blur ellipse, in the frame of the %s', (frame, right) => {
    const [size, sigma] = [120, 3];
    const spot = (x: number, y: number): number => Math.exp(-((x - 60) ** 2 + (y - 58) ** 2) / (2 * sigma * sigma));
    const plane = Float64Array.from({ length: size * size }, (_, i) => spot(i % size, Math.floor(i / size)));
    let worst = 0;
    for (const [sphere, cylinder, axis, pupilMm] of [[0, -1, 180, 4], [0, -1.5, 30, 5], [1, -0.5, 100, 4], [1, -2, 60, 4], [1.5, 0, 180, 4]] as const) {
      const shown: Shown = { refraction: { sphere, cylinder, axis }, pupilMm, degreesPerPixel: 1 / 60, frame };
      const ours = blurredPlane(plane, size, size, shown);
      // From the dial (x right, y up) to the picture (y down), mirrored for the patient.
      const scene = (x: number, y: number): number => spot(60 + right * x, 58 - y);
      for (const [x, y] of [[0, 0], [5, 3], [-4, 9], [10, -2], [-8, -8], [0, 12]] as const) {
        worst = Math.max(worst, Math.abs(ours[(58 - y) * size + 60 + right * x]! - meanOverBlur(scene, shown, x, y, 4000, 96)));
      }
    }
    console.log(`spot against its mean over the ellipse, ${frame}: worst error ${worst.toExponential(1)}`);
    expect(worst).toBeLessThan(1e-7);
  });
});
