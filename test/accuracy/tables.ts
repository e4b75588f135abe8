/** The tables of accuracy as rows of text: one of what is checked, one of what was worked out, one of what is no check. */
import { eyeReferences } from '../../core/eye-references.js';
import { torsionReferences } from '../../core/cyclotorsion-constants.js';
import { outcomeReferences } from '../../core/outcomes-references.js';
import { references, type Reference } from '../../core/references.js';
import { compute, entries as clinical, target, type ClinicalEntry } from '../core/clinical-readers.js';
import { cells, intended, target as middleOfBand } from '../core/relaxing-table.js';
import { LENSES, NOT_COUNTED, SCHEMATIC, SIGHT, STATISTICS, WORKED, type Known, type PublishedSource } from '../fixtures/sources.js';
import { figure } from './print.js';
import { belongsTo, rowOf, type Row } from './rows.js';
import { VALUES } from './values.js';

export interface Table {
  head: readonly string[];
  rows: readonly (readonly string[])[];
  /** Titles of columns that hold figures. */
  figures: ReadonlySet<string>;
}

const RECORDS: Record<string, Reference> = { ...references, ...eyeReferences, ...outcomeReferences, ...torsionReferences };

const MARK: Record<Known, string> = { read: '', quoted: 'second-hand', memory: '**from memory**', worked: '' };

/** What the record of a source says is recalled stays marked where a single figure of it was read. */
function markOf({ known, key }: PublishedSource): string {
  const recalled = known !== 'memory' && key && RECORDS[key]!.status === 'memory';
  const marks = [MARK[known], recalled ? 'all else of it **from memory**' : ''].filter(Boolean);
  return marks.length > 0 ? `(${marks.join('; ')})` : '';
}

/** A source is named in the first of its rows, marked in each. */
const named = (rows: readonly Row[]): string[] =>
  rows.map((row, index) => [rows[index - 1]?.source === row.source ? '' : row.source, markOf(row)].filter(Boolean).join(' '));

export const CHECKED: readonly Row[] = [...LENSES, ...SCHEMATIC, ...STATISTICS, ...SIGHT].map((source) => rowOf(source));
export const BY_SECOND_METHOD: readonly Row[] = WORKED.map((source) => rowOf(source));

/** Notes in the order in which they are referred to. */
export const NOTES: readonly string[] = CHECKED.flatMap(({ note }) => note ?? []);

const ERRORS = ['n', 'mean error', 'worst', 'rounding'];
const unitOf = ({ unit }: { unit: string }): string => unit || '–';
const errors = ({ values, mean, worst, rounding }: Row): string[] => [String(values.length), figure(mean), figure(worst), figure(rounding)];

function verdict({ values, beyond, note }: Row): string {
  if (beyond.length === 0) return 'yes';
  const mark = note ? ` (${NOTES.indexOf(note) + 1})` : '';
  return `no${values.length > 1 ? `, ${beyond.length} of ${values.length}` : ''}${mark}`;
}

export const checkedTable = (rows = CHECKED): Table => ({
  head: ['source', 'what', 'unit', ...ERRORS, 'within'],
  rows: named(rows).map((source, index) => [source, rows[index]!.what, unitOf(rows[index]!), ...errors(rows[index]!), verdict(rows[index]!)]),
  figures: new Set(ERRORS),
});

export const workedTable = (): Table => ({
  head: ['formula or method', 'what', 'unit', ...ERRORS, 'within'],
  rows: BY_SECOND_METHOD.map((row) => [row.source, row.what, unitOf(row), ...errors(row), verdict(row)]),
  figures: new Set(ERRORS),
});

const decimals = (value: number, step: number): string => value.toFixed(Math.max(0, Math.round(-Math.log10(step))));

function printed({ published, over, added, step }: ClinicalEntry): string {
  const text = decimals(published, step);
  if (over) return `${text} / ${decimals(over, step)} = ${(published / over).toFixed(2)}`;
  return added ? `${text} + ${decimals(added, step)}` : text;
}

function citation({ source, citation: own }: ClinicalEntry): string {
  if (!source) return own!;
  const { authors, year } = RECORDS[source]!;
  const [first, second] = authors.split(',').map((name) => name.trim().replace(/ et al\.$/, '').replace(/\s\p{Lu}+$/u, ''));
  const name = /et al\.|,.*,/.test(authors) ? `${first} et al.` : second ? `${first} & ${second}` : first;
  return [name, year].filter(Boolean).join(' ');
}

/** The table of arcs as one row: its cells are bands, of which the middles are taken. */
function relaxingRow(): string[] {
  const apart = cells.map((cell) => Math.abs(intended(cell) - middleOfBand(cell)));
  const mean = apart.reduce((sum, error) => sum + error, 0) / apart.length;
  return ['textbook table of relaxing arcs', 'intended effect, fitted to it', 'D', `${cells.length} cells`, `mean error ${figure(mean)}`, `worst ${figure(Math.max(...apart))}`];
}

/** Figures by which constants were set: what was printed beside what the model says. */
export const setByTable = (): Table => ({
  head: ['source', 'what', 'unit', 'published', 'model', 'apart'],
  rows: [
    ...clinical.map((entry) => [
      citation(entry), entry.what, entry.unit || '–', printed(entry) + (entry.status === 'derived' ? ' (derived)' : ''),
      String(Number(compute(entry).toPrecision(3))), figure(Math.abs(compute(entry) - target(entry))),
    ]),
    relaxingRow(),
  ],
  figures: new Set(['published', 'model', 'apart']),
});

/** What was added to printed figures before they were compared. */
export const added = (): string[] => [...new Set(clinical.flatMap(({ note }) => note ?? []))];

export const takenOver = (): string[] =>
  NOT_COUNTED.map((group) => `${group.reason} (${VALUES.filter((value) => belongsTo(group, value)).length})`);
