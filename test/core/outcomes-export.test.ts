/** The table out again: every row in its place, readable as it was, and harmless in a spreadsheet. */
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { EXPORT_HEADINGS, exportTable, eyeResult, readTable } from '../../core/outcomes.js';
import { fromVector } from '../../core/index.js';
import { EYE, fixture, tableOf } from './outcomes-support.js';

/** Cells as a spreadsheet sees them. */
const cellsOf = (text: string): string[][] => Papa.parse<string[]>(text.replace(/^\uFEFF/, '')).data;

describe('a table', () => {
  test.each(['en', 'es', 'de', 'fr', 'ar', 'zh'])('in %s comes back as it went, with what was calculated', (language) => {
    const table = readTable(fixture(`${language}.csv`));
    const text = exportTable(table);
    expect(text.startsWith('\uFEFF')).toBe(true);
    const again = readTable(text);
    const bare = ({ records }: typeof table) => records.map(({ line: _, ...rest }) => rest);
    expect(bare(again)).toEqual(bare(table));
    expect([again.delimiter, again.decimal, again.problems]).toEqual([table.delimiter, table.decimal, []]);
    const added = again.headings.slice(table.headings.length);
    expect(added.map(({ text: heading }) => heading)).toEqual(Object.values(EXPORT_HEADINGS));
    expect(added.every(({ column }) => column === null)).toBe(true);
  });

  test('has the figures of each eye, in the decimals of the table', () => {
    const table = readTable(fixture('de.csv'));
    const [headings, ...rows] = cellsOf(exportTable(table));
    const result = eyeResult(table.records[0]!);
    const cell = (heading: string): number => Number(rows[0]![headings!.indexOf(heading)]!.replace(',', '.'));
    for (const [heading, value, digits] of [
      ['induced (D)', fromVector(result.induced).magnitude, 3], ['induced @ (°)', fromVector(result.induced).meridian, 1],
      ['flattening (D)', result.incision!.flattening, 3], ['torque (D)', result.incision!.torque, 3],
      ['remains (D)', fromVector(result.remaining).magnitude, 3], ['calculated to remain (D)', fromVector(result.predicted!).magnitude, 3],
      ['error (D)', fromVector(result.error).magnitude, 3], ['error @ (°)', fromVector(result.error).meridian, 1],
    ] as const) expect(Math.abs(cell(heading) - value), heading).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-12);
    expect(rows[0]![headings!.indexOf('induced (D)')]).toMatch(/^\d,\d{3}$/);
  });

  test('keeps refused rows in their place and says why', () => {
    const table = readTable(tableOf([{ label: 'one' }, { label: 'two', age: '500' }, { label: 'three' }]));
    const [headings, ...rows] = cellsOf(exportTable(table));
    expect(rows.map(([label]) => label)).toEqual(['one', 'two', 'three']);
    expect(rows.map((row) => row[headings!.indexOf('not counted because')])).toEqual(['', 'age: “500” is refused; allowed is 1 to 120.', '']);
    expect(rows.map((row) => row[headings!.indexOf('induced (D)')] !== '')).toEqual([true, false, true]);
    for (const row of rows) expect(row).toHaveLength(headings!.length);
  });

  test('keeps cells that had no heading together, so that no figure is in a wrong column', () => {
    const table = readTable(`${tableOf([{}], ',')},extra,cell`);
    const [headings, row] = cellsOf(exportTable(table));
    expect(row).toHaveLength(headings!.length);
    expect(row![20]).toBe(' | extra | cell'.slice(0));
  });

  test('leaves out what was not read, wherever in a row it stands', () => {
    const text = tableOf([{}, { age: '500' }, {}, {}]).split('\n').map((row, index) => [index ? `Rowan ${index}` : 'Surname', row].join(';'));
    text[3] = text[3]!.replace('Rowan 3', 'Rowan; 3');
    text[4] = `x;${text[4]}`.replace(/;[^;]*;[^;]*$/, '');
    const table = readTable(text.join('\n'));
    expect(table.refused).toHaveLength(3);
    const written = exportTable(table);
    expect(written).not.toMatch(/Surname|Rowan/);
    const [headings, ...rows] = cellsOf(written);
    expect(headings!.slice(0, 2)).toEqual(['label', 'eye']);
    for (const row of rows) expect(row).toHaveLength(headings!.length);
    expect(rows[2]!.at(-1)).toMatch(/^the row: “4” is refused; allowed is a row with as many cells/);
    expect(exportTable(table, { unread: true })).toMatch(/^\uFEFFSurname;label[^]*Rowan 1;[^]*Rowan 2;/);
    expect(readTable(written).records).toHaveLength(1);
  });

  test('takes other headings, signs and words', () => {
    const table = readTable(tableOf([{ age: '500' }, {}]));
    const text = exportTable(table, { headings: { torque: 'Drehung (D)' }, delimiter: '\t', decimal: ',', reason: ({ column }) => `nicht: ${column}` });
    expect(text).toContain('Drehung (D)');
    expect(text).toContain('nicht: age');
    expect(text.split('\r\n')[2]).toMatch(/\t\d,\d{3}\t/);
    expect(() => exportTable(table, { delimiter: '|' as never })).toThrow(/^delimiter: “\|” is refused/);
  });
});

describe('nothing runs in a spreadsheet', () => {
  const FORMULAE = ['=1+1', '+1+1', '-1+1', '@SUM(A1)', '=HYPERLINK("http://example.org")', '\t=1+1', ' =1+1', '\r=1+1', '＝1+1', '"=1+1', "'=1+1", '-2+3+cmd|x', '+', '=', '-'];

  test.each(FORMULAE)('%j as a label', (label) => {
    const table = readTable(tableOf([{ label: `"${label.replaceAll('"', '""')}"` }]));
    expect(table.records[0]!.label).toBe(label);
    const [, row] = cellsOf(exportTable(table));
    expect(row![0]).toBe(`'${label}`);
  });

  test.each(FORMULAE)('%j as a heading', (heading) => {
    const text = `"${heading.replaceAll('"', '""')}";${tableOf([{}]).replace('\n', '\n0;')}`;
    const [headings] = cellsOf(exportTable(readTable(text), { unread: true }));
    expect(headings![0]).toMatch(/^'/);
  });

  test('signed numbers and plain words stay as they are', () => {
    for (const label of ['-1.25', '+0,50', 'Alder', '12', '', '№ 1', 'a=b']) {
      expect(cellsOf(exportTable(readTable(tableOf([{ label }]))))[1]![0]).toBe(label);
    }
  });

  test('what is written against that is read as it was', () => {
    const table = readTable(tableOf([{ age: '+71 years', lensCylinder: '-', arcMethod: '-' }]));
    const again = readTable(exportTable(table));
    expect(again.records).toEqual(table.records);
    expect(again.records[0]!.age).toBe(Number(EYE.age));
  });
});
