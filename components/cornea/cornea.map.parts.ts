import { contours } from 'd3-contour';
import { interpolateCividis, interpolatePuOr } from 'd3-scale-chromatic';
import { direction } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import type { MapState, PowerField } from './cornea.map.field.js';

/** Points of the grid along each side. */
const GRID = 41;
/** The grid goes this far beyond the zone, so that no line is drawn along its edge. */
const BEYOND = 1.06;

/** From one contour to the next, D. */
export const STEP: Record<MapState, number> = { before: 0.5, after: 0.5, difference: 0.25 };

/** Least and greatest power of a scale, whole dioptres. */
export type Range = readonly [number, number];

/** Power at the points of a grid over the drawing. */
export interface Sample {
  /** Row by row; NaN in the corners, which nobody sees. */
  values: number[];
  least: number;
  most: number;
  range: Range;
}

/** The level from which on the colour of the lowest power of a sample begins. */
export function lowest({ least }: Sample, range: Range, state: MapState): number {
  return levels(range, state).findLast((level) => level <= least) ?? range[0];
}

/** Everything at or above one power: its outline as a path, and the points of that. */
export interface Contour {
  value: number;
  path: string;
  points: Point[];
}

/** The power at each point of the grid, row by row from the top left of the drawing. @param turn of the drawing, degrees */
export function sample(field: PowerField, turn: number, state: MapState): Sample {
  const values: number[] = [];
  let [least, most] = [Infinity, -Infinity];
  const seen = field.zone * (1 + (3 * BEYOND) / GRID);
  for (let row = 0; row < GRID; row += 1) {
    for (let column = 0; column < GRID; column += 1) {
      const point = { x: offset(column, field.zone), y: offset(row, field.zone) };
      const distance = Math.hypot(point.x, point.y);
      if (distance > seen) {
        values.push(NaN);
        continue;
      }
      // Without the noise of the last digits, which would make contours of its own where nothing changes.
      const value = Math.round(1e6 * field.at({ distance, direction: direction(point) - turn })) / 1e6 + 0;
      values.push(value);
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
  }
  const widest = Math.max(1, Math.ceil(Math.max(-least, most)));
  return { values, least, most, range: state === 'difference' ? [-widest, widest] : [Math.floor(least), Math.max(Math.floor(least) + 1, Math.ceil(most))] };
}

/** Powers at which colours change within a range, D. */
export function levels([from, to]: Range, state: MapState): number[] {
  const count = Math.round((to - from) / STEP[state]);
  return Array.from({ length: count }, (_, index) => from + index * STEP[state]);
}

/** Colour from one level to the next: equal steps of power look equally far apart. */
export function colour(level: number, [from, to]: Range, state: MapState): string {
  const share = (level + STEP[state] / 2 - from) / (to - from);
  return state === 'difference' ? interpolatePuOr(share) : interpolateCividis(share);
}

/** The contours of a sample that has the given zone, mm, drawn with `scale` px a mm. */
export function contoursOf({ values, least, most }: Sample, range: Range, state: MapState, zone: number, scale: number): Contour[] {
  const make = contours().size([GRID, GRID]);
  const place = ([x, y]: number[]): Point => ({ x: tenth(offset(x! - 0.5, zone) * scale), y: tenth(offset(y! - 0.5, zone) * scale) });
  return levels(range, state).filter((value) => value > least && value <= most).map((value) => {
    const rings = make.contour(values, value).coordinates.flatMap((polygon) => polygon.map((ring) => ring.map(place)));
    return { value, path: rings.map((ring) => `M${ring.map(({ x, y }) => `${x},${y}`).join('L')}Z`).join(''), points: rings.flat() };
  });
}

function offset(index: number, zone: number): number {
  return ((2 * index) / (GRID - 1) - 1) * BEYOND * zone;
}

function tenth(value: number): number {
  return Math.round(10 * value) / 10;
}
