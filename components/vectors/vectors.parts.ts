import { fromVector, toVector } from '../../core/numbers.js';
import type { Astigmatism, Ellipse, PlanOutcome, StepSource, Vector } from '../../core/numbers.js';
import { polyline } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';

/** What a vector of the diagram stands for. */
export type VectorSource = 'before' | StepSource | 'residual';

/** One arrow: from where to where in dioptres, and what it is as an astigmatism. */
export interface Arrow {
  source: VectorSource;
  from: Vector;
  to: Vector;
  meaning: Astigmatism;
  /** Whether the surgeon's own figure stands behind it. */
  own: boolean;
}

/** Radii that the diagram can have, D, and how far apart its rings are then. Few, so that the scale stays while something is dragged. */
const RADII = [
  [0.25, 0.1],
  [0.5, 0.2],
  [0.75, 0.2],
  [1, 0.5],
  [1.5, 0.5],
  [2, 0.5],
  [3, 1],
  [4, 1],
  [6, 2],
  [8, 2],
  [12, 5],
  [16, 5],
  [24, 10],
  [32, 10],
  [64, 20],
] as const;

/** Room beyond the longest vector. */
const MARGIN = 1.08;

/** The diagram shrinks only when that gains more than this, so that it does not flicker at a border. */
const KEEP = 0.8;

/** Shorter arrows, in dioptres, are not drawn. */
export const LEAST_DRAWN = 0.005;

/** Size of an arrow head, px. */
const HEAD = { length: 10, half: 4 } as const;

/** All arrows, head to tail, and from the origin what is left. */
export function arrowsOf(outcome: PlanOutcome): Arrow[] {
  const origin = { x: 0, y: 0 };
  let tip = toVector(outcome.before);
  const arrows: Arrow[] = [{ source: 'before', from: origin, to: tip, meaning: outcome.before, own: false }];
  for (const { source, vector, basis } of outcome.steps) {
    const to = { x: tip.x + vector.x, y: tip.y + vector.y };
    arrows.push({ source, from: tip, to, meaning: fromVector(vector), own: basis === 'own' });
    tip = to;
  }
  arrows.push({ source: 'residual', from: origin, to: toVector(outcome.after), meaning: outcome.after, own: false });
  return arrows.filter(({ meaning }) => meaning.magnitude >= LEAST_DRAWN);
}

/** Shares of eyes that the ellipses hold. */
export const SHARES = [0.5, 0.95] as const;

/** How far an ellipse reaches from the origin, D, at most. */
export function reachOf({ cx, cy, a }: Ellipse): number {
  return Math.hypot(cx, cy) + a;
}

/** Radius of the diagram, D: the next one that holds everything, or the present one while that serves. */
export function diagramRadius(arrows: readonly Arrow[], ellipses: readonly Ellipse[], present: number | null): number {
  const extent = Math.max(0, ...arrows.map(({ to }) => MARGIN * Math.hypot(to.x, to.y)), ...ellipses.map(reachOf));
  const fitting = RADII.find(([radius]) => radius >= extent)?.[0] ?? extent;
  if (present === null || fitting >= present) return fitting;
  return extent <= fitting * KEEP ? fitting : present;
}

/** Magnitudes at which a ring is drawn, D, without the centre. */
export function ringSteps(radius: number): number[] {
  const [, step] = RADII.find(([known]) => known >= radius) ?? RADII.at(-1)!;
  const count = Math.ceil(radius / step - 0.01) - 1;
  return Array.from({ length: count }, (_, index) => (index + 1) * step);
}

/** A point of the double-angle plane in the drawing: y upwards becomes y downwards. */
export function toPoint({ x, y }: Vector, scale: number): Point {
  return { x: x * scale, y: -y * scale };
}

/** Shaft up to the head, and the head, whose tip is exactly where the vector ends. */
export function arrowShape(from: Point, to: Point): { shaft: { x2: number; y2: number }; head: string } {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const size = Math.min(1, (0.6 * length) / HEAD.length);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const base = { x: to.x - along.x * HEAD.length * size, y: to.y - along.y * HEAD.length * size };
  const half = HEAD.half * size;
  const left = { x: base.x + along.y * half, y: base.y - along.x * half };
  const right = { x: base.x - along.y * half, y: base.y + along.x * half };
  return { shaft: { x2: base.x, y2: base.y }, head: polyline([to, right, left], true) };
}
