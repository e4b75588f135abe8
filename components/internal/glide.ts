import type { ReactiveControllerHost } from 'lit';
import { Later } from './later.js';
import type { Waiting } from './later.js';
import type { Tween } from './tween.js';

/** A number that is drawn as it is at first, and glides to each new value once what moves it is there. */
export class Glide {
  /** Where it is going, or is; null before it was drawn. */
  goal: number | null = null;
  readonly #tween: Later<Tween>;

  constructor(host: ReactiveControllerHost & Waiting) {
    this.#tween = new Later(host, async () => new (await import('./tween.js')).Tween(host));
  }

  /** The value to draw now, on the way to `goal`. */
  towards(goal: number): number {
    this.goal = goal;
    return this.#tween.need()?.towards(goal) ?? goal;
  }
}
