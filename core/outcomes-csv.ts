/**
 * Delimited text, by papaparse. The only file that imports it, so that the build has one file to bundle and a page that
 * reads no table never loads it (about 7 kB compressed).
 */
import Papa from 'papaparse';
import type { Delimiter } from './outcomes-types.js';

/** One row of a text. */
export interface TextRow {
  cells: string[];
  /** Lines on which it begins and ends, from 1. */
  line: number;
  lastLine: number;
  /** A quotation mark is missing or stands where it should not. */
  broken: boolean;
  /** Where it ends in the text, in characters. */
  end: number;
}

/** Rows that are parsed in one go: about 2 ms, so that whoever reads can stop or show where it is. */
const AT_ONCE = 500;

/** The rows of a text, blank ones too; they are parsed as they are asked for. */
export function* textRows(text: string, delimiter: Delimiter): Generator<TextRow, void, undefined> {
  // A carriage return before the line feed is left at the end of the last cell, where it is trimmed like any other space.
  const newline = text.includes('\n') ? '\n' : '\r';
  let from = 0;
  let line = 1;
  while (from < text.length) {
    // Not the fast mode, which takes the whole rest of the text apart before it looks at how many rows are wanted.
    const { data, errors, meta } = Papa.parse<string[]>(text.slice(from), { delimiter, newline, preview: AT_ONCE, fastMode: false });
    const broken = new Set(errors.filter(({ type }) => type === 'Quotes').map(({ row }) => row));
    const end = meta.truncated ? from + meta.cursor : text.length;
    for (const [index, cells] of data.entries()) {
      // What follows the last line feed is no line.
      if (!meta.truncated && index === data.length - 1 && cells.length === 1 && cells[0] === '' && text.endsWith(newline)) continue;
      const lastLine = line + linesWithin(cells, newline);
      yield { cells, line, lastLine, broken: broken.has(index), end: index === data.length - 1 ? end : from };
      line = lastLine + 1;
    }
    from = end;
  }
}

/** What a spreadsheet takes for a formula: it begins with one of these, behind blanks or not, and is no plain number. */
const FORMULA = /^(?![+-][\d.,]+$)(?:[\s'"]*[=+\-@＝＋－＠]|[\t\r\n]\s*\S)/;

/** Rows as delimited text. Cells that a spreadsheet would take for a formula get an apostrophe in front. */
export function textOf(rows: readonly (readonly (string | number | null)[])[], delimiter: Delimiter): string {
  return Papa.unparse(rows as (string | number | null)[][], { delimiter, escapeFormulae: FORMULA });
}

function linesWithin(cells: readonly string[], newline: string): number {
  let lines = 0;
  for (const cell of cells) {
    for (let at = cell.indexOf(newline); at >= 0; at = cell.indexOf(newline, at + 1)) lines += 1;
  }
  return lines;
}
