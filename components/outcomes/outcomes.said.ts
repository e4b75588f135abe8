import { COLUMN_TEXT } from '../../core/outcomes.js';
import type { Fault, OutcomeColumn, Said } from '../../core/outcomes.js';
import { decimal, isolated, withUnit } from '../internal/format.js';
import { directionOf } from '../internal/language/direction.js';
import type { Language } from '../internal/language/language.js';
import { quoted } from '../internal/refusal.js';
import { columnWords, textWords } from './outcomes.core.words.js';
import { resultsWords } from './outcomes.results.words.js';

/** A sentence of the core in the language of the reader. */
export function saidText({ id, values }: Said, language: Language): string {
  const shown = Object.entries(values).map(([name, value]) => {
    if (typeof value !== 'string') return [name, withUnit(decimal(value.value, value.digits, language.numbers), value.unit, language.numbers)];
    return [name, value in COLUMN_TEXT ? columnText(value as OutcomeColumn, language) : isolated(value, language.numbers)];
  });
  return language.say(textWords)(id, Object.fromEntries(shown));
}

export function columnText(column: OutcomeColumn, language: Language): string {
  return language.say(columnWords)(column);
}

/** A word of the table, which runs in the direction of its own first letter. */
export function asGiven(text: string, language: Language): string {
  return runsLeft(language) ? `\u2068${text}\u2069` : text;
}

function runsLeft({ numbers }: Language): boolean {
  return directionOf(numbers) === 'rtl';
}

/** A fault: the heading, the value as given, and what would be accepted. */
export function faultText({ column, heading, value, reason }: Fault, language: Language): string {
  const what = heading === null ? column && columnText(column, language) : asGiven(heading, language);
  const arrow = runsLeft(language) ? ' ← ' : ' → ';
  const accepted = saidText(reason, language);
  const told = value || what ? quoted(value, language) + arrow + accepted : accepted;
  return what ? language.say(resultsWords)('pair', { name: what, value: told }) : told;
}
