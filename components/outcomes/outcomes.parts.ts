import { px } from '../internal/geometry.js';
import type { Drawn } from './outcomes.messages.js';

/** Signs for single eyes; none is told from another by colour alone. */
const SIGNS: Record<Drawn, string> = { before: 'm-2.5-2.5h5v5h-5z', after: 'm-2.5 0a2.5 2.5 0 1 0 5 0a2.5 2.5 0 1 0-5 0', induced: 'm-3-3l6 6m0-6l-6 6' };

/** From so many eyes on they are painted, not drawn. */
export const PAINTED_FROM = 1500;

/** A path with the sign of each eye, eyes at the same place once. */
export function signsPath(points: Float64Array, name: Drawn, scale: number): string {
  const places = new Set<string>();
  for (let i = 0; i < points.length; i += 2) places.add(`M${px(points[i]! * scale)} ${px(-points[i + 1]! * scale)}`);
  return [...places].map((place) => place + SIGNS[name]).join('');
}

/** Dioptres that hold 99.5 of 100 points of a series: a slip in the table must not shrink all the others. */
export function reachOf(points: Float64Array): number {
  const lengths = new Float64Array(points.length / 2).map((_, i) => Math.hypot(points[2 * i]!, points[2 * i + 1]!)).sort();
  return lengths[Math.floor(0.995 * (lengths.length - 1))] ?? 0;
}

/** Dioptres at the rim, so that there is room for all that is shown. */
export function extentOf(reaches: readonly number[]): number {
  return [0.5, 1, 1.5, 2, 3, 4, 6, 8, 12].find((radius) => radius >= 1.05 * Math.max(0, ...reaches)) ?? 16;
}

/** Distance of rings, D. */
export function ringStep(radius: number): number {
  return radius <= 1 ? 0.25 : radius <= 2 ? 0.5 : radius <= 4 ? 1 : radius <= 8 ? 2 : 4;
}

/** The eye nearest to a point of the plane, D, or null. */
export function nearestEye(series: readonly Float64Array[], x: number, y: number, within: number): number | null {
  let best: number | null = null;
  let least = within ** 2;
  for (const points of series) {
    for (let i = 0; i < points.length; i += 2) {
      const distance = (points[i]! - x) ** 2 + (points[i + 1]! - y) ** 2;
      if (distance < least) [best, least] = [i / 2, distance];
    }
  }
  return best;
}

/** Width of a bar of the distribution, D, and how many there are; the last holds all beyond. */
export const BINS = { step: 0.25, count: 13 } as const;

/** Share of the eyes in each bin. */
export function shares(points: Float64Array): number[] {
  const counts = Array<number>(BINS.count).fill(0);
  for (let i = 0; i < points.length; i += 2) {
    const bin = Math.floor(Math.hypot(points[i]!, points[i + 1]!) / BINS.step + 1e-9);
    counts[Math.min(bin, BINS.count - 1)]! += 1;
  }
  return counts.map((count) => (2 * count) / points.length);
}

/** Paints one dot for each px that has eyes in it, stronger where there are more, and never so strong that it hides the ellipses and what lies under it. */
export function paint(context: CanvasRenderingContext2D, points: Float64Array, { scale, half, ratio, colour }: { scale: number; half: number; ratio: number; colour: string }): void {
  const side = Math.ceil(2 * half);
  const cells = new Uint16Array(side * side);
  for (let i = 0; i < points.length; i += 2) {
    const [x, y] = [Math.round(half + points[i]! * scale), Math.round(half - points[i + 1]! * scale)];
    if (x >= 0 && y >= 0 && x < side && y < side) cells[y * side + x]! += 1;
  }
  let most = 5;
  for (const eyes of cells) most = Math.max(most, eyes);
  context.fillStyle = colour;
  for (let cell = 0; cell < cells.length; cell += 1) {
    if (cells[cell] === 0) continue;
    context.globalAlpha = 0.15 + (0.45 * cells[cell]!) / most;
    context.fillRect(((cell % side) - 0.5) * ratio, (Math.floor(cell / side) - 0.5) * ratio, 1.5 * ratio, 1.5 * ratio);
  }
  context.globalAlpha = 1;
}
