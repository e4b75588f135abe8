/** What glasses or lens an eye still needs: from the real distances in the eye, no fixed factor anywhere. */
import { meridian } from './angle.js';
import { RefusedValue } from './check.js';
import { allowed, isNone } from './eye-limits.js';
import { NULL, UNIT, determinant, inverse, mixed, powerVector, times, type Matrix } from './eye-matrix.js';
import { stepsOf, through, type Steps } from './eye-system.js';
import type { ToricSystem } from './eye-types.js';
import { fromPowerVector, toPowerVector } from './refraction.js';
import type { Refraction } from './types.js';

/** From where an eye sees sharply along one of its principal meridians. */
export interface FarPoint {
  /** Degrees in (0, 180]. */
  meridian: number;
  /** D; < 0 in front of the eye. */
  vergence: number;
  /** mm from the first vertex, < 0 in front of the eye; null at infinity. */
  position: number | null;
}

export interface Residual {
  /** Correction in the plane of the first surface, which should be the cornea; minus cylinder. */
  cornea: Refraction;
  /** Correction in the plane of glasses; minus cylinder. */
  spectacles: Refraction;
  /** Of the meridian along the axis of the correction, then of the one across it. */
  farPoints: [FarPoint, FarPoint];
}

/** Common practice, and that of the chart against which `atVertex` is tested. */
const VERTEX = 12;

/**
 * The correction with which the retina is in focus. An error of the eye has the other sign: one that is 1 D too strong
 * needs −1 D. To the first order exact: R = B⁻¹A of the 2 × 2 blocks of the transfer from the first surface to the
 * retina, y = A·y₀ + B·u₀ and u₀ = −R·y₀ (Keating 1981, Harris: from memory), which is always symmetric.
 * @param eye its surfaces, the first of them the cornea.
 * @param axialLength from the first vertex to the retina, 10–50 mm and behind the last surface.
 * @param vertex from the glasses to the cornea, 0–30 mm; 12 when left out.
 * @throws RangeError out of range, and where no lens could make the retina sharp.
 */
export function residual({ axialLength, vertex = VERTEX, ...eye }: ToricSystem & { axialLength: number; vertex?: number }): Residual {
  const made = stepsOf(eye);
  const cornea = fromPowerVector(powerVector(correction(made, axialLength), 1000));
  const far = (power: number, degrees: number): FarPoint => ({ meridian: meridian(degrees), vergence: power, position: isNone(power / 1000) ? null : (1000 * made.indexBefore) / power });
  return {
    cornea,
    spectacles: atSpectacles(cornea, vertex),
    farPoints: [far(cornea.sphere, cornea.axis), far(cornea.sphere + cornea.cylinder, cornea.axis + 90)],
  };
}

/** A lens that makes an eye sharp for afar. */
export interface FittedLens {
  /** Power of the thin lens in its place, D; minus cylinder. */
  power: Refraction;
  /** Amount of its cylinder, D. */
  cylinder: number;
  /** Meridian that it flattens, the steep one of the cornea: where a toric lens has its marks. Degrees in (0, 180]. */
  meridian: number;
  /** Cylinder in its place for one dioptre at the cornea. */
  ratio: number;
  /** The same cylinder at the plane of the cornea, D. */
  cornealCylinder: number;
}

/**
 * The thin lens that brings light from afar to the retina: n/(L − d) − V, V being the vergence that arrives (meridian by
 * meridian Fam & Lim 2007, as a matrix Langenbucher et al. 2004). The ratio is 1/((1 − K₁d/n)(1 − K₂d/n)) for a thin
 * cornea, the inverse of the share to which the bundle has shrunk in any other: it follows from the real cornea and
 * the real depth. For a small cylinder it is that of `lensPlaneRatio`.
 * @param eye what lies in front of the lens; `gapAfter` of the last surface is the way from there to the lens.
 * @param axialLength from the first vertex to the retina, 10–50 mm.
 * @throws RangeError out of range, and for a lens that would lie at or behind the retina.
 */
export function lensToFit({ axialLength, ...eye }: ToricSystem & { axialLength: number }): FittedLens {
  const made = stepsOf(eye);
  const behind = axialBehind(made.end, axialLength);
  const { height, slope } = through(made, { height: UNIT, slope: NULL }, made.steps.length, true);
  const shrunk = determinant(height);
  // Behind its focus a bundle is upside down along that meridian.
  if (shrunk < 1e-9 || height[0] + height[3] < 0) throw new RefusedValue('surfaces', 'light that is in focus before the lens', 'light that is not in focus in front of the lens or in it');
  const arriving = times(slope, inverse(height));
  const power = fromPowerVector(powerVector(mixed(made.indexAtEnd / behind, UNIT, 1, arriving), 1000));
  const cylinder = -power.cylinder + 0;
  return {
    power,
    cylinder,
    meridian: cylinder < 1e-12 ? 180 : meridian(power.axis + 90),
    ratio: 1 / shrunk,
    cornealCylinder: cylinder * shrunk,
  };
}

/**
 * A correction at the cornea in the plane of glasses, each principal meridian by R / (1 + d·R): the inverse of `atVertex`.
 * @param vertex from the glasses to the cornea, 0–30 mm; 12 when left out.
 * @throws RangeError out of range, and for a far point between glasses and eye.
 */
export function atSpectacles(cornea: Refraction, vertex: number = VERTEX): Refraction {
  const metres = allowed('vertex', 'vertex', vertex) / 1000;
  toPowerVector(cornea);
  const [along, across] = [cornea.sphere, cornea.sphere + cornea.cylinder].map((power) => {
    const nearness = 1 + metres * power;
    if (nearness <= 0) throw new RefusedValue('vertex', vertex, `below ${(-1000 / power).toFixed(1)} mm, for a far point lies between glasses and eye`);
    return power / nearness;
  }) as [number, number];
  return { sphere: along, cylinder: across - along, axis: meridian(cornea.axis) };
}

function correction(made: Steps, axialLength: number): Matrix {
  const behind = axialBehind(made.last, axialLength) / made.indexAfter;
  const high = through(made, { height: UNIT, slope: NULL });
  const sloping = through(made, { height: NULL, slope: UNIT });
  const b = mixed(1, sloping.height, behind, sloping.slope);
  if (Math.abs(determinant(b)) < 1e-9) throw new RefusedValue('axialLength', axialLength, 'a length at which the cornea is not its own image');
  return times(inverse(b), mixed(1, high.height, behind, high.slope));
}

function axialBehind(place: number, axialLength: number): number {
  const length = allowed('axialLength', 'axialLength', axialLength);
  if (length - place > 1e-6) return length - place;
  throw new RefusedValue('axialLength', axialLength, `more than ${place} mm, where the lens or last surface is`);
}
