import type { Astigmatism, CompletePlan, RefusedValue } from '../../core/numbers.js';
import { movesOf } from '../internal/case-moves.js';
import { setSteps, withChanges } from './steps.case.js';
import type { Base, CaseElement } from './steps.case.js';
import { PlanGlide, wantsMotion } from './steps.glide.js';

/** A case that is walked through: what it was before the first step, and what the host page has set since. */
export class Walk {
  /** The case as it is now is what the steps start from. */
  readonly base: Base;
  /** The plan that was shown when the host page set another one. */
  #replaced: CompletePlan | null = null;
  /** Whether the steps themselves set the case. */
  #setting = false;
  readonly #glide = new PlanGlide();

  constructor(
    readonly eye: CaseElement,
    onReplaced: () => void,
  ) {
    this.base = { plan: eye.plan, kUnit: eye.kUnit };
    movesOf(eye.model).onForget = () => {
      if (this.#setting) return;
      this.#glide.stop();
      this.#replaced ??= eye.model.plan;
      onReplaced();
    };
  }

  end(): void {
    this.finish();
    movesOf(this.eye.model).onForget = null;
  }

  /** Ends a movement that is under way at its goal. */
  finish(): void {
    this.#glide.finish();
  }

  /** Takes what the host page has set since as part of what the steps start from; whether there was anything. */
  takeReplaced(): boolean {
    // Asking for the plan has the case take in what was set.
    void this.eye.plan;
    const before = this.#replaced;
    this.#replaced = null;
    if (before) Object.assign(this.base, withChanges(this.base, before, this.eye));
    return before !== null;
  }

  /** Leaves the unit that is shown as it is: it is the reader's choice, unless the steps are about it. */
  keepUnit(): void {
    this.base.kUnit = this.eye.kUnit;
  }

  /** Sets the case as it is after some steps; returns what is refused. */
  set(steps: readonly Element[]): readonly RefusedValue[] {
    this.takeReplaced();
    return this.#quietly(() => setSteps(this.eye, this.base, steps));
  }

  /** The same before the reader's eyes, if they want that; returns what will remain there too, whatever has yet to move. */
  go(steps: () => readonly Element[], glides: boolean): { refusals: readonly RefusedValue[]; result: Astigmatism } {
    const { eye } = this;
    const from = { plan: eye.plan, outcome: eye.outcome };
    const settle = (): readonly RefusedValue[] => this.set(steps());
    const refusals = settle();
    const to = { plan: eye.plan, outcome: eye.outcome };
    if (refusals.length === 0 && glides && wantsMotion()) this.#glide.run(eye, from, to, { settle, quietly: (act) => this.#quietly(act) });
    return { refusals, result: to.outcome.after };
  }

  /** Does what is not the host page's doing. */
  #quietly<T>(act: () => T): T {
    this.#setting = true;
    try {
      return act();
    } finally {
      this.#setting = false;
    }
  }
}
