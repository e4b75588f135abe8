import type { CompletePlan, MeridianSpread } from '../../core/numbers.js';
import type { Frame } from '../internal/eye-shapes.js';
import { arcOf, polar } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { RADII } from './cornea.layout.js';

export { LEAST_DRAWN, arcShapes, bowTie, incisionShape, meridianLine } from '../internal/eye-shapes.js';
export type { Frame } from '../internal/eye-shapes.js';

/** From the arc inwards to its handle, mm. */
const ARC_HANDLE = 1.15;

/** Where on the axis of the lens its handle sits, mm. */
const LENS_HANDLE = 3.4;

/** Half the line of the remaining steep meridian, mm: shorter than the one before, so that both show when they coincide. */
export const REMAINING_REACH = 4.3;

export type HandleName = 'incision' | 'arc' | 'arc-end' | 'lens';

/** A handle in the drawing; `side` tells the two ends of an arc apart. */
export interface Handle extends Point {
  name: HandleName;
  /** Direction on the screen, degrees, along which it looks. */
  facing: number;
  side: -1 | 0 | 1;
}

/** Two opposite sectors of the cornea around a meridian; at 90° each side the whole disc. */
export function sectorPair({ meridian, halfWidth }: MeridianSpread, { scale, turn }: Frame): string {
  const middles = [meridian + turn, meridian + turn + 180];
  return middles.map((middle) => `M0,0L${arcOf(REMAINING_REACH * scale, middle - halfWidth, middle + halfWidth)}Z`).join('');
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
