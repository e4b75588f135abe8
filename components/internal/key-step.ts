/** Step of one arrow key, of a page key or Shift, and of Alt, in the unit of the value. */
const STEPS = { fine: 0.1, normal: 1, coarse: 10 } as const;

const ARROWS: Record<string, 1 | -1> = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 };
const PAGES: Record<string, 1 | -1> = { PageUp: 1, PageDown: -1 };

/** A value that keys can change: its limits, and whether it starts anew past the end. */
export interface Steppable {
  value: number;
  min: number;
  max: number;
  /** The value after which it wraps round, for angles; the limits are then 0 and just below. */
  period?: number;
}

/**
 * The value after a key, or null when the key is none of ours. Arrows step by 1, with Shift by 10 and with Alt by 0.1;
 * page keys step by 10; Home and End go to the limits. A turn has no left or right, so right-to-left changes nothing.
 */
export function keyStep(event: Pick<KeyboardEvent, 'key' | 'shiftKey' | 'altKey' | 'ctrlKey' | 'metaKey'>, current: Steppable): number | null {
  if (event.ctrlKey || event.metaKey) return null;
  const { value, min, max, period } = current;
  if (event.key === 'Home') return min;
  if (event.key === 'End') return max;
  const arrow = ARROWS[event.key];
  const sign = arrow ?? PAGES[event.key];
  if (sign === undefined) return null;
  const size = arrow === undefined || event.shiftKey ? STEPS.coarse : event.altKey ? STEPS.fine : STEPS.normal;
  const next = Math.round((value + sign * size) * 10) / 10;
  if (!period) return Math.min(max, Math.max(min, next));
  if (next < min) return next + period;
  return next >= min + period ? next - period : next;
}

/** Whether a native slider would move at this key, whatever modifiers are held. */
export function movesNativeSlider(key: string): boolean {
  return Object.hasOwn(ARROWS, key) || Object.hasOwn(PAGES, key) || key === 'Home' || key === 'End';
}
