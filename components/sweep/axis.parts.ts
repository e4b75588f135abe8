import { ticks } from 'd3-array';
import { GOOD } from '../../core/numbers.js';
import type { Sweep } from './sweep.parts.js';

/** Ends that the vertical axis can have, D. Few, so that the scale stays while something is dragged. */
const TOPS = [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32, 48, 64];

/** Room above the highest point. */
const MARGIN = 1.12;

/** The axis gets shorter only when that gains more than this, so that it does not flicker at a border. */
const KEEP = 0.8;

/** End of the vertical axis, D, which starts at nothing: the next that holds everything, or the present one while that serves. */
export function axisTop({ curve, band }: Pick<Sweep, 'curve' | 'band'>, present: number | null): number {
  const extent = MARGIN * Math.max(...curve.map(({ remaining }) => remaining), ...band.map(({ high }) => high));
  const fitting = TOPS.find((top) => top >= extent) ?? extent;
  if (present === null || fitting >= present) return fitting;
  return extent <= fitting * KEEP ? fitting : present;
}

/** Dioptres at which a line runs across, from 0: at most so many steps, and never a step that misses the good line. */
export function axisSteps(top: number, most: number): number[] {
  for (let count = Math.min(6, Math.floor(most)); count > 2; count -= 1) {
    const steps = ticks(0, top, count);
    if (steps.includes(GOOD) || steps[1]! > GOOD) return steps;
  }
  return ticks(0, top, 2);
}
