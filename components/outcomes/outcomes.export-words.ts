import type { Language, Words } from '../internal/language/language.js';
import { refusalWords } from '../internal/refusal.words.js';
import { sharedWords } from '../internal/words.js';
import { columnWords, headingWords, textWords } from './outcomes.core.words.js';
import type { ExportWords } from './outcomes.export.js';

/** What is needed of a language to save a table in it. Said without values, a text comes with the places for them. */
export function exportWords(language: Language): ExportWords {
  const all = <Id extends string>(words: Words<Id>, ids = Object.keys(words.en) as Id[]): Record<Id, string> =>
    Object.fromEntries(ids.map((id) => [id, language.say(words)(id)])) as Record<Id, string>;
  return {
    numbers: language.numbers,
    headings: all(headingWords),
    texts: { outcomeTexts: all(textWords), outcomeColumns: all(columnWords), refusals: all(refusalWords, ['refused', 'none']), shared: all(sharedWords, ['quoted']) },
  };
}
