/**
 * Passes that join two, three, four or five transforms at once. All numbers of a butterfly are read before the first is
 * written, constants are taken out of the loops, and `| 0` tells the engine that a place is a small whole number:
 * together that is a quarter of the time.
 */
import { pass8 } from './sight-eight.js';
import type { Pass } from './sight-fourier.js';

const pass2: Pass = ({ size, cos, sin }, prior, lanes, { re, im }, { re: outRe, im: outIm }) => {
  const stride = prior * lanes;
  const far = (size / 2) * lanes;
  const turn = size / (2 * prior);
  for (let k = 0; k < prior; k += 1) {
    const c1 = cos[k * turn]!;
    const s1 = sin[k * turn]!;
    for (let start = k * lanes; start < far; start += stride) {
      const shift = start - k * lanes;
      for (let a = start; a < start + lanes; a += 1) {
        const to = (a + shift) | 0;
        const b = (a + far) | 0;
        const aRe = re[a]!;
        const aIm = im[a]!;
        const bRe = re[b]! * c1 - im[b]! * s1;
        const bIm = re[b]! * s1 + im[b]! * c1;
        outRe[to] = aRe + bRe;
        outIm[to] = aIm + bIm;
        outRe[(to + stride) | 0] = aRe - bRe;
        outIm[(to + stride) | 0] = aIm - bIm;
      }
    }
  }
};

const pass3: Pass = ({ size, cos, sin }, prior, lanes, { re, im }, { re: outRe, im: outIm }) => {
  const stride = prior * lanes;
  const far = (size / 3) * lanes;
  const turn = size / (3 * prior);
  const sin60 = SIN_60;
  for (let k = 0; k < prior; k += 1) {
    const c1 = cos[k * turn]!;
    const s1 = sin[k * turn]!;
    const c2 = cos[2 * k * turn]!;
    const s2 = sin[2 * k * turn]!;
    for (let start = k * lanes; start < far; start += stride) {
      const shift = 2 * (start - k * lanes);
      for (let a = start; a < start + lanes; a += 1) {
        const to = (a + shift) | 0;
        const b = (a + far) | 0;
        const c = (b + far) | 0;
        const aRe = re[a]!;
        const aIm = im[a]!;
        const bRe = re[b]! * c1 - im[b]! * s1;
        const bIm = re[b]! * s1 + im[b]! * c1;
        const cRe = re[c]! * c2 - im[c]! * s2;
        const cIm = re[c]! * s2 + im[c]! * c2;
        const acrossRe = sin60 * (bIm - cIm);
        const acrossIm = sin60 * (cRe - bRe);
        const alongRe = aRe - (bRe + cRe) / 2;
        const alongIm = aIm - (bIm + cIm) / 2;
        outRe[to] = aRe + bRe + cRe;
        outIm[to] = aIm + bIm + cIm;
        outRe[(to + stride) | 0] = alongRe + acrossRe;
        outIm[(to + stride) | 0] = alongIm + acrossIm;
        outRe[(to + 2 * stride) | 0] = alongRe - acrossRe;
        outIm[(to + 2 * stride) | 0] = alongIm - acrossIm;
      }
    }
  }
};

const pass4: Pass = ({ size, cos, sin }, prior, lanes, { re, im }, { re: outRe, im: outIm }) => {
  const stride = prior * lanes;
  const far = (size / 4) * lanes;
  const turn = size / (4 * prior);
  for (let k = 0; k < prior; k += 1) {
    const c1 = cos[k * turn]!;
    const s1 = sin[k * turn]!;
    const c2 = cos[2 * k * turn]!;
    const s2 = sin[2 * k * turn]!;
    const c3 = cos[3 * k * turn]!;
    const s3 = sin[3 * k * turn]!;
    for (let start = k * lanes; start < far; start += stride) {
      const shift = 3 * (start - k * lanes);
      for (let a = start; a < start + lanes; a += 1) {
        const to = (a + shift) | 0;
        const b = (a + far) | 0;
        const c = (b + far) | 0;
        const d = (c + far) | 0;
        const aRe = re[a]!;
        const aIm = im[a]!;
        const bRe = re[b]! * c1 - im[b]! * s1;
        const bIm = re[b]! * s1 + im[b]! * c1;
        const cRe = re[c]! * c2 - im[c]! * s2;
        const cIm = re[c]! * s2 + im[c]! * c2;
        const dRe = re[d]! * c3 - im[d]! * s3;
        const dIm = re[d]! * s3 + im[d]! * c3;
        outRe[to] = aRe + cRe + (bRe + dRe);
        outIm[to] = aIm + cIm + (bIm + dIm);
        outRe[(to + stride) | 0] = aRe - cRe + (bIm - dIm);
        outIm[(to + stride) | 0] = aIm - cIm - (bRe - dRe);
        outRe[(to + 2 * stride) | 0] = aRe + cRe - (bRe + dRe);
        outIm[(to + 2 * stride) | 0] = aIm + cIm - (bIm + dIm);
        outRe[(to + 3 * stride) | 0] = aRe - cRe - (bIm - dIm);
        outIm[(to + 3 * stride) | 0] = aIm - cIm + (bRe - dRe);
      }
    }
  }
};

/** A plain sum over five, with the cosines and sines of 72° and 144°. */
const pass5: Pass = ({ size, cos, sin }, prior, lanes, { re, im }, { re: outRe, im: outIm }) => {
  const stride = prior * lanes;
  const far = (size / 5) * lanes;
  const turn = size / (5 * prior);
  const cos72 = COS_72;
  const sin72 = SIN_72;
  const cos144 = COS_144;
  const sin144 = SIN_144;
  for (let k = 0; k < prior; k += 1) {
    const c1 = cos[k * turn]!;
    const s1 = sin[k * turn]!;
    const c2 = cos[2 * k * turn]!;
    const s2 = sin[2 * k * turn]!;
    const c3 = cos[3 * k * turn]!;
    const s3 = sin[3 * k * turn]!;
    const c4 = cos[4 * k * turn]!;
    const s4 = sin[4 * k * turn]!;
    for (let start = k * lanes; start < far; start += stride) {
      const shift = 4 * (start - k * lanes);
      for (let a = start; a < start + lanes; a += 1) {
        const to = (a + shift) | 0;
        const b = (a + far) | 0;
        const c = (b + far) | 0;
        const d = (c + far) | 0;
        const e = (d + far) | 0;
        const aRe = re[a]!;
        const aIm = im[a]!;
        const bRe = re[b]! * c1 - im[b]! * s1;
        const bIm = re[b]! * s1 + im[b]! * c1;
        const cRe = re[c]! * c2 - im[c]! * s2;
        const cIm = re[c]! * s2 + im[c]! * c2;
        const dRe = re[d]! * c3 - im[d]! * s3;
        const dIm = re[d]! * s3 + im[d]! * c3;
        const eRe = re[e]! * c4 - im[e]! * s4;
        const eIm = re[e]! * s4 + im[e]! * c4;
        const nearRe = bRe + eRe;
        const nearIm = bIm + eIm;
        const midRe = cRe + dRe;
        const midIm = cIm + dIm;
        const alongRe = aRe + cos72 * nearRe + cos144 * midRe;
        const alongIm = aIm + cos72 * nearIm + cos144 * midIm;
        const backRe = aRe + cos144 * nearRe + cos72 * midRe;
        const backIm = aIm + cos144 * nearIm + cos72 * midIm;
        const acrossRe = sin72 * (bIm - eIm) + sin144 * (cIm - dIm);
        const acrossIm = sin72 * (eRe - bRe) + sin144 * (dRe - cRe);
        const awayRe = sin144 * (bIm - eIm) - sin72 * (cIm - dIm);
        const awayIm = sin144 * (eRe - bRe) - sin72 * (dRe - cRe);
        outRe[to] = aRe + nearRe + midRe;
        outIm[to] = aIm + nearIm + midIm;
        outRe[(to + stride) | 0] = alongRe + acrossRe;
        outIm[(to + stride) | 0] = alongIm + acrossIm;
        outRe[(to + 2 * stride) | 0] = backRe + awayRe;
        outIm[(to + 2 * stride) | 0] = backIm + awayIm;
        outRe[(to + 3 * stride) | 0] = backRe - awayRe;
        outIm[(to + 3 * stride) | 0] = backIm - awayIm;
        outRe[(to + 4 * stride) | 0] = alongRe - acrossRe;
        outIm[(to + 4 * stride) | 0] = alongIm - acrossIm;
      }
    }
  }
};

const SIN_60 = Math.sin(Math.PI / 3);
const COS_72 = Math.cos((2 * Math.PI) / 5);
const SIN_72 = Math.sin((2 * Math.PI) / 5);
const COS_144 = Math.cos((4 * Math.PI) / 5);
const SIN_144 = Math.sin((4 * Math.PI) / 5);

export const PASSES: Record<number, Pass> = { 2: pass2, 3: pass3, 4: pass4, 5: pass5, 8: pass8 };
