/** Light through the eye, of the first order: all of `eye-plain.ts`, and the 4 × 4 matrices of astigmatic systems, which need mathjs. */
export * from './eye-plain.js';
export { principalPowers, toricMatrix, traceToric } from './eye-toric.js';
