import type { Point } from './geometry.js';

/** Gap between a circle and its figures, and margin at the edge of a drawing, CSS px. */
export const GAP = 4;
export const EDGE = 2;

/** Size of the figures over the size of the page's text, and over the width of the drawing at most. */
const SMALL = { ofText: 0.75, ofWidth: 1 / 18 };

/** Size of the figures of a drawing, CSS px. Very large text grows in full in the key below, where it has room. */
export function figureSize(font: number, width: number): number {
  return Math.min(SMALL.ofText * font, SMALL.ofWidth * width);
}

/** Size of the heading of a drawing over that of its figures. */
export const TITLE = 4 / 3;

/** A word at a place, with how it is anchored there. */
export interface Label extends Point {
  text: string;
  anchor: 'start' | 'middle' | 'end';
}

/** Least half height of a drawing at which a word in a corner stays clear of the circle that holds all figures. */
export function heightBeside(outer: number, half: number, width: number, height: number): number {
  const inner = half - width - EDGE;
  if (inner >= outer) return 0;
  const clear = inner > 0 ? Math.sqrt(outer * outer - inner * inner) : outer;
  return clear + height + EDGE;
}
