import { direction } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import type { Contour } from './cornea.map.parts.js';

/** A power printed on its contour. */
export interface Printed extends Point {
  value: number;
}

/** Steps between printed powers, D. */
const STEPS = [0.5, 1, 2, 5, 10] as const;

/** The smallest step that prints no more than `most` powers within a range. */
export function printedStep([from, to]: readonly [number, number], most: number): number {
  return STEPS.find((step) => (to - from) / step <= most) ?? 10;
}

/** Whether a power is among those that are printed. */
export function isPrinted(value: number, step: number): boolean {
  return Math.abs(value / step - Math.round(value / step)) < 1e-6;
}

/** Where between two meridians of a clock there are the fewest lines, degrees from the steep meridian. */
const QUIET = [35, 125, 215, 305, 65, 155, 245, 335] as const;

/**
 * One place on each contour that is to be printed, clear of the middle, of the edge and of the other figures; a contour
 * without such a place has none. @param room px between two figures @param radius of the map, px @param steep meridian as drawn, degrees
 */
export function printedOf(contours: readonly Contour[], step: number, { room, radius, steep }: { room: number; radius: number; steep: number }): Printed[] {
  const printed: Printed[] = [];
  contours.filter(({ value }) => isPrinted(value, step)).forEach(({ value, points }, index) => {
    const free = points.filter((point) => {
      const distance = Math.hypot(point.x, point.y);
      return distance > 0.3 * radius && distance < radius - room / 2 && printed.every((other) => Math.hypot(point.x - other.x, point.y - other.y) > room);
    });
    const wanted = steep + QUIET[index % QUIET.length]!;
    const away = (point: Point): number => Math.abs(((direction(point) - wanted + 900) % 360) - 180);
    const best = free.sort((a, b) => away(a) - away(b))[0];
    if (best) printed.push({ value, x: best.x, y: best.y });
  });
  return printed;
}
