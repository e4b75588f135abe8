/** From a picture to its spectrum, the transfer at every frequency, and back to bytes: piece by piece. */
import { describe, expect, test } from 'vitest';
import type { BlurOptions } from '../../core/sight.js';
import { paddedSide, ROWS_AT_ONCE } from '../../core/sight-planes.js';
import { checkedLook, fillFactors, finish, prepare, turnBack, type Look } from '../../core/sight-render.js';
import { blurExtent } from '../../core/sight-transfer.js';
import { finished, picture } from './sight-support.js';

const OPTIONS: BlurOptions = { refraction: { sphere: 1, cylinder: -1.75, axis: 20 }, pupilMm: 4, degreesPerPixel: 1 / 60 };
const SHOT = picture(50, 37, (x, y) => [(7 * x + 3 * y) % 256, 2 * x, 255 - 4 * y]);

describe('a look', () => {
  test.each([OPTIONS, { ...OPTIONS, degreesPerPixel: 1 / 200 }, { ...OPTIONS, model: 'wave', pupilMm: 1.5 }] as const)('has room for the whole blur, in whole pixels: %o', (options) => {
    const { reach, size, degreesPerPixel } = checkedLook(options, SHOT);
    const { across, up } = blurExtent(options);
    expect(degreesPerPixel).toBe(options.degreesPerPixel);
    for (const [pixels, degrees] of [[reach.width, across], [reach.height, up]] as const) {
      expect(pixels).toBeGreaterThanOrEqual(degrees / degreesPerPixel);
      expect(pixels).toBeLessThan(degrees / degreesPerPixel + 1);
    }
    expect(size).toEqual({ width: paddedSide(50, reach.width), height: paddedSide(37, reach.height) });
  });

  test('is the patient’s unless it is the dial’s, and by rays unless it is as waves', () => {
    const { upward, atOnce } = checkedLook(OPTIONS, SHOT);
    expect(checkedLook({ ...OPTIONS, frame: 'patient', model: 'geometric' }, SHOT)).toMatchObject({ upward, atOnce });
    expect(checkedLook({ ...OPTIONS, frame: 'dial' }, SHOT).upward).toBe(-upward);
    // A point of the transfer as waves costs some hundred times as much.
    expect(checkedLook({ ...OPTIONS, model: 'wave' }, SHOT).atOnce).toBeLessThan(atOnce / 50);
  });
});

describe('between two pauses', () => {
  const look = checkedLook(OPTIONS, SHOT);
  const count = (steps: Generator<void, unknown>): number => {
    let pauses = 0;
    while (!steps.next().done) pauses += 1;
    return pauses;
  };
  const strips = (rows: number): number => Math.ceil(rows / ROWS_AT_ONCE);

  test('lies one strip of rows or one block of columns, of one channel', () => {
    const { grid, spectra, half, factors } = finished(prepare(SHOT, [0, 1, 2], look));
    expect([grid.width, grid.height, spectra.length]).toEqual([look.size.width, look.size.height, 3]);
    for (const channels of [[0], [0, 1, 2]]) expect(count(prepare(SHOT, channels, look))).toBe(channels.length * (strips(look.size.height) + grid.blocks));
    for (const height of [SHOT.height, ROWS_AT_ONCE]) {
      const turned = turnBack({ grid, spectra, half, factors }, spectra[0]!, { width: 50, height }, new Uint8ClampedArray(4 * 50 * height), 0);
      expect(count(turned)).toBe(grid.blocks + strips(height));
    }
  });

  test.each([16, 100, 128, 16_384])('the transfer is asked at no more than about %d points, at each of them once, at the highest twice', (atOnce) => {
    const prepared = finished(prepare(SHOT, [0], look));
    const { width, height, lanes, blocks } = prepared.grid;
    let [now, all, most, pauses] = [0, 0, 0, 0];
    const steps = fillFactors(prepared, () => (now += 1), { ...look, atOnce });
    while (!steps.next().done) {
      [all, most, pauses, now] = [all + now, Math.max(most, now), pauses + 1, 0];
    }
    expect(now).toBe(0);
    // A row that is begun is ended; a row of highest frequencies is asked twice over.
    expect(most).toBeLessThanOrEqual(1.25 * (atOnce + lanes) + lanes);
    expect(pauses).toBe(blocks * Math.ceil(height / Math.ceil(atOnce / lanes)));
    const columns = width / 2 + 1;
    expect(all).toBe(columns * height + columns + height - 1);
  });

  test('no pause changes a factor, each is that of its own frequency, and the highest stand for both signs', () => {
    const transfer = (fx: number, fy: number): number => 1 / (3 + Math.sin(fx / 9) + Math.cos(fy / 7 + 1) + fx * fy * 1e-4);
    for (const upward of [1, -1] as const) {
      const given: Look = { ...look, upward, atOnce: 48 };
      const prepared = finished(prepare(SHOT, [0], given));
      const { grid: { width, height, lanes }, factors } = prepared;
      finished(fillFactors(prepared, transfer, given));
      let worst = 0;
      for (let kx = 0; kx <= width / 2; kx += 1) {
        for (let ky = 0; ky < height; ky += 1) {
          const fx = kx / (width / 60);
          const fy = (upward * (ky > height / 2 ? ky - height : ky)) / (height / 60);
          const wanted = 2 * kx === width || 2 * ky === height ? (transfer(fx, fy) + transfer(fx, -fy)) / 2 : transfer(fx, fy);
          const found = factors[(Math.floor(kx / lanes) * height + ky) * lanes + (kx % lanes)]!;
          worst = Math.max(worst, Math.abs(found * width * height - wanted));
        }
      }
      expect(worst).toBeLessThan(1e-12);
    }
  });
});

test('a finished picture is opaque, and a grey one has its first channel in all three', () => {
  const bytes = (): Uint8ClampedArray => Uint8ClampedArray.from([10, 20, 30, 40, 50, 60, 70, 80]);
  const [grey, coloured] = [bytes(), bytes()];
  finish(grey, true);
  finish(coloured, false);
  expect([...grey]).toEqual([10, 10, 10, 255, 50, 50, 50, 255]);
  expect([...coloured]).toEqual([10, 20, 30, 255, 50, 60, 70, 255]);
});
