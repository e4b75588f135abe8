import { fromVector } from './astigmatism.js';
import { oneOf } from './check.js';
import { textOf } from './outcomes-csv.js';
import { eyeResult } from './outcomes-eyes.js';
import type { JudgeOptions } from './outcomes-eyes.js';
import { faultText } from './outcomes-text.js';
import type { Delimiter, EyeResult, Fault, OutcomeTable } from './outcomes-types.js';
import type { Vector } from './types.js';

/** Headings of what is added, in English. None of them is taken for a column of measurements when the text is read again. */
export const EXPORT_HEADINGS = {
  induced: 'induced (D)',
  inducedAt: 'induced @ (°)',
  flattening: 'flattening (D)',
  torque: 'torque (D)',
  remaining: 'remains (D)',
  remainingAt: 'remains @ (°)',
  expected: 'calculated to remain (D)',
  expectedAt: 'calculated to remain @ (°)',
  error: 'error (D)',
  errorAt: 'error @ (°)',
  refused: 'not counted because',
} as const;

export interface ExportOptions extends JudgeOptions {
  /** Headings in the language of the reader. */
  headings?: Partial<Record<keyof typeof EXPORT_HEADINGS, string>>;
  /** That of the table when left out, as with the decimal sign. */
  delimiter?: Delimiter;
  decimal?: '.' | ',';
  /** Columns that were taken for nothing, too. They may tell who somebody is, so they are left out unless asked for. */
  unread?: boolean;
  /** Why a row is not counted, in the language of the reader. */
  reason?: (fault: Fault) => string;
}

/** Puts UTF-8 beyond doubt: without it some spreadsheets take every letter with an accent for two others. */
const MARK = '\uFEFF';

/**
 * The table again, every row in its place, with what was calculated behind it: D to 3 decimals, degrees to 1. Rows that
 * are not counted say why. A column that was not read, such as one with names, is left out. Nothing in the table can run as
 * a formula when a spreadsheet opens it.
 */
export function exportTable(table: OutcomeTable, options: ExportOptions = {}): string {
  const delimiter = oneOf('delimiter', options.delimiter ?? table.delimiter, [',', ';', '\t']);
  const decimal = oneOf('decimal', options.decimal ?? (table.decimal === ',' ? ',' : '.'), ['.', ',']);
  const number = (value: number, digits: number): string => Number(value.toFixed(digits)).toFixed(digits).replace('.', decimal);
  const kept = table.headings.filter(({ column }) => options.unread || column !== null);
  const cellsOf = given(table.headings.length, kept.map(({ index }) => index));

  const counted = table.records.map((record, index) => ({
    line: record.line,
    cells: [...cellsOf(table.cells[index]!), ...calculated(eyeResult(record, options), number), ''],
  }));
  const refused = table.refused.map(({ line, cells, faults }) => ({
    line,
    cells: [...cellsOf(cells), ...Array<string>(Object.keys(EXPORT_HEADINGS).length - 1).fill(''), faults.map((fault) => (options.reason ?? faultText)(kept.length < table.headings.length ? unquoted(fault, line) : fault)).join(' ')],
  }));
  const rows = [...counted, ...refused].sort((a, b) => a.line - b.line).map(({ cells }) => cells);
  const added = Object.values({ ...EXPORT_HEADINGS, ...options.headings });
  return MARK + textOf([[...kept.map(({ text }) => text), ...added], ...rows], delimiter);
}

/**
 * Takes of a row the cells that are kept. In a row with more or fewer cells than headings a name may stand in any of them,
 * so that none is given away where a column is left out.
 */
function given(width: number, kept: readonly number[]): (cells: readonly string[]) => string[] {
  if (kept.length === width) return (cells) => fitted(cells, width);
  return (cells) => kept.map((index) => (cells.length === width ? cells[index]! : ''));
}

/** What is wrong with a row as a whole quotes all of it; the number of its line tells as well which one it is. */
function unquoted(fault: Fault, line: number): Fault {
  return fault.column === null ? { ...fault, value: `${line}` } : fault;
}

/** As many cells as there are headings; what a refused row has beyond them stays together in the last one. */
function fitted(cells: readonly string[], width: number): string[] {
  const kept = Array.from({ length: width }, (_, index) => cells[index] ?? '');
  const beyond = cells.slice(width).filter((cell) => cell.trim() !== '');
  if (beyond.length > 0 && width > 0) kept[width - 1] = [kept[width - 1], ...beyond].join(' | ');
  return kept;
}

function calculated({ induced, incision, remaining, predicted, error }: EyeResult, number: (value: number, digits: number) => string): string[] {
  const polar = (vector: Vector): string[] => {
    const { magnitude, meridian } = fromVector(vector);
    return [number(magnitude, 3), number(meridian, 1)];
  };
  const cut = incision ? [number(incision.flattening, 3), number(incision.torque, 3)] : ['', ''];
  return [...polar(induced), ...cut, ...polar(remaining), ...polar(predicted!), ...polar(error)];
}
