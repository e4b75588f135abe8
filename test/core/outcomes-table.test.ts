import { describe, expect, test } from 'vitest';
import { faultText, ownFigures, readTable, readingTable, type OutcomeColumn, type OutcomeRecord, type OutcomeTable, type Progress } from '../../core/outcomes.js';
import { EYE, fixture, tableOf } from './outcomes-support.js';

const LANGUAGES = ['en', 'es', 'de', 'fr', 'ar', 'zh'];

const only = (eye: Partial<Record<OutcomeColumn, string>>, delimiter?: string): OutcomeTable => readTable(tableOf([eye], delimiter));

/** The one eye of a table that must be accepted. */
function accepted(eye: Partial<Record<OutcomeColumn, string>>): OutcomeRecord {
  const table = only(eye);
  expect(table.refused.flatMap(({ faults }) => faults.map(faultText))).toEqual([]);
  return table.records[0]!;
}

/** The faults of the one eye of a table that must be refused: column and reason. */
function faults(eye: Partial<Record<OutcomeColumn, string>>): string[] {
  const table = only(eye);
  expect(table.records).toEqual([]);
  expect(table.refused).toHaveLength(1);
  return table.refused[0]!.faults.map(({ column, reason }) => `${column} ${reason.id}`);
}

describe('the same eyes in six languages', () => {
  const english = readTable(fixture('en.csv'));

  test('in English', () => {
    expect(english.records).toEqual([
      {
        line: 3, label: 'Alder', eye: 'right', before: { magnitude: 1.25, meridian: 90 }, after: { magnitude: 0.75, meridian: 95 },
        readings: { flat: 43.25, steep: 44.5 }, incision: { site: 180, width: 2.4 }, arcs: null, lens: null, age: 71, predicted: { magnitude: 0.9, meridian: 90 },
      },
      {
        line: 4, label: 'Birch', eye: 'left', before: { magnitude: 2, meridian: 175 }, after: { magnitude: 1.25, meridian: 170 },
        readings: { flat: 42, steep: 44 }, incision: { site: 0, width: 2.75 }, arcs: { count: 1, site: 180, length: 45, method: 'blade' }, lens: null, age: 64, predicted: { magnitude: 1.1, meridian: 175 },
      },
      {
        line: 5, label: 'Cedar', eye: 'left', before: { magnitude: 0.5, meridian: 45 }, after: { magnitude: 0.25, meridian: 30 },
        readings: { flat: 43, steep: 43.5 }, incision: { site: 45, width: 2.2 }, arcs: null, lens: null, age: 58, predicted: null,
      },
      {
        line: 6, label: 'Dogwood', eye: 'right', before: { magnitude: 2.5, meridian: 100 }, after: { magnitude: 2, meridian: 98 },
        readings: { flat: 41.5, steep: 44 }, incision: { site: 180, width: 2.4 }, arcs: null, lens: { cylinder: 2.25, meridian: 100 }, age: 77, predicted: { magnitude: 0.25, meridian: 100 },
      },
      {
        line: 7, label: 'Elm', eye: 'right', before: { magnitude: 2, meridian: 85 }, after: { magnitude: 0.75, meridian: 80 },
        readings: { flat: 44, steep: 46 }, incision: { site: 180, width: 2.4 }, arcs: { count: 2, site: 85, length: 60, method: 'laser' }, lens: null, age: 69, predicted: { magnitude: 0.75, meridian: 85 },
      },
      {
        line: 8, label: 'Fir', eye: 'left', before: { magnitude: 0, meridian: 180 }, after: { magnitude: 0.25, meridian: 10 },
        readings: { flat: 43.75, steep: 43.75 }, incision: { site: 0, width: 2.4 }, arcs: null, lens: null, age: 81, predicted: { magnitude: 0, meridian: 180 },
      },
    ]);
  });

  test.each(LANGUAGES)('%s', (language) => {
    const table = readTable(fixture(`${language}.csv`));
    expect(table.headings.filter(({ column }) => column === null)).toEqual([]);
    expect(table.headings.map(({ column }) => column)).toEqual(english.headings.map(({ column }) => column));
    expect(table.records).toEqual(english.records);
    expect(table.refused).toEqual([]);
    expect(table.problems).toEqual([]);
    expect(table.notes.map(({ id }) => id)).toEqual(['above']);
    expect(table.decimal).toBe(['en', 'zh'].includes(language) ? '.' : ',');
    expect(table.delimiter).toBe({ en: ',', zh: ',', ar: '\t' }[language] ?? ';');
  });
});

describe('delimited text', () => {
  const rows = [{}, { eye: 'left', label: 'Birch; "the" tall,\tone' }];
  const quoted = (delimiter: string, newline: string): string =>
    tableOf([rows[0]!, { ...rows[1], label: `"${rows[1]!.label!.replaceAll('"', '""')}"` }], delimiter).replaceAll('\n', newline);

  test.each([[',', '\n'], [';', '\n'], ['\t', '\n'], [';', '\r\n'], [',', '\r\n'], ['\t', '\r']])('parted by %j, lines by %j', (delimiter, newline) => {
    const table = readTable(quoted(delimiter, newline));
    expect(table.records.map(({ label, line }) => [label, line])).toEqual([['Alder', 2], [rows[1]!.label, 3]]);
    expect(table.records[1]!.age).toBe(71);
    expect(table.delimiter).toBe(delimiter);
  });

  test('with a byte-order mark, an announced delimiter, blank lines and rows of nothing but delimiters', () => {
    const text = tableOf([{}, { label: 'Birch' }]).split('\n');
    const table = readTable(`\uFEFFsep=;\n${text[0]}\n\n${text[1]}\n;;;\n   \n${text[2]}\n\n`);
    expect(table.records.map(({ label, line }) => [label, line])).toEqual([['Alder', 4], ['Birch', 7]]);
    expect([table.rows, table.blankLines]).toEqual([2, 4]);
  });

  test('counts the lines within a quoted cell', () => {
    const table = readTable(tableOf([{ label: '"two\nlines"' }, { age: '500' }]));
    expect(table.records.map(({ label, line }) => [label, line])).toEqual([['two\nlines', 2]]);
    expect(table.refused.map(({ line, lastLine }) => [line, lastLine])).toEqual([[4, 4]]);
  });

  test('a quotation mark without a partner is told, with the lines that it has swallowed', () => {
    const table = readTable(tableOf([{}, { label: '"Birch' }, {}, {}]));
    expect(table.records).toHaveLength(1);
    expect(table.refused.map(({ line, lastLine, faults: [fault] }) => [line, lastLine, fault!.reason.id])).toEqual([[3, 5, 'quotes']]);
    const head = readTable(`"${tableOf([{}, {}])}`);
    expect(head.problems.map(({ id }) => id)).toContain('brokenHeadings');
  });

  test('a decimal comma that ends a cell makes the row refused, not another row', () => {
    const table = readTable(tableOf([{}, { flatBefore: '43,25' }], ','));
    expect(table.records).toHaveLength(1);
    expect(table.refused[0]!.faults.map(({ reason }) => reason.text)).toEqual([
      'a row with as many cells as there are headings (21); this one has 22, perhaps because a decimal comma ends a cell',
    ]);
  });

  test('no cell too many, not even an empty one, and none too few', () => {
    const text = tableOf([{}, {}, {}]).split('\n');
    expect(readTable(`${text[0]}\n${text[1]};\n${text[2]}\n${text[3]!.slice(0, -1)}`).refused.map(({ line, faults: [fault] }) => [line, fault!.reason.id])).toEqual([[2, 'cells'], [4, 'cells']]);
    expect(readTable(text.map((line) => `${line};;`).join('\n')).records).toHaveLength(3);
  });

  test('letters that cannot be read are told', () => {
    expect(readTable(tableOf([{ label: 'B\uFFFDume' }])).problems.map(({ id }) => id)).toEqual(['encoding']);
  });
});

describe('numbers', () => {
  test.each([
    ['43,25', 43.25], ['43.25', 43.25], ['+43.25', 43.25], ['43.25 D', 43.25], ['43,25 dpt', 43.25], ['٤٣٫٢٥', 43.25], ['۴۳٫۲۵', 43.25],
    ['４３．２５', 43.25], ['43', 43], ['43.', 43], ['7.80', 337.5 / 7.8], ['7,80 mm', 337.5 / 7.8], [' 43.25 ', 43.25],
  ])('a reading of %j', (flatBefore, value) => {
    const { readings } = accepted({ flatBefore, ...(value < 43.26 && value > 43 ? {} : value === 43 ? {} : { steepBefore: '7.6' }) });
    expect(readings!.flat).toBeCloseTo(value, 12);
  });

  test('a comma is a decimal sign with any delimiter, for nothing here reaches 1000', () => {
    const table = readTable(tableOf([{ magnitudeBefore: '"1,234"', flatBefore: '', steepBefore: '' }], ','));
    expect(table.records[0]!.before).toEqual({ magnitude: 1.234, meridian: 90 });
    expect(table.decimal).toBe('mixed');
    expect(table.notes.map(({ id }) => id)).toEqual(['mixedDecimals']);
  });

  test.each(['1.234,5', '1,234.5', '1 234', '4e1', '0x2b', 'Infinity', 'NaN', '43..25', '43;', '.', '43.25 x', '--43'])('%j is none', (age) => {
    expect(readTable(tableOf([{ age: `"${age}"` }])).refused[0]!.faults.map(({ column, reason }) => `${column} ${reason.id}`)).toEqual(['age number']);
  });

  test('of the wrong unit are refused', () => {
    expect(faults({ incisionWidth: '2.4 D' })).toEqual(['incisionWidth unit']);
    expect(faults({ meridianBefore: '90 mm' })).toEqual(['meridianBefore unit']);
    expect(accepted({ meridianBefore: '90°', incisionWidth: '2.4 mm', age: '71 years' }).before.meridian).toBe(90);
  });

  test('radii are turned into dioptres, the flat one being the longer', () => {
    const { readings, before } = accepted({ flatBefore: '7.80', steepBefore: '7.60', flatAfter: '7.75', steepAfter: '7.70' });
    expect(readings!.steep).toBeCloseTo(337.5 / 7.6, 12);
    expect(before.magnitude).toBeCloseTo(337.5 / 7.6 - 337.5 / 7.8, 12);
  });

  test('a row has one unit, and that of the heading where it names one', () => {
    expect(faults({ flatBefore: '7.80', steepBefore: '44.5' })).toEqual(['steepBefore unitsMixed']);
    const named = tableOf([{}, { flatBefore: '7.80', steepBefore: '7.6' }]).replace('flatBefore', 'flat K before (D)');
    expect(readTable(named).refused.map(({ line, faults: [fault] }) => [line, faultText(fault!)])).toEqual([
      [3, 'flat K before (D): “7.80” is refused; allowed is 28 to 75 D.'],
    ]);
  });

  test('0 is 180 for a meridian and 0 for a site', () => {
    const record = accepted({ meridianBefore: '0', incisionSite: '360' });
    expect([record.before.meridian, record.incision!.site]).toEqual([180, 0]);
  });
});

describe('rows that are refused', () => {
  test.each<[string, Partial<Record<OutcomeColumn, string>>, string[]]>([
    ['no eye', { eye: '' }, ['eye missing']],
    ['both eyes', { eye: 'OU' }, ['eye eye']],
    ['a contradictory eye', { eye: 'right left' }, ['eye eye']],
    ['swapped readings', { flatBefore: '44.5', steepBefore: '43.25' }, ['steepBefore swapped']],
    ['swapped radii', { flatAfter: '7.6', steepAfter: '7.8', flatBefore: '', steepBefore: '', magnitudeBefore: '1' }, ['steepAfter swapped']],
    ['one reading', { steepBefore: '' }, ['steepBefore missing']],
    ['no readings', { flatBefore: '', steepBefore: '' }, ['magnitudeBefore missing']],
    ['no meridian', { meridianBefore: '' }, ['meridianBefore missing']],
    ['a meridian beyond 180', { meridianAfter: '190' }, ['meridianAfter range']],
    ['a minus cylinder', { flatAfter: '', steepAfter: '', magnitudeAfter: '-0.75' }, ['magnitudeAfter negative']],
    ['a stated astigmatism that contradicts the readings', { magnitudeBefore: '2.5' }, ['magnitudeBefore differs']],
    ['a meridian without astigmatism', { flatBefore: '', steepBefore: '', magnitudeBefore: '' }, ['magnitudeBefore missing']],
    ['a wide incision', { incisionWidth: '6' }, ['incisionWidth range']],
    ['a site that is no place', { incisionSite: 'nose temple' }, ['incisionSite number']],
    ['arcs without a length', { arcCount: '1', arcSite: '90' }, ['arcLength missing']],
    ['arcs without a number', { arcCount: '', arcLength: '45', arcSite: '90' }, ['arcCount missing']],
    ['arcs without a site', { arcCount: '2', arcLength: '45' }, ['arcSite missing']],
    ['one and a half arcs', { arcCount: '1.5', arcLength: '45', arcSite: '90' }, ['arcCount count']],
    ['three arcs', { arcCount: '3', arcLength: '45', arcSite: '90' }, ['arcCount range']],
    ['arcs cut by nobody knows what', { arcCount: '1', arcLength: '45', arcSite: '90', arcMethod: 'scissors' }, ['arcMethod method']],
    ['a lens without a meridian', { lensCylinder: '2' }, ['lensMeridian missing']],
    ['a minus reading', { flatBefore: '-43.25 D' }, ['flatBefore range']],
    ['a minus lens', { lensCylinder: '-2', lensMeridian: '90' }, ['lensCylinder negative']],
    ['a plan without astigmatism', { predictedMeridian: '90' }, ['predictedMeridian together']],
    ['a plan without meridian', { predictedMagnitude: '0.5' }, ['predictedMeridian missing']],
    ['an age of 0', { age: '0' }, ['age range']],
    ['all that is wrong with it', { eye: 'x', age: '0', meridianAfter: '900' }, ['eye eye', 'meridianAfter range', 'age range']],
  ])('%s', (_, eye, expected) => expect(faults(eye)).toEqual(expected));

  // The readings of this eye are 1.25 D apart. 1.55 is 0.3 off to everyone but the computer.
  test.each([['1.55', 0], ['0.95', 0], ['1.5', 0], ['1.56', 1], ['0.94', 1]])('a stated astigmatism of %s D beside readings 1.25 D apart: %d refused', (magnitudeBefore, refused) => {
    expect(readTable(tableOf([{ magnitudeBefore }])).refused).toHaveLength(refused);
  });

  test('say line, column, value and what would be allowed', () => {
    const { refused } = readTable(tableOf([{}, { meridianAfter: '190' }]));
    expect(refused).toEqual([{
      line: 3, lastLine: 3, cells: expect.arrayContaining(['190']),
      faults: [{ column: 'meridianAfter', heading: 'meridianAfter', position: 10, value: '190', reason: expect.objectContaining({ id: 'range', text: '0 to 180 °'.replace(' °', '°') }) }],
    }]);
    expect(faultText(refused[0]!.faults[0]!)).toBe('meridianAfter: “190” is refused; allowed is 0 to 180°.');
  });

  test('most of them swapped: the columns are', () => {
    const swapped = { flatBefore: '44.5', steepBefore: '43.25' };
    expect(readTable(tableOf([swapped, swapped, {}])).problems.map(({ id }) => id)).toEqual(['swappedColumns']);
    expect(readTable(tableOf([swapped, {}, {}])).problems).toEqual([]);
  });
});

describe('what is assumed is told', () => {
  const ids = (eyes: Partial<Record<OutcomeColumn, string>>[]) => readTable(tableOf(eyes)).notes.map(({ id }) => id);

  test('width, site, method', () => {
    expect(ids([{ incisionWidth: '' }])).toEqual(['widthAssumed']);
    expect(ids([{ incisionSite: '' }])).toEqual(['siteUnknown']);
    expect(ids([{ arcCount: '1', arcLength: '45', arcSite: '90' }])).toEqual(['methodAssumed']);
    expect(readTable(tableOf([{ incisionWidth: '' }])).notes[0]!.text).toBe('Eyes without a width of the incision: 1. 2.4 mm is assumed.');
  });

  test('the same eye twice; the fellow eye and eyes without a label are others', () => {
    const table = readTable(tableOf([{ label: 'A', age: '500' }, { label: 'A' }, { label: ' A ', flatAfter: '43.75' }, { label: 'A', eye: 'left', incisionSite: '0' }, { label: '' }, { label: '' }]));
    expect(table.records.map(({ line }) => line)).toEqual([3, 5, 6, 7]);
    expect(table.refused.map(({ line, faults }) => [line, faults.map(({ reason }) => reason.id)])).toEqual([[2, ['range']], [4, ['again']]]);
    expect(table.refused[1]!.faults.map(faultText)).toEqual(['label: “ A ” is refused; allowed is each eye once, and line 3 has the same label and eye.']);
    expect(table.notes.map(({ text }) => text)).toEqual(['Rows with the label and the eye of an earlier one: 1. Only the first of them is counted.']);
  });

  test('an eye that stands there many times weighs no more in the figures', () => {
    const eyes = Array.from({ length: 24 }, (_, index) => ({ label: `${index}`, flatAfter: `${43 + (index % 5) / 4}` }));
    const [once, often] = [eyes, [...eyes, ...Array.from({ length: 50 }, () => eyes[3]!)]].map((rows) => readTable(tableOf(rows)).records);
    expect(often).toEqual(once);
    expect(ownFigures(often!).incision).toEqual(ownFigures(once!).incision);
    expect(ownFigures(once!).incision!.eyes).toBe(24);
  });

  test('entries at the nose, where sites may be meridians', () => {
    expect(ids(Array.from({ length: 4 }, (_, index) => ({ label: `${index}`, eye: index % 2 ? 'left' : 'right' })))).toEqual([]);
    expect(ids(Array.from({ length: 8 }, (_, index) => ({ label: `${index}`, eye: index % 2 ? 'left' : 'right' })))).toEqual(['nasal']);
  });

  test('no arcs', () => {
    expect(readTable('eye;flatBefore;steepBefore;meridianBefore;flatAfter;steepAfter;meridianAfter\nR;43;44;90;43;44;90').notes.map(({ id }) => id)).toEqual(['siteUnknown', 'noArcs']);
  });
});

describe('step by step', () => {
  const text = tableOf(Array.from({ length: 5000 }, (_, index) => ({ label: `eye ${index}`, age: index % 10 ? '60' : '600' })));

  test('tells how far it has come and ends with the same table', () => {
    const reading = readingTable(text);
    const seen: Progress[] = [];
    let step = reading.next();
    for (; !step.done; step = reading.next()) seen.push(step.value);
    expect(seen.map(({ rows }) => rows)).toEqual([1000, 2000, 3000, 4000, 5000]);
    for (const [index, { share }] of seen.entries()) expect(share).toBeGreaterThan(index === 0 ? 0 : seen[index - 1]!.share);
    expect(seen.at(-1)!.share).toBeLessThanOrEqual(1);
    expect(step.value).toEqual(readTable(text));
    expect([step.value.records.length, step.value.refused.length]).toEqual([4500, 500]);
  });

  test('can be left off', () => {
    const reading = readingTable(text);
    reading.next();
    expect(reading.return(undefined as never).done).toBe(true);
    expect(reading.next().done).toBe(true);
  });
});

test('the eye of these tests is accepted', () => {
  expect(accepted({}).label).toBe(EYE.label);
});

test('an eye that is not counted again is not among those of which something is assumed', () => {
  const { records, notes } = readTable(tableOf([{ incisionSite: '' }, { label: 'Alder', incisionSite: '' }]));
  expect(records).toHaveLength(1);
  expect(notes.map(({ text }) => text)).toEqual(expect.arrayContaining([
    'Eyes without a site of the incision: 1. They tell nothing about its flattening.', 'Rows with the label and the eye of an earlier one: 1. Only the first of them is counted.',
  ]));
});
