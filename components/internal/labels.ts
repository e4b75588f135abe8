import type { Box, Point } from './geometry.js';
import type { TextSize } from './measure.js';

/** A line that labels should not lie on. */
export interface Segment {
  from: Point;
  to: Point;
}

/** A label that wants a place: its size, the centres it could have, best first, and the line that it names. */
export interface LabelRequest {
  id: string;
  size: TextSize;
  candidates: readonly Point[];
  line?: Segment;
}

/** Room that a label keeps to everything else, px; more sideways, so that two are not read as one phrase. */
const CLEARANCE = { x: 7, y: 2 } as const;

/** How much worse a place is for each line that crosses it, and for being nearer to another line, in places down the list. */
const CROSSING = 8;
const AMBIGUOUS = 10;

/**
 * Places labels one after the other, first come first served: never over another label or outside the bounds, and over
 * as few lines as can be. A label that has no such place gets none; the key under the drawing names it all the same.
 */
export function placeLabels(
  requests: readonly LabelRequest[],
  fixed: readonly Box[],
  lines: readonly Segment[],
  bounds: Box,
): Map<string, Point> {
  const taken = [...fixed];
  const placed = new Map<string, Point>();
  for (const { id, size, candidates, line: named } of requests) {
    const others = lines.filter((line) => line !== named);
    let best: { centre: Point; box: Box; cost: number } | null = null;
    candidates.forEach((centre, index) => {
      const box = boxAround(centre, size);
      if (best && index >= best.cost) return;
      if (!inside(box, bounds) || taken.some((other) => overlap(box, other))) return;
      const cost = index + CROSSING * lines.filter((line) => crosses(line, box)).length + (named && ambiguous(centre, named, others) ? AMBIGUOUS : 0);
      if (!best || cost < best.cost) best = { centre, box, cost };
    });
    if (!best) continue;
    const { centre, box } = best as { centre: Point; box: Box };
    taken.push(box);
    placed.set(id, centre);
  }
  return placed;
}

export function boxAround({ x, y }: Point, { width, height }: TextSize): Box {
  return { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
}

function inside(box: Box, bounds: Box): boolean {
  return box.left >= bounds.left && box.right <= bounds.right && box.top >= bounds.top && box.bottom <= bounds.bottom;
}

function overlap(a: Box, b: Box): boolean {
  const { x, y } = CLEARANCE;
  return a.left < b.right + x && b.left < a.right + x && a.top < b.bottom + y && b.top < a.bottom + y;
}

/** Whether a label would be read as the name of another line, since that one is nearer. */
function ambiguous(centre: Point, named: Segment, others: readonly Segment[]): boolean {
  const own = distance(centre, nearestOn(named, centre));
  return others.some((line) => distance(centre, nearestOn(line, centre)) < own);
}

/** The point of a segment that is nearest to a point. */
export function nearestOn({ from, to }: Segment, { x, y }: Point): Point {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const length = dx * dx + dy * dy;
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - from.x) * dx + (y - from.y) * dy) / length));
  return { x: from.x + share * dx, y: from.y + share * dy };
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Whether a segment meets a box: the segment is clipped by each side in turn (Liang & Barsky). */
export function crosses({ from, to }: Segment, box: Box): boolean {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  let enter = 0;
  let leave = 1;
  for (const [slope, room] of [
    [-dx, from.x - box.left],
    [dx, box.right - from.x],
    [-dy, from.y - box.top],
    [dy, box.bottom - from.y],
  ] as const) {
    if (slope === 0 && room < 0) return false;
    if (slope < 0) enter = Math.max(enter, room / slope);
    if (slope > 0) leave = Math.min(leave, room / slope);
  }
  return enter <= leave;
}
