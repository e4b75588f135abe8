import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** How long a number takes to its new value, ms. */
const DURATION = 220;

/** A number that glides to its new value, and jumps where the reader wants less motion. */
export class Tween implements ReactiveController {
  #shown: number | null = null;
  #path: { from: number; to: number; start: number } | null = null;
  #frame = 0;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostDisconnected(): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    if (this.#path) this.#shown = this.#path.to;
    this.#path = null;
  }

  /** The value to draw now, on the way to `goal`. */
  towards(goal: number): number {
    if (goal === (this.#path?.to ?? this.#shown)) return this.#shown ?? goal;
    if (this.#shown === null || still()) {
      this.#shown = goal;
      this.#path = null;
    } else {
      this.#path = { from: this.#shown, to: goal, start: performance.now() };
      this.#frame ||= requestAnimationFrame(this.#step);
    }
    return this.#shown;
  }

  readonly #step = (): void => {
    this.#frame = 0;
    if (!this.#path) return;
    const { from, to, start } = this.#path;
    const share = Math.min(1, (performance.now() - start) / DURATION);
    this.#shown = from + (to - from) * (1 - (1 - share) ** 3);
    if (share === 1) this.#path = null;
    else this.#frame = requestAnimationFrame(this.#step);
    this.host.requestUpdate();
  };
}

function still(): boolean {
  return typeof matchMedia === 'undefined' || matchMedia('(prefers-reduced-motion: reduce)').matches;
}
