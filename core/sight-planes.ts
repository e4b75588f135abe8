/**
 * A plane of light and its spectrum, padded so that nothing that leaves at one edge comes back at the other.
 *
 * A real plane has a spectrum of which one half tells the other, so columns 0 to width/2 are kept. They lie in blocks of a
 * few columns: number (x, y) at (block·height + y)·lanes + lane. Every routine does one block or a few rows and no more,
 * so that whoever calls can pause in between.
 */
import { fourierPlan, invertLanes, makeLanes, transformLanes, type FourierPlan, type Lanes } from './sight-fourier.js';

/** Rows or columns that are transformed together; measured fastest, with all passes near the processor. */
const LANES = 16;

/** Pixels on either side of the blur for the ripple of a sharp edge to fade. */
const MARGIN = 4;

/** Size of the padded plane, and what its transforms need. */
export interface Grid {
  width: number;
  height: number;
  blocks: number;
  lanes: number;
  rowPlan: FourierPlan;
  columnPlan: FourierPlan;
  rows: Lanes;
  columns: Lanes;
}

export interface Spectrum {
  re: Float64Array;
  im: Float64Array;
}

/**
 * Length for a side that light may leave by `reach` pixels: twice that and a margin more, then up to the next of
 * 8, 9, 10 or 12 times a power of two. So coarse a choice keeps the length while the blur changes a little.
 */
export function paddedSide(side: number, reach: number): number {
  const wanted = side + 2 * (Math.ceil(reach) + MARGIN);
  let unit = 2;
  while (12 * unit < wanted) unit *= 2;
  return unit * [8, 9, 10, 12].find((times) => times * unit >= wanted)!;
}

export function makeGrid(width: number, height: number): Grid {
  return {
    width,
    height,
    blocks: Math.ceil((width / 2 + 1) / LANES),
    lanes: LANES,
    rowPlan: fourierPlan(width),
    columnPlan: fourierPlan(height),
    rows: makeLanes(width, LANES),
    columns: makeLanes(height, LANES),
  };
}

export function makeSpectrum({ blocks, height, lanes }: Grid): Spectrum {
  return { re: new Float64Array(blocks * height * lanes), im: new Float64Array(blocks * height * lanes) };
}

/** How many rows `rowsForward` and `rowsBack` do at once: one in the real part of each lane, one in the imaginary. */
export const ROWS_AT_ONCE = 2 * LANES;

/** Transforms up to `ROWS_AT_ONCE` rows of the padded plane; `strip` begins with row `first`, an even number. */
export function rowsForward(grid: Grid, strip: Float64Array, first: number, into: Spectrum): void {
  const { width, height, lanes, rows, rowPlan } = grid;
  const pairs = Math.min(lanes, (height - first) / 2);
  for (let j = 0; j < pairs; j += 1) {
    const even = 2 * j * width;
    for (let x = 0; x < width; x += 1) {
      rows.re[x * lanes + j] = strip[even + x]!;
      rows.im[x * lanes + j] = strip[even + width + x]!;
    }
  }
  transformLanes(rowPlan, rows);
  for (let x = 0; x <= width / 2; x += 1) separate(grid, x, first, pairs, into);
}

/** Two real rows A and B went in as A + iB: A = (Z(x) + Z*(−x))/2 and B = (Z(x) − Z*(−x))/2i. */
function separate({ width, height, lanes, rows: { re, im } }: Grid, x: number, first: number, pairs: number, into: Spectrum): void {
  const here = x * lanes;
  const there = (x ? width - x : 0) * lanes;
  let to = (((x / lanes) | 0) * height + first) * lanes + (x % lanes);
  for (let j = 0; j < pairs; j += 1, to += 2 * lanes) {
    into.re[to] = (re[here + j]! + re[there + j]!) / 2;
    into.im[to] = (im[here + j]! - im[there + j]!) / 2;
    into.re[to + lanes] = (im[here + j]! + im[there + j]!) / 2;
    into.im[to + lanes] = (re[there + j]! - re[here + j]!) / 2;
  }
}

/** Transforms a block of columns, in place. */
export function columnsForward({ height, lanes, columns, columnPlan }: Grid, block: number, spectrum: Spectrum): void {
  const start = block * height * lanes;
  const end = start + height * lanes;
  columns.re.set(spectrum.re.subarray(start, end));
  columns.im.set(spectrum.im.subarray(start, end));
  transformLanes(columnPlan, columns);
  spectrum.re.set(columns.re, start);
  spectrum.im.set(columns.im, start);
}

/** Multiplies a block of columns by the real `factors`, which lie like a spectrum, and turns it back, into another. */
export function columnsBack({ height, lanes, columns, columnPlan }: Grid, block: number, spectrum: Spectrum, factors: Float64Array, into: Spectrum): void {
  const start = block * height * lanes;
  const { re, im } = columns;
  for (let i = 0; i < height * lanes; i += 1) {
    re[i] = spectrum.re[start + i]! * factors[start + i]!;
    im[i] = spectrum.im[start + i]! * factors[start + i]!;
  }
  invertLanes(columnPlan, columns);
  into.re.set(columns.re, start);
  into.im.set(columns.im, start);
}

/**
 * Turns up to `ROWS_AT_ONCE` rows back, from `first` on, and leaves them in `grid.rows`: row first + 2j in the real
 * part of lane j, row first + 2j + 1 in the imaginary one.
 */
export function rowsBack(grid: Grid, half: Spectrum, first: number): void {
  const { width, height, lanes } = grid;
  const pairs = Math.min(lanes, (height - first) / 2);
  for (let x = 0; x <= width / 2; x += 1) unite(grid, x, first, pairs, half);
  invertLanes(grid.rowPlan, grid.rows);
}

/** Z(x) = A(x) + iB(x), and Z(−x) = A*(x) + iB*(x). */
function unite({ width, height, lanes, rows: { re, im } }: Grid, x: number, first: number, pairs: number, half: Spectrum): void {
  const here = x * lanes;
  const there = (x ? width - x : 0) * lanes;
  let from = (((x / lanes) | 0) * height + first) * lanes + (x % lanes);
  for (let j = 0; j < pairs; j += 1, from += 2 * lanes) {
    const [ar, ai, br, bi] = [half.re[from]!, half.im[from]!, half.re[from + lanes]!, half.im[from + lanes]!];
    re[there + j] = ar + bi;
    im[there + j] = br - ai;
    re[here + j] = ar - bi;
    im[here + j] = ai + br;
  }
}
