import { cautionsOf } from './cautions.js';
import { judge } from './effects.js';
import { completePlan } from './fields.js';
import { chanceOf } from './scatter.js';
import type { Caution, EyePlan, PlanOutcome } from './types.js';

/** Where an outcome keeps how its cautions are found; nothing that lists or copies its fields sees it. */
const FIND = Symbol('find');

/** One getter for all outcomes: a function of its own in each would give each a shape of its own, and cost more than the cautions. */
const CAUTIONS: PropertyDescriptor & ThisType<{ [FIND](): Caution[] }> = {
  enumerable: true,
  configurable: true,
  get() {
    return this[FIND]();
  },
};

/**
 * Everything that follows from a plan: the one door for the elements. Pure; takes a microsecond or two. The cautions are put
 * together when they are first read, and kept: a search through many plans does not pay for them.
 * @throws RangeError that names field, value and limits when a value cannot be accepted; reading an outcome throws nothing.
 */
export function evaluatePlan(plan: EyePlan): PlanOutcome {
  const complete = completePlan(plan);
  const effects = judge(complete);
  const { before, steps, after, afterIntended, meanPowerShift, scatter, spread } = effects;
  let cautions: Caution[] | undefined;
  const outcome: Omit<PlanOutcome, 'cautions'> = {
    before,
    steps,
    after,
    afterIntended,
    meanPowerShift,
    spread,
    chanceWithin: (limit) => chanceOf(scatter, limit),
  };
  Object.defineProperty(outcome, FIND, { value: () => (cautions ??= cautionsOf(complete, effects)) });
  return Object.defineProperty(outcome, 'cautions', CAUTIONS) as PlanOutcome;
}
