/** Cells, rows and tables one by one: what is taken, and what is said, word for word. */
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { COLUMN_TEXT, OUTCOME_COLUMNS, OUTCOME_CONSTANTS, exportTable, faultText, ownFigures, readTable, type Fault, type OutcomeColumn, type OutcomeTable } from '../../core/outcomes.js';
import { add, flattening } from '../../core/index.js';
import { EYE, at, recordOf, tableOf } from './outcomes-support.js';

type Cells = Partial<Record<OutcomeColumn, string>>;

const NO_READINGS: Cells = { flatBefore: '', steepBefore: '' };

/** What is said against the one eye of a table. */
const told = (eye: Cells): string[] => {
  const { records, refused } = readTable(tableOf([eye]));
  return records.length > 0 ? [] : refused[0]!.faults.map(faultText);
};
const record = (eye: Cells) => readTable(tableOf([eye])).records[0];
const notes = (eyes: Cells[]): string[] => readTable(tableOf(eyes)).notes.map(({ text }) => text);
const problems = (text: string): string[] => readTable(text).problems.map(({ text: words }) => words);

describe('readings', () => {
  test.each<[Cells, number, number]>([
    [{ flatBefore: '43.25 D', steepBefore: '44.5 D' }, 43.25, 44.5],
    [{ flatBefore: '7.5 mm', steepBefore: '7.2 mm' }, 45, 46.875],
    [{ flatBefore: '7.5', steepBefore: '7.2' }, 45, 46.875],
    [{ flatBefore: '7.5 mm', steepBefore: '7.2' }, 45, 46.875],
    [{ magnitudeBefore: '1.25' }, 43.25, 44.5],
    [{ magnitudeBefore: '1.2' }, 43.25, 44.5],
  ])('%j', (eye, flat, steep) => {
    expect(told(eye)).toEqual([]);
    const { readings, before } = record(eye)!;
    expect([readings!.flat, readings!.steep, before.magnitude]).toEqual([expect.closeTo(flat, 10), expect.closeTo(steep, 10), expect.closeTo(steep - flat, 10)]);
  });

  test.each<[Cells, string[]]>([
    [{ flatBefore: '44.5', steepBefore: '43.25' }, ['steepBefore: “43.25” is refused; allowed is 44.50 D or more, for the steep reading must not be flatter than the flat one.']],
    [{ flatBefore: '43 mm' }, ['flatBefore: “43 mm” is refused; allowed is 4.5 to 12.05 mm.']],
    [{ flatBefore: '7.8 D' }, ['flatBefore: “7.8 D” is refused; allowed is 28 to 75 D.']],
    // Below 20 it is read as a radius, from there on as dioptres; it is neither.
    [{ flatBefore: '19.9' }, ['flatBefore: “19.9” is refused; allowed is 4.5 to 12.05 mm.']],
    [{ flatBefore: '20' }, ['flatBefore: “20” is refused; allowed is 28 to 75 D.']],
    [{ flatBefore: '43', steepBefore: '7.5 mm' }, ['steepBefore: “7.5 mm” is refused; allowed is the same unit as that of the other reading (D).']],
    [{ flatBefore: '-43' }, ['flatBefore: “-43” is refused; allowed is 4.5 to 12.05 mm.']],
    [{ flatBefore: '43°' }, ['flatBefore: “43°” is refused; allowed is a number in D.']],
    [{ flatBefore: '', steepBefore: '44.5' }, ['flatBefore: none is refused; allowed is a value.']],
    [{ flatBefore: 'flat', steepBefore: '44.5' }, ['flatBefore: “flat” is refused; allowed is a number such as 1.25 or 1,25, with one decimal sign.']],
    [{ magnitudeBefore: '1.75' }, ['magnitudeBefore: “1.75” is refused; allowed is the difference between the readings (1.25 D).']],
    [{ ...NO_READINGS, magnitudeBefore: '-1' }, ['magnitudeBefore: “-1” is refused; allowed is 0 or more; a cylinder below 0 belongs to an axis, not to a steep meridian.']],
    [{ ...NO_READINGS, magnitudeBefore: '−1' }, ['magnitudeBefore: “−1” is refused; allowed is 0 or more; a cylinder below 0 belongs to an axis, not to a steep meridian.']],
    [{ meridianBefore: '' }, ['meridianBefore: none is refused; allowed is a value.']],
    [{ meridianBefore: '-10' }, ['meridianBefore: “-10” is refused; allowed is 0 to 180°.']],
    [{ predictedMeridian: '90' }, ['predictedMeridian: “90” is refused; allowed is only together with a value for the astigmatism that was expected to remain.']],
    [{ incisionSite: '-10' }, ['incisionSite: “-10” is refused; allowed is 0 to 360°.']],
    [{ incisionWidth: '5' }, ['incisionWidth: “5” is refused; allowed is 1.8 to 3.5 mm.']],
    [{ age: '0' }, ['age: “0” is refused; allowed is 1 to 120.']],
    [{ eye: 'both' }, ['eye: “both” is refused; allowed is right or left, as a word or a usual abbreviation.']],
    [{ eye: '' }, ['eye: none is refused; allowed is a value.']],
  ])('%j is refused', (eye, words) => expect(told(eye)).toEqual(words));

  test('a difference is allowed as far as rounding to quarters explains, and not beyond', () => {
    const most = OUTCOME_CONSTANTS.sameMagnitude.value;
    for (const side of [1, -1]) {
      expect(told({ magnitudeBefore: (1.25 + side * (most - 0.01)).toFixed(2) })).toEqual([]);
      expect(told({ magnitudeBefore: (1.25 + side * (most + 0.01)).toFixed(2) })).toHaveLength(1);
    }
  });
});

describe('arcs and lens', () => {
  test.each<[Cells, unknown]>([
    [{ arcCount: '1', arcLength: '45', arcSite: '90' }, { count: 1, site: 90, length: 45, method: 'blade' }],
    [{ arcCount: '2', arcLength: '60', arcSite: '180', arcMethod: 'femto' }, { count: 2, site: 180, length: 60, method: 'laser' }],
    [{ arcCount: '0', arcLength: '45', arcSite: '90' }, null],
    [{ arcCount: '', arcLength: '', arcSite: '90' }, null],
  ])('%j', (eye, arcs) => expect(record(eye)!.arcs).toEqual(arcs));

  test.each<[Cells, string[]]>([
    [{ arcCount: '', arcLength: '45' }, ['arcCount none', 'arcSite none']],
    [{ arcCount: '1', arcSite: '90' }, ['arcLength none']],
    [{ arcCount: '1', arcLength: '45' }, ['arcSite none']],
    [{ arcCount: 'one' }, ['arcCount “one”', 'arcLength none', 'arcSite none']],
    [{ arcCount: '', arcLength: 'long' }, ['arcLength “long”', 'arcCount none', 'arcSite none']],
    [{ arcCount: '1.5', arcLength: '45', arcSite: '90' }, ['arcCount “1.5”']],
    [{ arcCount: '1', arcLength: '45', arcSite: '90', arcMethod: 'other' }, ['arcMethod “other”']],
    [{ arcCount: '1', arcLength: '45', arcSite: 'here' }, ['arcSite “here”']],
    [{ lensCylinder: '2' }, ['lensMeridian none']],
    [{ lensCylinder: '2', lensMeridian: 'steep' }, ['lensMeridian “steep”']],
  ])('%j is refused', (eye, faults) => expect(told(eye).map((text) => text.replace(/^(\w+): (.*) is refused.*$/, '$1 $2'))).toEqual(faults));

  test('a lens without a cylinder is none, wherever it lies', () => expect(record({ lensCylinder: '0', lensMeridian: '90' })!.lens).toBeNull());
});

test.each(['n/a', 'N/A', 'na', '-', '--', '–', '—', '', "'", "' "])('%j in a cell says that there is nothing', (age) => expect(record({ age })!.age).toBeNull());
test.each(["'71", "' 71 ", '71 years', '71 J.', '７１', '٧١'])('%j is 71', (age) => expect(record({ age })!.age).toBe(71));
// A cell may have line breaks within quotation marks. What stands before a number makes it none, wherever its unit stands.
test.each(['43', '43 D', '43\nD', '43\n D'])('%j is 43 D', (text) => expect(record({ flatBefore: `"${text}"` })!.readings!.flat).toBe(43));
test.each(['x43 D', 'x43\nD', '12 43 D', '12 43\nD', '12\n43\nD', '43 D\nx'])('%j is no number', (text) =>
  expect(readTable(tableOf([{ flatBefore: `"${text}"` }])).refused[0]!.faults.map(({ column, reason }) => [column, reason.id])).toEqual([['flatBefore', 'number']]));
test.each(['xn/a', 'n/a?', '---', 'n//a'])('%j is refused', (age) => expect(told({ age })).toHaveLength(1));

describe('notes', () => {
  test('count what was assumed', () => {
    const arced: Cells = { arcCount: '1', arcLength: '45', arcSite: '90' };
    expect(notes([{ incisionWidth: '' }, { incisionWidth: '', label: 'b' }, { label: 'c' }])).toEqual(['Eyes without a width of the incision: 2. 2.4 mm is assumed.']);
    expect(notes([{ incisionSite: '' }, { incisionSite: '', label: 'b' }, { label: 'c' }])).toEqual(['Eyes without a site of the incision: 2. They tell nothing about its flattening.']);
    expect(notes([arced, { ...arced, label: 'b' }, { ...arced, arcMethod: 'blade', label: 'c' }])).toEqual(['Eyes of which it is not said how the arcs were cut: 2. By blade is assumed.']);
  });

  test('tell rows that are there twice, and on which line the first is, unless they have no label or are of the other eye', () => {
    const twice = readTable(tableOf([{ label: 'Alder' }, { label: 'b' }, { label: 'Alder' }, { label: " 'Alder" }]));
    expect([twice.records.length, twice.refused.map(({ line }) => line)]).toEqual([2, [4, 5]]);
    expect(twice.refused[0]!.faults.map(faultText)).toEqual(['label: “Alder” is refused; allowed is each eye once, and line 2 has the same label and eye.']);
    expect(twice.notes.map(({ id, text }) => [id, /2/.test(text)])).toEqual([['countedOnce', true]]);
    // Blanks and apostrophes before a label are not part of it; within it they are.
    expect(readTable(tableOf(['1 12', '11 2', '112', "1'12"].map((label) => ({ label })))).records).toHaveLength(4);
    expect(notes([{ label: ' ' }, { label: ' ' }, { label: '' }, { label: '' }])).toEqual([]);
    expect(notes([{ label: 'Alder' }, { label: 'Alder', eye: 'left', incisionSite: '0' }])).toEqual([]);
  });

  const labelled = (eyes: Cells[]): Cells[] => eyes.map((eye, index) => ({ ...eye, label: `${index}` }));

  test('tell entries on the side of the nose, from three on and where they are more than a few', () => {
    const [nasal, temporal]: Cells[] = [{ incisionSite: '0' }, { incisionSite: '180' }];
    const share = OUTCOME_CONSTANTS.nasalShare.value;
    const text = (some: number, all: number): string[] => [`Eyes entered on the side of the nose: ${some} of ${all}. Are sites given as 0 to 180° only?`];
    expect(notes(labelled([nasal!, nasal!]))).toEqual([]);
    expect(notes(labelled([nasal!, nasal!, nasal!]))).toEqual(text(3, 3));
    const most = Math.floor(3 / share);
    expect(notes(labelled([nasal!, nasal!, nasal!, ...Array<Cells>(most - 3).fill(temporal!)]))).toEqual(3 > share * most ? text(3, most) : []);
    expect(notes(labelled([nasal!, nasal!, nasal!, ...Array<Cells>(most).fill(temporal!)]))).toEqual([]);
    // 45° from the nose is above or below it.
    expect(notes(labelled(Array<Cells>(4).fill({ incisionSite: '45' })))).toEqual([]);
    expect(notes(labelled(Array<Cells>(4).fill({ incisionSite: '44' })))).toEqual(text(4, 4));
    expect(notes(labelled(Array<Cells>(4).fill({ eye: 'left', incisionSite: '0' })))).toEqual([]);
  });

  test('say nothing of a table without an eye', () => {
    const bare = readTable('eye;magnitudeBefore;meridianBefore;magnitudeAfter;meridianAfter\nx;1;90;1;90');
    expect([bare.records.length, bare.notes]).toEqual([0, []]);
    expect(readTable('eye;magnitudeBefore;meridianBefore;magnitudeAfter;meridianAfter\nR;1;90;1;90').notes.map(({ id }) => id)).toEqual(['siteUnknown', 'noArcs']);
    for (const column of ['arcCount', 'arcLength']) expect(readTable(`eye;magnitudeBefore;meridianBefore;magnitudeAfter;meridianAfter;${column}\nR;1;90;1;90;`).notes.map(({ id }) => id)).toEqual(['siteUnknown']);
  });
});

describe('a table', () => {
  const table = tableOf([{}]);

  test('is a text', () => expect(() => readTable(3 as never)).toThrow('text: 3 is refused; allowed is a text.'));

  test('may have a title, which is told, and blank lines, which are not', () => {
    const { notes: said, blankLines, records } = readTable(`Results\n\n\n${table}`);
    expect([said.map(({ text }) => text), blankLines, records[0]!.line]).toEqual([['Lines above the headings that were not read: 1.'], 2, 5]);
  });

  test('has its headings among the first ten rows that are not blank', () => {
    const titles = (n: number): string => Array.from({ length: n }, (_, i) => `title ${i}\n\n`).join('');
    expect(readTable(titles(9) + table).records).toHaveLength(1);
    expect(readTable(titles(10) + table).records).toHaveLength(0);
  });

  test.each(['sep=;\n', 'sep=;\r\n', 'SEP=;\r', '\uFEFFsep=;\n'])('may begin with %j, which is no title', (announced) => {
    const newline = announced.endsWith('\r') ? '\r' : '\n';
    const read = readTable(announced + tableOf([{}, { age: '500' }]).replaceAll('\n', newline));
    expect([read.notes, read.records[0]!.line, read.refused.map(({ line, lastLine }) => [line, lastLine])]).toEqual([[], 3, [[4, 4]]]);
  });

  test('that only announces a delimiter, or nothing at all, is empty', () => {
    for (const text of ['', 'sep=;', '\n\n', '\uFEFF']) expect(problems(text)).toEqual(['There is nothing in the table.']);
  });

  test('is parted as the page says, else as it announces, else so that most columns are known', () => {
    expect(readTable(`sep=,\n${table}`, { delimiter: ';' }).records).toHaveLength(1);
    expect(readTable(`sep=,\n${table}`).delimiter).toBe(',');
    expect(readTable(`sep=x\n${table}`).delimiter).toBe(';');
    const commas = Array.from({ length: 60 }, (_, i) => i).join(',');
    expect(readTable(tableOf([{ label: commas }])).records.map(({ label }) => label)).toEqual([commas]);
    expect(readTable(tableOf([{ label: '1;2' }], '\t')).records.map(({ label }) => label)).toEqual(['1;2']);
    expect(['x;y;z\n1;2;3', 'x\ty\n1\t2', 'x,y\n1,2', 'x\n1'].map((text) => readTable(text).delimiter)).toEqual([';', '\t', ',', ';']);
  });

  test('without headings is parted by what most parts its first ten rows, as far as they stand in 20 000 characters', () => {
    const row = (note: string): string => `R,1,90,0.5,95,${note}`;
    const [plain, full] = [row('-'), row('a;b;c;d;e;f;g;h')];
    const parted = (rows: string[]): string => readTable(rows.join('\n'), { headings: false }).delimiter;
    expect(parted([...Array<string>(9).fill(plain), full])).toBe(';');
    expect(parted([...Array<string>(10).fill(plain), full])).toBe(',');
    expect(parted([row('x'.repeat(19_000)), full])).toBe(';');
    expect(parted([row('x'.repeat(20_000)), full])).toBe(',');
  });

  test('of one column is told so, one of two not', () => {
    const few = 'There is only one column. Cells must be separated by a comma, a semicolon or a tab.';
    expect(problems('eye\nR')).toContain(few);
    expect(problems('eye;age\nR;70')).not.toContain(few);
  });

  test('names the columns that it lacks, and each row the first of them', () => {
    const lacking = readTable('eye;flatBefore;meridianBefore;magnitudeAfter\nR;43;90;1');
    expect(lacking.problems.map(({ text }) => text)).toEqual(['No column is known to hold the steep reading before.', 'No column is known to hold the steep meridian after.']);
    expect(lacking.refused[0]!.faults.map(faultText)).toEqual(['the row: “R;43;90;1” is refused; allowed is a table that has the steep reading before.']);
    expect(problems('flatBefore;steepBefore;meridianBefore;meridianAfter\n')).toEqual(['No column is known to hold right or left eye.', 'No column is known to hold the astigmatism after.']);
  });

  test('without headings has the numbers of its columns in their place', () => {
    const columns: OutcomeColumn[] = ['eye', 'magnitudeBefore', 'meridianBefore', 'magnitudeAfter', 'meridianAfter'];
    const read = readTable('R;1;90;0.5;95\nL;1;10;0.5;5', { headings: false, mapping: Object.fromEntries(columns.map((column, index) => [column, index])) });
    expect(read.headings.map(({ text }) => text)).toEqual(['1', '2', '3', '4', '5']);
    expect(read.records.map(({ eye, line }) => [eye, line])).toEqual([['right', 1], ['left', 2]]);
  });

  test('whose steep column is the flatter one in most rows is told so', () => {
    const swapped: Cells = { flatBefore: '44.5', steepBefore: '43.25' };
    expect(problems(tableOf([swapped, swapped, {}]))).toEqual(['Rows in which the steep reading is flatter than the flat one: 2 of 3. Are the two columns swapped?']);
    expect(problems(tableOf([swapped, {}]))).toEqual([]);
  });
});

describe('a fault', () => {
  const fault = (some: Partial<Fault>): string => faultText({ column: null, heading: null, position: null, value: '', reason: { id: 'missing', values: {}, text: 'a value' }, ...some });

  test('is of the row, of a column by what it holds, or of a heading', () => {
    expect([fault({}), fault({ column: 'age' }), fault({ column: 'age', heading: 'Years' })].map((text) => text.split(':')[0])).toEqual(['the row', 'the age', 'Years']);
  });

  test('quotes up to 40 signs, and blanks as none', () => {
    expect([fault({ value: ' \t' }), fault({ value: 'x'.repeat(40) }), fault({ value: 'x'.repeat(41) })].map((text) => /^the row: (.*) is refused/.exec(text)![1])).toEqual(['none', `“${'x'.repeat(40)}”`, `“${'x'.repeat(40)}…”`]);
  });

  test('each column has words of its own that say when', () => {
    const words = OUTCOME_COLUMNS.map((column) => COLUMN_TEXT[column]);
    expect(new Set(words).size).toBe(OUTCOME_COLUMNS.length);
    for (const column of OUTCOME_COLUMNS) {
      expect(COLUMN_TEXT[column], column).toMatch(/^[a-z]{1,} .*[a-z]$/);
      expect([/before/.test(COLUMN_TEXT[column]), /after/.test(COLUMN_TEXT[column])], column).toEqual([column.endsWith('Before'), column.endsWith('After')]);
    }
  });
});

describe('the table out again', () => {
  const rows = (table: OutcomeTable): string[][] => Papa.parse<string[]>(exportTable(table)).data;

  test('has all that is wrong with a row in one cell, and nothing for blanks beyond the headings', () => {
    expect(rows(readTable(tableOf([{ age: '500', eye: 'both' }])))[1]!.at(-1)).toBe(
      'eye: “both” is refused; allowed is right or left, as a word or a usual abbreviation. age: “500” is refused; allowed is 1 to 120.');
    const [headings, row] = rows(readTable(`${tableOf([{ predictedMeridian: '90' }])}; ;;x;`));
    expect([row!.length, row![20]]).toEqual([headings!.length, '90 | x']);
    expect(rows(readTable(`${tableOf([{ predictedMeridian: '90' }])}; ;`))[1]![20]).toBe('90');
    expect(rows(readTable(tableOf([{ predictedMeridian: '90', age: '500' }])))[1]![20]).toBe('90');
  });

  test('refuses a decimal sign that is none', () => expect(() => exportTable(readTable(tableOf([{}])), { decimal: ';' as never })).toThrow('decimal: “;” is refused; allowed is ., ,.'));

  test('has a point where the table has points', () => expect(rows(readTable(tableOf([{}])))[1]!.find((cell) => /^\d[.,]\d{3}$/.test(cell))).toMatch(/\./));
});

describe('own figures', () => {
  const series = (n: number, flattened: (index: number) => number, torque: (index: number) => number) =>
    Array.from({ length: n }, (_, index) => recordOf(at(1, 90), add(flattening(flattened(index), 180), flattening(torque(index), 315))));
  const even = (index: number): number => 0.2 * Math.cos(2.4 * index);
  const odd = (index: number): number => 0.2 * Math.sin(2.4 * index);

  test('a few eyes far off are told with how far they pull the mean, others not', () => {
    expect(ownFigures(series(40, (index) => 0.3 + even(index), odd)).evidence.incision.notes).toEqual([]);
    const pulled = ownFigures(series(40, (index) => (index < 4 ? 4 : 0.3 + even(index)), odd)).evidence.incision;
    expect(pulled.notes.map(({ text }) => text)).toEqual([expect.stringMatching(/^Mean and spatial median differ by 0\.3\d D: a few eyes weigh heavily\. Look for slips among them\.$/)]);
    const turned = ownFigures(series(40, (index) => 0.3 + even(index), (index) => (index < 4 ? -4 : odd(index)))).evidence.incision;
    expect(turned.notes.map(({ id }) => id)).toEqual(['farEyes']);
  });

  test('what no plan accepts is told in the unit of the figure', () => {
    expect(ownFigures(series(40, (index) => 6 + even(index), odd)).evidence.incision.reason.text).toMatch(/^What 40 eyes come to, \d\.\d\d D, is outside of what a plan accepts \(-1\.00 D to 3\.00 D\)\. Check the table\.$/);
    const arced = Array.from({ length: 40 }, (_, index) => recordOf(at(2, 90), flattening(4.5 + even(index), 90), { arcs: { count: 1, site: 90, length: 60, method: 'blade' }, age: 65 }));
    expect(ownFigures(arced).evidence.arcs.reason.text).toMatch(/^What 40 eyes come to, \d{3} %, is outside of what a plan accepts \(0 % to 150 %\)\. Check the table\.$/);
  });

  test('what no plan accepts may lie below, or be the scatter of arcs, which is told in dioptres', () => {
    expect(ownFigures(series(40, (index) => -4 + even(index), odd)).evidence.incision.reason.text).toMatch(/^What 40 eyes come to, -\d\.\d\d D, is outside of what a plan accepts \(-1\.00 D to 3\.00 D\)\. Check the table\.$/);
    const arced = Array.from({ length: 40 }, (_, index) => recordOf(at(2, 90), flattening(0.85 + 20 * even(index), 90), { arcs: { count: 1, site: 90, length: 60, method: 'blade' }, age: 65 }));
    expect(ownFigures(arced).evidence.arcs.reason.text).toMatch(/^What 40 eyes come to, [2-9]\.\d\d D, is outside of what a plan accepts \(0\.00 D to 2\.00 D\)\. Check the table\.$/);
  });

  test('of arcs are given from the least number on, with their error, and without a note where all were cut alike', () => {
    const least = OUTCOME_CONSTANTS.leastEyes.value;
    const arced = (n: number) => Array.from({ length: n }, (_, index) => recordOf(at(2, 90), flattening(0.85 + even(index), 90), { arcs: { count: 1, site: 90, length: 60, method: 'blade' }, age: 65, incision: null }));
    expect(ownFigures(arced(least - 1)).arcs).toBeNull();
    const { arcs, evidence } = ownFigures(arced(least));
    expect(arcs).not.toBeNull();
    expect(evidence.arcs.notes).toEqual([]);
    // Error of the shrunk share: √(weight · variance of the mean share); the noise is that of two readings.
    const sampling = (arcs!.sdAlong ** 2 + 2 * 0.15 ** 2) / (least * 1.7 ** 2);
    expect(evidence.arcs.weight).toBeCloseTo(0.15 ** 2 / (0.15 ** 2 + sampling), 10);
    expect(evidence.arcs.error).toBeCloseTo(Math.sqrt(evidence.arcs.weight! * sampling), 10);
  });
});

test('the canonical names of this file are those of the columns', () => expect(Object.keys(EYE)).toEqual([...OUTCOME_COLUMNS]));
