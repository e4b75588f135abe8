import { contours } from 'd3-contour';
import { interpolateCividis, interpolatePuOr } from 'd3-scale-chromatic';
import { direction } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import type { MapState, PowerField } from './cornea.map.field.js';

/** Points of the grid along each side: at rest, and while something is moved, when a drawing has a frame's time. */
export const GRID = { resting: 41, moving: 25 } as const;
/** The grid goes this far beyond the zone, so that no line is drawn along its edge. */
const BEYOND = 1.06;

/** From one contour to the next, D. */
export const STEP: Record<MapState, number> = { before: 0.5, after: 0.5, difference: 0.25 };

/** Changes below this have no sign, D: they print as 0.00. */
export const LEAST_SIGNED = 0.005;

/** From one sign of a change to the next, mm. */
const SIGNS_APART = 1;

/** Least and greatest power of a scale, whole dioptres. */
export type Range = readonly [number, number];

/** Power at the points of a grid over the drawing. */
export interface Sample {
  /** Points along each side. */
  grid: number;
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
export function sample(field: PowerField, turn: number, state: MapState, grid: number): Sample {
  const values: number[] = [];
  let [least, most] = [Infinity, -Infinity];
  const seen = field.zone * (1 + (3 * BEYOND) / grid);
  for (let row = 0; row < grid; row += 1) {
    for (let column = 0; column < grid; column += 1) {
      const point = { x: offset(column, grid, field.zone), y: offset(row, grid, field.zone) };
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
  return { grid, values, least, most, range: state === 'difference' ? [-widest, widest] : [Math.floor(least), Math.max(Math.floor(least) + 1, Math.ceil(most))] };
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
export function contoursOf({ grid, values, least, most }: Sample, range: Range, state: MapState, zone: number, scale: number): Contour[] {
  const make = contours().size([grid, grid]);
  return levels(range, state).filter((value) => value > least && value <= most).map((value) => {
    let path = '';
    const points: Point[] = [];
    for (const polygon of make.contour(values, value).coordinates) {
      for (const ring of polygon) {
        ring.forEach(([column, row], index) => {
          const x = tenth(offset(column! - 0.5, grid, zone) * scale);
          const y = tenth(offset(row! - 0.5, grid, zone) * scale);
          points.push({ x, y });
          path += `${index > 0 ? 'L' : 'M'}${x},${y}`;
        });
        path += 'Z';
      }
    }
    return { value, path, points };
  });
}

/** Where a power grows, or falls. */
export interface Sign extends Point {
  plus: boolean;
}

/** Plus where the power grows, minus where it falls, all over the zone: what a print in grey has in place of colours. */
export function signsOf({ at, zone }: PowerField, turn: number, scale: number): Sign[] {
  const signs: Sign[] = [];
  for (let row = -Math.floor(zone); row <= zone; row += SIGNS_APART) {
    for (let column = -Math.floor(zone) - (row % 2 === 0 ? 0 : SIGNS_APART / 2); column <= zone; column += SIGNS_APART) {
      const distance = Math.hypot(column, row);
      if (distance > zone - SIGNS_APART / 3) continue;
      const value = at({ distance, direction: direction({ x: column, y: row }) - turn });
      if (Math.abs(value) >= LEAST_SIGNED) signs.push({ x: tenth(column * scale), y: tenth(row * scale), plus: value > 0 });
    }
  }
  return signs;
}

/** A sign as a path. @param size px */
export function signPath({ x, y, plus }: Sign, size: number): string {
  const half = tenth(size / 2);
  return `M${tenth(x - half)},${y}h${2 * half}${plus ? `M${x},${tenth(y - half)}v${2 * half}` : ''}`;
}

function offset(index: number, grid: number, zone: number): number {
  return ((2 * index) / (grid - 1) - 1) * BEYOND * zone;
}

function tenth(value: number): number {
  return Math.round(10 * value) / 10;
}
