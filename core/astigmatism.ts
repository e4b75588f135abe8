import { RADIANS } from './angle.js';
import { finite, within } from './check.js';
import type { Astigmatism, Vector } from './types.js';

/** Below this, in dioptres, a direction is rounding noise and the horizontal one is reported. */
const NO_DIRECTION = 1e-12;

/**
 * Double-angle vector of an astigmatism: x = C·cos 2θ, y = C·sin 2θ, in dioptres.
 * @throws RangeError for a magnitude that is negative or not finite.
 */
export function toVector(a: Astigmatism): Vector {
  return polar(within('magnitude', a.magnitude, 0, Number.MAX_VALUE, 'D'), finite('meridian', a.meridian, '°'));
}

/** The astigmatism of a double-angle vector. A null vector is 0 D at 180°. */
export function fromVector(v: Vector): Astigmatism {
  const magnitude = length(finite('x', v.x, 'D'), finite('y', v.y, 'D'));
  if (magnitude < NO_DIRECTION) return { magnitude: 0, meridian: 180 };
  const degrees = Math.atan2(v.y, v.x) / (2 * RADIANS);
  return { magnitude, meridian: degrees > 0 ? degrees : degrees + 180 };
}

/** `Math.hypot` takes two and a half times as long, and is needed only where squares do not fit into a number. */
function length(x: number, y: number): number {
  const square = x * x + y * y;
  return square < Infinity ? Math.sqrt(square) : Math.hypot(x, y);
}

/** Sum of astigmatisms as vectors. */
export function sum(...parts: Astigmatism[]): Astigmatism {
  let total: Vector = { x: 0, y: 0 };
  for (const part of parts) total = add(total, toVector(part));
  return fromVector(total);
}

/** Surgically induced astigmatism: what has to be added to `before` to give `after`. */
export function change(before: Astigmatism, after: Astigmatism): Astigmatism {
  return fromVector(subtract(toVector(after), toVector(before)));
}

/**
 * A change seen from one meridian: `flattening` > 0 makes that meridian flatter against the one across it,
 * `torque` > 0 turns the astigmatism counter-clockwise. Both in dioptres.
 */
export function flatteningAndTorque(a: Astigmatism, along: number): { flattening: number; torque: number } {
  const turned = polar(a.magnitude, a.meridian - finite('meridian', along, '°'));
  return { flattening: -turned.x + 0, torque: turned.y };
}

/** What flattening the meridian or site `degrees` by `dioptres` adds: (-F cos 2φ, -F sin 2φ). */
export function flattening(dioptres: number, degrees: number): Vector {
  return polar(-dioptres, degrees);
}

export function add(a: Vector, b: Vector): Vector {
  return { x: a.x + b.x, y: a.y + b.y };
}

export function subtract(a: Vector, b: Vector): Vector {
  return { x: a.x - b.x, y: a.y - b.y };
}

function polar(length: number, degrees: number): Vector {
  // Multiples of 45° are frequent and people check them by hand, so they come out exact.
  const doubled = 2 * (degrees % 180);
  const quarters = doubled / 90;
  if (Number.isInteger(quarters)) {
    const quarter = (quarters + 4) % 4;
    const cosine = [1, 0, -1, 0][quarter]!;
    const sine = [0, 1, 0, -1][quarter]!;
    return { x: length * cosine + 0, y: length * sine + 0 };
  }
  return { x: length * Math.cos(doubled * RADIANS), y: length * Math.sin(doubled * RADIANS) };
}
