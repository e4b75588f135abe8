/**
 * Discrete Fourier transform of many columns at once: F[k] = Σ f[j]·exp(−2πi·jk/n), without a factor.
 *
 * Number j of column l lies at j·lanes + l, so that the innermost loop of every pass runs through neighbouring numbers
 * (Stockham's order, which needs no sorting). One routine so serves columns and, once they are turned, rows.
 */

/** What is worked out once for a length. */
export interface FourierPlan {
  readonly size: number;
  /** 4, 3, 5 and 2, in the order of the passes. */
  readonly factors: readonly number[];
  /** exp(−2πi·j/size). */
  readonly cos: Float64Array;
  readonly sin: Float64Array;
}

/** Numbers of `lanes` columns, and a second place of the same size between which the passes go to and fro. */
export interface Lanes {
  lanes: number;
  re: Float64Array;
  im: Float64Array;
  spareRe: Float64Array;
  spareIm: Float64Array;
}

/** Factors of a length, or null when it has other prime factors than 2, 3 and 5. */
export function factorsOf(size: number): number[] | null {
  const factors: number[] = [];
  let rest = size;
  for (const factor of [4, 5, 3, 2]) {
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

/** Transforms all columns; the result is in `re` and `im`, which may have changed places with the spares. */
export function transformLanes(plan: FourierPlan, data: Lanes): void {
  let length = plan.size;
  let stride = data.lanes;
  for (const factor of plan.factors) {
    PASSES[factor]!(plan, length / factor, stride, data);
    length /= factor;
    stride *= factor;
    [data.re, data.spareRe] = [data.spareRe, data.re];
    [data.im, data.spareIm] = [data.spareIm, data.im];
  }
}

/** The inverse, times the length: with the real and imaginary parts exchanged the same passes turn the other way. */
export function invertLanes(plan: FourierPlan, data: Lanes): void {
  exchange(data);
  transformLanes(plan, data);
  exchange(data);
}

function exchange(data: Lanes): void {
  [data.re, data.im] = [data.im, data.re];
  [data.spareRe, data.spareIm] = [data.spareIm, data.spareRe];
}

/** One pass: groups of `factor` numbers, `count` strides apart, are combined, turned and laid side by side. */
type Pass = (plan: FourierPlan, count: number, stride: number, data: Lanes) => void;

const pass2: Pass = ({ size, cos, sin }, count, stride, { re, im, spareRe, spareIm }) => {
  const turn = size / (2 * count);
  const far = count * stride;
  for (let p = 0; p < count; p += 1) {
    const c = cos[p * turn]!;
    const s = sin[p * turn]!;
    const end = (p + 1) * stride;
    for (let a = p * stride, to = 2 * p * stride; a < end; a += 1, to += 1) {
      const dr = re[a]! - re[a + far]!;
      const di = im[a]! - im[a + far]!;
      spareRe[to] = re[a]! + re[a + far]!;
      spareIm[to] = im[a]! + im[a + far]!;
      spareRe[to + stride] = dr * c - di * s;
      spareIm[to + stride] = dr * s + di * c;
    }
  }
};

const pass3: Pass = ({ size, cos, sin }, count, stride, { re, im, spareRe, spareIm }) => {
  const turn = size / (3 * count);
  const far = count * stride;
  for (let p = 0; p < count; p += 1) {
    const [c1, s1, c2, s2] = [cos[p * turn]!, sin[p * turn]!, cos[2 * p * turn]!, sin[2 * p * turn]!];
    const end = (p + 1) * stride;
    for (let a = p * stride, to = 3 * p * stride; a < end; a += 1, to += 1) {
      const b = a + far;
      const c = b + far;
      const sumRe = re[b]! + re[c]!;
      const sumIm = im[b]! + im[c]!;
      const acrossRe = SIN_60 * (im[b]! - im[c]!);
      const acrossIm = SIN_60 * (re[c]! - re[b]!);
      const alongRe = re[a]! - sumRe / 2;
      const alongIm = im[a]! - sumIm / 2;
      spareRe[to] = re[a]! + sumRe;
      spareIm[to] = im[a]! + sumIm;
      spareRe[to + stride] = (alongRe + acrossRe) * c1 - (alongIm + acrossIm) * s1;
      spareIm[to + stride] = (alongRe + acrossRe) * s1 + (alongIm + acrossIm) * c1;
      spareRe[to + 2 * stride] = (alongRe - acrossRe) * c2 - (alongIm - acrossIm) * s2;
      spareIm[to + 2 * stride] = (alongRe - acrossRe) * s2 + (alongIm - acrossIm) * c2;
    }
  }
};

const pass4: Pass = ({ size, cos, sin }, count, stride, { re, im, spareRe, spareIm }) => {
  const turn = size / (4 * count);
  const far = count * stride;
  for (let p = 0; p < count; p += 1) {
    const c1 = cos[p * turn]!;
    const s1 = sin[p * turn]!;
    const c2 = cos[2 * p * turn]!;
    const s2 = sin[2 * p * turn]!;
    const c3 = cos[3 * p * turn]!;
    const s3 = sin[3 * p * turn]!;
    const end = (p + 1) * stride;
    for (let a = p * stride, to = 4 * p * stride; a < end; a += 1, to += 1) {
      const b = a + far;
      const c = b + far;
      const d = c + far;
      const evenRe = re[a]! + re[c]!;
      const evenIm = im[a]! + im[c]!;
      const oddRe = re[a]! - re[c]!;
      const oddIm = im[a]! - im[c]!;
      const sumRe = re[b]! + re[d]!;
      const sumIm = im[b]! + im[d]!;
      const acrossRe = im[b]! - im[d]!;
      const acrossIm = re[d]! - re[b]!;
      spareRe[to] = evenRe + sumRe;
      spareIm[to] = evenIm + sumIm;
      spareRe[to + stride] = (oddRe + acrossRe) * c1 - (oddIm + acrossIm) * s1;
      spareIm[to + stride] = (oddRe + acrossRe) * s1 + (oddIm + acrossIm) * c1;
      spareRe[to + 2 * stride] = (evenRe - sumRe) * c2 - (evenIm - sumIm) * s2;
      spareIm[to + 2 * stride] = (evenRe - sumRe) * s2 + (evenIm - sumIm) * c2;
      spareRe[to + 3 * stride] = (oddRe - acrossRe) * c3 - (oddIm - acrossIm) * s3;
      spareIm[to + 3 * stride] = (oddRe - acrossRe) * s3 + (oddIm - acrossIm) * c3;
    }
  }
};

/** A plain sum over five, with the cosines and sines of 72° and 144°. */
const pass5: Pass = ({ size, cos, sin }, count, stride, { re, im, spareRe, spareIm }) => {
  const turn = size / (5 * count);
  const far = count * stride;
  for (let p = 0; p < count; p += 1) {
    const c1 = cos[p * turn]!;
    const s1 = sin[p * turn]!;
    const c2 = cos[2 * p * turn]!;
    const s2 = sin[2 * p * turn]!;
    const c3 = cos[3 * p * turn]!;
    const s3 = sin[3 * p * turn]!;
    const c4 = cos[4 * p * turn]!;
    const s4 = sin[4 * p * turn]!;
    const end = (p + 1) * stride;
    for (let a = p * stride, to = 5 * p * stride; a < end; a += 1, to += 1) {
      const b = a + far;
      const c = b + far;
      const d = c + far;
      const e = d + far;
      const nearRe = re[b]! + re[e]!;
      const nearIm = im[b]! + im[e]!;
      const midRe = re[c]! + re[d]!;
      const midIm = im[c]! + im[d]!;
      const nearOffRe = im[b]! - im[e]!;
      const nearOffIm = re[e]! - re[b]!;
      const midOffRe = im[c]! - im[d]!;
      const midOffIm = re[d]! - re[c]!;
      const alongRe = re[a]! + COS_72 * nearRe + COS_144 * midRe;
      const alongIm = im[a]! + COS_72 * nearIm + COS_144 * midIm;
      const backRe = re[a]! + COS_144 * nearRe + COS_72 * midRe;
      const backIm = im[a]! + COS_144 * nearIm + COS_72 * midIm;
      const acrossRe = SIN_72 * nearOffRe + SIN_144 * midOffRe;
      const acrossIm = SIN_72 * nearOffIm + SIN_144 * midOffIm;
      const awayRe = SIN_144 * nearOffRe - SIN_72 * midOffRe;
      const awayIm = SIN_144 * nearOffIm - SIN_72 * midOffIm;
      spareRe[to] = re[a]! + nearRe + midRe;
      spareIm[to] = im[a]! + nearIm + midIm;
      spareRe[to + stride] = (alongRe + acrossRe) * c1 - (alongIm + acrossIm) * s1;
      spareIm[to + stride] = (alongRe + acrossRe) * s1 + (alongIm + acrossIm) * c1;
      spareRe[to + 2 * stride] = (backRe + awayRe) * c2 - (backIm + awayIm) * s2;
      spareIm[to + 2 * stride] = (backRe + awayRe) * s2 + (backIm + awayIm) * c2;
      spareRe[to + 3 * stride] = (backRe - awayRe) * c3 - (backIm - awayIm) * s3;
      spareIm[to + 3 * stride] = (backRe - awayRe) * s3 + (backIm - awayIm) * c3;
      spareRe[to + 4 * stride] = (alongRe - acrossRe) * c4 - (alongIm - acrossIm) * s4;
      spareIm[to + 4 * stride] = (alongRe - acrossRe) * s4 + (alongIm - acrossIm) * c4;
    }
  }
};

const SIN_60 = Math.sin(Math.PI / 3);
const COS_72 = Math.cos((2 * Math.PI) / 5);
const SIN_72 = Math.sin((2 * Math.PI) / 5);
const COS_144 = Math.cos((4 * Math.PI) / 5);
const SIN_144 = Math.sin((4 * Math.PI) / 5);

const PASSES: Record<number, Pass> = { 2: pass2, 3: pass3, 4: pass4, 5: pass5 };
