import type { CompletePlan, PlanOutcome } from './types.js';

/** How much is done to the eye. */
export interface Surgery {
  arcs: 0 | 1 | 2;
  /** Length of all arcs together, degrees. */
  arcDegrees: number;
  /** Cylinder of the toric lens, D; 0 without. */
  lens: number;
  /** Width of the incision, mm. */
  width: number;
}

export interface SuggestedPlan {
  plan: CompletePlan;
  outcome: PlanOutcome;
  /** Chance that 0.50 D or less remain, in whole hundredths: `62` is 62 of 100. */
  ofHundred: number;
  surgery: Surgery;
  /** Why it is listed, in words: what it gains over the nearest plan with less surgery. */
  reason: string;
}
