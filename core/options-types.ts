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

/** What one plan does more than another, by the name of its text in `REASON_TEXT`. */
export type Surplus = 'byOneArc' | 'byPair' | 'byArcMore' | 'byLongerArc' | 'byLens' | 'byWiderEntry';

/** Why a plan is listed, without a language. */
export interface PlanReason {
  /** Whether it has the best chance of all. */
  best: boolean;
  /** Whether every other plan is more surgery. */
  least: boolean;
  /** Set against the nearest plan with less surgery and less chance: what it does more, and in how many eyes of 100 that helps. */
  gain?: { by: readonly Surplus[]; eyes: number };
}

export interface SuggestedPlan {
  plan: CompletePlan;
  outcome: PlanOutcome;
  /** Chance that 0.50 D or less remain, in whole hundredths: `62` is 62 of 100. */
  ofHundred: number;
  surgery: Surgery;
  /** Why it is listed, in English: what it gains over the nearest plan with less surgery. */
  reason: string;
  /** The same for other languages; see `reasonText`. */
  why: PlanReason;
}
