/**
 * Discrete Fourier transform of many columns at once: F[k] = Σ f[j]·exp(−2πi·jk/n), without a factor.
 *
 * Number j of column l lies at j·lanes + l, so that the innermost loop of every pass runs through neighbouring numbers.
 * Each pass joins transforms of every count-th number into longer ones. Before it number k of the m-th short transform
 * lies at (m·prior + k)·lanes + l, `prior` being their length; after it the same holds for the longer ones (Stockham's
 * order, which needs no sorting). One routine so serves columns and, once they are turned, rows.
 */
import { openByEight } from './sight-eight.js';
import { PASSES } from './sight-passes.js';

/** Numbers of which each has a real and an imaginary part. */
export interface Complex {
  re: Float64Array;
  im: Float64Array;
}

/** Numbers in another order than that of lanes: number j of column l lies at j·step + l·laneStep. */
export interface Source extends Complex {
  step: number;
  laneStep: number;
  /** How many columns there are; lanes beyond them hold what they held. */
  lanesIn: number;
}

/** What is worked out once for a length. */
export interface FourierPlan {
  readonly size: number;
  /** 8, 4, 5, 3 and 2, in the order of the passes. */
  readonly factors: readonly number[];
  /** exp(−2πi·j/size). */
  readonly cos: Float64Array;
  readonly sin: Float64Array;
}

/** Numbers of `lanes` columns, and a second place of the same size between which the passes go to and fro. */
export interface Lanes extends Complex {
  lanes: number;
  spareRe: Float64Array;
  spareIm: Float64Array;
}

/** One pass from one place into another, which may be the same only where there is no other pass. */
export type Pass = (plan: FourierPlan, prior: number, lanes: number, from: Complex, into: Complex) => void;

/** Factors of a length, or null when it has other prime factors than 2, 3 and 5. */
export function factorsOf(size: number): number[] | null {
  const factors: number[] = [];
  let rest = size;
  for (const factor of [8, 4, 5, 3, 2]) {
    for (; rest % factor === 0 && rest > 1; rest /= factor) factors.push(factor);
  }
  return rest === 1 ? factors : null;
}

/** Plan for a length whose prime factors are 2, 3 and 5; another length is an error of the caller. */
export function fourierPlan(size: number): FourierPlan {
  const factors = factorsOf(size);
  if (!factors) throw new Error(`A length of ${size} has prime factors beyond 2, 3 and 5.`);
  const cos = new Float64Array(size);
  const sin = new Float64Array(size);
  for (let j = 0; j < size; j += 1) {
    cos[j] = Math.cos((2 * Math.PI * j) / size);
    sin[j] = -Math.sin((2 * Math.PI * j) / size);
  }
  return { size, factors, cos, sin };
}

export function makeLanes(size: number, lanes: number): Lanes {
  const make = () => new Float64Array(size * lanes);
  return { lanes, re: make(), im: make(), spareRe: make(), spareIm: make() };
}

/**
 * Transforms all columns of `data`, or of `from` when it is given; `data` is the workplace then. The result is in `into`,
 * which may be where `from` was, or else in `re` and `im` of `data`, which may have changed places with the spares.
 */
export function transformLanes(plan: FourierPlan, data: Lanes, from?: Source, into?: Complex): void {
  const { size, factors } = plan;
  const { lanes } = data;
  const opens = factors[0] === 8;
  if (from && !opens) gather(size, from, data);
  let prior = 1;
  for (const factor of factors) {
    const last = prior * factor === size;
    const target = last && into ? into : { re: data.spareRe, im: data.spareIm };
    if (opens && prior === 1) openByEight(size, lanes, from ?? inLanes(data, lanes), target);
    else PASSES[factor]!(plan, prior, lanes, data, target);
    if (target !== into) swapSpare(data);
    prior *= factor;
  }
}

/** The inverse, times the length: with the real and imaginary parts exchanged the same passes turn the other way. */
export function invertLanes(plan: FourierPlan, data: Lanes, into?: Complex): void {
  exchange(data);
  transformLanes(plan, data, undefined, into && { re: into.im, im: into.re });
  exchange(data);
}

/** Numbers that lie as in lanes already. */
export function inLanes({ re, im }: Complex, lanes: number): Source {
  return { re, im, step: lanes, laneStep: 1, lanesIn: lanes };
}

function gather(size: number, { re, im, step, laneStep, lanesIn }: Source, data: Lanes): void {
  for (let lane = 0; lane < lanesIn; lane += 1) {
    for (let j = 0; j < size; j += 1) {
      data.re[j * data.lanes + lane] = re[j * step + lane * laneStep]!;
      data.im[j * data.lanes + lane] = im[j * step + lane * laneStep]!;
    }
  }
}

function swapSpare(data: Lanes): void {
  [data.re, data.spareRe] = [data.spareRe, data.re];
  [data.im, data.spareIm] = [data.spareIm, data.im];
}

function exchange(data: Lanes): void {
  [data.re, data.im] = [data.im, data.re];
  [data.spareRe, data.spareIm] = [data.spareIm, data.spareRe];
}
