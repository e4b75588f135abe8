import type { RefusedValue } from '../../core/numbers.js';
import { withUnit } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { fieldWords } from '../internal/field.words.js';
import { acceptedText, quoted, unitText } from '../internal/refusal.js';
import { refusalWords } from '../internal/refusal.words.js';
import { complaintWords } from './entry.complaints.words.js';
import type { FieldSpec } from './entry.fields.js';
import { shownNumber } from './entry.numbers.js';
import { REFUSALS, allowed, limit, rangeText } from './entry.speech.js';

const NO_NUMBER: Partial<Record<string, keyof typeof complaintWords.en>> = {
  D: 'noNumberD',
  mm: 'noNumberMillimetres',
  µm: 'noNumberMicrometres',
  '°': 'noNumberDegrees',
  years: 'noNumberYears',
};

/** Longest text that is quoted in full. */
const QUOTED = 20;

/** Where a reading may lie beside the other one, in the unit that is shown; `atMost` when the other one is its upper end. */
export interface ReadingRange {
  min: number;
  max: number;
  atMost: boolean;
}

/** The range that `other`, the other reading, leaves to a reading. A longer radius is a flatter cornea. */
export function rangeBeside({ id, limits: { min, max, unit } }: FieldSpec, other: number): ReadingRange {
  return (id === 'flatK') === (unit === 'D') ? { min, max: other, atMost: true } : { min: other, max, atMost: false };
}

/** What is wrong with a text, in whatever language it is asked for. */
export type Complaint = (language: Language) => string;

export function emptyText(spec: FieldSpec): Complaint {
  return (language) => language.say(complaintWords)('empty', { field: language.say(fieldWords)(spec.id), range: allowed(spec, language) });
}

export function notNumberText(spec: FieldSpec, text: string): Complaint {
  const id = NO_NUMBER[spec.limits.unit] ?? 'noNumber';
  return (language) =>
    language.say(complaintWords)(id, { field: language.say(fieldWords)(spec.id), text: quoted(text.trim(), language, QUOTED), range: allowed(spec, language) });
}

export function outsideText(spec: FieldSpec, typed: string): Complaint {
  return (language) =>
    language.say(complaintWords)('outside', { field: language.say(fieldWords)(spec.id), value: typedText(spec, typed, language), range: allowed(spec, language) });
}

/** A reading on the wrong side of the other one: `range` is where it may lie beside it. A longer radius is a flatter cornea. */
export function orderText(spec: FieldSpec, typed: string, { min, max, atMost }: ReadingRange): Complaint {
  const flat = spec.id === 'flatK';
  const id = spec.limits.unit === 'D' ? (flat ? 'flatAboveSteep' : 'steepBelowFlat') : flat ? 'flatShorter' : 'steepLonger';
  return (language) => {
    const other = (value: number): string => shownNumber(value, spec, language.numbers);
    const [low, high] = atMost ? [limit(min, language), other(max)] : [other(min), limit(max, language)];
    const range = rangeText(spec, low, high, language);
    return language.say(complaintWords)(id, { field: language.say(fieldWords)(spec.id), value: typedText(spec, typed, language), range });
  };
}

/** For what the model refuses for a reason of its own. */
export function refusedText(spec: FieldSpec, typed: string, refusal: RefusedValue): Complaint {
  return (language) =>
    language.say(refusalWords)('refused', {
      field: language.say(fieldWords)(spec.id),
      value: typedText(spec, typed, language),
      limits: acceptedText(refusal, language, REFUSALS),
    });
}

/** A number as it was typed, cut when it is long, with the unit of its field. */
function typedText(spec: FieldSpec, typed: string, language: Language): string {
  const shown = typed.length > QUOTED ? `${typed.slice(0, QUOTED)}…` : typed;
  return withUnit(shown, unitText(spec.limits.unit, language), language.numbers);
}
