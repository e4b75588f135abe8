/** Plain arithmetic on 2 × 2 matrices: what is redrawn while something is dragged cannot wait for a library. */
import { RADIANS, meridian } from './angle.js';
import type { PowerVector } from './types.js';

/** By rows: xx, xy, yx, yy. */
export type Matrix = readonly [number, number, number, number];

export const UNIT: Matrix = [1, 0, 0, 1];
export const NULL: Matrix = [0, 0, 0, 0];

export function times([a, b, c, d]: Matrix, [e, f, g, h]: Matrix): Matrix {
  return [a * e + b * g, a * f + b * h, c * e + d * g, c * f + d * h];
}

/** p·left + q·right. */
export function mixed(p: number, [a, b, c, d]: Matrix, q: number, [e, f, g, h]: Matrix): Matrix {
  return [p * a + q * e, p * b + q * f, p * c + q * g, p * d + q * h];
}

export function determinant([a, b, c, d]: Matrix): number {
  return a * d - b * c;
}

/** The caller has seen to it that the determinant is not 0. */
export function inverse(matrix: Matrix): Matrix {
  const [a, b, c, d] = matrix;
  const size = determinant(matrix);
  return [d / size, -b / size, -c / size, a / size];
}

/** Power matrix of a power vector (Thibos, Wheeler & Horner 1997): M + J0 acts along x, M − J0 along y. */
export function powerMatrix({ m, j0, j45 }: PowerVector, scale = 1): Matrix {
  return [scale * (m + j0), scale * j45, scale * j45, scale * (m - j0)];
}

/** Power vector of the symmetric part of a matrix. */
export function powerVector([a, b, c, d]: Matrix, scale = 1): PowerVector {
  return { m: (scale * (a + d)) / 2, j0: (scale * (a - d)) / 2, j45: (scale * (b + c)) / 2 };
}

/** Symmetric matrix with the value `steep` along a meridian in degrees and `flat` across it. */
export function alongMeridian(flat: number, steep: number, degrees: number): Matrix {
  const doubled = 2 * RADIANS * degrees;
  const half = (steep - flat) / 2;
  return powerMatrix({ m: (flat + steep) / 2, j0: half * Math.cos(doubled), j45: half * Math.sin(doubled) });
}

/** Largest share of a magnitude that is rounding. */
const ROUNDING = 1e-12;

/**
 * What a matrix makes of a circle of radius 1: an ellipse, by its half axes and the direction of the longer one in
 * degrees, 180 for a circle. (Singular values of a 2 × 2 matrix in closed form: it is the sum of a turn by one angle,
 * of size `turned`, and of a turned mirror image, of size `mirrored`.)
 */
export function imageOfCircle([a, b, c, d]: Matrix): { longer: number; shorter: number; direction: number } {
  const turned = Math.hypot(a + d, c - b) / 2;
  const mirrored = Math.hypot(a - d, c + b) / 2;
  const longer = turned + mirrored;
  const round = Math.min(turned, mirrored) <= ROUNDING * longer;
  return {
    longer,
    shorter: Math.abs(turned - mirrored),
    direction: round ? 180 : meridian((Math.atan2(c + b, a - d) + Math.atan2(c - b, a + d)) / 2 / RADIANS),
  };
}
