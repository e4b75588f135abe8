import { LIMITS, meridian, site, turn } from '../../core/numbers.js';
import type { CompletePlan, EyePlan } from '../../core/numbers.js';
import type { Steppable } from '../internal/key-step.js';
import type { Handle, HandleName } from './cornea.handles.js';

/** Within this many degrees of the steep meridian a handle snaps to it. */
export const SNAP = 3;

/** Below this speed, in degrees a millisecond, somebody is aiming, and nothing snaps. */
export const SLOW = 0.02;

const HALF_TURN = 180;

/** What a control can be set to. */
export function steppable(name: HandleName, plan: CompletePlan): Steppable {
  if (name === 'arc-end') return { value: plan.arcLength, min: LIMITS.arcLength.min, max: LIMITS.arcLength.max };
  if (name === 'lens') return { value: plan.lensMeridian ?? HALF_TURN, min: 1, max: HALF_TURN, period: HALF_TURN };
  return { value: (name === 'incision' ? plan.incisionSite : plan.arcSite) ?? 0, min: 0, max: 359, period: 360 };
}

/** The change of the plan that puts a control to a value. */
export function patchOf(name: HandleName, value: number): EyePlan {
  switch (name) {
    case 'incision':
      return { incisionSite: site(value) };
    case 'arc':
      return { arcSite: site(value) };
    case 'arc-end':
      return { arcLength: Math.min(LIMITS.arcLength.max, Math.max(LIMITS.arcLength.min, value)) };
    case 'lens':
      return { lensMeridian: meridian(value) };
  }
}

/** How a pointer wants a value: to whole degrees or tenths, and whether it may snap. */
export interface Aim {
  fine: boolean;
  snap: boolean;
}

/** The change of the plan that puts a handle at `degrees` on the eye. */
export function dragPatch({ name, side }: Pick<Handle, 'name' | 'side'>, degrees: number, plan: CompletePlan, aim: Aim): EyePlan {
  const rounded = aim.fine ? Math.round(degrees * 10) / 10 : Math.round(degrees);
  if (name !== 'arc-end') return patchOf(name, aim.snap ? snapped(rounded, plan.steepMeridian) : rounded);
  // Both ends move together, so that the centre stays where the surgeon has put it.
  const half = turn(plan.arcSite ?? 0, degrees) * (side || 1);
  const length = 2 * Math.max(0, half);
  return patchOf(name, aim.fine ? Math.round(length * 10) / 10 : Math.round(length));
}

/** The steep meridian's nearer end when that is close, else the value itself. */
function snapped(degrees: number, steepMeridian: number): number {
  for (const end of [steepMeridian, steepMeridian + HALF_TURN]) {
    const away = turn(degrees, end);
    if (Math.abs(away) <= SNAP) return degrees + away;
  }
  return degrees;
}
