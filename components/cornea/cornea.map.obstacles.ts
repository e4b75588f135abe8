import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';
import { RADII } from '../internal/dial-layout.js';
import type { Frame } from '../internal/eye-shapes.js';
import { polar } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { handlesOf } from './cornea.handles.js';
import { LEAST_DRAWN, PETAL, REMAINING_REACH, TUNNEL } from './cornea.parts.js';

/** Where no figure shall stand, CSS px. */
export interface Disc extends Point {
  r: number;
}

/** Radius kept clear around a handle, px. */
const KNOB = 13;

/** A line is a row of points so far apart, mm: nearer than a figure is high. */
const APART = 0.3;

/** Where along a petal its discs sit, over its length, and how large they are. */
const PETAL_DISCS = { at: [0.35, 0.6, 0.85], radius: 0.25 } as const;

/** What is drawn above the map: handles, petals, meridians, the lens axis and cuts. */
export function obstaclesOf(plan: CompletePlan, { before, after }: Pick<PlanOutcome, 'before' | 'after'>, frame: Frame): Disc[] {
  const discs: Disc[] = handlesOf(plan, frame).map(({ x, y }) => ({ x, y, r: KNOB }));
  const put = (degrees: number, distance: number, r = 0): void => {
    discs.push({ ...polar(degrees + frame.turn, distance * frame.scale), r: r * frame.scale });
  };
  const meridian = (degrees: number, reach: number = RADII.limbus): void => {
    for (let at = -reach; at <= reach; at += APART) put(degrees, at);
  };
  for (const { magnitude, meridian: steep } of [before, after]) {
    if (magnitude < LEAST_DRAWN) continue;
    const length = Math.min(PETAL.perDioptre * magnitude, PETAL.longest);
    for (const share of PETAL_DISCS.at) for (const side of [-1, 1]) put(steep, side * share * length, PETAL_DISCS.radius * length);
  }
  if (before.magnitude >= LEAST_DRAWN) for (const across of [0, 90]) meridian(before.meridian + across);
  if (after.magnitude >= LEAST_DRAWN) meridian(after.meridian, REMAINING_REACH);
  if (plan.lensCylinder && plan.lensMeridian !== null) meridian(plan.lensMeridian);
  if (plan.arcSite !== null) {
    const step = (2 * APART * 180) / (Math.PI * plan.arcZone);
    for (const site of [plan.arcSite, plan.arcSite + 180].slice(0, plan.arcCount)) {
      for (let along = -plan.arcLength / 2; along <= plan.arcLength / 2; along += step) put(site + along, plan.arcZone / 2);
    }
  }
  if (plan.incisionSite !== null) put(plan.incisionSite, RADII.limbus - TUNNEL / 2, plan.incisionWidth / 2 + 0.2);
  return discs;
}
