import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';

/** What a user's action on a plan tells the page. Bubbles out of shadow roots. */
abstract class PlanEvent extends Event {
  constructor(
    type: string,
    /** The plan as it now is; readings in dioptres. */
    readonly plan: CompletePlan,
    readonly outcome: PlanOutcome,
    /** Tag and part that was moved, for instance `astig-cornea incision-handle`. */
    readonly source: string,
  ) {
    super(type, { bubbles: true, composed: true });
  }
}

/** Fired while something is being moved. */
export class AstigInputEvent extends PlanEvent {
  constructor(plan: CompletePlan, outcome: PlanOutcome, source: string) {
    super('astig-input', plan, outcome, source);
  }
}

/** Fired once when it is let go or committed. */
export class AstigChangeEvent extends PlanEvent {
  constructor(plan: CompletePlan, outcome: PlanOutcome, source: string) {
    super('astig-change', plan, outcome, source);
  }
}

declare global {
  interface HTMLElementEventMap {
    'astig-input': AstigInputEvent;
    'astig-change': AstigChangeEvent;
  }
}
