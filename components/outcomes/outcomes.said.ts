import { COLUMN_TEXT } from '../../core/outcomes.js';
import type { Fault, OutcomeColumn, Said } from '../../core/outcomes.js';
import { decimal, isolated, withUnit } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { quoted } from '../internal/refusal.js';
import { columnWords, textWords } from './outcomes.core.words.js';

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

/** A fault: the heading, the value as given, and what would be accepted. */
export function faultText({ column, heading, value, reason }: Fault, language: Language): string {
  const what = heading ?? (column ? columnText(column, language) : '');
  const arrow = language.rightToLeft ? ' ← ' : ' → ';
  return [what, [value || what ? quoted(value, language) : '', saidText(reason, language)].filter(Boolean).join(arrow)].filter(Boolean).join(': ');
}
