/** Planes of light, padded and taken apart into blocks of columns and strips of rows. */
import seedrandom from 'seedrandom';
import { describe, expect, test } from 'vitest';
import { ROWS_AT_ONCE, makeGrid, makeSpectrum, paddedSide, columnsBack, columnsForward, rowsBack, rowsForward } from '../../core/sight-planes.js';

describe('a padded side', () => {
  // By listing: 8, 9, 10 and 12 times every power of two from 2 on.
  const lengths = Array.from({ length: 10 }, (_, k) => [8, 9, 10, 12].map((times) => times * 2 ** (k + 1))).flat();

  test('is the shortest of its lengths in which the blur and four pixels more have room on either side', () => {
    for (let side = 1; side <= 2048; side += 7) {
      for (const reach of [0, 0.2, 1, 2.5, 17, 100, 1024]) {
        const wanted = side + 2 * (Math.ceil(reach) + 4);
        expect([side, reach, paddedSide(side, reach)]).toEqual([side, reach, Math.min(...lengths.filter((length) => length >= wanted))]);
      }
    }
    // Where the plane fits to the pixel.
    for (const length of lengths.slice(0, 20)) expect([paddedSide(length - 8, 0), paddedSide(length - 7, 0) > length]).toEqual([length, true]);
  });
});

// More rows than go at once, and a rest of less; more columns than a block, and a half of them that ends inside one.
describe.each([[16, 16], [40, 36], [72, 32], [32, 72], [96, 80], [20, 60]])('a plane of %d × %d', (width, height) => {
  const draw = seedrandom(`${width} ${height}`);
  const plane = Float64Array.from({ length: width * height }, () => draw() - 0.5);
  const grid = makeGrid(width, height);
  const spectrum = makeSpectrum(grid);
  for (let y = 0; y < height; y += ROWS_AT_ONCE) rowsForward(grid, plane.slice(y * width, (y + ROWS_AT_ONCE) * width), y, spectrum);
  for (let block = 0; block < grid.blocks; block += 1) columnsForward(grid, block, spectrum);
  const place = (x: number, y: number): number => (Math.floor(x / grid.lanes) * height + y) * grid.lanes + (x % grid.lanes);

  test('has the spectrum that is defined, in half its columns', () => {
    // No block more than these columns need.
    expect(spectrum.re.length).toBeGreaterThanOrEqual((width / 2 + 1) * height);
    expect(spectrum.re.length).toBeLessThan((width / 2 + 1 + grid.lanes) * height);
    for (const [kx, ky] of [[0, 0], [1, 0], [0, 1], [3, 5], [width / 2, 0], [width / 2, height / 2], [width / 2 - 1, height - 1], [width / 4, height / 2 + 1]] as const) {
      let [re, im] = [0, 0];
      plane.forEach((value, i) => {
        const angle = 2 * Math.PI * ((kx * (i % width)) / width + (ky * Math.floor(i / width)) / height);
        re += value * Math.cos(angle);
        im -= value * Math.sin(angle);
      });
      expect(Math.hypot(spectrum.re[place(kx, ky)]! - re, spectrum.im[place(kx, ky)]! - im), `${kx}, ${ky}`).toBeLessThan(1e-10);
    }
  });

  test('comes back when every frequency is let through, and level when only the lowest is', () => {
    const half = makeSpectrum(grid);
    const back = (factors: Float64Array): Float64Array => {
      for (let block = 0; block < grid.blocks; block += 1) columnsBack(grid, block, spectrum, factors, half);
      const out = new Float64Array(width * height);
      for (let first = 0; first < height; first += ROWS_AT_ONCE) {
        rowsBack(grid, half, first);
        for (let y = first; y < Math.min(height, first + ROWS_AT_ONCE); y += 1) {
          for (let x = 0; x < width; x += 1) out[y * width + x] = ((y - first) % 2 ? grid.rows.im : grid.rows.re)[x * grid.lanes + ((y - first) >> 1)]!;
        }
      }
      return out;
    };
    const even = 1 / (width * height);
    back(new Float64Array(spectrum.re.length).fill(even)).forEach((value, i) => expect(Math.abs(value - plane[i]!)).toBeLessThan(1e-13));
    const lowest = new Float64Array(spectrum.re.length);
    lowest[place(0, 0)] = even;
    const mean = plane.reduce((total, value) => total + value, 0) * even;
    for (const value of back(lowest)) expect(Math.abs(value - mean)).toBeLessThan(1e-13);
  });
});
