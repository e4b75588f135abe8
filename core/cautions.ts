import { arcCautions } from './cautions-arcs.js';
import { eyeCautions, resultCautions } from './cautions-eye.js';
import { judge } from './effects.js';
import type { Effects } from './effects.js';
import { completePlan } from './fields.js';
import type { Caution, CautionLevel, CompletePlan, EyePlan } from './types.js';

const ORDER: readonly CautionLevel[] = ['stop', 'think', 'note'];

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
  const ordered: Caution[] = [];
  for (const level of ORDER) for (const one of found) if (one.level === level) ordered.push(one);
  return ordered;
}
