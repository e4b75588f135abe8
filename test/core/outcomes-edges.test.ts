/** Cells, headings and rows at the edge of what is read. */
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { exportTable, faultText, readTable, type OutcomeColumn, type OutcomeTable } from '../../core/outcomes.js';
import { EYE, tableOf } from './outcomes-support.js';

/** The table of an eye without some of its columns. */
const without = (columns: readonly OutcomeColumn[], eye: Partial<Record<OutcomeColumn, string>>): OutcomeTable => {
  const cells = Object.entries({ ...EYE, ...eye }).filter(([column]) => !columns.includes(column as OutcomeColumn));
  return readTable([cells.map(([column]) => column), cells.map(([, cell]) => cell)].map((row) => row.join(';')).join('\n'));
};

describe('a number', () => {
  test.each([['.5', 0.5], [',5', 0.5], ['-.0', 0], ['2.', 2], ['+1,25', 1.25], ['٠٫٧٥', 0.75]])('%s is %d', (text, value) =>
    expect(readTable(tableOf([{ predictedMagnitude: text, predictedMeridian: '90' }])).records[0]!.predicted).toEqual({ magnitude: value, meridian: 90 }));

  test.each(['"7\n1"', '"71 years\nold"', '.', '1.2.3', '71 m', '7 1'])('%s is none, though some of it is', (age) => {
    const { records, refused } = readTable(tableOf([{ age }]));
    expect(records).toEqual([]);
    expect(refused[0]!.faults.map(({ column, reason }) => [column, reason.id])).toEqual([['age', 'number']]);
  });
});

test('a fault names a column that the table does not have by what it should say', () => {
  const { refused } = without(['arcLength', 'arcSite'], { arcCount: '1' });
  expect(refused[0]!.faults.map(faultText)).toEqual([
    'the length of the arcs: none is refused; allowed is a value.',
    'the site of the first arc: none is refused; allowed is a value.',
  ]);
  expect(refused[0]!.faults.map(({ heading, position, value }) => [heading, position, value])).toEqual([[null, null, ''], [null, null, '']]);
});

test('a row with too few cells goes out again with empty ones, so that its reason stands in its own column', () => {
  const table = readTable(`${tableOf([{}])}\nBirch;left;43`);
  const [headings, , row] = Papa.parse<string[]>(exportTable(table)).data;
  expect(row).toHaveLength(headings!.length);
  expect(row!.slice(0, 4)).toEqual(['Birch', 'left', '43', '']);
  expect(row!.at(-1)).toContain('as many cells as there are headings (21); this one has 3');
});

test('each of more different words than are remembered is read for itself', () => {
  const eyes = Array.from({ length: 1500 }, (_, index) => ({ incisionSite: `${(index / 5).toFixed(1)}°`, label: `eye ${index}` }));
  const { records, refused } = readTable(tableOf([...eyes, { incisionSite: 'temporal' }, { incisionSite: 'nasal upper' }, { eye: 'left', incisionSite: 'nasal upper' }]));
  expect(refused).toEqual([]);
  expect(records.map(({ incision }) => incision!.site)).toEqual([...eyes.map((_, index) => Number((index / 5).toFixed(1))), 180, 45, 135]);
});

test.each(['lens', 'toric', 'planned flat K', 'predicted steep K (D)', 'target K1'])('the heading %s is not taken for anything', (heading) =>
  expect(readTable(`${heading}\tz\n1\t2`).headings[0]!.column).toBeNull());
