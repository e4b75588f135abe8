import { landolt } from '../../../core/sight-optotype.js';
import type { GapDirection, Point } from '../../../core/sight-optotype.js';

/** How far a slanting stroke of thickness 1 reaches along the edge of the grid: in the Z and N, and in the V. */
const Z = 1.529;
const V = 1.073;

/**
 * Letters on a grid of 5 × 5, drawn for this chart: every stroke is one fifth of the height, measured across it.
 * Inner outlines run the other way round, so they are holes.
 */
export const LETTERS = {
  D: 'M0 0H2.5A2.5 2.5 0 0 1 2.5 5H0ZM1 1V4H2.5A1.5 1.5 0 0 0 2.5 1Z',
  E: 'M0 0H5V1H1V2H5V3H1V4H5V5H0Z',
  F: 'M0 0H5V1H1V2H4.5V3H1V5H0Z',
  H: 'M0 0H1V2H4V0H5V5H4V3H1V5H0Z',
  L: 'M0 0H1V4H5V5H0Z',
  N: `M0 5V0H1L4 ${5 - Z}V0H5V5H4L1 ${Z}V5Z`,
  O: 'M0 2.5A2.5 2.5 0 0 1 5 2.5A2.5 2.5 0 0 1 0 2.5ZM1 2.5A1.5 1.5 0 0 0 4 2.5A1.5 1.5 0 0 0 1 2.5Z',
  P: 'M0 0H3.5A1.5 1.5 0 0 1 3.5 3H1V5H0ZM1 1V2H3.5A.5 .5 0 0 0 3.5 1Z',
  T: 'M0 0H5V1H3V5H2V1H0Z',
  U: 'M0 0H1V2.5A1.5 1.5 0 0 0 4 2.5V0H5V2.5A2.5 2.5 0 0 1 0 2.5Z',
  V: `M0 0H${V}L2.5 3.659L${5 - V} 0H5L3.05 5H1.95Z`,
  Z: `M0 0H5V1L${Z} 4H5V5H0V4L${5 - Z} 1H0Z`,
} as const;

export type Letter = keyof typeof LETTERS;

/** A Landolt ring on the same grid, in units of its gap. */
export function ringPath(gap: GapDirection): string {
  const { outerDiameter, innerDiameter, corners } = landolt(gap);
  const at = ({ x, y }: Point): string => `${grid(x)} ${grid(-y)}`;
  const arc = (diameter: number, clockwise: 0 | 1): string => `A${diameter / 2} ${diameter / 2} 0 1 ${clockwise} `;
  return `M${at(corners.outerStart)}${arc(outerDiameter, 0)}${at(corners.outerEnd)}L${at(corners.innerEnd)}${arc(innerDiameter, 1)}${at(corners.innerStart)}Z`;
}

/** From the centre of the ring to the corner of the grid. */
const grid = (value: number): number => Math.round((value + 2.5) * 1e4) / 1e4;
