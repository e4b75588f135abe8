/**
 * The bundle of light behind an astigmatic eye or lens: an ellipse in every plane, a line in two of them. Plain
 * arithmetic, fit to be redrawn while something is dragged: about a microsecond a cross-section.
 *
 * In two planes the bundle shrinks to a line. The steep meridian focuses first, and the line lies *across* it: an eye
 * steep at 90° (with the rule) has its first line at 180°.
 */
import { RADIANS } from './angle.js';
import { RefusedValue, finite } from './check.js';
import { allowed, isNone } from './eye-limits.js';
import { UNIT, determinant, imageOfCircle, inverse, mixed, powerMatrix, powerVector, times, type Matrix } from './eye-matrix.js';
import { arriving, stepsOf, through } from './eye-system.js';
import type { ToricSystem } from './eye-types.js';
import type { PowerVector } from './types.js';

/** A bundle: the ray through the point p of a pupil of radius 1 crosses the plane z at (start + (z − from)·growth)·p. */
export interface Pencil {
  /** Plane of the last surface, mm from the first vertex. */
  from: number;
  /** mm. */
  start: Matrix;
  /** mm a mm. */
  growth: Matrix;
}

/** A section across the bundle: an ellipse. Full lengths in mm. */
export interface CrossSection {
  longer: number;
  shorter: number;
  /** Direction of the longer axis on the dial, degrees in (0, 180]; 180 for a circle. */
  direction: number;
}

/** Where the light of one meridian comes together: a line across that meridian. */
export interface LineFocus {
  /** mm from the first vertex; in front of the last surface it is virtual. */
  position: number;
  /** mm. */
  length: number;
  /** Direction of the line on the dial, degrees in (0, 180]; 180 for a point. */
  direction: number;
}

export interface LeastConfusion {
  /** mm from the first vertex. */
  position: number;
  /** Of the section, or its longer axis where it is not quite a circle; mm. */
  diameter: number;
  /** Shorter over longer axis: 1 for a circle. Below 1 only where surfaces at a distance are crossed obliquely. */
  roundness: number;
}

export interface PencilOptions {
  /** Diameter of the pupil, 0.1–100 mm. */
  pupil: number;
  /**
   * Position in the list of the surface in whose plane the pupil lies: 0 (when left out) is the entrance pupil on the
   * first surface; with the front of the lens it is the real one.
   */
  stop?: number;
  /** Vergence with which the light arrives, D: 0 from afar, −3 from a third of a metre. */
  vergence?: number;
}

/**
 * The bundle from a point on the axis, behind the last surface.
 * @throws RangeError for a value out of range, and where the light comes together in the plane of the pupil.
 */
export function pencilThrough(system: ToricSystem, { pupil, stop = 0, vergence = 0 }: PencilOptions): Pencil {
  const made = stepsOf(system);
  const radius = allowed('pupil', 'pupil', pupil) / 2;
  const light = arriving(mixed(allowed('vergence', 'vergence', vergence) / 1000, UNIT, 0, UNIT));
  if (!(Number.isInteger(stop) && stop >= 0 && stop < made.steps.length)) throw new RefusedValue('stop', stop, `a whole number, 0 to ${made.steps.length - 1}`);
  const atStop = through(made, light, stop, true).height;
  if (Math.abs(determinant(atStop)) < 1e-9) throw new RefusedValue('stop', stop, 'a surface on which the light does not come together');
  const { height, slope } = through(made, light);
  const fromStop = mixed(radius, inverse(atStop), 0, UNIT);
  return { from: made.last, start: times(height, fromStop), growth: times(mixed(1 / made.indexAfter, slope, 0, UNIT), fromStop) };
}

/**
 * The bundle behind a round pupil in whose plane the light has a given vergence; the shortest road to a picture.
 * @param vergence D, positive converging: `m` on the mean, `j0` more along 180° than along 90°, `j45` more along 45°.
 * For light from afar it is the power vector of the lens.
 */
export function pencilOf({ vergence, pupil, index = 1, from = 0 }: { vergence: PowerVector; pupil: number; index?: number; from?: number }): Pencil {
  const radius = allowed('pupil', 'pupil', pupil) / 2;
  for (const part of ['m', 'j0', 'j45'] as const) allowed('vergence', `vergence.${part}`, vergence[part]);
  const perMm = radius / (1000 * allowed('index', 'index', index));
  return { from: allowed('place', 'from', from), start: [radius, 0, 0, radius], growth: mixed(-perMm, powerMatrix(vergence), 0, UNIT) };
}

/** The section in the plane `z`, mm from the first vertex. Meant for z behind the last surface; in front it is that of the rays drawn backwards. */
export function crossSection(pencil: Pencil, z: number): CrossSection {
  const { longer, shorter, direction } = imageOfCircle(sectionAt(pencil, allowed('place', 'z', z)));
  return { longer: 2 * longer, shorter: 2 * shorter, direction };
}

/** Width of the section at `z` in one direction, mm: the bundle seen from the side. */
export function widthAlong(pencil: Pencil, z: number, degrees: number): number {
  const along = finite('direction', degrees, '°') * RADIANS;
  const [c, s] = [Math.cos(along), Math.sin(along)];
  const [xx, xy, yx, yy] = sectionAt(pencil, allowed('place', 'z', z));
  return 2 * Math.hypot(c * xx + s * yx, c * xy + s * yy);
}

/** Where in the plane `z` the ray through the point (x, y) of a pupil of radius 1 passes, mm. */
export function rayAt(pencil: Pencil, { x, y }: { x: number; y: number }, z: number): { x: number; y: number } {
  const [px, py] = [finite('x', x, ''), finite('y', y, '')];
  const [xx, xy, yx, yy] = sectionAt(pencil, allowed('place', 'z', z));
  return { x: xx * px + xy * py, y: yx * px + yy * py };
}

/**
 * The two line foci, that of the stronger meridian first; null for one at infinity. Exact to the first order, whatever
 * the surfaces and however they are crossed: the vergence of a bundle from one point is a symmetric matrix.
 * @throws RangeError for a bundle that is already a line in the plane of the last surface.
 */
export function lineFoci(pencil: Pencil): [LineFocus | null, LineFocus | null] {
  const [strong, weak] = principalVergences(pencil);
  return [lineFocus(pencil, strong), lineFocus(pencil, weak)];
}

/**
 * Where the bundle is as narrow as it gets all round: the section whose longer axis is shortest. With a vergence V along
 * one meridian and W along the other it lies at n·2/(V + W), p·(V − W)/(V + W) across for a pupil p (any text).
 * Null unless both line foci are at finite distances on the same side.
 * @throws RangeError as `lineFoci`.
 */
export function leastConfusion(pencil: Pencil): LeastConfusion | null {
  const [strong, weak] = principalVergences(pencil);
  if (isNone(strong) || isNone(weak) || strong * weak < 0) return null;
  // The longer axis is a convex function of the place, for it is a norm of what is linear in it.
  const position = lowest((z) => imageOfCircle(sectionAt(pencil, z)).longer, pencil.from + 1 / strong, pencil.from + 1 / weak);
  const { longer, shorter } = imageOfCircle(sectionAt(pencil, position));
  return longer < POINT ? { position, diameter: 0, roundness: 1 } : { position, diameter: 2 * longer, roundness: shorter / longer };
}

/** Half a length that is nothing but rounding, mm. */
const POINT = 1e-9;

function sectionAt({ from, start, growth }: Pencil, z: number): Matrix {
  return mixed(1, start, z - from, growth);
}

/** Vergences of the principal meridians over the index, 1/mm, the larger first. */
function principalVergences({ start, growth }: Pencil): [number, number] {
  if (Math.abs(determinant(start)) < 1e-12) throw new RefusedValue('pencil', 'a line', 'a bundle that has some width at the last surface');
  const { m, j0, j45 } = powerVector(times(growth, inverse(start)));
  const half = Math.hypot(j0, j45);
  return [half - m, -half - m];
}

function lineFocus(pencil: Pencil, vergence: number): LineFocus | null {
  if (isNone(vergence)) return null;
  const position = pencil.from + 1 / vergence;
  const { longer, direction } = imageOfCircle(mixed(1, pencil.start, 1 / vergence, pencil.growth));
  const point = longer < POINT;
  return { position, length: point ? 0 : 2 * longer, direction: point ? 180 : direction };
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Place of the lowest value of a convex function, by the golden section, which always takes the same time. */
function lowest(f: (z: number) => number, a: number, b: number): number {
  let [low, high] = [Math.min(a, b), Math.max(a, b)];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [f(left), f(right)];
  for (let i = 0; i < 80; i += 1) {
    if (atLeft <= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = f(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = f(right);
    }
  }
  return (low + high) / 2;
}

