import { path } from 'd3-path';
import type { Astigmatism, CompletePlan, MeridianSpread } from '../../core/numbers.js';
import { alongAcross, arcPath, polar, polyline } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { RADII } from './cornea.layout.js';

/** Length of a petal of the bow-tie for one dioptre, mm, up to the longest. */
const PETAL = { perDioptre: 1.8, longest: 5.4 } as const;

/** How far the tunnel of the incision reaches into the cornea, mm. For the picture only. */
const TUNNEL = 1.6;

/** From the arc inwards to its handle, mm. */
const ARC_HANDLE = 1.15;

/** Where on the axis of the lens its handle sits, mm. */
const LENS_HANDLE = 3.4;

/** Half the line of the remaining steep meridian, mm: shorter than the one before, so that both show when they coincide. */
export const REMAINING_REACH = 4.3;

/** Below this nothing is drawn for an astigmatism: its direction would be noise, D. */
export const LEAST_DRAWN = 0.05;

/** How the drawing stands: px for one mm, and degrees by which it is turned. */
export interface Frame {
  scale: number;
  turn: number;
}

export type HandleName = 'incision' | 'arc' | 'arc-end' | 'lens';

/** A handle in the drawing; `side` tells the two ends of an arc apart. */
export interface Handle extends Point {
  name: HandleName;
  /** Direction on the screen, degrees, along which it looks. */
  facing: number;
  side: -1 | 0 | 1;
}

/** The two petals that show how much a cornea is astigmatic and where it is steep. */
export function bowTie({ magnitude, meridian }: Astigmatism, { scale, turn }: Frame): string {
  if (magnitude < LEAST_DRAWN) return '';
  const length = Math.min(PETAL.perDioptre * magnitude, PETAL.longest) * scale;
  const petals = path();
  for (const tip of [meridian + turn, meridian + turn + 180]) {
    const [a, b, c, d, e] = [polar(tip + 38, 0.55 * length), polar(tip + 19, length), polar(tip, length), polar(tip - 19, length), polar(tip - 38, 0.55 * length)];
    petals.moveTo(0, 0);
    petals.bezierCurveTo(a.x, a.y, b.x, b.y, c.x, c.y);
    petals.bezierCurveTo(d.x, d.y, e.x, e.y, 0, 0);
    petals.closePath();
  }
  return petals.toString();
}

/** Two opposite sectors of the cornea around a meridian; at 90° each side the whole disc. */
export function sectorPair({ meridian, halfWidth }: MeridianSpread, { scale, turn }: Frame): string {
  const sectors = path();
  for (const middle of [meridian + turn, meridian + turn + 180]) {
    const from = -((middle - halfWidth) * Math.PI) / 180;
    const to = -((middle + halfWidth) * Math.PI) / 180;
    sectors.moveTo(0, 0);
    sectors.arc(0, 0, REMAINING_REACH * scale, from, to, true);
    sectors.closePath();
  }
  return sectors.toString();
}

/** A line right across the cornea. */
export function meridianLine(degrees: number, { scale, turn }: Frame, radius: number = RADII.limbus): { x1: number; y1: number; x2: number; y2: number } {
  const end = polar(degrees + turn, radius * scale);
  return { x1: -end.x, y1: -end.y, x2: end.x, y2: end.y };
}

/** The incision to scale: the entry along the limbus, whose chord is the width, and the tunnel inwards. */
export function incisionShape(site: number, width: number, { scale, turn }: Frame): { entry: string; tunnel: string } {
  const half = width / 2;
  const reach = (Math.asin(half / RADII.limbus) * 180) / Math.PI;
  const facing = site + turn;
  const radius = RADII.limbus * scale;
  const edge = Math.sqrt(RADII.limbus ** 2 - half ** 2) * scale;
  const inner = (RADII.limbus - TUNNEL) * scale;
  const corner = half * scale;
  const tunnel = [alongAcross(facing, edge, -corner), alongAcross(facing, inner, -corner * 0.85), alongAcross(facing, inner, corner * 0.85), alongAcross(facing, edge, corner)];
  return { entry: arcPath(radius, facing - reach, facing + reach), tunnel: polyline(tunnel) };
}

/** The planned arcs to scale, one path each. */
export function arcShapes(plan: CompletePlan, { scale, turn }: Frame): string[] {
  if (plan.arcSite === null) return [];
  const radius = (plan.arcZone / 2) * scale;
  const centres = [plan.arcSite, plan.arcSite + 180].slice(0, plan.arcCount);
  return centres.map((centre) => arcPath(radius, centre + turn - plan.arcLength / 2, centre + turn + plan.arcLength / 2));
}

/** All handles that the plan offers. */
export function handlesOf(plan: CompletePlan, { scale, turn }: Frame): Handle[] {
  const handles: Handle[] = [];
  const put = (name: HandleName, degrees: number, radius: number, side: Handle['side'] = 0): void => {
    handles.push({ name, side, facing: degrees + turn, ...polar(degrees + turn, radius * scale) });
  };
  if (plan.lensCylinder && plan.lensMeridian !== null) put('lens', plan.lensMeridian, LENS_HANDLE);
  if (plan.arcCount > 0 && plan.arcSite !== null) {
    const radius = plan.arcZone / 2;
    put('arc', plan.arcSite, radius - ARC_HANDLE);
    put('arc-end', plan.arcSite - plan.arcLength / 2, radius, -1);
    put('arc-end', plan.arcSite + plan.arcLength / 2, radius, 1);
  }
  if (plan.incisionSite !== null) put('incision', plan.incisionSite, RADII.handle);
  return handles;
}

/** The nearest handle within reach. */
export function nearestHandle(handles: readonly Handle[], point: Point, reach: number): Handle | null {
  let best: Handle | null = null;
  let least = reach;
  for (const handle of handles) {
    const distance = Math.hypot(handle.x - point.x, handle.y - point.y);
    if (distance <= least) {
      least = distance;
      best = handle;
    }
  }
  return best;
}
