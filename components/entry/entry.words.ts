import { FIELDS, MODEL } from '../../core/numbers.js';
import type { CompletePlan, EyeSide, RefusedValue, Risk } from '../../core/numbers.js';
import { shownNumber } from './entry.numbers.js';
import type { Choice } from './entry.choices.js';
import type { FieldSpec, NumberField, ReadingRange } from './entry.fields.js';

/** A space that keeps number and unit on one line. */
const NBSP = '\u00a0';

/** What each field is called. Errors call it the same. */
export const LABEL: Record<NumberField | keyof CompletePlan | 'kUnit' | 'incision' | 'lens', string> = {
  eye: 'Which eye',
  age: 'Age',
  kUnit: 'Unit of the readings',
  flatK: 'Flat reading',
  steepK: 'Steep reading',
  steepMeridian: 'Steep meridian',
  backSurface: 'Back surface of the cornea',
  backPower: 'Back surface adds',
  backMeridian: 'Added on meridian',
  incision: 'Incision planned',
  incisionSite: 'Incision site',
  incisionWidth: 'Incision width',
  incisionFlattening: 'Own flattening by the incision',
  arcCount: 'Number of arcs',
  arcMethod: 'Cut by',
  arcSite: 'Arc site',
  arcLength: 'Arc length',
  arcZone: 'Arc zone',
  arcDepth: 'Arc depth',
  arcFlattening: 'Own flattening by the arcs',
  localThickness: 'Thickness at the arc',
  lens: 'Lens planned',
  lensCylinder: 'Lens cylinder',
  lensMeridian: 'Lens meridian',
  risks: 'Known risks',
  ownFigures: 'Own figures',
};

export const GROUP = {
  eye: 'The eye',
  readings: 'Readings',
  incision: 'Incision',
  arcs: 'Relaxing arcs',
  lens: 'Toric lens',
} as const;

/** One choice of a row of switches: what the plan or the form calls it, and what the reader sees. */
export type Option = readonly [value: string, text: string];

const PLANNED: readonly Option[] = [
  ['no', 'No'],
  ['yes', 'Yes'],
];

export const OPTIONS = {
  eye: [
    ['right', 'Right'],
    ['left', 'Left'],
  ],
  kUnit: [
    ['D', 'D'],
    ['mm', 'mm'],
  ],
  backSurface: [
    ['omitted', 'Not counted'],
    ['typical', 'Typical'],
    ['measured', 'Measured'],
  ],
  incision: PLANNED,
  arcCount: [
    ['0', 'None'],
    ['1', 'One'],
    ['2', 'Pair'],
  ],
  arcMethod: [
    ['blade', 'Blade'],
    ['laser', 'Laser'],
  ],
  lens: PLANNED,
} as const satisfies Record<Choice, readonly Option[]>;

/** What can be ticked, in the words of a history. */
export const RISK_NAME: Record<Risk, string> = {
  collagen: 'Collagen disease',
  'dry-eye': 'Dry eye',
  'radial-cuts': 'Earlier radial cuts',
  ectasia: 'Ectasia',
};

/** What an empty field stands for. */
const EMPTY: Record<NonNullable<FieldSpec['empty']>, string> = {
  none: 'may stay empty',
  model: 'empty: as estimated',
  age: `empty counts as ${MODEL.arcs.referenceAge.value}`,
};

const UNIT_IN_WORDS: Partial<Record<string, string>> = {
  D: 'dioptres',
  mm: 'millimetres',
  µm: 'micrometres',
  '°': 'degrees',
};

export const FORM = 'Measurements and plan';
export const UNDO = 'Undo';
export const REDO = 'Redo';
export const RESET = 'Back to the measured eye';
export const MORE = 'More';
export const NOT_DEFAULT = 'differs from the usual';
export const NOT_NEEDED = 'Not needed';
export const REFUSED =
  'The page has set values that cannot be taken. The last good plan is still shown; it cannot be changed here until this is mended.';

/** What is said after the eye was switched. */
export function offerText(eye: EyeSide): string {
  return `Now the ${eye} eye. Nothing has been mirrored: all degrees are as they were entered.`;
}

export function mirrorText(eye: EyeSide): string {
  return `Mirror the sites and meridians for the ${eye} eye`;
}

/** `28–75 D`, `−1 to 3 D, empty: as estimated`. */
export function limitsText(spec: FieldSpec): string {
  const known = limitsTexts.get(spec);
  if (known !== undefined) return known;
  const { min, max, unit } = spec.limits;
  const range = min < 0 ? allowed(spec) : withUnit(`${limit(min)}–${limit(max)}`, unit);
  const text = spec.empty === null ? range : `${range}, ${EMPTY[spec.empty]}`;
  limitsTexts.set(spec, text);
  return text;
}

/** The fields are a fixed table, and their limits are printed at every step of a drag. */
const limitsTexts = new Map<FieldSpec, string>();

export function emptyText(spec: FieldSpec): string {
  return `${LABEL[spec.id]} is empty. Enter ${allowed(spec)}.`;
}

export function notNumberText(spec: FieldSpec, text: string): string {
  const { unit } = spec.limits;
  return `${LABEL[spec.id]}: “${shortened(text)}” is not a number of ${UNIT_IN_WORDS[unit] ?? unit}. Enter ${allowed(spec)}.`;
}

export function outsideText(spec: FieldSpec, bare: string): string {
  return `${LABEL[spec.id]}: ${withUnit(shortened(bare), spec.limits.unit)} is outside ${allowed(spec)}.`;
}

/** A reading on the wrong side of the other one: `range` is where it may lie beside it. A longer radius is a flatter cornea. */
export function orderText(spec: FieldSpec, bare: string, range: ReadingRange): string {
  const { unit } = spec.limits;
  const partner = LABEL[spec.id === 'flatK' ? 'steepK' : 'flatK'].toLowerCase();
  const [more, less] = unit === 'D' ? ['above', 'below'] : ['longer than', 'shorter than'];
  const [low, high] = range.atMost ? [limit(range.min), shownNumber(range.max, spec)] : [shownNumber(range.min, spec), limit(range.max)];
  const wrong = `${withUnit(bare, unit)} is ${range.atMost ? more : less} the ${partner}`;
  return `${LABEL[spec.id]}: ${wrong}. Enter ${rangeText(spec, low, high)}, or change the ${partner}.`;
}

/** For what the model refuses for a reason of its own. */
export function refusedText(spec: FieldSpec, bare: string, { limits }: RefusedValue): string {
  return `${LABEL[spec.id]}: ${withUnit(bare, spec.limits.unit)} is refused; allowed is ${inPlainWords(limits)}.`;
}

/** A refusal of the page's own settings, with fields called by their labels. */
export function refusalText({ message }: RefusedValue): string {
  return inPlainWords(message).replace(/^./, (first) => first.toUpperCase());
}

const NAMES = new RegExp(`\\b(?:kUnit|${FIELDS.filter((field) => /[A-Z]/.test(field)).join('|')})\\b|^(?:eye|age|risks)(?=:)`, 'g');

function inPlainWords(text: string): string {
  return text.replace(NAMES, (name) => LABEL[name as keyof typeof LABEL].toLowerCase());
}

function allowed(spec: FieldSpec): string {
  return rangeText(spec, limit(spec.limits.min), limit(spec.limits.max));
}

function rangeText(spec: FieldSpec, low: string, high: string): string {
  return withUnit(`${low}${NBSP}to${NBSP}${high}`, spec.limits.unit);
}

/** Limits are easier to read without decimals that say nothing. */
function limit(value: number): string {
  return shownNumber(value, { digits: [0, 2] }).replace('-', '−');
}

function withUnit(number: string, unit: string): string {
  return unit === '°' ? `${number}°` : `${number}${NBSP}${unit}`;
}

function shortened(text: string): string {
  const trimmed = text.trim();
  return trimmed.length > 20 ? `${trimmed.slice(0, 20)}…` : trimmed;
}
