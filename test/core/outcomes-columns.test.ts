/** Which column holds what: by words, by the user, or not at all. */
import { describe, expect, test } from 'vitest';
import { OUTCOME_COLUMNS, readTable, type OutcomeColumn } from '../../core/outcomes.js';
import { columnsNamed, matchHeadings } from '../../core/outcomes-headings.js';
import { tableOf } from './outcomes-support.js';

describe('columns', () => {
  const HEADINGS = 'eye;flatBefore;steepBefore;meridianBefore;magnitudeAfter;meridianAfter';
  const ROW = 'R;43;44;90;0.5;95';
  const ids = (text: string, options?: Parameters<typeof readTable>[1]) => readTable(text, options).problems.map(({ id, values }) => `${id} ${String(values['column'] ?? '')}`.trim());

  test('that are enough', () => {
    expect(readTable(`${HEADINGS}\n${ROW}`).records).toHaveLength(1);
  });

  test.each([
    ['eye', 'side of the road', 'missingColumn eye'],
    ['steepBefore', 'x', 'missingColumn steepBefore'],
    ['magnitudeAfter', 'x', 'missingColumn magnitudeAfter'],
    ['meridianAfter', 'axis after', 'missingColumn meridianAfter'],
  ])('without %s no row is read, and none is lost', (column, instead, problem) => {
    const text = `${HEADINGS.replace(column, instead === 'side of the road' ? 'x' : instead)}\n${ROW}\n${ROW}`;
    expect(ids(text)).toEqual([problem]);
    expect(readTable(text).refused.map(({ faults: [fault] }) => fault!.reason.id)).toEqual(['noColumn', 'noColumn']);
  });

  test('named twice are used only when one is chosen', () => {
    const text = `${HEADINGS};age;Alter\n${ROW};70;71`;
    const table = readTable(text);
    expect(table.problems.map(({ text: said }) => said)).toEqual(['Several columns seem to hold the age: age, Alter. None of them is used until one is chosen.']);
    expect(table.records[0]!.age).toBeNull();
    expect(readTable(text, { mapping: { age: 'Alter' } }).records[0]!.age).toBe(71);
    expect(readTable(text, { mapping: { age: 6 } }).problems).toEqual([]);
  });

  test('are matched by the user, by name, number or not at all', () => {
    const text = `auge;a;b;axis before;c;meridianAfter\n${ROW}`;
    const mapping = { flatBefore: 1, steepBefore: 2, meridianBefore: 'axis before', magnitudeAfter: 'c' };
    const table = readTable(text, { mapping });
    expect(table.records).toHaveLength(1);
    expect(table.headings.map(({ by }) => by)).toEqual(['words', 'user', 'user', 'user', 'user', 'words']);
    expect(readTable(text, { mapping: { ...mapping, age: undefined } })).toEqual(table);
    expect(readTable(text, { mapping: { ...mapping, eye: null } }).problems.map(({ id }) => id)).toEqual(['missingColumn']);
  });

  test('that the user has chosen elsewhere are not taken from the words of a heading, and what is no column is by nobody', () => {
    const { headings, problems } = matchHeadings(['K1 pre', 'x', 'age', 'surgeon'], { flatBefore: 'x' });
    expect(headings.map(({ column, by, why }) => [column, by, why])).toEqual([[null, null, null], ['flatBefore', 'user', null], ['age', 'words', null], [null, null, null]]);
    expect(problems).toEqual([]);
  });

  test('are not looked for in texts of more than 200 characters', () => {
    const named = (length: number): number => columnsNamed(['age', `${'x'.repeat(length - 17)} flat K before (D)`.slice(-length), '43']);
    expect([named(199), named(200), named(201), named(2000)]).toEqual([2, 2, 1, 1]);
  });

  test('count as named where they have to be asked about, once each, and figures do not', () => {
    expect([['axis before'], ['K1 pre'], ['K1 pre', 'K2 axis pre', 'age', 'surgeon', '43.25', ''], ['axis before', 'axis before', 'age', 'Alter']].map(columnsNamed)).toEqual([1, 1, 3, 3]);
  });

  test('may have no headings at all', () => {
    const columns = HEADINGS.split(';') as OutcomeColumn[];
    const mapping = Object.fromEntries(columns.map((column, index) => [column, index]));
    expect(readTable(`${ROW}\n${ROW}`, { headings: false, mapping, delimiter: ';' }).records.map(({ line }) => line)).toEqual([1, 2]);
  });

  test.each([
    [{ mapping: { nonsense: 1 } }, `mapping: “nonsense” is refused; allowed is a mapping of ${OUTCOME_COLUMNS.join(', ')}.`],
    [{ mapping: { eye: OUTCOME_COLUMNS.length } }, /^mapping\.eye: 21 is refused/],
    [{ mapping: { eye: 99 } }, /^mapping\.eye: 99 is refused; allowed is a heading of the table, or its number from 0 to 20\.$/],
    [{ mapping: { eye: 'no such' } }, /^mapping\.eye: “no such” is refused/],
    [{ delimiter: '|' }, /^delimiter: “\|” is refused/],
  ])('%j is refused', (options, message) => {
    expect(() => readTable(tableOf([{}]), options as never)).toThrow(message);
  });

  test('nothing, one column, no text', () => {
    expect(ids('')).toEqual(['empty']);
    expect(ids(' \n\n')).toEqual(['empty']);
    expect(readTable(' \n\n')).toMatchObject({ headings: [], blankLines: 2, rows: 0 });
    expect(ids('eye\nR')[0]).toBe('fewColumns');
    expect(() => readTable(null as never)).toThrow(/^text: none is refused/);
  });

  test('an axis that may be a cylinder’s is never taken for the steep meridian', () => {
    const why = (heading: string) => readTable(`${HEADINGS};${heading}\n${ROW};5`).headings.at(-1)!;
    for (const heading of ['Axis before', 'Achse vorher', 'eje antes', 'axe avant', 'محور قبل', '术前轴位', 'cylinder axis before', 'K1 axis before', 'flat meridian before', 'steep meridian', 'K2']) {
      const { column, why: reason } = why(heading);
      expect([heading, column]).toEqual([heading, null]);
      expect(['axisUnclear', 'flatMeridian', 'noTime']).toContain(reason!.id);
    }
  });

  test('K1 and K2 are taken for flat and steep, and said to be a guess; which meridian K2 stands for is asked', () => {
    const table = readTable(`eye;K1 pre;K2 pre;K2 axis pre;magnitudeAfter;meridianAfter\n${ROW}`);
    expect(table.headings.slice(1, 4).map(({ column, why }) => [column, why!.id])).toEqual([['flatBefore', 'guess'], ['steepBefore', 'guess'], [null, 'readingOrMeridian']]);
  });

  test('what was expected to remain is not used without its meridian, and no row is lost for it', () => {
    const table = readTable(`${HEADINGS};planned astigmatism\n${ROW};0.5\n${ROW};0.75`);
    expect(table.records.map(({ predicted }) => predicted)).toEqual([null, null]);
    expect(table.notes.map(({ id }) => id)).toContain('predictedUnused');
  });
});
