/** Cells, headings and rows at the edge of what is read. */
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { exportTable, eyeResult, faultText, groupsOf, readTable, summarise, vectorsOf, type OutcomeColumn, type OutcomeTable } from '../../core/outcomes.js';
import { eyeOf, placeOf, plain } from '../../core/outcomes-words.js';
import { EYE, at, recordOf, tableOf } from './outcomes-support.js';

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

describe('what is refused is told by the column that is there to be mended', () => {
  const told = (table: OutcomeTable): string[] => table.refused[0]!.faults.map(faultText);

  test('readings without a figure, where the table has no column for the astigmatism', () => {
    expect(told(without(['magnitudeBefore'], { flatBefore: '', steepBefore: '' }))).toEqual(['flatBefore: none is refused; allowed is a value.']);
    expect(told(without([], { flatBefore: '', steepBefore: '' }))).toEqual(['magnitudeBefore: none is refused; allowed is a value.']);
  });

  test('one reading, where the table has no column for the other', () => {
    expect(told(without(['flatBefore'], { magnitudeBefore: '1.25' }))).toEqual(['the flat reading before: none is refused; allowed is a value.']);
  });

  test('a number of arcs with a unit, which is none', () => {
    expect(told(without([], { arcCount: '2 mm', arcLength: '45', arcSite: '90' }))).toEqual(['arcCount: “2 mm” is refused; allowed is a number such as 1.25 or 1,25, with one decimal sign.']);
    expect(told(without([], { arcCount: '2', arcLength: '45 mm', arcSite: '90' }))).toEqual(['arcLength: “45 mm” is refused; allowed is a number in °.']);
  });

  // 337.5 / 75 and 337.5 / 28.
  test('a radius with limits in mm', () => {
    expect(told(without([], { flatBefore: '13', steepBefore: '7.5' }))).toEqual(['flatBefore: “13” is refused; allowed is 4.5 to 12.05 mm.']);
    expect(told(without([], { flatBefore: '43', steepBefore: '76' }))).toEqual(['steepBefore: “76” is refused; allowed is 28 to 75 D.']);
  });
});

test('an eye without the site of its incision goes out with all but what needs it', () => {
  const [headings, row] = Papa.parse<string[]>(exportTable(readTable(tableOf([{ incisionSite: '' }])))).data;
  const cell = (heading: string): string => row![headings!.indexOf(heading)]!;
  // From 1.25 @ 90 to 0.75 @ 95.
  expect([cell('induced (D)'), cell('flattening (D)'), cell('torque (D)')]).toEqual([expect.stringMatching(/^0\.5\d\d$/), '', '']);
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

test.each(['arc', 'arcs made', 'lens', 'toric', 'planned flat K', 'predicted steep K (D)', 'target K1'])('the heading %s is not taken for anything', (heading) =>
  expect(readTable(`${heading}\tz\n1\t2`).headings[0]!.column).toBeNull());

describe('series of results', () => {
  test('on one line have no T² and no P, and say so', () => {
    const line = summarise([1, 2, 3, 5].map((t) => ({ x: 0.1 * t, y: 0.2 * t })));
    expect([line.t2, line.pValue]).toEqual([null, null]);
    expect(line.omitted.map(({ figures, reason }) => [figures, reason.text])).toEqual([[['t2', 'pValue'], 'All eyes lie on one line, so that the scatter across it is not known.']]);
    const plane = summarise([{ x: 0.1, y: 0.2 }, { x: 0.2, y: 0.1 }, { x: 0.3, y: 0.5 }]);
    expect(plane.t2).toBeGreaterThan(0);
    expect(plane.omitted).toEqual([]);
    const upright = summarise([{ x: 0.1, y: 0.1 }, { x: 0.1, y: 0.4 }, { x: 0.1001, y: 0.2 }]);
    expect(upright.t2).toBeGreaterThan(0);
  });

  test('groups come with the largest first', () => {
    const results = [0, 90, 180, 90, 180, 180].map((site) => eyeResult(recordOf(at(1, 90), { x: 0.1, y: 0 }, { incision: { site, width: 2.4 } })));
    expect(groupsOf(results, 'site').map(({ results: members }) => members.length)).toEqual([3, 2, 1]);
    expect(vectorsOf([eyeResult(recordOf(at(1, 90), { x: 0, y: 0 }))], 'atIncision')).toEqual([{ x: 0, y: 0 }]);
  });
});

test.each<[string, () => unknown]>([
  ['x: NaN is refused; allowed is a finite number of D.', () => summarise([{ x: NaN, y: 0 }])],
  ['y: NaN is refused; allowed is a finite number of D.', () => summarise([{ x: 0, y: NaN }])],
  ['p: 1 is refused; allowed is 0.000001 to 0.999999.', () => summarise([], 1)],
])('%s', (message, call) => expect(call).toThrow(message));

describe('words', () => {
  test.each([['linke', 'left'], ['links', 'left'], ['link', null], ['right eye', 'right'], ['O. D.', 'right'], ['O.S.', 'left'], ['a od', null], ['eyes', null], ['', null], ['العين اليمنى', 'right'], ['right left', null], ['右眼睛', 'right']])('the eye %s is %s', (text, eye) => expect(eyeOf(text)).toBe(eye));
  test.each([['temporal side', 0], ['seaside temporal', null], ['sidewards temporal', null], ['', null], ['side', null], ['nasal', 180], ['superior temporal', 45], ['inferotemporal', 315], ['superior inferior', null], ['superior temporal nasal', null]])('the place %s is %s', (text, place) => expect(placeOf(text)).toBe(place));
  test.each([['FlatK', 'flat k'], ['K1pre', 'k1 pre'], ['Größe', 'grosse'], ['Œil', 'oeil'], ['Æther', 'aether'], ['à la', 'a la'], ['K1-2', 'k1 2'], ['12', '12'], ['مدرسة', 'مدرسه'], ['ٱلعين', 'العين'], ['عـين', 'عين'], ['ệ', 'e']])('%s is %s', (text, words) => expect(plain(text)).toBe(words));
});
