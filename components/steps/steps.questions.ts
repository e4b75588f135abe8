import type { Astigmatism } from '../../core/numbers.js';
import type { Language } from '../internal/language/language.js';
import { Later } from '../internal/later.js';
import type { Waiting } from '../internal/later.js';
import type { Host, Prediction } from './steps.predict.js';
import type { Walk } from './steps.walk.js';

/** What a reader expected, and what came of it. */
interface Verdict {
  made: Prediction;
  result: Astigmatism;
}

/** The question to the reader that is open, if one is, and what is said of the one that was answered last. */
export class Questions {
  open: Prediction | null = null;
  verdict: Verdict | null = null;
  readonly #predict: Later<typeof import('./steps.predict.js')>;

  constructor(
    private readonly host: Host & Waiting,
    private readonly show: () => void,
  ) {
    this.#predict = new Later(host, () => import('./steps.predict.js'));
  }

  /** Asks before a step is shown: from the state that is there, as soon as what asks has come. */
  ask(at: number, walk: Walk, reached: readonly Element[]): void {
    const part = this.#predict.need();
    if (!part || this.open) return;
    walk.finish();
    walk.set(reached);
    this.verdict = null;
    this.open = new part.Prediction(this.host, at, walk.eye, this.show);
  }

  /** The page has moved on from an open question: the answer is said all the same. None is said to who went back. */
  leave(at: number, walk: Walk, steps: readonly Element[]): Verdict | null {
    const made = this.drop()!;
    if (at < made.step || walk.set(steps.slice(0, made.step)).length > 0) return null;
    return { made, result: walk.eye.outcome.after };
  }

  /** Closes what is open, and gives it back. */
  drop(): Prediction | null {
    const { open } = this;
    open?.end();
    this.open = null;
    return open;
  }

  said(language: Language): string {
    return this.verdict?.made.verdict(this.verdict.result, language) ?? '';
  }
}
