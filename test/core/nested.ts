/**
 * Eyes described error by error, apart from the core: how they are drawn, what they come to exactly, and as which plan
 * the core knows them. Sizes are the model's own as published for users: readings and back surface 0.15 D a component,
 * marks 5°, a lens 3° against its marks.
 */
import { erf } from 'mathjs';
import { MODEL, type EyePlan, type Vector } from '../../core/index.js';

export interface Described {
  /** Cornea as measured: D at the steep meridian. */
  front: [dioptres: number, degrees: number];
  entry?: { flattening: number; site: number; width: number; sd: number };
  arcs?: { flattening: number; site: number; count: 1 | 2; along: number; across: number };
  lens?: { cylinder: number; meridian: number };
  /** Standard deviation of the readings per component, D. */
  readings?: number;
}

export type Tensor = [xx: number, xy: number, yy: number];

const DEGREE = Math.PI / 180;
const MARKS = 5 * DEGREE;
const ROTATION = 3 * DEGREE;
const BACK = 0.15;

export const vector = (dioptres: number, degrees: number): Vector => {
  const doubled = 2 * degrees * DEGREE;
  return { x: dioptres * Math.cos(doubled), y: dioptres * Math.sin(doubled) };
};

const plus = (...parts: Vector[]): Vector => parts.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }), { x: 0, y: 0 });

/** Turned by radians on the eye, so by twice as much here. */
const turned = ({ x, y }: Vector, radians: number): Vector => {
  const [c, s] = [Math.cos(2 * radians), Math.sin(2 * radians)];
  return { x: x * c - y * s, y: x * s + y * c };
};

/** The plan of a described eye, with every mean given so that none of them is the core's. */
export function planOf({ front: [dioptres, degrees], entry, arcs, lens, readings = 0.15 }: Described): EyePlan {
  return {
    flatK: 40, steepK: 40 + dioptres, steepMeridian: degrees, age: 65,
    risks: readings === MODEL.uncertainty.keratometryDryEye ? 'dry-eye' : '',
    ...(entry && { incisionSite: entry.site, incisionWidth: entry.width, incisionFlattening: entry.flattening }),
    ...(arcs && { arcSite: arcs.site, arcCount: arcs.count, arcFlattening: arcs.flattening }),
    ...(lens && { lensCylinder: lens.cylinder, lensMeridian: lens.meridian }),
  };
}

/** One eye after another of those that the described one may become. */
export function drawer({ front, entry, arcs, lens, readings = 0.15 }: Described, normal: () => number): () => Vector {
  const start = vector(...front);
  return () => {
    const placed: Vector[] = [];
    if (entry) placed.push(vector(-entry.flattening, entry.site), { x: entry.sd * normal(), y: entry.sd * normal() });
    if (arcs) placed.push(vector(arcs.along * normal() - arcs.flattening, arcs.site), vector(arcs.across * normal(), arcs.site + 45));
    if (lens) placed.push(turned(vector(-lens.cylinder, lens.meridian), ROTATION * normal()));
    const marks = MARKS * normal();
    const measured = [readings, BACK].map((sd) => ({ x: sd * normal(), y: sd * normal() }));
    return plus(start, turned(plus(...placed), marks), ...measured);
  };
}

/**
 * Chance of at most `limit` for a normal with any covariance: the conditional normal of y given x, with x = limit·sin t.
 * The integrand is periodic in t, so equal steps converge faster than any power of their number.
 */
export function discChance(mean: Vector, [xx, xy, yy]: Tensor, limit: number, steps = 48): number {
  const [sx, given] = [Math.sqrt(xx), Math.sqrt(yy - (xy * xy) / xx)];
  let total = 0;
  for (let i = 0; i < steps; i += 1) {
    const t = -Math.PI / 2 + (Math.PI * (i + 0.5)) / steps;
    const [x, half] = [limit * Math.sin(t), limit * Math.cos(t)];
    const middle = mean.y + (xy / xx) * (x - mean.x);
    const strip = erf((half - middle) / given / Math.SQRT2) - erf((-half - middle) / given / Math.SQRT2);
    total += (half * Math.exp(-((x - mean.x) ** 2) / (2 * xx)) * strip) / 2;
  }
  return ((total * Math.PI) / steps) / (sx * Math.sqrt(2 * Math.PI));
}

const sumOf = (parts: Tensor[]): Tensor => parts.reduce((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]], [0, 0, 0]);

/** Variances along and across a direction of the double-angle plane, in radians. */
function tensor(along: number, across: number, angle: number): Tensor {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [along * c * c + across * s * s, (along - across) * c * s, along * s * s + across * c * c];
}

function turnedTensor([xx, xy, yy]: Tensor, radians: number): Tensor {
  const half = (xx + yy) / 2;
  const { x, y } = turned(turned({ x: (xx - yy) / 2, y: xy }, radians), radians);
  return [half + x, y, half - x];
}

/** Sum over a normal error in `steps` equal steps of Simpson's rule, to eight standard deviations either way. */
export function overNormal(steps: number, of: (z: number) => number): number {
  let total = 0;
  for (let i = 0; i <= steps; i += 1) {
    const z = -8 + (16 * i) / steps;
    const weight = (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) / 3;
    total += weight * Math.exp((-z * z) / 2) * of(z);
  }
  return (total * 16) / steps / Math.sqrt(2 * Math.PI);
}

/** Mean and covariance of the vector that a lens becomes by turning against its marks, by summing. */
function rotatedLens(lens: Vector): { mean: Vector; own: Tensor } {
  const at = (of: (v: Vector) => number) => overNormal(400, (z) => of(turned(lens, ROTATION * z)));
  const mean = { x: at(({ x }) => x), y: at(({ y }) => y) };
  return { mean, own: [at(({ x }) => x * x) - mean.x ** 2, at(({ x, y }) => x * y) - mean.x * mean.y, at(({ y }) => y * y) - mean.y ** 2] };
}

/**
 * Exact chance. Over the marks with `steps`; the lens's own turn is one with the marks when it stands alone, and beside
 * cuts either an inner sum (`inner` steps) or, with none, a normal of the same moments, as the core has it.
 */
export function exactChance(described: Described, limit: number, { steps = 2000, inner = 0 } = {}): number {
  const { front, entry, arcs, lens, readings = 0.15 } = described;
  const start = vector(...front);
  const base = readings ** 2 + BACK ** 2;
  const toric = lens && vector(-lens.cylinder, lens.meridian);
  const alone = toric && !entry && !arcs;
  const cuts = plus(entry ? vector(-entry.flattening, entry.site) : { x: 0, y: 0 }, arcs ? vector(-arcs.flattening, arcs.site) : { x: 0, y: 0 });
  const scatter = sumOf([
    entry ? [entry.sd ** 2, 0, entry.sd ** 2] : [0, 0, 0],
    arcs ? tensor(arcs.along ** 2, arcs.across ** 2, 2 * arcs.site * DEGREE) : [0, 0, 0],
  ]);
  const chance = (placed: Vector, own: Tensor, marks: number) =>
    discChance(plus(start, turned(placed, marks)), sumOf([turnedTensor(own, marks), [base, 0, base]]), limit);

  if (alone) return overNormal(steps, (z) => chance(toric, [0, 0, 0], Math.hypot(MARKS, ROTATION) * z));
  if (!toric) return overNormal(steps, (z) => chance(cuts, scatter, MARKS * z));
  if (inner) return overNormal(steps, (z) => overNormal(inner, (w) => chance(plus(cuts, turned(toric, ROTATION * w)), scatter, MARKS * z)));
  const { mean, own } = rotatedLens(toric);
  return overNormal(steps, (z) => chance(plus(cuts, mean), sumOf([scatter, own]), MARKS * z));
}
