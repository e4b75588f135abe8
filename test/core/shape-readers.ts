/** From a published entry on the shape of the cornea to what the functions on it say; one reader a kind of entry. */
import { cornealSurface, shapeFactors } from '../../core/shape.js';
import type { Entry, Value } from './published.js';
import { round } from './shape-support.js';

/** Area of a cap of revolution as deep as `sag`: 2π·∫ρ·√(1 + z′²)dρ by Simpson’s rule, up to where the depth is reached. */
function capArea(radius: number, conic: number, sag: number): number {
  const at = cornealSurface(round(radius, conic));
  let [low, high] = [0, 7];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (at({ distance: middle, direction: 0 }).sagitta < sag) low = middle;
    else high = middle;
  }
  const steps = 400;
  let total = 0;
  for (let i = 0; i <= steps; i += 1) {
    const distance = (low * i) / steps;
    total += 2 * Math.PI * distance * Math.hypot(1, at({ distance, direction: 0 }).slope) * (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2);
  }
  return (total * low) / (3 * steps);
}

const follows = (rule: (q: number) => boolean): boolean => [-0.6, -0.26, 0, 0.4].every(rule);

const READERS: [kind: RegExp, read: (inputs: Entry['inputs']) => Record<string, Value>][] = [
  [/^sag-/, ({ radiusMm, chordMm, Q = 0 }) => ({ sagMm: cornealSurface(round(radiusMm, Q))({ distance: chordMm / 2, direction: 0 }).sagitta })],
  [/^corneal-area/, ({ R, Q = 0, sagMm }) => ({ areaMm2: capArea(R, Q, sagMm) })],
  [/^ansiz8023/, () => ({
    shapeFactorE: follows((q) => shapeFactors({ p: 1 + q }).e === 1 - (1 + q)) ? 'E=1-p' : 'another rule',
    asphericityQ: follows((q) => shapeFactors({ e: -q }).q === q) ? 'Q=-E' : 'another rule',
  })],
];

export function compute({ id, inputs }: Entry): Record<string, Value> | null {
  return READERS.find(([kind]) => kind.test(id))?.[1](inputs) ?? null;
}
