import { CAUTION_TEXT } from '../../core/numbers.js';
import type { Caution, CautionWording, Quantity } from '../../core/numbers.js';
import { decimal, percent, withUnit } from './format.js';
import type { Language } from './language/language.js';

const cautionWords = { part: 'cautions', en: CAUTION_TEXT } as const;

/** A caution in the language of the reader. */
export function cautionText({ wording, values }: Caution, language: Language): string {
  const texts = Object.entries(values).map(([name, quantity]) => [name, quantityText(quantity, language.numbers)]);
  return language.say(cautionWords)(wording as CautionWording, Object.fromEntries(texts));
}

function quantityText({ value, unit, digits }: Quantity, numbers: string): string {
  return unit === '%' ? percent(value / 100, numbers) : withUnit(decimal(value, digits, numbers), unit, numbers);
}
