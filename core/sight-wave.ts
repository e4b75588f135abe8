import { gaussRule } from './sight-quadrature.js';

/** Points for a pupil without error; more are taken as the phase turns more often. */
const LEAST_POINTS = 16;
/** Gauss's rule needs half a point a radian of phase; the rest is reserve. */
const POINTS_PER_RADIAN = 0.6;

/**
 * Transfer of an evenly lit round pupil with an error of the second order, by autocorrelation of the pupil: the mean over
 * the overlap of two pupils, `apart` diameters from each other, of exp(i·phase), the phase being linear there.
 *
 * With t the angle on the rim and c = cos t − apart half a chord along the shift, the integral along the chord is closed
 * and leaves (4/π)·∫ c·(sin(along·c)/(along·c))·cos(across·sin t)·cos t dt from 0 to acos(apart), in units of the radius.
 * Absolute error below 1e-10.
 * @param apart |f|·λ/p: the frequency as a share of the cut-off.
 * @param along phase in radians over one radius along the shift, 2π·r·(E·f)·f/|f|.
 * @param across the same across the shift.
 */
export function waveTransfer(apart: number, along: number, across: number): number {
  if (apart >= 1) return 0;
  const end = Math.acos(apart);
  const { at, weight } = gaussRule(pointsFor(Math.abs(along) * (1 - apart) + Math.abs(across) * Math.sin(end)));
  let total = 0;
  for (let i = 0; i < at.length; i += 1) {
    const t = end * at[i]!;
    const cos = Math.cos(t);
    const half = cos - apart;
    const phase = along * half;
    const chord = Math.abs(phase) < 1e-4 ? half * (1 - (phase * phase) / 6) : Math.sin(phase) / along;
    total += weight[i]! * chord * cos * Math.cos(across * Math.sin(t));
  }
  return (4 / Math.PI) * end * total;
}

/** Points for so many radians of phase. Few different numbers, so that few rules are worked out: 16, 24, 32, 48, 64 … */
export function pointsFor(phase: number): number {
  const wanted = LEAST_POINTS + POINTS_PER_RADIAN * phase;
  let points = LEAST_POINTS;
  while (points < wanted) points *= 2;
  return points * 0.75 >= wanted ? points * 0.75 : points;
}
