import { filled } from './fill.js';
import type { Fault, OutcomeColumn, Said } from './outcomes-types.js';
import type { Quantity } from './types.js';

/**
 * What is said of a table of results and of what was made of it, in English. Values stand as `{$name}`, as in the
 * catalogues of other languages, which have the same names.
 */
export const OUTCOME_TEXT = {
  // What is refused where it is no single cell.
  wholeRow: 'the row',
  // What would be accepted in a cell.
  range: '{$min} to {$max}',
  number: 'a number such as 1.25 or 1,25, with one decimal sign',
  unit: 'a number in {$unit}',
  missing: 'a value',
  together: 'only together with a value for {$column}',
  eye: 'right or left, as a word or a usual abbreviation',
  count: '0, 1 or 2',
  method: 'blade or laser',
  negative: '0 or more; a cylinder below 0 belongs to an axis, not to a steep meridian',
  swapped: '{$flat} or more, for the steep reading must not be flatter than the flat one',
  unitsMixed: 'the same unit as that of the other reading ({$unit})',
  differs: 'the difference between the readings ({$difference})',
  cells: 'a row with as many cells as there are headings ({$headings}); this one has {$cells}, perhaps because a decimal comma ends a cell',
  again: 'each eye once, and line {$line} has the same label and eye',
  quotes: 'a quotation mark at both ends of a cell',
  noColumn: 'a table that has {$column}',
  // What keeps a table from being read.
  missingColumn: 'No column is known to hold {$column}.',
  duplicate: 'Several columns seem to hold {$column}: {$headings}. None of them is used until one is chosen.',
  fewColumns: 'There is only one column. Cells must be separated by a comma, a semicolon or a tab.',
  brokenHeadings: 'A quotation mark among the headings has no partner, so that all behind it counts as one cell.',
  empty: 'There is nothing in the table.',
  swappedColumns: 'Rows in which the steep reading is flatter than the flat one: {$eyes} of {$rows}. Are the two columns swapped?',
  likeReadings: 'All values for {$column} lie between {$from} and {$to}, as readings in D do. Are they degrees?',
  encoding: 'Some letters cannot be read. Save the table as UTF-8.',
  // Why a heading was not matched, or was with a doubt.
  axisUnclear: 'An axis may be that of a cylinder, which lies across the steep meridian. Say which it is.',
  flatMeridian: 'This is the flat meridian. The steep one, 90° from it, is needed.',
  steepUnclear: 'It is not said which meridian this is. The steep one is needed; the flat one lies 90° from it.',
  readingOrMeridian: 'This may be a figure in D or the meridian along which it was found, in degrees. Say which it is.',
  severalThings: 'This speaks of more than one thing. Say which of them the column holds.',
  elsewhere: 'This may be another astigmatism than that of the front of the cornea: of the refraction, of the back surface, or a change.',
  oneSide: 'This speaks of one eye. Each eye needs a row of its own, with right or left in one column for all.',
  lensPlane: 'The cylinder at the plane of the cornea is needed. At that of the lens it is about half as much again.',
  unitUnlike: 'The heading says {$unit}, in which this is not given: {$column}.',
  noTime: 'It is not said whether this was before or after the operation.',
  person: 'Names and dates of birth are not needed. This column is not read.',
  guess: 'Taken for {$column}, as is usual. Check it.',
  // What was assumed, and what looks odd.
  above: 'Lines above the headings that were not read: {$lines}.',
  mixedDecimals: 'Some numbers have a decimal comma and some a point. Both are read as decimal signs.',
  widthAssumed: 'Eyes without a width of the incision: {$eyes}. {$width} is assumed.',
  siteUnknown: 'Eyes without a site of the incision: {$eyes}. They tell nothing about its flattening.',
  predictedUnused: 'What was expected to remain is not used, for no column tells at which steep meridian.',
  noArcs: 'No column tells of arcs. All eyes are taken as without them.',
  methodAssumed: 'Eyes of which it is not said how the arcs were cut: {$eyes}. By blade is assumed.',
  countedOnce: 'Rows with the label and the eye of an earlier one: {$rows}. Only the first of them is counted.',
  nasal: 'Eyes entered on the side of the nose: {$eyes} of {$all}. Are sites given as 0 to 180° only?',
  // Figures.
  noEyes: 'There is no eye.',
  oneEye: 'One eye has no scatter.',
  twoEyes: 'Two eyes do not tell how far the next one may lie. It takes three.',
  inLine: 'All eyes lie on one line, so that the scatter across it is not known.',
  meanAgainstCentroid: 'Changes in different directions cancel in the centroid ({$centroid}) and add up in the mean magnitude ({$mean}). The centroid is what to plan with.',
  // Own figures.
  tooFew: 'Eyes for this figure: {$eyes}. Own figures are given from {$least} eyes on; until then the model stands.',
  advised: 'The own mean of {$eyes} eyes is {$observed}, the model says {$model}. The own mean counts {$weight}, which gives {$figure}.',
  beyond: 'What {$eyes} eyes come to, {$figure}, is outside of what a plan accepts ({$min} to {$max}). Check the table.',
  mixedSites: 'These eyes were entered at different places ({$sites}). The figure is their average; choose one place.',
  mixedWidths: 'These eyes were entered with widths from {$from} to {$to}. The figure is their average; choose one width.',
  mixedMethods: 'Arcs by blade and by laser are mixed. The figure is their average; choose one.',
  farEyes: 'Mean and spatial median differ by {$difference}: a few eyes weigh heavily. Look for slips among them.',
} as const;

export type OutcomeWording = keyof typeof OUTCOME_TEXT;

/** What a column holds, in English. A sentence has the name of the column among its values. */
export const COLUMN_TEXT: Readonly<Record<OutcomeColumn, string>> = {
  label: 'a label',
  eye: 'right or left eye',
  flatBefore: 'the flat reading before',
  steepBefore: 'the steep reading before',
  magnitudeBefore: 'the astigmatism before',
  meridianBefore: 'the steep meridian before',
  flatAfter: 'the flat reading after',
  steepAfter: 'the steep reading after',
  magnitudeAfter: 'the astigmatism after',
  meridianAfter: 'the steep meridian after',
  incisionSite: 'the site of the incision',
  incisionWidth: 'the width of the incision',
  arcCount: 'the number of arcs',
  arcLength: 'the length of the arcs',
  arcSite: 'the site of the first arc',
  arcMethod: 'the method of the arcs',
  lensCylinder: 'the cylinder of the lens at the cornea',
  lensMeridian: 'the meridian of the lens',
  age: 'the age',
  predictedMagnitude: 'the astigmatism that was expected to remain',
  predictedMeridian: 'the steep meridian that was expected to remain',
};

/** Longer values are cut when they are quoted. */
const QUOTED = 40;

/** A fault as a sentence in English, in the form of all refusals: what, which value, what would be accepted. */
export function faultText({ column, heading, value, reason }: Fault): string {
  const what = heading ?? (column ? COLUMN_TEXT[column] : OUTCOME_TEXT.wholeRow);
  const shown = value.trim() === '' ? 'none' : `“${value.length > QUOTED ? `${value.slice(0, QUOTED)}…` : value}”`;
  return `${what}: ${shown} is refused; allowed is ${reason.text}.`;
}

export function said(id: OutcomeWording, values: Said['values'] = {}): Said {
  return { id, values, text: filled(OUTCOME_TEXT[id], values, printed) };
}

function printed(value: Quantity | string): string {
  if (typeof value === 'string') return COLUMN_TEXT[value as OutcomeColumn] ?? value;
  const { unit, digits } = value;
  const number = Number(value.value.toFixed(digits)).toFixed(digits);
  return unit === '°' || unit === '' ? number + unit : `${number} ${unit}`;
}
