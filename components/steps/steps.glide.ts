import { movesOf } from '../internal/case-moves.js';
import type { CaseElement } from './steps.case.js';
import { between } from './steps.plan.js';
import type { Shown } from './steps.plan.js';

/** How long a step takes, ms. */
const DURATION = 700;

interface Acts {
  /** Sets exactly what was declared; called once at the end, or when the movement is cut short. */
  settle: () => void;
  /** Does something that is not the host page's doing. */
  quietly: <T>(act: () => T) => T;
}

/** Takes a case from one plan to another before the reader's eyes; at once where less motion is wanted. */
export class PlanGlide {
  #frame = 0;
  #end: (() => void) | null = null;
  #halt: (() => void) | null = null;

  run(eye: CaseElement, from: Shown, to: Shown, { settle, quietly }: Acts): void {
    const start = performance.now();
    const moves = movesOf(eye.model);
    moves.gliding = true;
    this.#halt = () => (moves.gliding = false);
    this.#end = () => {
      moves.gliding = false;
      settle();
      // What was waiting for the end, such as a live region, hears of it even when the last frame was the goal.
      eye.requestUpdate();
    };
    const step = (): void => {
      const share = Math.min(1, (performance.now() - start) / DURATION);
      if (share === 1) return this.finish();
      // What the page has set in the meantime is taken in first, and may have ended this.
      void eye.plan;
      if (!this.#end) return;
      const refused = quietly(() => {
        eye.plan = between(from, to, share * share * (3 - 2 * share));
        return eye.refusals.length > 0;
      });
      if (refused) return this.finish();
      this.#frame = requestAnimationFrame(step);
    };
    step();
  }

  /** Ends what is under way where it is. */
  stop(): void {
    this.#end = null;
    cancelAnimationFrame(this.#frame);
    this.#halt?.();
  }

  /** Ends what is under way at its goal. */
  finish(): void {
    cancelAnimationFrame(this.#frame);
    const end = this.#end;
    this.#end = null;
    end?.();
  }
}

export function wantsMotion(): boolean {
  return typeof matchMedia !== 'undefined' && !matchMedia('(prefers-reduced-motion: reduce)').matches && !document.hidden;
}
