import { RADIANS } from './angle.js';
import { finite, within } from './check.js';

/**
 * Degrees and millimetres on a circle of the eye: the limbus, or the circle on which arcs lie. Plane geometry; the bend of
 * the sphere is left out, as it is where degrees are read off a ring that is held over the eye.
 */

/** Length along a circle, mm: π · diameter · degrees / 360. */
export function alongCircle(degrees: number, diameter: number): number {
  return (diameter / 2) * finite('angle', degrees, '°') * RADIANS;
}

/** Straight from end to end of the same, mm: diameter · sin(degrees / 2). */
export function chordOf(degrees: number, diameter: number): number {
  return diameter * Math.sin((within('angle', degrees, 0, 360, '°') / 2) * RADIANS);
}

/** Degrees that a straight line of a given length, mm, spans on a circle: 2 · asin(chord / diameter). */
export function spanOf(chord: number, diameter: number): number {
  return (2 * Math.asin(within('chord', chord, 0, diameter, 'mm') / diameter)) / RADIANS;
}
