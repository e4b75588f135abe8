import type { CaseModel } from '../internal/case-model.js';
import { decimal } from '../internal/format.js';
import { converted, specOf, valueOf } from './entry.fields.js';
import type { FieldSpec, NumberField } from './entry.fields.js';

/** A number as a field shows it: as few decimals as say all there is to say, within the field's bounds. */
export function shownNumber(value: number, { digits: [fewest, most] }: Pick<FieldSpec, 'digits'>, lang = 'en'): string {
  for (let digits = fewest; digits < most; digits += 1) {
    const scaled = value * 10 ** digits;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-6) return decimal(value, digits, lang);
  }
  return decimal(value, most, lang);
}

/** What the plan holds for a field, as the form shows it; empty for none. */
export function shownText(id: NumberField, model: CaseModel, lang: string): string {
  const value = valueOf(model.plan, id);
  return value === null ? '' : shownValue(id, value, model, lang);
}

/** A number of the plan in the unit that is shown. */
export function shownValue(id: NumberField, value: number, { kUnit }: CaseModel, lang?: string): string {
  return shownNumber(converted(id, kUnit, value), specOf(id, kUnit), lang);
}
