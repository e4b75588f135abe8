import type { CaseElement } from './steps.case.js';
import { between } from './steps.plan.js';
import type { Shown } from './steps.plan.js';

/** How long a step takes, ms. */
const DURATION = 700;

/** Takes a case from one plan to another before the reader's eyes; at once where less motion is wanted. */
export class Glide {
  #frame = 0;
  #end: (() => void) | null = null;

  /** `settle` sets exactly what was declared; it is called once at the end, or when the movement is cut short. */
  run(eye: CaseElement, from: Shown, to: Shown, settle: () => void): void {
    const start = performance.now();
    eye.model.gliding = true;
    this.#end = () => {
      eye.model.gliding = false;
      settle();
      // What was waiting for the end, such as a live region, hears of it even when the last frame was the goal.
      eye.requestUpdate();
    };
    const step = (): void => {
      const share = Math.min(1, (performance.now() - start) / DURATION);
      if (share === 1) return this.finish();
      eye.plan = between(from, to, share * share * (3 - 2 * share));
      if (eye.refusals.length > 0) return this.finish();
      this.#frame = requestAnimationFrame(step);
    };
    step();
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
