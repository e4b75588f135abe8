import type { PlanOutcome } from '../../core/numbers.js';
import { cautionText } from '../internal/caution.js';
import { dioptres, meridianText } from '../internal/format.js';
import type { Language, Say } from '../internal/language/language.js';
import { summaryWords } from './summary.words.js';

/** Says aloud what has changed. What was there at the start is read as part of the page. */
export class Announcer {
  #spoken = '';
  /** What was last announced, or was there at the start. Null before. */
  #heard: string | null = null;
  /** The texts in which that was. */
  #said: Say<keyof typeof summaryWords.en> | null = null;

  /** What the live region is to say when nothing is being moved. */
  hear(outcome: PlanOutcome, language: Language): string {
    const say = language.say(summaryWords);
    const text = announcement(outcome, language);
    // The same in another language is no news.
    if (say !== this.#said) this.#spoken = '';
    else if (this.#heard !== null && text !== this.#heard) this.#spoken = text;
    this.#said = say;
    this.#heard = text;
    return this.#spoken;
  }
}

/** What a reader hears after a change: the result first, then what to mind. */
function announcement({ after, cautions }: PlanOutcome, language: Language): string {
  const { numbers } = language;
  const figures = { power: dioptres(after.magnitude, numbers), meridian: meridianText(Math.round(after.meridian), numbers) };
  const result = language.say(summaryWords)(after.magnitude < 0.005 ? 'remains' : 'remainsAt', figures);
  const minds = cautions.filter(({ level }) => level !== 'note').map((caution) => cautionText(caution, language));
  return [result, ...minds].join(' ');
}
