/** A point of a drawing: CSS px from the centre, y downwards. */
export interface Point {
  x: number;
  y: number;
}

/** An upright rectangle by its edges, CSS px. */
export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

const RADIANS = Math.PI / 180;

/** The point at `degrees` counter-clockwise from the right, `radius` from the centre. */
export function polar(degrees: number, radius: number): Point {
  return { x: radius * Math.cos(degrees * RADIANS), y: -radius * Math.sin(degrees * RADIANS) };
}

/** Degrees counter-clockwise from the right of a point, in (-180, 180]. */
export function direction({ x, y }: Point): number {
  return Math.atan2(-y, x) / RADIANS;
}

/** The point `along` the direction `degrees` and `across` it, to the left of it. */
export function alongAcross(degrees: number, along: number, across: number): Point {
  const forward = polar(degrees, along);
  const sideways = polar(degrees + 90, across);
  return { x: forward.x + sideways.x, y: forward.y + sideways.y };
}

/** A point as it stands in a path. */
export function at({ x, y }: Point): string {
  return `${px(x)},${px(y)}`;
}

/** Path through the points, as straight lines. */
export function polyline(points: readonly Point[], closed = false): string {
  return points.length > 0 ? `M${points.map(at).join('L')}${closed ? 'Z' : ''}` : '';
}

/** Part of a circle around the centre, counter-clockwise from one direction to another. */
export function arcPath(radius: number, from: number, to: number): string {
  return `M${arcOf(radius, from, to)}`;
}

/** The same as a piece of a path that goes to its beginning. */
export function arcOf(radius: number, from: number, to: number): string {
  const large = to - from >= 180 ? 1 : 0;
  return `${at(polar(from, radius))}A${px(radius)},${px(radius)},0,${large},0,${at(polar(to, radius))}`;
}

/** Short strokes across a circle, one for each direction. */
export function ticks(directions: readonly number[], inner: number, outer: number): string {
  return directions.map((degrees) => polyline([polar(degrees, inner), polar(degrees, outer)])).join('');
}

/** Centre of a box that touches a circle from outside, in the given direction. */
export function outside(degrees: number, radius: number, width: number, height: number): Point {
  const cosine = Math.abs(Math.cos(degrees * RADIANS));
  const sine = Math.abs(Math.sin(degrees * RADIANS));
  return polar(degrees, radius + (cosine * width + sine * height) / 2);
}

/** Rounded to hundredths of a px: what the eye can see, without the digits that make a file long. */
export function px(value: number): number {
  return Math.round(value * 100) / 100;
}
