import { RADIANS } from './angle.js';
import { oneOf } from './check.js';
import { allowed } from './sight-limits.js';
import { SIGHT_MODEL } from './sight-model.js';

/** Where a Landolt ring may be open: degrees counter-clockwise from the reader's right. */
export const GAP_DIRECTIONS = [0, 45, 90, 135, 180, 225, 270, 315] as const;
export type GapDirection = (typeof GAP_DIRECTIONS)[number];

/** A Landolt ring about (0, 0), in units of its gap; x to the reader's right, y **up**. */
export interface LandoltRing {
  outerDiameter: number;
  innerDiameter: number;
  stroke: number;
  gap: number;
  gapDirection: GapDirection;
  /** Where the parallel sides of the gap meet the rim, counter-clockwise round the dark part, which starts at the first. */
  corners: { outerStart: Point; outerEnd: Point; innerEnd: Point; innerStart: Point };
}

export interface Point {
  x: number;
  y: number;
}

/**
 * The standard optotype: outer diameter 5, stroke and gap 1, the sides of the gap parallel (ISO 8596).
 * @throws RangeError when the gap does not lie in one of the eight directions.
 */
export function landolt(gapDirection: GapDirection): LandoltRing {
  const direction = oneOf('gap direction', gapDirection, GAP_DIRECTIONS);
  const outerDiameter = SIGHT_MODEL.landoltRing;
  const innerDiameter = outerDiameter - 2;
  const corner = (diameter: number, side: number) => turned({ x: Math.sqrt((diameter / 2) ** 2 - 0.25), y: side / 2 }, direction);
  return {
    outerDiameter,
    innerDiameter,
    stroke: 1,
    gap: 1,
    gapDirection: direction,
    corners: { outerStart: corner(outerDiameter, 1), outerEnd: corner(outerDiameter, -1), innerEnd: corner(innerDiameter, -1), innerStart: corner(innerDiameter, 1) },
  };
}

/**
 * Size of the gap in mm at a viewing distance: distance × tan(1′ / acuity) (ISO 8596: acuity = 1 / gap in minutes of arc).
 * @param distanceM 0.1–100 m.
 * @param acuity decimal, 0.01–4.
 * @throws RangeError when a value is out of range.
 */
export function gapSize(distanceM: number, acuity: number): number {
  const minutes = 1 / allowed('acuity', 'acuity', acuity);
  return 1000 * allowed('viewingDistance', 'viewing distance', distanceM) * Math.tan((minutes / 60) * RADIANS);
}

function turned({ x, y }: Point, degrees: number): Point {
  const [c, s] = [Math.cos(degrees * RADIANS), Math.sin(degrees * RADIANS)];
  return { x: c * x - s * y, y: s * x + c * y };
}
