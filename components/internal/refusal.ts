import type { Reason, RefusedValue } from '../../core/numbers.js';
import { NBSP, decimal, isolated, withUnit } from './format.js';
import type { Language, Words } from './language/language.js';
import { sharedWords } from './words.js';

/** Longer texts are cut when they are quoted. */
const QUOTED = 40;

/** English for refusals, where an element has its own. */
export interface RefusalTexts {
  refusals: Words;
  fields: Words;
}

/** A refusal in the language of the reader. English is that of the core, unless an element has its own. */
export function refusalText({ message, field, value, ...accepted }: RefusedValue, language: Language, texts?: RefusalTexts): string {
  const words = texts?.refusals ?? { part: 'refusals', en: { refused: message, none: 'none' } };
  const say = language.say(words);
  return say('refused', {
    field: fieldLabel(field, language, texts),
    value: value === null || value === undefined ? say('none') : printed(value, language),
    limits: acceptedText(accepted, language, texts),
  });
}

/** What would be accepted. What no catalogue knows stays in English. */
export function acceptedText({ reason, limits }: Pick<RefusedValue, 'reason' | 'limits'>, language: Language, texts?: RefusalTexts): string {
  return reason ? reasonText(reason, limits, language, texts) : limits;
}

function reasonText({ id, values, inner }: Reason, limits: string, language: Language, texts?: RefusalTexts): string {
  const words = texts?.refusals ?? { part: 'refusals', en: { [id]: limits } };
  const unit = unitText(String(values['unit'] ?? (id === 'steepRadius' ? 'mm' : 'D')), language);
  const shown = Object.entries(values).map(([name, value]) => {
    if (name === 'field') return [name, fieldLabel(String(value), language, texts)];
    if (name === 'limits') return [name, inner ? reasonText(inner, String(value), language, texts) : value];
    const number = numberText(value, language);
    if (number === null) return [name, isolated(String(value), language.numbers)];
    // These sentences are long and may break anywhere.
    return [name, name === 'min' ? number : withUnit(number, unit, language.numbers).replace(NBSP, ' ')];
  });
  return language.say(words)(id, Object.fromEntries(shown));
}

/** What a field is called. Parts of one keep the name that they have in the code. */
export function fieldLabel(field: string, language: Language, texts?: RefusalTexts): string {
  const name = field.split('.')[0]!;
  const words = texts?.fields ?? { part: 'fields', en: { [name]: field } };
  return name in words.en ? language.say(words)(name) : field;
}

/** The unit as it stands behind a number. Those of optics are the same in every language. */
export function unitText(unit: string, language: Language): string {
  return unit === 'years' || unit === 'eyes' ? language.say(sharedWords)(unit) : unit;
}

/** A number with the decimals that it has, or null for what is none. */
function numberText(value: string | number, { numbers }: Language): string | null {
  const number = value === '' ? NaN : Number(value);
  if (!Number.isFinite(number)) return null;
  return decimal(number, String(value).split('.')[1]?.length ?? 0, numbers).replace('-', '−');
}

/** A text between the quotation marks of the language, cut when it is long. */
export function quoted(text: string, language: Language, longest = QUOTED): string {
  const shown = text.length > longest ? `${text.slice(0, longest)}…` : text;
  return language.say(sharedWords)('quoted', { text: isolated(shown, language.numbers) });
}

function printed(value: unknown, language: Language): string {
  if (typeof value === 'string') return quoted(value, language);
  if (typeof value === 'number') return numberText(value, language) ?? String(value);
  return typeof value;
}
