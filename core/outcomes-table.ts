import { fromTemporal } from './angle.js';
import { whole } from './caution.js';
import { RefusedValue, oneOf } from './check.js';
import { DEFAULTS } from './fields.js';
import { OUTCOME_CONSTANTS } from './outcomes-constants.js';
import { textRows } from './outcomes-csv.js';
import type { TextRow } from './outcomes-csv.js';
import { columnsNamed, matchHeadings } from './outcomes-headings.js';
import type { Mapping } from './outcomes-headings.js';
import { RowReader } from './outcomes-row.js';
import { said } from './outcomes-text.js';
import { OUTCOME_COLUMNS } from './outcomes-types.js';
import type { Delimiter, OutcomeColumn, OutcomeTable, Said } from './outcomes-types.js';
import type { Quantity } from './types.js';

export interface ReadOptions {
  /** The user's own matching of columns; what it does not name is matched by the words of the headings. */
  mapping?: Mapping;
  /** Without it, the one that makes most sense of the headings. */
  delimiter?: Delimiter;
  /** Whether there are headings; without them `mapping` has to name every column by its number. */
  headings?: boolean;
}

/** How far the reading has come. */
export interface Progress {
  /** Share of the text, 0–1. */
  share: number;
  rows: number;
}

const DELIMITERS: readonly Delimiter[] = [';', '\t', ','];

/** Headings are looked for among so many of the first rows: there may be a title above them. */
const TITLE_ROWS = 10;

/** Rows between two reports of progress, about 4 ms. */
const BETWEEN_REPORTS = 1000;

/**
 * A table of results from delimited text, all at once; 100 000 rows take about a second.
 * @throws RangeError for options that cannot be meant; whatever is wrong with the text is in the table that is returned.
 */
export function readTable(text: string, options: ReadOptions = {}): OutcomeTable {
  const reading = readingTable(text, options);
  for (;;) {
    const step = reading.next();
    if (step.done) return step.value;
  }
}

/** The same in steps of a few milliseconds. Whoever stops asking has cancelled. */
export function* readingTable(text: string, options: ReadOptions = {}): Generator<Progress, OutcomeTable, undefined> {
  if (typeof text !== 'string') throw new RefusedValue('text', text, 'a text');
  const { body, lines, delimiter } = opened(text, options);
  const rows = textRows(body, delimiter);
  const { heading, above, waiting } = headingRow(rows, options.headings ?? true);
  const texts = heading?.cells.map((cell, index) => (options.headings === false ? `${index + 1}` : cell.trim())) ?? [];
  const { headings, problems } = matchHeadings(texts, options.mapping);
  const reader = new RowReader(headings);
  const missing = missingColumns(reader);
  const blankLines = above.filter(isBlank).length;
  const table: OutcomeTable = {
    delimiter, decimal: null, headings, records: [], cells: [], refused: [], rows: 0, blankLines,
    problems: [...problems, ...tableProblems(heading, missing)], notes: [],
  };
  for (const row of both(waiting, rows)) {
    enter(table, reader, missing, { ...row, line: row.line + lines, lastLine: row.lastLine + lines });
    if (table.rows % BETWEEN_REPORTS === 0) yield { share: row.end / body.length, rows: table.rows };
  }
  finish(table, reader, text, above.length - blankLines);
  return table;
}

/** The text without byte-order mark and without the line with which some spreadsheets announce the delimiter. */
function opened(text: string, { delimiter }: ReadOptions): { body: string; lines: number; delimiter: Delimiter } {
  const marked = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const announced = /^sep=([,;\t])(?:\r?\n|\r|$)/i.exec(marked);
  const body = announced ? marked.slice(announced[0].length) : marked;
  const chosen = delimiter === undefined ? undefined : oneOf('delimiter', delimiter, DELIMITERS);
  return { body, lines: announced ? 1 : 0, delimiter: chosen ?? (announced?.[1] as Delimiter | undefined) ?? likeliest(body) };
}

/** Characters that are enough to tell the delimiter. A wrong one may make a single cell of all that follows a quotation mark. */
const SAMPLE = 20_000;

/** The delimiter with which the first rows name most columns; the one with most cells where that does not decide. */
function likeliest(body: string): Delimiter {
  const scores = DELIMITERS.map((delimiter) => {
    const rows = firstRows(textRows(body.slice(0, SAMPLE), delimiter));
    return { delimiter, named: Math.max(0, ...rows.map(({ cells }) => columnsNamed(cells))), cells: Math.max(0, ...rows.map(({ cells }) => cells.length)) };
  });
  return scores.reduce((best, next) => (next.named - best.named || next.cells - best.cells) > 0 ? next : best).delimiter;
}

function firstRows(rows: Iterable<TextRow>): TextRow[] {
  const first: TextRow[] = [];
  for (const row of rows) {
    if (!isBlank(row)) first.push(row);
    if (first.length === TITLE_ROWS) break;
  }
  return first;
}

/** The row that names most columns among the first ones; what stands above it is a title. */
function headingRow(rows: Iterator<TextRow, void>, wanted: boolean): { heading: TextRow | undefined; above: TextRow[]; waiting: TextRow[] } {
  const first: TextRow[] = [];
  while (first.filter((row) => !isBlank(row)).length < TITLE_ROWS) {
    const next = rows.next();
    if (next.done) break;
    first.push(next.value);
  }
  const named = first.map(({ cells }) => columnsNamed(cells));
  const most = Math.max(0, ...named);
  const at = most > 0 && wanted ? named.indexOf(most) : first.findIndex((row) => !isBlank(row));
  if (at < 0) return { heading: undefined, above: first, waiting: [] };
  return { heading: first[at]!, above: first.slice(0, at), waiting: first.slice(wanted ? at + 1 : at) };
}

function* both(first: Iterable<TextRow>, then: Iterable<TextRow>): Generator<TextRow, void, undefined> {
  yield* first;
  yield* then;
}

function isBlank({ cells }: TextRow): boolean {
  return cells.every((cell) => cell.trim() === '');
}

/** Columns without which no row can be read. */
function missingColumns(reader: RowReader): OutcomeColumn[] {
  const missing: OutcomeColumn[] = reader.has('eye') ? [] : ['eye'];
  for (const time of ['Before', 'After'] as const) {
    const readings = [`flat${time}`, `steep${time}`] as const;
    if (!reader.has(`magnitude${time}`) && !readings.every((column) => reader.has(column))) {
      const half = readings.some((column) => reader.has(column));
      missing.push(...(half ? readings.filter((column) => !reader.has(column)) : [`magnitude${time}` as const]));
    }
    if (!reader.has(`meridian${time}`)) missing.push(`meridian${time}`);
  }
  return missing;
}

function tableProblems(heading: TextRow | undefined, missing: readonly OutcomeColumn[]): Said[] {
  if (!heading) return [said('empty')];
  const odd = [...(heading.cells.length < 2 ? [said('fewColumns')] : []), ...(heading.broken ? [said('brokenHeadings')] : [])];
  return [...odd, ...missing.map((column) => said('missingColumn', { column }))];
}

/** Puts one row among the records or among the refused, never nowhere. */
function enter(table: OutcomeTable, reader: RowReader, missing: readonly OutcomeColumn[], row: TextRow): void {
  if (isBlank(row)) {
    table.blankLines += 1;
    return;
  }
  const { cells, line, lastLine, broken } = row;
  table.rows += 1;
  const reason = rowFault(table, missing, cells, broken);
  const read = reason ? [{ column: null, heading: null, position: null, value: cells.join(table.delimiter), reason }] : reader.read(cells, line);
  if (Array.isArray(read)) {
    table.refused.push({ line, lastLine, cells, faults: read });
  } else {
    table.records.push(read);
    table.cells.push(cells);
  }
}

/**
 * What is wrong with a row as such. It must have just as many cells as there are headings, empty ones included: a cell too
 * many may mean that a decimal comma has parted a number and shifted all that follows.
 */
function rowFault({ headings }: OutcomeTable, missing: readonly OutcomeColumn[], cells: readonly string[], broken: boolean): Said | null {
  if (broken) return said('quotes');
  if (missing.length > 0) return said('noColumn', { column: missing[0]! });
  if (cells.length === headings.length) return null;
  return said('cells', { headings: whole(headings.length, ''), cells: whole(cells.length, '') });
}

/** Meridians that are more likely dioptres: a column was taken, or chosen, for what it is not. */
function likeReadings({ meridians }: RowReader['tally']): Said[] {
  const { readingsFrom, readingsTo, readingsEyes } = OUTCOME_CONSTANTS;
  const plain = (value: number): Quantity => ({ value, unit: '', digits: Number.isInteger(value) ? 0 : Number.isInteger(10 * value) ? 1 : 2 });
  return OUTCOME_COLUMNS.flatMap((column) => {
    const seen = meridians[column];
    if (!seen || seen.eyes < readingsEyes.value || seen.from < readingsFrom.value || seen.to > readingsTo.value) return [];
    return [said('likeReadings', { column, from: plain(seen.from), to: plain(seen.to) })];
  });
}

/** What can be said only when all has been read. */
function finish(table: OutcomeTable, reader: RowReader, text: string, titleLines: number): void {
  const { tally } = reader;
  const { records, problems, notes, rows } = table;
  const count = (eyes: number) => whole(eyes, '');
  table.decimal = tally.points && tally.commas ? 'mixed' : tally.commas ? ',' : tally.points ? '.' : null;
  if (tally.swapped * 2 > rows) problems.push(said('swappedColumns', { eyes: count(tally.swapped), rows: count(rows) }));
  problems.push(...likeReadings(tally));
  if (text.includes('\uFFFD') || text.includes('\0')) problems.push(said('encoding'));
  if (titleLines > 0) notes.push(said('above', { lines: count(titleLines) }));
  if (table.decimal === 'mixed') notes.push(said('mixedDecimals'));
  if (tally.again) notes.push(said('countedOnce', { rows: count(tally.again) }));
  if (records.length === 0) return;
  if (tally.widthAssumed) notes.push(said('widthAssumed', { eyes: count(tally.widthAssumed), width: { value: DEFAULTS.incisionWidth, unit: 'mm', digits: 1 } }));
  if (tally.siteUnknown) notes.push(said('siteUnknown', { eyes: count(tally.siteUnknown) }));
  if (tally.methodAssumed) notes.push(said('methodAssumed', { eyes: count(tally.methodAssumed) }));
  if (reader.has('predictedMagnitude') && !reader.has('predictedMeridian')) notes.push(said('predictedUnused'));
  if (!reader.has('arcCount') && !reader.has('arcLength')) notes.push(said('noArcs'));
  const entered = records.filter(({ incision }) => incision !== null);
  const nasal = entered.filter(({ incision, eye }) => Math.abs(fromTemporal(incision!.site, eye) - 180) < 45);
  if (nasal.length >= 3 && nasal.length > OUTCOME_CONSTANTS.nasalShare.value * entered.length) notes.push(said('nasal', { eyes: count(nasal.length), all: count(entered.length) }));
}
