import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';
import type { Frame } from '../internal/eye-shapes.js';
import { polar } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import type { Segment } from '../internal/labels.js';
import { handlesOf } from './cornea.handles.js';
import { LEAST_DRAWN, PETAL, REMAINING_REACH, TUNNEL, meridianLine } from './cornea.parts.js';
import { RADII } from '../internal/dial-layout.js';

/** What is drawn above the map, where no figure shall stand. CSS px. */
export interface Obstacles {
  lines: readonly Segment[];
  discs: readonly (Point & { r: number })[];
}

/** Radius kept clear around a handle, px. */
const KNOB = 13;

/** Steps along an arc whose pieces are straight, degrees. */
const PIECE = 10;

/** Where along a petal its discs sit, over its length, and how large they are. */
const PETAL_DISCS = { at: [0.35, 0.6, 0.85], radius: 0.25 } as const;

export function obstaclesOf(plan: CompletePlan, { before, after }: Pick<PlanOutcome, 'before' | 'after'>, frame: Frame): Obstacles {
  const lines: Segment[] = [];
  const discs: (Point & { r: number })[] = handlesOf(plan, frame).map(({ x, y }) => ({ x, y, r: KNOB }));
  const meridian = (degrees: number, reach?: number): void => {
    const { x1, y1, x2, y2 } = meridianLine(degrees, frame, reach);
    lines.push({ from: { x: x1, y: y1 }, to: { x: x2, y: y2 } });
  };
  const cut = (site: number, half: number, radius: number): void => {
    for (let from = -half; from < half; from += PIECE) {
      lines.push({ from: polar(site + frame.turn + from, radius * frame.scale), to: polar(site + frame.turn + Math.min(from + PIECE, half), radius * frame.scale) });
    }
  };
  for (const { magnitude, meridian: steep } of [before, after]) {
    if (magnitude < LEAST_DRAWN) continue;
    const length = Math.min(PETAL.perDioptre * magnitude, PETAL.longest) * frame.scale;
    for (const tip of [steep, steep + 180]) for (const share of PETAL_DISCS.at) discs.push({ ...polar(tip + frame.turn, share * length), r: PETAL_DISCS.radius * length });
  }
  if (before.magnitude >= LEAST_DRAWN) for (const across of [0, 90]) meridian(before.meridian + across);
  if (after.magnitude >= LEAST_DRAWN) meridian(after.meridian, REMAINING_REACH);
  if (plan.lensCylinder && plan.lensMeridian !== null) meridian(plan.lensMeridian);
  if (plan.arcSite !== null) for (const site of [plan.arcSite, plan.arcSite + 180].slice(0, plan.arcCount)) cut(site, plan.arcLength / 2, plan.arcZone / 2);
  if (plan.incisionSite !== null) {
    discs.push({ ...polar(plan.incisionSite + frame.turn, (RADII.limbus - TUNNEL / 2) * frame.scale), r: (plan.incisionWidth / 2 + 0.2) * frame.scale });
  }
  return { lines, discs };
}
