import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import type { CompletePlan } from '../../core/numbers.js';
import { REACH } from '../internal/drag-controller.js';
import type { Frame } from '../internal/eye-shapes.js';
import { polar, px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { RADII } from '../internal/dial-layout.js';

/** From the arc inwards to its handle, mm. */
const ARC_HANDLE = 1.15;

/** Where on the axis of the lens its handle sits, mm. */
const LENS_HANDLE = 3.4;

/** Scale of the drawing, px for one mm, below which the knobs shrink with it. */
const FULL_KNOB = 14;

export type HandleName = 'incision' | 'arc' | 'arc-end' | 'lens';

/** A handle in the drawing; `side` tells the two ends of an arc apart. */
export interface Handle extends Point {
  name: HandleName;
  /** Direction on the screen, degrees, along which it looks. */
  facing: number;
  side: -1 | 0 | 1;
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

/** A knob with two chevrons along the way it can go, on a hit area of 44 px. */
export function drawHandle({ name, x, y, facing }: Handle, scale: number, focused: boolean): SVGTemplateResult {
  const small = name === 'arc-end';
  const size = Math.min(1, scale / FULL_KNOB);
  return svg`<g transform="translate(${px(x)} ${px(y)}) rotate(${px(-facing)})">
    <circle class="hit" r=${REACH}></circle>
    <g transform="scale(${px(size)})">
    ${focused ? svg`<circle class="focus" r="15"></circle>` : nothing}
    ${small ? svg`<rect class="knob" x="-6" y="-6" width="12" height="12" rx="2"></rect>` : svg`<circle class="knob" r="10"></circle>`}
    <path class="grip" d=${small ? 'M-2.5 -1.5 0 -4 2.5 -1.5 M-2.5 1.5 0 4 2.5 1.5' : 'M-3.5 -2.5 0 -6 3.5 -2.5 M-3.5 2.5 0 6 3.5 2.5'}></path>
    </g>
  </g>`;
}
