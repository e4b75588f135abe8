import type { CompletePlan } from '../../core/numbers.js';

/** Whether anything at all is to be done to the eye. */
export function isPlanned(plan: CompletePlan): boolean {
  return plan.incisionSite !== null || plan.arcCount > 0 || Boolean(plan.lensCylinder);
}
