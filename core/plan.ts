import { cautionsOf } from './cautions.js';
import { judge } from './effects.js';
import { completePlan } from './fields.js';
import { chanceOf } from './scatter.js';
import type { EyePlan, PlanOutcome } from './types.js';

/**
 * Everything that follows from a plan: the one door for the elements. Pure; takes a few microseconds.
 * @throws RangeError that names field, value and limits when a value cannot be accepted.
 */
export function evaluatePlan(plan: EyePlan): PlanOutcome {
  const complete = completePlan(plan);
  const effects = judge(complete);
  const { before, steps, after, afterIntended, meanPowerShift, scatter, spread } = effects;
  return {
    before,
    steps,
    after,
    afterIntended,
    meanPowerShift,
    spread,
    chanceWithin: (limit) => chanceOf(scatter, limit),
    cautions: cautionsOf(complete, effects),
  };
}
