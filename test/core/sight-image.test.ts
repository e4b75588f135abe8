import seedrandom from 'seedrandom';
import { describe, expect, test } from 'vitest';
import { Blurrer, blur, blurSteps, type BlurOptions, type Picture } from '../../core/sight.js';
import { byteOfLight, fromLight, lightOfBytes, toLight } from '../../core/sight-light.js';
import { RADIANS, SHARP, finished, lightOf, paddedLight, picture, red, rimRay } from './sight-support.js';

const MINUTE = 1 / 60;
const options = (sphere: number, cylinder: number, axis: number, more: Partial<BlurOptions> = {}): BlurOptions => ({
  refraction: { sphere, cylinder, axis }, pupilMm: 4, degreesPerPixel: MINUTE, ...more,
});

const noisy = (width: number, height: number): Picture => {
  const draw = seedrandom('picture');
  return picture(width, height, () => [Math.floor(256 * draw()), Math.floor(256 * draw()), Math.floor(256 * draw())]);
};

/** How far two pictures are apart at most, bytes. */
const apart = (a: Picture, b: Picture): number => a.data.reduce((worst, value, i) => Math.max(worst, Math.abs(value - b.data[i]!)), 0);

describe('bytes and light', () => {
  test('every byte comes back as itself, and what is all but black or white is that', () => {
    const [lights, byteOf] = [lightOfBytes(), byteOfLight()];
    for (let byte = 0; byte < 256; byte += 1) {
      expect(Math.abs(lights[byte]! - lightOf(byte))).toBeLessThan(1e-15);
      expect(byteOf(lights[byte]!)).toBe(byte);
    }
    for (const almost of [1e-5, 1e-6, 1e-9, 1e-15]) expect([byteOf(almost), byteOf(1 - almost)]).toEqual([0, 255]);
  });

  test('light between two bytes becomes the nearer, to 0.03 of a byte; what is too dark or too bright is cut off', () => {
    const byteOf = byteOfLight();
    const off = (light: number): number => Math.abs(byteOf(light) - 255 * fromLight(light));
    for (let light = 0; light <= 1; light += 0.000_137) expect(off(light)).toBeLessThan(0.53);
    // Where a step of light is the largest part of a byte.
    for (let light = 0; light <= 0.004; light += 0.000_001_37) expect(off(light)).toBeLessThan(0.53);
    expect([byteOf(-0.2), byteOf(1.3)]).toEqual([0, 255]);
    // The straight part of sRGB holds up to its end and there, too.
    expect([toLight(0.04045), fromLight(0.0031308)]).toEqual([0.04045 / 12.92, 12.92 * 0.0031308]);
    for (let value = 0; value <= 1; value += 0.01) expect(Math.abs(fromLight(toLight(value)) - value)).toBeLessThan(1e-7);
  });
});

describe('a blurred picture', () => {
  test('without an error is the picture, byte for byte, and opaque', () => {
    const shot = noisy(50, 41);
    expect(apart(blur(shot, options(0, 0, 180)), shot)).toBe(0);
    shot.data[3] = 10;
    expect(blur(shot, options(0, 0, 180)).data[3]).toBe(255);
  });

  test.each(['geometric', 'wave'] as const)('of one colour stays that colour up to its edges: %s', (model) => {
    const even = picture(40, 30, () => [200, 30, 90]);
    expect(apart(blur(even, options(1, -3, 20, { model })), even)).toBe(0);
  });

  test('blurs level lines and leaves upright ones when a cylinder has its axis at 180', () => {
    const upright = picture(64, 64, (x) => (Math.abs(x - 32) < 2 ? 0 : 255));
    const level = picture(64, 64, (_, y) => (Math.abs(y - 32) < 2 ? 0 : 255));
    const cylinder = options(0, -1, 180);
    expect(apart(blur(upright, cylinder), upright)).toBe(0);
    expect(red(blur(level, cylinder), 32, 32)).toBeGreaterThan(150);
    expect(apart(blur(level, options(0, -1, 90)), level)).toBe(0);
    expect(red(blur(upright, options(0, -1, 90)), 32, 32)).toBeGreaterThan(150);
  });

  // Common practice, from memory: the clearest line of a clock dial as the patient sees it, times 30 by its smaller hour,
  // is the axis of the minus cylinder on the dial of the examiner.
  test.each([1, 2, 3, 4, 5, 6])('keeps the rule of thirty: the line to %d o’clock is the clearest with the axis at thirty times that', (hour) => {
    const width = 129;
    const line = (at: number) => picture(width, width, (x, y) => {
      const up = (90 - 30 * at) * RADIANS;
      const off = (x - 64) * Math.sin(up) + (y - 64) * Math.cos(up);
      return 255 * (1 - Math.exp(-(off * off) / 4));
    });
    const darkness = (frame: 'patient' | 'dial') => [1, 2, 3, 4, 5, 6].map((at) => 255 - red(blur(line(at), options(0, -2, 30 * hour, { frame })), 64, 64));
    const seen = darkness('patient');
    const best = seen.indexOf(Math.max(...seen));
    expect(best + 1).toBe(hour);
    for (const [i, dark] of seen.entries()) if (i !== best) expect(dark).toBeLessThan(seen[best]! - 60);
    // On the dial the same line stands mirrored: the one to 12 o'clock less the hour.
    const onDial = darkness('dial');
    expect(onDial.indexOf(Math.max(...onDial)) + 1).toBe(hour === 6 ? 6 : 6 - hour);
  });

  // The kernel: how much of each pixel the ellipse covers, by 9 × 9 points a pixel; the picture goes on at its edges.
  test('is the naive sum over the blur ellipse, but for the sharpest edges', () => {
    const [width, height] = [56, 48];
    const letter = (x: number, y: number) => (x >= 10 && x < 46 && y >= 8 && y < 40 && (x < 17 || y < 14 || (y >= 21 && y < 27) || y >= 34) ? 20 : 235);
    const shot = picture(width, height, letter);
    for (const given of [options(0.5, -2, 30), options(-1, 0, 180), options(1, -1.5, 170)]) {
      const sums = naively(shot, given);
      const ours = blur(shot, given);
      const errors = Array.from(sums, (light, i) => Math.abs(lightOf(ours.data[4 * i]!) - light));
      const [worst, mean] = [Math.max(...errors), errors.reduce((a, b) => a + b) / errors.length];
      console.log(`hard letter against the naive sum, ${JSON.stringify(given.refraction)}: worst ${worst.toFixed(4)}, mean ${mean.toFixed(4)} of the light of white`);
      expect(worst).toBeLessThan(0.01);
      expect(mean).toBeLessThan(0.003);
    }
  });

  test('has nothing come round from the other side', () => {
    const [width, height] = [80, 60];
    for (const shot of [picture(width, height, (x) => (x >= 76 ? 255 : 0)), picture(width, height, (_, y) => (y < 4 ? 255 : 0))]) {
      const given = options(3, -1, 40);
      const [own, reach] = [blur(shot, given), 21];
      // The same with so much room around that the other side is far away.
      const roomy = paddedLight(shot, given, { width: 480, height: 480 }, { width: 190, height: 190 });
      let worst = 0;
      let dark = 0;
      for (let y = 0; y < height; y += 1) {
        for (let x = 0; x < width; x += 1) {
          const light = lightOf(red(own, x, y));
          worst = Math.max(worst, Math.abs(light - Math.max(0, Math.min(1, roomy[y * 480 + x]!))));
          if (x < 76 - reach - 6 && y >= 4 + reach + 6) dark = Math.max(dark, light);
          if (shot.data[4 * 78] === 255 && shot.data[0] === 0 && x < 76 - reach - 6) dark = Math.max(dark, light);
        }
      }
      console.log(`against a plane with more room: worst ${worst.toExponential(1)} of white; brightest where it has to be dark: ${dark.toExponential(1)}`);
      expect(worst).toBeLessThan(0.006);
      expect(dark).toBeLessThan(0.003);
    }
  });
});

/** Light of the first channel, by summing the picture over the ellipse at every pixel. */
function naively({ data, width, height }: Picture, given: BlurOptions): Float64Array {
  const fine = 9;
  const [ax, ay] = rimRay(given, 0);
  const [bx, by] = rimRay(given, Math.PI / 2);
  const size = ax * by - ay * bx;
  const reach = Math.ceil(Math.max(Math.hypot(ax, bx), Math.hypot(ay, by))) + 1;
  const kernel: [dx: number, dy: number, weight: number][] = [];
  for (let dy = -reach; dy <= reach; dy += 1) {
    for (let dx = -reach; dx <= reach; dx += 1) {
      let inside = 0;
      for (let i = 0; i < fine * fine; i += 1) {
        const [x, y] = [dx + ((i % fine) - 4) / fine, dy + (Math.floor(i / fine) - 4) / fine];
        // Back to the pupil, where the ellipse is the unit disc; the patient sees x mirrored, and y goes down.
        const [u, v] = [(-x * by + y * bx) / size, (x * ay - y * ax) / size];
        if (u * u + v * v <= 1) inside += 1;
      }
      kernel.push([dx, dy, inside]);
    }
  }
  const whole = kernel.reduce((total, [, , weight]) => total + weight, 0);
  return Float64Array.from({ length: width * height }, (_, i) => {
    let total = 0;
    for (const [dx, dy, weight] of kernel) {
      const x = Math.max(0, Math.min(width - 1, (i % width) + dx));
      const y = Math.max(0, Math.min(height - 1, Math.floor(i / width) + dy));
      total += weight * lightOf(data[4 * (y * width + x)]!);
    }
    return total / whole;
  });
}

describe('one after the other', () => {
  const shot = noisy(90, 70);

  test('the same error gives the same picture, whatever was asked before', () => {
    const kept = new Blurrer(shot);
    for (const given of [options(0.5, -1, 30), options(3, -2, 100), options(0.5, -1, 30), options(0.25, 0, 180, { model: 'wave' }), options(0.5, -1, 30)]) {
      expect(apart(kept.blur(given), blur(shot, given))).toBe(0);
    }
  });

  test('planes of the same width or the same height alone are not taken for each other', () => {
    const kept = new Blurrer(shot);
    // Blurred upwards alone, not at all, and across alone: one side of the plane changes, then the other.
    for (const given of [options(0, -4, 180), options(0, 0, 180), options(0, -4, 90), options(0, -4, 180)]) {
      expect(apart(kept.blur(given), blur(shot, given))).toBe(0);
    }
  });

  test('the picture is carried over into frequencies once for errors of like size: the next blur has less to do', () => {
    const kept = new Blurrer(shot);
    const slices = (given: BlurOptions): number => {
      let count = 0;
      for (const steps = kept.steps(given); !steps.next().done;) count += 1;
      return count;
    };
    const [first, second] = [slices(options(0.5, -1, 30)), slices(options(0.5, -1.05, 31))];
    expect(second).toBeLessThan(first);
    expect(slices(options(0.5, -1, 30))).toBe(second);
  });

  test('slices give the same picture as one go, and there are many', () => {
    const given = options(1, -2, 60);
    let slices = 0;
    const steps = blurSteps(shot, given);
    let last = steps.next();
    for (; !last.done; last = steps.next()) slices += 1;
    expect(apart(last.value!, blur(shot, given))).toBe(0);
    expect(slices).toBeGreaterThan(20);
  });

  test('a later blur ends an earlier one of the same picture, which then has none to give', () => {
    const kept = new Blurrer(shot);
    const earlier = kept.steps(options(1, -2, 60));
    for (let i = 0; i < 5; i += 1) earlier.next();
    const later = kept.steps(options(0.5, 0, 180));
    expect(finished(earlier)).toBeNull();
    expect(apart(finished(later)!, blur(shot, options(0.5, 0, 180)))).toBe(0);
  });

  test('the picture may change afterwards: the blur is of what was given', () => {
    const own = picture(20, 20, () => 77);
    const kept = new Blurrer(own);
    own.data.fill(0);
    expect(red(kept.blur(options(1, 0, 180)), 3, 3)).toBe(77);
  });

  test('a grey picture, which is calculated once, is what its colours would be each', () => {
    const grey = picture(40, 40, (x, y) => (x * y) % 256);
    const tinted = { ...grey, data: grey.data.slice() };
    tinted.data[1] = tinted.data[1]! ^ 1;
    expect(apart(blur(grey, options(1, -1, 15)), blur(tinted, options(1, -1, 15)))).toBeLessThanOrEqual(1);
    expect(red(blur(grey, options(1, -1, 15)), 9, 9)).toBe(red(blur(tinted, options(1, -1, 15)), 9, 9));
  });

  test.each([[1, 1], [1, 30], [2, 3], [33, 1]])('a picture of %d × %d is blurred too', (width, height) => {
    const { data } = blur(noisy(width, height), options(1, -1, 30));
    expect(data.length).toBe(4 * width * height);
  });

  test('in focus the waves still blur: a small pupil takes the contrast of a fine grating', () => {
    const bars = picture(64, 64, (x) => (x % 4 < 2 ? 0 : 255));
    const given = { refraction: SHARP, pupilMm: 1, degreesPerPixel: 1 / 120 };
    expect(apart(blur(bars, { ...given, model: 'geometric' }), bars)).toBe(0);
    const waves = blur(bars, { ...given, model: 'wave' });
    const contrast = (shot: Picture) => lightOf(red(shot, 34, 32)) - lightOf(red(shot, 32, 32));
    expect(contrast(waves)).toBeLessThan(0.35);
  });
});
