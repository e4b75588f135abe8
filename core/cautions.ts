import { arcCautions } from './cautions-arcs.js';
import { eyeCautions, resultCautions } from './cautions-eye.js';
import { judge } from './effects.js';
import type { Effects } from './effects.js';
import { completePlan } from './fields.js';
import type { Caution, CautionLevel, CompletePlan, EyePlan } from './types.js';

const ORDER: Record<CautionLevel, number> = { stop: 0, think: 1, note: 2 };

/**
 * What is allowed but unwise, or worth knowing, in the order stop, think, note.
 * @throws RangeError for a plan outside the limits.
 */
export function cautionsFor(plan: EyePlan): Caution[] {
  const complete = completePlan(plan);
  return cautionsOf(complete, judge(complete));
}

/** The same for a plan that has been completed and calculated. */
export function cautionsOf(plan: CompletePlan, effects: Effects): Caution[] {
  const found: Caution[] = [];
  eyeCautions(found, plan);
  arcCautions(found, plan, effects);
  resultCautions(found, plan, effects);
  // By insertion: there are few, mostly in order.
  for (let index = 1; index < found.length; index += 1) {
    const one = found[index]!;
    let place = index;
    for (; place > 0 && ORDER[found[place - 1]!.level] > ORDER[one.level]; place -= 1) found[place] = found[place - 1]!;
    found[place] = one;
  }
  return found;
}
