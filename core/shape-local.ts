/**
 * Local flattening near a cut. **An illustration**: that a cornea is flattest at the cut was read, how far that reaches
 * and how it fades is assumed. It is smooth, and it is not where the effect of a plan comes from.
 */
import { RADIANS, turn } from './angle.js';
import { within } from './check.js';
import { KERATOMETRIC_CONSTANT } from './keratometry.js';
import type { Limits } from './limits.js';
import { SHAPE_CONSTANTS } from './shape-constants.js';

export interface LocalFlattening {
  /** Middle of the cut on the dial, degrees 0–360. */
  site: number;
  /** Length of the cut, degrees. */
  length: number;
  /** From the apex to the cut, mm. */
  distance: number;
  /** Tangential power that is missing along the cut, as a topographer would see it, D; < 0 where there is too much. */
  amount: number;
  /** Never measured, never calculated from tissue. */
  basis: 'assumed';
}

export const LOCAL_LIMITS = {
  site: { min: 0, max: 360, unit: '°' },
  length: { min: 1, max: 120, unit: '°' },
  distance: { min: 2, max: 7, unit: 'mm' },
  amount: { min: -15, max: 15, unit: 'D' },
} as const satisfies Record<string, Limits>;

/** What a cut changes along a direction: the curvature there, 1/mm, and its sum from the apex. */
export interface CurvatureChange {
  curvature: number;
  sum: number;
}

/** The tangential power that is missing at a point by one cut, D. @throws RangeError for a value out of range. */
export function localFlatteningAt(cut: LocalFlattening, { distance, direction }: { distance: number; direction: number }): number {
  return -KERATOMETRIC_CONSTANT * curvatureChange(cut)(distance, direction).curvature + 0;
}

/**
 * The missing curvature amount/337.5 · (1 − t²)³, t = (ρ − distance)/reach, and its integral over ρ. Beyond its ends a cut
 * fades by 1 − (6u⁵ − 15u⁴ + 10u³).
 * @throws RangeError for a value out of range.
 */
export function curvatureChange(cut: LocalFlattening): (distance: number, direction: number) => CurvatureChange {
  const value = (field: keyof typeof LOCAL_LIMITS): number => {
    const { min, max, unit } = LOCAL_LIMITS[field];
    return within(`local.${field}`, cut[field], min, max, unit);
  };
  const site = value('site');
  const half = value('length') / 2;
  const middle = value('distance');
  const most = -value('amount') / KERATOMETRIC_CONSTANT;
  const reach = SHAPE_CONSTANTS.localReach.value;
  return (distance, direction) => {
    const size = most * fading(Math.abs(turn(site, direction)) - half);
    const t = (distance - middle) / reach;
    return { curvature: size * bump(t), sum: size * reach * summed(t) };
  };
}

/** The most that a cut can add to the sum of curvatures. */
export function mostAdded({ amount }: LocalFlattening): number {
  return (Math.max(0, -amount) / KERATOMETRIC_CONSTANT) * SHAPE_CONSTANTS.localReach.value * AREA;
}

/** Length of an incision on a circle of the given radius: the angle that its width covers, degrees. */
export function cutLength(width: number, distance: number): number {
  return (2 * Math.asin(Math.min(1, width / (2 * distance)))) / RADIANS;
}

/** 1 along the cut, 0 from the end of the taper; smooth to the second derivative. */
function fading(beyond: number): number {
  const u = Math.min(1, Math.max(0, beyond / SHAPE_CONSTANTS.localTaper.value));
  return 1 - u * u * u * (u * (6 * u - 15) + 10);
}

function bump(t: number): number {
  return Math.abs(t) < 1 ? (1 - t * t) ** 3 : 0;
}

/** Integral of the bump from −1 to 1. */
const AREA = 32 / 35;

function summed(t: number): number {
  if (t <= -1) return 0;
  return t >= 1 ? AREA : AREA / 2 + t - t ** 3 + 0.6 * t ** 5 - t ** 7 / 7;
}
