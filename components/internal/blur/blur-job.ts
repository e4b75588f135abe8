import { RefusedValue } from '../../../core/check.js';
import { Blurrer, type BlurOptions, type Picture } from '../../../core/sight.js';
import type { BlurAnswer, BlurRequest, Problem } from './blur-messages.js';

/** A picture that takes no longer than this, in ms of work, is always finished. */
const PATIENCE = 100;

interface Run {
  request: BlurRequest;
  steps: Generator<void, Picture | null>;
  /** ms of work */
  spent: number;
}

/**
 * The requests of one client for one picture: one that runs, and the newest of those that wait.
 *
 * What runs is finished although newer requests wait, or a drag would show nothing until it ends. It is given up when it
 * takes twice as long as the one before, or at once when the newest asks for another model, which may be many times
 * faster; but what follows one that was given up is finished in any case.
 */
export class BlurJob {
  #blurrer: Blurrer | undefined;
  #run: Run | null = null;
  #next: BlurRequest | null = null;
  #gaveUp = false;
  #patience = PATIENCE;
  /** ms of the longest step of late; nothing is known of the first. */
  #longest = 2;

  /** @param picture may still be incomplete: `ready` says when it is whole. */
  constructor(
    private readonly picture: Picture,
    readonly answer: (answer: BlurAnswer) => void,
    public ready = true,
  ) {}

  show(request: BlurRequest): void {
    this.#next = request;
  }

  get busy(): boolean {
    return this.ready && (this.#run !== null || this.#next !== null);
  }

  /** Works for about `ms` and never longer if it can be foreseen; the answer when there is one. */
  work(ms: number): BlurAnswer | null {
    const begun = performance.now();
    for (let now = begun; ; ) {
      const answer = this.#step();
      const end = performance.now();
      this.#longest = Math.min(ms, Math.max(end - now, this.#longest * FADE));
      if (this.#run) this.#run.spent += end - now;
      if (answer || end + this.#longest > begun + ms) return answer;
      now = end;
    }
  }

  #step(): BlurAnswer | null {
    const next = this.#next;
    if (next && this.#run && this.#givesUp(this.#run, next)) {
      this.#run = null;
      this.#gaveUp = true;
    }
    const request = this.#run?.request ?? next;
    if (!request) return null;
    try {
      if (!this.#run) return this.#begin(request);
      const { done, value } = this.#run.steps.next();
      return done ? this.#finished(this.#run, value!) : null;
    } catch (error) {
      this.#run = null;
      return { ...request, problem: problemOf(error) };
    }
  }

  /** Nothing but the copy of the picture at first, which is a slice of its own. */
  #begin(request: BlurRequest): null {
    if (!this.#blurrer) {
      this.#blurrer = this.#made();
      return null;
    }
    this.#next = null;
    this.#run = { request, steps: this.#blurrer.steps(request.options), spent: 0 };
    return null;
  }

  /** A faulty picture is a fault of each request. */
  #made(): Blurrer {
    try {
      return new Blurrer(this.picture);
    } catch (error) {
      this.#next = null;
      throw error;
    }
  }

  #finished({ request, spent }: Run, picture: Picture): BlurAnswer {
    this.#run = null;
    this.#gaveUp = false;
    this.#patience = Math.max(PATIENCE, 2 * spent);
    return { ...request, picture };
  }

  #givesUp({ request, spent }: Run, next: BlurRequest): boolean {
    return !this.#gaveUp && (spent > this.#patience || modelOf(request.options) !== modelOf(next.options));
  }
}

/** How fast a long step is forgotten. */
const FADE = 0.99;

const modelOf = (options: BlurOptions): unknown => options?.model ?? 'geometric';

function problemOf(error: unknown): Problem {
  const message = error instanceof Error ? error.message : String(error);
  return error instanceof RefusedValue ? { message, refused: { ...error } } : { message };
}
