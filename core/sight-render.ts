import { oneOf } from './check.js';
import { byteOfLight } from './sight-light.js';
import { allowed } from './sight-limits.js';
import { fillRows, type Picture, type Size } from './sight-picture.js';
import { ROWS_AT_ONCE, columnsBack, columnsForward, makeGrid, makeSpectrum, paddedSide, rowsBack, rowsForward, type Grid, type Spectrum } from './sight-planes.js';
import { blurExtent, type Transfer, type TransferOptions } from './sight-transfer.js';

/** Whose left and right a picture has: those of the patient who looks at it, or those of the dial. */
export const PICTURE_FRAMES = ['patient', 'dial'] as const;
export type PictureFrame = (typeof PICTURE_FRAMES)[number];

export interface BlurOptions extends TransferOptions {
  /** Visual angle of one pixel, 0.0001–1°: 1/60 shows a minute of arc a pixel. */
  degreesPerPixel: number;
  /**
   * `patient` when left out. The dial is that of one who faces the patient; the patient looks the other way, so an axis
   * of 60° on the dial stands at 120° in what the patient sees.
   */
  frame?: PictureFrame;
}

/** Calculations of the transfer between two pauses: by rays they take a millisecond, as waves up to three. */
const POINTS_AT_ONCE = { geometric: 16_384, wave: 128 } as const;

/** What is kept between blurs of one picture at one padded size. */
export interface Prepared {
  grid: Grid;
  spectra: Spectrum[];
  /** Columns turned back and rows not yet; one channel at a time. */
  half: Spectrum;
  factors: Float64Array;
}

/** How frequencies of the plane are those of the eye, and what size the plane has. */
export interface Look {
  degreesPerPixel: number;
  /** −1 turns rows, which count downwards, into a height on the dial; in the mirrored view of the patient fx turns too. */
  upward: 1 | -1;
  atOnce: number;
  reach: Size;
  size: Size;
}

export function checkedLook(options: BlurOptions, { width, height }: Size): Look {
  const degreesPerPixel = allowed('degreesPerPixel', 'degrees per pixel', options.degreesPerPixel);
  const frame = oneOf('frame', options.frame ?? 'patient', PICTURE_FRAMES);
  const { across, up } = blurExtent(options);
  const reach = {
    width: allowed('reach', 'reach of the blur', Math.ceil(across / degreesPerPixel)),
    height: allowed('reach', 'reach of the blur', Math.ceil(up / degreesPerPixel)),
  };
  return {
    degreesPerPixel,
    upward: frame === 'dial' ? -1 : 1,
    atOnce: POINTS_AT_ONCE[options.model ?? 'geometric'],
    reach,
    size: { width: paddedSide(width, reach.width), height: paddedSide(height, reach.height) },
  };
}

/** Light of every channel, padded, carried over into frequencies. */
export function* prepare(picture: Picture, channels: readonly number[], { size, reach }: Look): Generator<void, Prepared> {
  const grid = makeGrid(size.width, size.height);
  const strip = new Float64Array(size.width * ROWS_AT_ONCE);
  const spectra: Spectrum[] = [];
  for (const channel of channels) {
    const spectrum = makeSpectrum(grid);
    for (let y = 0; y < size.height; y += ROWS_AT_ONCE) {
      fillRows(picture, channel, strip, size, reach, y, Math.min(size.height, y + ROWS_AT_ONCE));
      rowsForward(grid, strip, y, spectrum);
      yield;
    }
    for (let block = 0; block < grid.blocks; block += 1) {
      columnsForward(grid, block, spectrum);
      yield;
    }
    spectra.push(spectrum);
  }
  return { grid, spectra, half: makeSpectrum(grid), factors: new Float64Array(grid.blocks * grid.height * grid.lanes) };
}

/** The transfer at every frequency of the plane, divided by the number of its points, as the transform back wants it. */
export function* fillFactors({ grid, factors }: Prepared, transfer: Transfer, { degreesPerPixel, upward, atOnce }: Look): Generator<void, void> {
  const { width, height, lanes } = grid;
  const [stepX, stepY] = [1 / (width * degreesPerPixel), upward / (height * degreesPerPixel)];
  const scale = 1 / (width * height);
  const rowsAtOnce = Math.ceil(atOnce / lanes);
  for (let block = 0; block < grid.blocks; block += 1) {
    for (let top = 0; top < height; top += rowsAtOnce) {
      for (let y = top; y < Math.min(height, top + rowsAtOnce); y += 1) {
        const fy = (y <= height / 2 ? y : y - height) * stepY;
        const start = (block * height + y) * lanes;
        for (let lane = 0; lane < lanes; lane += 1) {
          const x = block * lanes + lane;
          if (x > width / 2) break;
          // The highest frequency of a row or column stands for both its signs, else the plane would not stay real.
          const both = x === width / 2 || y === height / 2;
          const fx = x * stepX;
          factors[start + lane] = scale * (both ? (transfer(fx, fy) + transfer(fx, -fy)) / 2 : transfer(fx, fy));
        }
      }
      yield;
    }
  }
}

/** Product and transform back of one channel, into the bytes of the picture. */
export function* turnBack({ grid, half, factors }: Prepared, spectrum: Spectrum, { width, height }: Size, data: Uint8ClampedArray, channel: number): Generator<void, void> {
  for (let block = 0; block < grid.blocks; block += 1) {
    columnsBack(grid, block, spectrum, factors, half);
    yield;
  }
  for (let first = 0; first < height; first += ROWS_AT_ONCE) {
    rowsBack(grid, half, first);
    for (let y = first; y < Math.min(height, first + ROWS_AT_ONCE); y += 1) {
      const part = (y - first) % 2 ? grid.rows.im : grid.rows.re;
      writeRow(part, (y - first) >> 1, grid.lanes, data, 4 * y * width + channel, width);
    }
    yield;
  }
}

function writeRow(part: Float64Array, lane: number, lanes: number, data: Uint8ClampedArray, start: number, width: number): void {
  const byteOf = byteOfLight();
  for (let x = 0; x < width; x += 1) data[start + 4 * x] = byteOf(part[x * lanes + lane]!);
}

/** Alpha, and what a picture without colour has in all three channels. */
export function finish(data: Uint8ClampedArray, grey: boolean): void {
  for (let i = 0; i < data.length; i += 4) {
    if (grey) data[i + 1] = data[i + 2] = data[i]!;
    data[i + 3] = 255;
  }
}
