/** Delimited text, row by row, and back; numbers in cells. */
import { describe, expect, test } from 'vitest';
import { textOf, textRows } from '../../core/outcomes-csv.js';
import { readTable, readingTable, type OutcomeTable } from '../../core/outcomes.js';
import { numberIn, trimmed } from '../../core/outcomes-numbers.js';

describe('rows', () => {
  const rows = (text: string) => [...textRows(text, ';')].map(({ cells, line, lastLine, broken }) => ({ cells, line, lastLine, broken }));

  test.each(['\n', '\r\n'])('have the lines on which they stand, whatever a cell holds: %j', (end) => {
    const read = rows(['a;b', '"', 'x";1', '"', '', '";2', 'c;d', ''].join(end));
    expect(read.map(({ line, lastLine }) => [line, lastLine])).toEqual([[1, 1], [2, 3], [4, 6], [7, 7]]);
    expect(read.map(({ broken }) => broken)).toEqual([false, false, false, false]);
  });

  test('what follows the last line feed is no row, but blank lines are', () => {
    expect(rows('a;b\n\n1;2\n').map(({ cells }) => cells)).toEqual([['a', 'b'], [''], ['1', '2']]);
    expect(rows('a;b\n1;2').map(({ cells }) => cells)).toEqual([['a', 'b'], ['1', '2']]);
    expect(rows('a;b\n;\n').map(({ cells }) => cells)).toEqual([['a', 'b'], ['', '']]);
  });

  test('a quotation mark that is never closed loses nothing', () => {
    expect(rows('a\n"x\n')).toMatchObject([{ cells: ['a'], broken: false }, { cells: ['x\n'], broken: true }]);
    expect(rows('a;b\n;"x\n')).toMatchObject([{ cells: ['a', 'b'], broken: false }, { cells: ['', 'x\n'], broken: true }]);
    expect(rows('a;b\n"";"x\n')).toMatchObject([{ cells: ['a', 'b'], broken: false }, { cells: ['', 'x\n'], broken: true }]);
  });

  test('say how far into the text they reach: never too far, never back, and exactly at the end of what was parsed in one go', () => {
    const lines = Array.from({ length: 1200 }, (_, index) => `${index};${'x'.repeat(index % 7)}`);
    const ends = [...textRows(lines.join('\n'), ';')].map(({ end }) => end);
    const after = lines.map((_, index) => lines.slice(0, index + 1).join('\n').length + (index < 1199 ? 1 : 0));
    expect(ends).toHaveLength(1200);
    ends.forEach((end, index) => {
      expect(end).toBeLessThanOrEqual(after[index]!);
      expect(end).toBeGreaterThanOrEqual(ends[index - 1] ?? 0);
    });
    expect([ends[499], ends[999], ends[1199]]).toEqual([after[499], after[999], after[1199]]);
  });
});

describe('a table', () => {
  const HEADINGS = 'eye,magnitudeBefore,meridianBefore,magnitudeAfter,meridianAfter';
  const ROW = 'R,1,90,0.5,95';

  test('tells how far it has come every thousand rows', () => {
    const text = [HEADINGS, ...Array.from({ length: 2500 }, () => ROW)].join('\n');
    const reading = readingTable(text, { delimiter: ',' });
    const told = [reading.next(), reading.next()].map(({ value }) => value as { share: number; rows: number });
    expect(told.map(({ rows }) => rows)).toEqual([1000, 2000]);
    // What was parsed in one go counts as a whole.
    told.forEach(({ share, rows }) => {
      expect(share).toBeLessThanOrEqual(rows / 2500 + 1e-3);
      expect(share).toBeGreaterThan((rows - 501) / 2500);
    });
    const { value, done } = reading.next();
    expect([done, (value as OutcomeTable).records.length]).toEqual([true, 2500]);
  });

  test('has its delimiter announced only at its very beginning', () => {
    expect(readTable(`sep=,\n${HEADINGS}\n${ROW}`)).toMatchObject({ delimiter: ',', rows: 1, problems: [], notes: expect.not.arrayContaining([expect.objectContaining({ id: 'above' })]) });
    const titled = readTable(`my sep=;\n${HEADINGS}\n${ROW}`);
    expect(titled).toMatchObject({ delimiter: ',', rows: 1, problems: [] });
    expect(titled.notes.map(({ id }) => id)).toContain('above');
  });

  test('may begin with many blank lines, and need not name its eyes', () => {
    const { delimiter, blankLines, records } = readTable(`${'\n'.repeat(12)}${HEADINGS}\n${ROW}`);
    expect([delimiter, blankLines, records.length, records[0]!.label]).toEqual([',', 12, 1, null]);
  });
});

describe('text for a spreadsheet', () => {
  test.each(['=1+1', '+x', '-x', '@x', '＝1', '＋x', '－x', '＠x', ' =1', "'=1", '"=1', '\tx', '\t  x', '\n\n=x', '\rx', '\r \tx'])('%j would be a formula, and gets an apostrophe', (cell) =>
    expect(textOf([[cell, 'z']], ';').replace(/^"?/, '')).toMatch(/^'/));

  test.each(['43.5', '-43.5', '+1,25', '-0.5', 'x', 'x=1', 'a-b', '43 - 44', ' 43', '', '12.5 D'])('%j would not, and stands as it is', (cell) =>
    expect(textOf([[cell, 'z']], ';')).toBe(cell === cell.trim() ? `${cell};z` : `"${cell}";z`));
});

describe('numbers in cells', () => {
  test.each([
    ['43', 43, '', ''], ['43,5', 43.5, '', ','], ['43.25', 43.25, '', '.'], ['.5', 0.5, '', '.'], ['5.', 5, '', '.'], ['-,5', -0.5, '', ','], ['43 D', 43, 'D', ''], ['43. D', 43, 'D', '.'], ['43,25dpt', 43.25, 'D', ','],
    ['1234', 1234, '', ''], ['1,234', 1.234, '', ','], ['+2.4 mm', 2.4, 'mm', '.'], ['-0', 0, '', ''], ['٤٣٫٥', 43.5, '', ','], ['−1', -1, '', ''], ['90°', 90, '°', ''],
  ] as const)('%s', (text, value, unit, decimal) => expect(numberIn(text)).toEqual({ value, unit, decimal }));

  test.each(['', '.', ',', '-', 'x', '1.2.3', '1,2,3', '43 of 44', '43,abc', 'left\n5', '5\n6', 'x5', '1e3'])('%j is none', (text) => expect(numberIn(text)).toBeNull());

  test.each([[' 43 ', '43'], ["'43", '43'], ["' 43", '43'], ['-', ''], ['––', ''], ['n/a', ''], ['NA', ''], ['---', '---'], ['n/a n/a', 'n/a n/a'], ["'", '']])('%j without what surrounds it', (cell, text) => expect(trimmed(cell)).toBe(text));
});
