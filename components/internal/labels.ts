import type { Box, Point } from './geometry.js';
import type { TextSize } from './measure.js';

/** A line that labels should not lie on. */
export interface Segment {
  from: Point;
  to: Point;
}

/** A label that wants a place: its size and the centres it could have, best first. */
export interface LabelRequest {
  id: string;
  size: TextSize;
  candidates: readonly Point[];
}

/** Room that a label keeps to everything else, px. */
const CLEARANCE = 2;

/** How much worse a place is for each line that crosses it, counted in places down the list. */
const CROSSING = 6;

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
  for (const { id, size, candidates } of requests) {
    let best: { centre: Point; box: Box; cost: number } | null = null;
    candidates.forEach((centre, index) => {
      const box = boxAround(centre, size);
      if (best && index >= best.cost) return;
      if (!inside(box, bounds) || taken.some((other) => overlap(box, other, CLEARANCE))) return;
      const cost = index + CROSSING * lines.filter((line) => crosses(line, box)).length;
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

export function overlap(a: Box, b: Box, clearance = 0): boolean {
  return a.left < b.right + clearance && b.left < a.right + clearance && a.top < b.bottom + clearance && b.top < a.bottom + clearance;
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
