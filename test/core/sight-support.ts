/** Pictures and planes for the tests on sight, and roads to the same answers that share nothing with the core. */
import type { Picture, TransferOptions } from '../../core/sight.js';
import type { Refraction } from '../../core/types.js';
import { fillFactors, prepare, type Prepared } from '../../core/sight-render.js';
import { channelsOf } from '../../core/sight-picture.js';
import { columnsBack, columnsForward, makeGrid, makeSpectrum, rowsBack, rowsForward, ROWS_AT_ONCE, type Grid, type Spectrum } from '../../core/sight-planes.js';
import { quickTransfer } from '../../core/sight-transfer.js';

export const RADIANS = Math.PI / 180;
export const SHARP: Refraction = { sphere: 0, cylinder: 0, axis: 180 };

export type Paint = (x: number, y: number) => number | readonly [number, number, number];

/** A picture of the bytes that `paint` gives for each pixel; one number is a grey. */
export function picture(width: number, height: number, paint: Paint): Picture {
  const data = new Uint8ClampedArray(4 * width * height);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const colour = paint(x, y);
      data.set([...(typeof colour === 'number' ? [colour, colour, colour] : colour), 255], 4 * (y * width + x));
    }
  }
  return { data, width, height };
}

export const red = ({ data, width }: Picture, x: number, y: number): number => data[4 * (y * width + x)]!;

export function finished<T>(steps: Generator<void, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

export interface Shown extends TransferOptions {
  degreesPerPixel: number;
  frame?: 'patient' | 'dial';
}

/** A plane of light through the core's own spectrum and back, without padding, bytes or edges: it is periodic. */
export function blurredPlane(plane: Float64Array, width: number, height: number, shown: Shown): Float64Array {
  const grid = makeGrid(width, height);
  const spectrum = makeSpectrum(grid);
  for (let y = 0; y < height; y += ROWS_AT_ONCE) rowsForward(grid, plane.subarray(y * width), y, spectrum);
  for (let block = 0; block < grid.blocks; block += 1) columnsForward(grid, block, spectrum);
  const prepared: Prepared = { grid, spectra: [spectrum], half: makeSpectrum(grid), factors: new Float64Array(spectrum.re.length) };
  return planeBack(prepared, spectrum, shown);
}

function planeBack(prepared: Prepared, spectrum: Spectrum, shown: Shown): Float64Array {
  const { grid, half, factors } = prepared;
  const look = { degreesPerPixel: shown.degreesPerPixel, upward: shown.frame === 'dial' ? -1 : 1, atOnce: 1e6, reach: grid, size: grid } as const;
  finished(fillFactors(prepared, quickTransfer(shown), look));
  for (let block = 0; block < grid.blocks; block += 1) columnsBack(grid, block, spectrum, factors, half);
  return rowsOut(grid, half);
}

function rowsOut(grid: Grid, half: Spectrum): Float64Array {
  const { width, height, lanes, rows } = grid;
  const out = new Float64Array(width * height);
  for (let first = 0; first < height; first += ROWS_AT_ONCE) {
    rowsBack(grid, half, first);
    for (let y = first; y < Math.min(height, first + ROWS_AT_ONCE); y += 1) {
      const part = (y - first) % 2 ? rows.im : rows.re;
      for (let x = 0; x < width; x += 1) out[y * width + x] = part[x * lanes + ((y - first) >> 1)]!;
    }
  }
  return out;
}

/** Light of the first channel of a picture in its padded plane after the blur, padding of the given size and all. */
export function paddedLight(shot: Picture, shown: Shown, size: { width: number; height: number }, reach: { width: number; height: number }): Float64Array {
  const look = { degreesPerPixel: shown.degreesPerPixel, upward: shown.frame === 'dial' ? -1 : 1, atOnce: 1e6, reach, size } as const;
  const prepared = finished(prepare(shot, channelsOf(shot), look));
  return planeBack(prepared, prepared.spectra[0]!, shown);
}

/** Light of a byte, written anew from the definition of sRGB. */
export const lightOf = (byte: number): number => (byte / 255 <= 0.04045 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4);

/** Half the blur of a point in px: where a ray through the rim of the pupil at `angle` (dial, radians) ends, x right and y up. */
export function rimRay({ refraction: { sphere, cylinder, axis }, pupilMm, degreesPerPixel }: Shown, angle: number): [x: number, y: number] {
  const along = axis * RADIANS;
  // By hand: the part of the ray along the axis meets the sphere, the part across it sphere and cylinder.
  const [a, b] = [Math.cos(angle - along) * sphere, Math.sin(angle - along) * (sphere + cylinder)];
  const scale = pupilMm / 2000 / RADIANS / degreesPerPixel;
  return [scale * (a * Math.cos(along) - b * Math.sin(along)), scale * (a * Math.sin(along) + b * Math.cos(along))];
}

/** Mean of a smooth scene over the blur of the point (x, y), by midpoints in the radius squared and in the angle. */
export function meanOverBlur(scene: (x: number, y: number) => number, shown: Shown, x: number, y: number, rings = 60, spokes = 64): number {
  let total = 0;
  for (let spoke = 0; spoke < spokes; spoke += 1) {
    const [dx, dy] = rimRay(shown, (2 * Math.PI * spoke) / spokes);
    for (let ring = 0; ring < rings; ring += 1) {
      const radius = Math.sqrt((ring + 0.5) / rings);
      total += scene(x + radius * dx, y + radius * dy);
    }
  }
  return total / (rings * spokes);
}
