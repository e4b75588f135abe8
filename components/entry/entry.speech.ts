import { MODEL } from '../../core/numbers.js';
import { isolated, withUnit } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { fieldWords } from '../internal/field.words.js';
import { unitText } from '../internal/refusal.js';
import { refusalWords } from '../internal/refusal.words.js';
import type { Choice } from './entry.choices.js';
import type { FieldSpec } from './entry.fields.js';
import { shownNumber } from './entry.numbers.js';
import { entryWords } from './entry.words.js';
import type { EntryId } from './entry.words.js';

/** What the form says of refusals, in English, and what it calls fields. */
export const REFUSALS = { refusals: refusalWords, fields: fieldWords };

/** One choice of a row of switches: what the plan or the form calls it, and its text; a unit is its own text. */
export type Option = readonly [value: string, text: EntryId | null];

const PLANNED: readonly Option[] = [
  ['no', 'no'],
  ['yes', 'yes'],
];

export const OPTIONS: Record<Choice, readonly Option[]> = {
  eye: [
    ['right', 'right'],
    ['left', 'left'],
  ],
  kUnit: [
    ['D', null],
    ['mm', null],
  ],
  backSurface: [
    ['omitted', 'omitted'],
    ['typical', 'typical'],
    ['measured', 'measured'],
  ],
  incision: PLANNED,
  arcCount: [
    ['0', 'noArcs'],
    ['1', 'oneArc'],
    ['2', 'pair'],
  ],
  arcMethod: [
    ['blade', 'blade'],
    ['laser', 'laser'],
  ],
  lens: PLANNED,
};

/** What an empty field stands for. */
const EMPTY = { none: 'mayBeEmpty', model: 'emptyAsEstimated', age: 'emptyCountsAs' } as const satisfies Record<NonNullable<FieldSpec['empty']>, EntryId>;

/** `28–75 D`, `−1 to 3 D, empty: as estimated`. */
export function limitsText(spec: FieldSpec, language: Language): string {
  const say = language.say(entryWords);
  // The fields are a fixed table, and their limits are printed at every step of a drag.
  if (known.say !== say || known.numbers !== language.numbers) known = { say, numbers: language.numbers, texts: new Map() };
  let text = known.texts.get(spec);
  if (text === undefined) known.texts.set(spec, (text = newLimitsText(spec, language)));
  return text;
}

/** The texts in the language that was last asked for. */
let known: { say: unknown; numbers: string; texts: Map<FieldSpec, string> } = { say: null, numbers: '', texts: new Map() };

function newLimitsText(spec: FieldSpec, language: Language): string {
  const say = language.say(entryWords);
  const { min, max, unit } = spec.limits;
  const span = (): string => say('span', { low: limit(min, language), high: limit(max, language) });
  const limits = min < 0 ? allowed(spec, language) : withUnit(span(), unitText(unit, language), language.numbers);
  return spec.empty === null ? limits : say(EMPTY[spec.empty], { limits, age: MODEL.arcs.referenceAge });
}

/** What a field takes, as in a sentence. */
export function allowed(spec: FieldSpec, language: Language): string {
  return rangeText(spec, limit(spec.limits.min, language), limit(spec.limits.max, language), language);
}

export function rangeText(spec: FieldSpec, low: string, high: string, language: Language): string {
  const { numbers } = language;
  return language.say(entryWords)('range', { low: isolated(low, numbers), high: withUnit(high, unitText(spec.limits.unit, language), numbers) });
}

/** Limits are easier to read without decimals that say nothing. */
export function limit(value: number, { numbers }: Language): string {
  return shownNumber(value, { digits: [0, 2] }, numbers).replace('-', '−');
}
