import { direction } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import type { Disc } from './cornea.map.obstacles.js';
import type { Contour } from './cornea.map.parts.js';

/** A power printed on its contour. */
export interface Printed extends Point {
  text: string;
}

/** Steps between printed powers, D. */
const STEPS = [0.25, 0.5, 1, 2, 5, 10] as const;

/** The smallest step, from `least` on, that prints no more than `most` powers within a range. */
export function printedStep([from, to]: readonly [number, number], most: number, least: number): number {
  return STEPS.find((step) => step >= least && (to - from) / step <= most) ?? 10;
}

/** Whether a power is among those that are printed. */
export function isPrinted(value: number, step: number): boolean {
  return Math.abs(value / step - Math.round(value / step)) < 1e-6;
}

/** Where between two meridians of a clock there are the fewest lines, degrees from the steep meridian. */
const QUIET = [35, 125, 215, 305, 65, 155, 245, 335] as const;

/** Width of a character over the size of the text, at most for figures and signs. */
const CHARACTER = 0.62;

export interface PrintedInput {
  /** The contours that are to be printed. */
  contours: readonly Contour[];
  textOf(value: number): string;
  /** Size of the text, and radius of the map, px. */
  size: number;
  radius: number;
  /** Steep meridian as drawn, degrees. */
  steep: number;
  obstacles: readonly Disc[];
}

/** One place on each contour, clear of the edge, of what is drawn and of the other figures; a contour without such a place has none. */
export function printedOf({ contours, textOf, size, radius, steep, obstacles }: PrintedInput): Printed[] {
  const printed: Printed[] = [];
  contours.forEach(({ value, points }, index) => {
    const text = textOf(value);
    const half = { x: (CHARACTER * size * text.length) / 2, y: 0.55 * size };
    const wanted = steep + QUIET[index % QUIET.length]!;
    let [best, least]: [Point | null, number] = [null, Infinity];
    for (const point of points) {
      const away = Math.abs(((direction(point) - wanted + 900) % 360) - 180);
      if (away >= least || Math.hypot(point.x, point.y) > radius - half.x - 2) continue;
      if (printed.some((other) => Math.abs(point.x - other.x) < 4 * half.x && Math.abs(point.y - other.y) < 1.6 * size)) continue;
      if (taken(point, half, obstacles)) continue;
      [best, least] = [point, away];
    }
    if (best) printed.push({ text, ...best });
  });
  return printed;
}

/** Whether a text around a point, half as large as given, touches something. */
function taken({ x, y }: Point, half: Point, obstacles: readonly Disc[]): boolean {
  return obstacles.some((disc) => Math.hypot(Math.max(Math.abs(x - disc.x) - half.x, 0), Math.max(Math.abs(y - disc.y) - half.y, 0)) <= disc.r);
}
