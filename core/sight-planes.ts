/**
 * A plane of light and its spectrum, padded so that nothing that leaves at one edge comes back at the other.
 *
 * A real plane has a spectrum of which one half tells the other, so columns 0 to width/2 are kept. They lie in blocks of a
 * few columns: number (x, y) at (block·height + y)·lanes + lane. Every routine does one block or a few rows and no more,
 * so that whoever calls can pause in between.
 */
import { fourierPlan, inLanes, invertLanes, makeLanes, transformLanes, type Complex, type FourierPlan, type Lanes } from './sight-fourier.js';

/**
 * Rows or columns that are transformed together; measured fastest, with all passes near the processor. Odd, for numbers
 * a power of two apart push each other out of its cache: 16 lanes take twice as long. 13 leaves little of the last block
 * empty.
 */
const LANES = 13;

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

export type Spectrum = Complex;

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

/**
 * For a padded plane of `columns` × `rows` px. A page that has an object like { width: 8.5, height: 11 } makes V8 keep
 * the width of every object of that form as a fraction; handed on to the passes, it doubles their time. `| 0` ends that.
 */
export function makeGrid(columns: number, rows: number): Grid {
  const [width, height] = [columns | 0, rows | 0];
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
  transformLanes(rowPlan, rows, { re: strip, im: strip.subarray(width), step: 1, laneStep: 2 * width, lanesIn: pairs });
  for (let x = 0; x <= width / 2; x += 1) separate(grid, x, first, pairs, into);
}

/** Two real rows A and B went in as A + iB: A = (Z(x) + Z*(−x))/2 and B = (Z(x) − Z*(−x))/2i. */
function separate({ width, height, lanes, rows: { re, im } }: Grid, x: number, first: number, pairs: number, into: Spectrum): void {
  const mirror = (x ? width - 2 * x : 0) * lanes;
  const { re: outRe, im: outIm } = into;
  let to = (((x / lanes) | 0) * height + first) * lanes + (x % lanes);
  for (let a = x * lanes, end = a + pairs; a < end; a += 1, to += 2 * lanes) {
    const hereRe = re[a]!;
    const hereIm = im[a]!;
    const thereRe = re[a + mirror]!;
    const thereIm = im[a + mirror]!;
    outRe[to] = (hereRe + thereRe) / 2;
    outIm[to] = (hereIm - thereIm) / 2;
    outRe[to + lanes] = (hereIm + thereIm) / 2;
    outIm[to + lanes] = (thereRe - hereRe) / 2;
  }
}

/** Transforms a block of columns, in place. */
export function columnsForward(grid: Grid, block: number, spectrum: Spectrum): void {
  const place = blockOf(grid, block, spectrum);
  transformLanes(grid.columnPlan, grid.columns, inLanes(place, grid.lanes), place);
}

function blockOf({ height, lanes }: Grid, block: number, { re, im }: Spectrum): Complex {
  const [start, end] = [block * height * lanes, (block + 1) * height * lanes];
  return { re: re.subarray(start, end), im: im.subarray(start, end) };
}

/** Multiplies a block of columns by the real `factors`, which lie like a spectrum, and turns it back, into another. */
export function columnsBack(grid: Grid, block: number, spectrum: Spectrum, factors: Float64Array, into: Spectrum): void {
  multiply(spectrum, factors, block * grid.height * grid.lanes, grid.columns);
  invertLanes(grid.columnPlan, grid.columns, blockOf(grid, block, into));
}

/** Fills `re` and `im` with the product of as many numbers from `start` on. */
function multiply(spectrum: Spectrum, factors: Float64Array, start: number, { re, im }: Complex): void {
  const { re: fromRe, im: fromIm } = spectrum;
  for (let i = 0; i < re.length; i += 1) {
    re[i] = fromRe[start + i]! * factors[start + i]!;
    im[i] = fromIm[start + i]! * factors[start + i]!;
  }
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
  const mirror = (x ? width - 2 * x : 0) * lanes;
  const { re: halfRe, im: halfIm } = half;
  let from = (((x / lanes) | 0) * height + first) * lanes + (x % lanes);
  for (let a = x * lanes, end = a + pairs; a < end; a += 1, from += 2 * lanes) {
    const evenRe = halfRe[from]!;
    const evenIm = halfIm[from]!;
    const oddRe = halfRe[from + lanes]!;
    const oddIm = halfIm[from + lanes]!;
    re[a + mirror] = evenRe + oddIm;
    im[a + mirror] = oddRe - evenIm;
    re[a] = evenRe - oddIm;
    im[a] = evenIm + oddRe;
  }
}
