import { filled } from '../../core/numbers.js';
import type { ExportOptions, Fault } from '../../core/outcomes.js';
import { writeForeignBy } from '../internal/format.js';
import { FOREIGN_NUMBERS } from '../internal/language/foreign-numbers.js';
import type { Language } from '../internal/language/language.js';
import { quoted } from '../internal/refusal.js';
import { refusalWords } from '../internal/refusal.words.js';
import { textWords } from './outcomes.core.words.js';
import { asGiven, columnText, saidText } from './outcomes.said.js';

/** What a saved table says, in the language of the reader. A worker has no catalogue: texts come with the request. */
export interface ExportWords {
  /** Tag of the reader's number formats. */
  numbers: string;
  headings: NonNullable<ExportOptions['headings']>;
  /** Texts by part and name, with their values still to be put in. */
  texts: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** The options by which a table is saved in a language. */
export function exportIn({ numbers, headings, texts }: ExportWords): Pick<ExportOptions, 'headings' | 'reason'> {
  writeForeignBy(FOREIGN_NUMBERS);
  const language: Pick<Language, 'numbers' | 'say'> = { numbers, say: ({ part }) => (id, values) => filled(texts[part]![id]!, values ?? {}, String) };
  return { headings, reason: (fault) => refusalOf(fault, language as Language) };
}

/** In the form of all refusals: what, which value, what would be accepted. */
function refusalOf({ column, heading, value, reason }: Fault, language: Language): string {
  const say = language.say(refusalWords);
  const field = heading !== null ? asGiven(heading, language) : column ? columnText(column, language) : language.say(textWords)('wholeRow');
  return say('refused', { field, value: value.trim() === '' ? say('none') : quoted(value, language), limits: saidText(reason, language) });
}
