import type { CompletePlan } from '../../core/numbers.js';
import type { Point } from '../internal/geometry.js';
import { RADII } from '../internal/dial-layout.js';
import type { Frame } from '../internal/eye-shapes.js';
import type { Handle, HandleName } from './cornea.handles.js';
import { direction } from '../internal/geometry.js';
import { turn as turned } from '../../core/numbers.js';

/** How near the circle of the arcs a click must be, mm. */
const NEAR_ARC = 0.8;

/** Between these radii a click means the axis of the lens, mm. */
const LENS_BAND = { from: 1, to: 4.2 } as const;

/**
 * The handle that a click beside all handles means: on the ring and the white of the eye the incision, on the circle of
 * the arcs the arc (its length, when that control has the focus), nearer the middle the lens.
 */
export function clickedHandle(
  point: Point,
  plan: CompletePlan,
  { scale, turn }: Frame,
  focused: HandleName | null,
): Pick<Handle, 'name' | 'side'> | null {
  const radius = Math.hypot(point.x, point.y) / scale;
  if (radius > RADII.longTick + 0.2) return null;
  if (radius >= RADII.limbus - 0.1) return plan.incisionSite === null ? null : { name: 'incision', side: 0 };
  if (plan.arcCount > 0 && plan.arcSite !== null && Math.abs(radius - plan.arcZone / 2) < NEAR_ARC) {
    if (focused !== 'arc-end') return { name: 'arc', side: 0 };
    return { name: 'arc-end', side: turned(plan.arcSite, direction(point) - turn) < 0 ? -1 : 1 };
  }
  const onLens = radius >= LENS_BAND.from && radius <= LENS_BAND.to;
  return onLens && plan.lensCylinder && plan.lensMeridian !== null ? { name: 'lens', side: 0 } : null;
}
