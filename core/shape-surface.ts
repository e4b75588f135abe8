import { RADIANS } from './angle.js';
import { RefusedValue, finite, within } from './check.js';
import { KERATOMETRIC_CONSTANT } from './keratometry.js';
import type { Limits } from './limits.js';
import { SHAPE_CONSTANTS } from './shape-constants.js';
import { curvatureChange, mostAdded, type LocalFlattening } from './shape-local.js';

/** A corneal front: a toric conicoid, and local flattening near cuts. */
export interface CornealShape {
  /** Radius at the apex along the flatter meridian, 3–20 mm. */
  flatRadius: number;
  /** Radius at the apex along the steeper meridian, mm; not above `flatRadius`. */
  steepRadius: number;
  /** Degrees of the dial, 0–180. */
  steepMeridian: number;
  /** Conic constant Q along the flatter meridian, −2 to 1: 0 a circle, < 0 flatter towards the limbus; −0.26 when left out. */
  flatConic?: number;
  /** The same along the steeper meridian. */
  steepConic?: number;
  /** Local flattening near incision and arcs: an illustration, assumed. */
  local?: readonly LocalFlattening[];
}

/** A point of the cornea as seen from the front. */
export interface CornealPoint {
  /** From the apex, mm. */
  distance: number;
  /** On the dial, degrees. */
  direction: number;
}

export interface SurfacePoint {
  /** Depth behind the apex, mm. */
  sagitta: number;
  /** Along the direction, mm a mm. */
  slope: number;
  /** 337.5 over the distance along the normal to the axis, D: sagittal power, a mean from the apex to here. */
  axial: number;
  /** 337.5 over the radius of curvature along the direction, D: tangential, also called instantaneous or meridional power. */
  tangential: number;
}

/** "Assumed": wide enough for any cornea. */
export const SHAPE_LIMITS = {
  radius: { min: 3, max: 20, unit: 'mm' },
  conic: { min: -2, max: 1, unit: '' },
  steepMeridian: { min: 0, max: 180, unit: '°' },
  distance: { min: 0, max: 10, unit: 'mm' },
} as const satisfies Record<string, Limits>;

/** A profile at a distance from the apex: its depth, the sine of its slope, and its curvature in 1/mm. */
interface Profile {
  depth: number;
  sine: number;
  curvature: number;
}

/**
 * The front surface as a function of a point. Along each direction θ its section is a conic,
 * z = c·ρ² / (1 + √(1 − k·ρ²)), with c = Σ cos²/R and k = Σ p·cos²/R² over the two principal meridians, p = 1 + Q
 * (toric conicoid, biconic; for equal meridians the conic of Douthwaite 2006). Powers are those of a topographer: along the
 * direction from the apex, as if the normal lay in that plane (ISO 19980, from memory): axial sin α/ρ with z′ = tan α,
 * tangential z″/(1 + z′²)^1.5. Axial power is the mean of the tangential power from the apex to the point, with cuts and
 * without. Rounding errors; the sagitta near cuts is right to 1e-10 mm.
 * @returns a function that refuses points where there is no surface.
 * @throws RangeError for a shape out of range.
 */
export function cornealSurface(shape: CornealShape): (point: CornealPoint) => SurfacePoint {
  const conicoid = conicoidOf(shape);
  const cuts = cutsOf(shape);
  const tangent = (sine: number, distance: number): number => {
    const square = 1 - sine * sine;
    if (square < EDGE / 2) throw ended(shape, distance);
    return sine / Math.sqrt(square);
  };
  return ({ distance, direction }) => {
    const { min, max, unit } = SHAPE_LIMITS.distance;
    within('distance', distance, min, max, unit);
    const whole = conicoid(distance, finite('direction', direction, '°'));
    const near = cuts.filter(({ change, from }) => distance > from && change(max, direction).sum !== 0);
    const changed = (rho: number, start: number, part: 'sum' | 'curvature'): number => near.reduce((sum, { change }) => sum + change(rho, direction)[part], start);
    const deeper = (rho: number): number => {
      const before = conicoid(rho, direction).sine;
      return tangent(changed(rho, before, 'sum'), rho) - tangent(before, rho);
    };
    const sine = changed(distance, whole.sine, 'sum');
    const curvature = changed(distance, whole.curvature, 'curvature');
    return {
      // Only on demand: near cuts it takes a hundred times as long as the rest.
      get sagitta() {
        return whole.depth + integral(deeper, joints(near.map(({ from }) => from), distance));
      },
      slope: tangent(sine, distance),
      axial: axialOf(sine, curvature, distance),
      tangential: KERATOMETRIC_CONSTANT * curvature,
    };
  };
}

/** One of the powers of `cornealSurface` alone, D: for maps, which ask at a thousand points a frame. Refuses the same. */
export function cornealPower(shape: CornealShape, power: 'axial' | 'tangential'): (point: CornealPoint) => number {
  const conicoid = conicoidOf(shape);
  const cuts = cutsOf(shape);
  const { min, max, unit } = SHAPE_LIMITS.distance;
  return ({ distance, direction }) => {
    const whole = conicoid(within('distance', distance, min, max, unit), finite('direction', direction, '°'));
    let { sine, curvature } = whole;
    for (const { change, from } of cuts) {
      if (distance <= from) continue;
      const changed = change(distance, direction);
      sine += changed.sum;
      curvature += changed.curvature;
    }
    if (1 - sine * sine < EDGE / 2) throw ended(shape, distance);
    return power === 'axial' ? axialOf(sine, curvature, distance) : KERATOMETRIC_CONSTANT * curvature;
  };
}

/** Distance from the apex up to which the surface exists in every direction, at most 10 mm. @throws RangeError as `cornealSurface`. */
export function reachOf(shape: CornealShape): number {
  const { steep, flatBulge, steepBulge } = checked(shape);
  // The steepest section that there may be, with all that cuts may add to its sine.
  const sine = Math.max(0, 1 - EDGE - (shape.local ?? []).reduce((sum, cut) => sum + mostAdded(cut), 0));
  const most = (1 - sine * sine) / (steep * steep) + sine * sine * Math.max(flatBulge, steepBulge);
  return most > 0 ? Math.min(SHAPE_LIMITS.distance.max, sine / Math.sqrt(most)) : SHAPE_LIMITS.distance.max;
}

/** Conic constant, shape factor p of the ellipse, and shape factor E of ANSI Z80.23. */
export interface ShapeFactors {
  q: number;
  p: number;
  e: number;
}

/** From any one of the three: p = 1 + Q, E = 1 − p = −Q (ANSI Z80.23). @throws RangeError unless just one is given and Q is −2 to 1. */
export function shapeFactors(given: Partial<ShapeFactors>): ShapeFactors {
  const named = (['q', 'p', 'e'] as const).filter((name) => given[name] !== undefined);
  if (named.length !== 1) throw new RefusedValue('shape factor', named.join(', ') || undefined, 'just one of q, p and e');
  const { min, max, unit } = SHAPE_LIMITS.conic;
  const value = finite(named[0]!, given[named[0]!], '');
  const q = within('q', { q: value, p: value - 1, e: -value }[named[0]!], min, max, unit) + 0;
  return { q, p: 1 + q, e: -q + 0 };
}

const REACH = SHAPE_CONSTANTS.localReach.value;

/** How close the sine of its slope may come to 1, where a surface runs along the light and ends. */
const EDGE = 1e-5;

/** What each cut changes, and from which distance on. */
function cutsOf({ local = [] }: CornealShape): { change: ReturnType<typeof curvatureChange>; from: number }[] {
  return local.map((cut) => ({ change: curvatureChange(cut), from: cut.distance - REACH }));
}

/** At the apex the two powers agree; closer to it the quotient is rounding. */
function axialOf(sine: number, curvature: number, distance: number): number {
  return KERATOMETRIC_CONSTANT * (distance < 1e-7 ? curvature : sine / distance);
}

function conicoidOf(shape: CornealShape): (distance: number, direction: number) => Profile {
  const { flat, steep, meridian, flatBulge, steepBulge } = checked(shape);
  return (distance, direction) => {
    const share = Math.cos((direction - meridian) * RADIANS) ** 2;
    const c = (1 - share) / flat + share / steep;
    const k = (1 - share) * flatBulge + share * steepBulge;
    const under = 1 - k * distance * distance;
    if (under <= EDGE / 1000) throw ended(shape, distance);
    const root = Math.sqrt(under);
    const slope = (c * distance) / root;
    const steepness = Math.hypot(1, slope);
    return { depth: (c * distance * distance) / (1 + root), sine: slope / steepness, curvature: c / (root * steepness) ** 3 };
  };
}

function ended(shape: CornealShape, distance: number): RefusedValue {
  return new RefusedValue('distance', distance, `0 to ${(Math.floor(100 * reachOf(shape)) / 100).toFixed(2)} mm, where this surface ends or may end`);
}

/** Panels of a piece of an integration; each has five points (Gauss). */
const PANELS = 8;
const GAUSS = [[-0.906179845938664, 0.23692688505618908], [-0.5384693101056831, 0.47862867049936647], [0, 128 / 225], [0.5384693101056831, 0.47862867049936647], [0.906179845938664, 0.23692688505618908]] as const;

/** Where cuts begin and end to count, up to a distance: their curvature is not smooth to every order there, so nothing is integrated across. */
function joints(from: readonly number[], distance: number): number[] {
  return [...from, ...from.map((rho) => rho + 2 * REACH), distance].filter((rho) => rho <= distance).sort((a, b) => a - b);
}

/** From the first of the joints to the last, piece by piece; 0 with but one. */
function integral(f: (rho: number) => number, joints: readonly number[]): number {
  let total = 0;
  for (let i = 1; i < joints.length; i += 1) {
    const half = (joints[i]! - joints[i - 1]!) / PANELS / 2;
    for (let panel = 0; panel < PANELS; panel += 1) {
      for (const [at, weight] of GAUSS) total += half * weight * f(joints[i - 1]! + half * (2 * panel + 1 + at));
    }
  }
  return total;
}

/** Radii in mm, p/R² along both meridians in 1/mm². */
function checked(shape: CornealShape): Record<'flat' | 'steep' | 'meridian' | 'flatBulge' | 'steepBulge', number> {
  const { radius, conic, steepMeridian } = SHAPE_LIMITS;
  const flat = within('flatRadius', shape.flatRadius, radius.min, radius.max, radius.unit);
  const steep = within('steepRadius', shape.steepRadius, radius.min, flat, radius.unit);
  const meridian = within('steepMeridian', shape.steepMeridian, steepMeridian.min, steepMeridian.max, steepMeridian.unit);
  const bulge = (field: 'flatConic' | 'steepConic', size: number): number =>
    (1 + within(field, shape[field] ?? SHAPE_CONSTANTS.conic.value, conic.min, conic.max, conic.unit)) / size ** 2;
  return { flat, steep, meridian, flatBulge: bulge('flatConic', flat), steepBulge: bulge('steepConic', steep) };
}
