/**
 * Passes that join eight transforms at once: two times four, the second four turned by eighths of a circle. They need
 * fewer journeys of all numbers to and fro than passes by four, and those journeys are most of the time. Odd numbers are
 * read after the even ones are joined, so that few have to be held at once. The same sums stand in both passes, for a
 * function that returned sixteen numbers would have to put them into an object for each eight.
 */
import type { Complex, Pass, Source } from './sight-fourier.js';

/** The first pass: nothing to turn, and the numbers may still lie in the order of a plane. */
export function openByEight(size: number, lanes: number, { re, im, step, lanesIn, laneStep }: Source, { re: outRe, im: outIm }: Complex): void {
  const count = size / 8;
  const far = count * step;
  const stride = lanes;
  // The shorter step in the innermost loop, for neighbours lie in one line of the processor's cache.
  const along = step < laneStep;
  const [turns, turnStep, turnTo] = along ? [lanesIn, laneStep, 1] : [count, step, 8 * lanes];
  const [inner, innerStep, innerTo] = along ? [count, step, 8 * lanes] : [lanesIn, laneStep, 1];
  for (let i = 0; i < turns; i += 1) {
    let a = i * turnStep;
    let to = i * turnTo;
    for (const end = a + inner * innerStep; a < end; a += innerStep, to += innerTo) {
      const b = (a + far) | 0;
      const c = (b + far) | 0;
      const d = (c + far) | 0;
      const e = (d + far) | 0;
      const f = (e + far) | 0;
      const g = (f + far) | 0;
      const h = (g + far) | 0;
      const aRe = re[a]!;
      const aIm = im[a]!;
      const cRe = re[c]!;
      const cIm = im[c]!;
      const eRe = re[e]!;
      const eIm = im[e]!;
      const gRe = re[g]!;
      const gIm = im[g]!;
      const even0Re = aRe + eRe + (cRe + gRe);
      const even0Im = aIm + eIm + (cIm + gIm);
      const even1Re = aRe - eRe + (cIm - gIm);
      const even1Im = aIm - eIm - (cRe - gRe);
      const even2Re = aRe + eRe - (cRe + gRe);
      const even2Im = aIm + eIm - (cIm + gIm);
      const even3Re = aRe - eRe - (cIm - gIm);
      const even3Im = aIm - eIm + (cRe - gRe);
      const bRe = re[b]!;
      const bIm = im[b]!;
      const dRe = re[d]!;
      const dIm = im[d]!;
      const fRe = re[f]!;
      const fIm = im[f]!;
      const hRe = re[h]!;
      const hIm = im[h]!;
      const odd0Re = bRe + fRe + (dRe + hRe);
      const odd0Im = bIm + fIm + (dIm + hIm);
      const odd1Re = bRe - fRe + (dIm - hIm);
      const odd1Im = bIm - fIm - (dRe - hRe);
      const odd2Re = bRe + fRe - (dRe + hRe);
      const odd2Im = bIm + fIm - (dIm + hIm);
      const odd3Re = bRe - fRe - (dIm - hIm);
      const odd3Im = bIm - fIm + (dRe - hRe);
      const riseRe = Math.SQRT1_2 * (odd1Re + odd1Im);
      const riseIm = Math.SQRT1_2 * (odd1Im - odd1Re);
      const fallRe = Math.SQRT1_2 * (odd3Im - odd3Re);
      const fallIm = Math.SQRT1_2 * (odd3Re + odd3Im);
      outRe[to] = even0Re + odd0Re;
      outIm[to] = even0Im + odd0Im;
      outRe[(to + stride) | 0] = even1Re + riseRe;
      outIm[(to + stride) | 0] = even1Im + riseIm;
      outRe[(to + 2 * stride) | 0] = even2Re + odd2Im;
      outIm[(to + 2 * stride) | 0] = even2Im - odd2Re;
      outRe[(to + 3 * stride) | 0] = even3Re + fallRe;
      outIm[(to + 3 * stride) | 0] = even3Im - fallIm;
      outRe[(to + 4 * stride) | 0] = even0Re - odd0Re;
      outIm[(to + 4 * stride) | 0] = even0Im - odd0Im;
      outRe[(to + 5 * stride) | 0] = even1Re - riseRe;
      outIm[(to + 5 * stride) | 0] = even1Im - riseIm;
      outRe[(to + 6 * stride) | 0] = even2Re - odd2Im;
      outIm[(to + 6 * stride) | 0] = even2Im + odd2Re;
      outRe[(to + 7 * stride) | 0] = even3Re - fallRe;
      outIm[(to + 7 * stride) | 0] = even3Im + fallIm;
    }
  }
}

export const pass8: Pass = ({ size, cos, sin }, prior, lanes, { re, im }, { re: outRe, im: outIm }) => {
  const stride = prior * lanes;
  const far = (size / 8) * lanes;
  const turn = size / (8 * prior);
  for (let k = 0; k < prior; k += 1) {
    const c1 = cos[k * turn]!;
    const s1 = sin[k * turn]!;
    const c2 = cos[2 * k * turn]!;
    const s2 = sin[2 * k * turn]!;
    const c3 = cos[3 * k * turn]!;
    const s3 = sin[3 * k * turn]!;
    const c4 = cos[4 * k * turn]!;
    const s4 = sin[4 * k * turn]!;
    const c5 = cos[5 * k * turn]!;
    const s5 = sin[5 * k * turn]!;
    const c6 = cos[6 * k * turn]!;
    const s6 = sin[6 * k * turn]!;
    const c7 = cos[7 * k * turn]!;
    const s7 = sin[7 * k * turn]!;
    for (let start = k * lanes; start < far; start += stride) {
      const shift = 7 * (start - k * lanes);
      for (let a = start; a < start + lanes; a += 1) {
        const to = (a + shift) | 0;
        const b = (a + far) | 0;
        const c = (b + far) | 0;
        const d = (c + far) | 0;
        const e = (d + far) | 0;
        const f = (e + far) | 0;
        const g = (f + far) | 0;
        const h = (g + far) | 0;
        const aRe = re[a]!;
        const aIm = im[a]!;
        const cRe = re[c]! * c2 - im[c]! * s2;
        const cIm = re[c]! * s2 + im[c]! * c2;
        const eRe = re[e]! * c4 - im[e]! * s4;
        const eIm = re[e]! * s4 + im[e]! * c4;
        const gRe = re[g]! * c6 - im[g]! * s6;
        const gIm = re[g]! * s6 + im[g]! * c6;
        const even0Re = aRe + eRe + (cRe + gRe);
        const even0Im = aIm + eIm + (cIm + gIm);
        const even1Re = aRe - eRe + (cIm - gIm);
        const even1Im = aIm - eIm - (cRe - gRe);
        const even2Re = aRe + eRe - (cRe + gRe);
        const even2Im = aIm + eIm - (cIm + gIm);
        const even3Re = aRe - eRe - (cIm - gIm);
        const even3Im = aIm - eIm + (cRe - gRe);
        const bRe = re[b]! * c1 - im[b]! * s1;
        const bIm = re[b]! * s1 + im[b]! * c1;
        const dRe = re[d]! * c3 - im[d]! * s3;
        const dIm = re[d]! * s3 + im[d]! * c3;
        const fRe = re[f]! * c5 - im[f]! * s5;
        const fIm = re[f]! * s5 + im[f]! * c5;
        const hRe = re[h]! * c7 - im[h]! * s7;
        const hIm = re[h]! * s7 + im[h]! * c7;
        const odd0Re = bRe + fRe + (dRe + hRe);
        const odd0Im = bIm + fIm + (dIm + hIm);
        const odd1Re = bRe - fRe + (dIm - hIm);
        const odd1Im = bIm - fIm - (dRe - hRe);
        const odd2Re = bRe + fRe - (dRe + hRe);
        const odd2Im = bIm + fIm - (dIm + hIm);
        const odd3Re = bRe - fRe - (dIm - hIm);
        const odd3Im = bIm - fIm + (dRe - hRe);
        const riseRe = Math.SQRT1_2 * (odd1Re + odd1Im);
        const riseIm = Math.SQRT1_2 * (odd1Im - odd1Re);
        const fallRe = Math.SQRT1_2 * (odd3Im - odd3Re);
        const fallIm = Math.SQRT1_2 * (odd3Re + odd3Im);
        outRe[to] = even0Re + odd0Re;
        outIm[to] = even0Im + odd0Im;
        outRe[(to + stride) | 0] = even1Re + riseRe;
        outIm[(to + stride) | 0] = even1Im + riseIm;
        outRe[(to + 2 * stride) | 0] = even2Re + odd2Im;
        outIm[(to + 2 * stride) | 0] = even2Im - odd2Re;
        outRe[(to + 3 * stride) | 0] = even3Re + fallRe;
        outIm[(to + 3 * stride) | 0] = even3Im - fallIm;
        outRe[(to + 4 * stride) | 0] = even0Re - odd0Re;
        outIm[(to + 4 * stride) | 0] = even0Im - odd0Im;
        outRe[(to + 5 * stride) | 0] = even1Re - riseRe;
        outIm[(to + 5 * stride) | 0] = even1Im - riseIm;
        outRe[(to + 6 * stride) | 0] = even2Re - odd2Im;
        outIm[(to + 6 * stride) | 0] = even2Im + odd2Re;
        outRe[(to + 7 * stride) | 0] = even3Re - fallRe;
        outIm[(to + 7 * stride) | 0] = even3Im + fallIm;
      }
    }
  }
};
