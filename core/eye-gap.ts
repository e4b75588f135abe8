import { RefusedValue } from './check.js';
import { EYE_LIMITS, allowed } from './eye-limits.js';
import type { Gradient } from './eye-types.js';

/** The way between two surfaces: height' = a·height + b·slope, slope' = c·height + d·slope; slopes times the index. */
export interface Gap {
  a: number;
  b: number;
  c: number;
  d: number;
  /** Index where it ends. */
  indexAtEnd: number;
}

/** Steps of the integration through a graded index: the eye of Liou & Brennan is right to 1e-9 mm. */
const STEPS = 64;

/**
 * Of the first order. In an even medium a straight line; where the index is graded, d(n·y′)/dz = 2·radial·y along the axis,
 * by the classical Runge–Kutta method.
 */
export function gradedGap(gradient: Gradient | undefined, index: number, length: number, name: string): Gap {
  if (!gradient) return { a: 1, b: length / index, c: 0, d: 1, indexAtEnd: index };
  const [axial, axialSquare, radial] = (['axial', 'axialSquare', 'radial'] as const).map((field) => allowed('gradient', `${name}.${field}`, gradient[field])) as [number, number, number];
  const indexAt = (z: number): number => index + axial * z + axialSquare * z * z;
  for (let i = 1; i <= STEPS; i += 1) checkIndex(indexAt((length * i) / STEPS), name);
  const h = length / STEPS;
  const way = (height: number, slope: number): [number, number] => {
    let [y, u] = [height, slope];
    for (let i = 0; i < STEPS; i += 1) [y, u] = step(indexAt, radial, i * h, h, y, u);
    return [y, u];
  };
  const [a, c] = way(1, 0);
  const [b, d] = way(0, 1);
  return { a, b, c, d, indexAtEnd: indexAt(length) };
}

function step(indexAt: (z: number) => number, radial: number, z: number, h: number, y: number, u: number): [number, number] {
  const [start, middle, end] = [indexAt(z), indexAt(z + h / 2), indexAt(z + h)];
  const [y1, u1] = [u / start, 2 * radial * y];
  const [y2, u2] = [(u + (h / 2) * u1) / middle, 2 * radial * (y + (h / 2) * y1)];
  const [y3, u3] = [(u + (h / 2) * u2) / middle, 2 * radial * (y + (h / 2) * y2)];
  const [y4, u4] = [(u + h * u3) / end, 2 * radial * (y + h * y3)];
  return [y + (h / 6) * (y1 + 2 * y2 + 2 * y3 + y4), u + (h / 6) * (u1 + 2 * u2 + 2 * u3 + u4)];
}

function checkIndex(value: number, name: string): void {
  const { min, max } = EYE_LIMITS.index;
  if (!(value >= min && value <= max)) throw new RefusedValue(name, value, `such that the index stays ${min} to ${max}`);
}
