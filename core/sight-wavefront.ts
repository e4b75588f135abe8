import { finite } from './check.js';
import { fromPowerVector, type CylinderSign } from './refraction.js';
import { allowed, focusError } from './sight-limits.js';
import type { Refraction } from './types.js';

/**
 * Zernike coefficients of the second order, µm: normalised, doubly indexed, angles counter-clockwise from the viewer's
 * right (ISO 24157). `c2m2` belongs to sin 2θ.
 */
export interface Wavefront {
  c20: number;
  c22: number;
  c2m2: number;
}

/**
 * Wavefront aberration of the eye that `refraction` would correct, over a pupil of `pupilMm`.
 *
 * M = −4√3·c20/r², J0 = −2√6·c22/r², J45 = −2√6·c2−2/r²; r in mm makes the coefficients µm (Thibos et al. 2004). The sign
 * is that of the *correction*: an eye that needs −1 D has focused too strongly and gets c20 > 0. Who holds the error
 * itself, as the excess of power in the eye, has to change the sign of all three.
 * @param refraction dioptres at the plane of the pupil; the axis in degrees of the dial.
 * @param pupilMm diameter of the pupil, 1–9 mm.
 * @throws RangeError when a value is out of range.
 */
export function wavefront(refraction: Refraction, pupilMm: number): Wavefront {
  const { m, j0, j45 } = focusError(refraction);
  const square = squareOfRadius(pupilMm);
  return {
    c20: (-m * square) / (4 * Math.sqrt(3)) + 0,
    c22: (-j0 * square) / (2 * Math.sqrt(6)) + 0,
    c2m2: (-j45 * square) / (2 * Math.sqrt(6)) + 0,
  };
}

/**
 * The refraction that corrects a wavefront of the second order: the inverse of `wavefront`, in minus-cylinder form
 * unless `sign` says plus.
 * @throws RangeError when a coefficient is not finite or the pupil out of range.
 */
export function refractionOf({ c20, c22, c2m2 }: Wavefront, pupilMm: number, sign?: CylinderSign): Refraction {
  const square = squareOfRadius(pupilMm);
  return fromPowerVector({
    m: (-4 * Math.sqrt(3) * finite('c20', c20, 'µm')) / square,
    j0: (-2 * Math.sqrt(6) * finite('c22', c22, 'µm')) / square,
    j45: (-2 * Math.sqrt(6) * finite('c2m2', c2m2, 'µm')) / square,
  }, sign);
}

/** Single index j and factor of normalisation of the Zernike function of order `n` and frequency `m` (ISO 24157). */
export function zernikeIndex(n: number, m: number): { j: number; norm: number } {
  return { j: (n * (n + 2) + m) / 2, norm: Math.sqrt((2 * (n + 1)) / (m === 0 ? 2 : 1)) };
}

function squareOfRadius(pupilMm: number): number {
  return (allowed('pupil', 'pupil', pupilMm) / 2) ** 2;
}
