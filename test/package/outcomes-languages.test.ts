/** Tables of results in each language: headings as the library calls them are understood, and a saved table is read again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COLUMN_TEXT, EXPORT_HEADINGS, OUTCOME_COLUMNS, OUTCOME_TEXT, exportTable, readTable } from '../../core/outcomes.js';
import type { OutcomeColumn } from '../../core/outcomes.js';
import '../../components/internal/language/catalogue.js';
import type { Catalogue } from '../../components/internal/language/catalogue.js';
import { languageOf, onMessages } from '../../components/internal/language/language.js';
import { BUILT_IN } from '../../components/internal/language/languages/built-in.js';
import { refusalWords } from '../../components/internal/refusal.words.js';
import { sharedWords } from '../../components/internal/words.js';
import { exportWords } from '../../components/outcomes/outcomes.export-words.js';
import { exportIn } from '../../components/outcomes/outcomes.export.js';
import { EYE } from '../core/outcomes-support.js';

const ENGLISH: Catalogue = { outcomeColumns: COLUMN_TEXT, outcomeHeadings: EXPORT_HEADINGS, outcomeTexts: OUTCOME_TEXT, refusals: refusalWords.en, shared: sharedWords.en, entry: { blade: 'Blade', laser: 'Laser' } };

const catalogues: [string, Catalogue][] = [['en', ENGLISH]];
for (const [lang, load] of Object.entries(BUILT_IN)) {
  catalogues.push([lang, (await load()).catalogue]);
  await arrived(lang);
}

/** Waits until texts of the language are served. */
async function arrived(lang: string): Promise<void> {
  while (languageOf(lang).lang !== lang) await new Promise<void>((resolve) => {
    const stop = onMessages(() => (stop(), resolve()));
  });
}

/** Columns with figures: one taken for another would be a figure of something else. */
const MEASURED = OUTCOME_COLUMNS.filter((column) => !['label', 'eye', 'age'].includes(column));

/** Cells that differ from those of every eye. */
type Cells = Partial<Record<OutcomeColumn, string>>;

const headingOf = (text: string) => readTable(`${text}\tz\n1\t2`, { delimiter: '\t' }).headings[0]!;

describe('headings as the library writes them', () => {
  const written = catalogues.flatMap(([lang, catalogue]) => OUTCOME_COLUMNS.map((column) => ({ lang, column, text: catalogue['outcomeColumns']![column]! })));

  it('name their column in each language, and no other', () => {
    expect(written).toHaveLength(6 * OUTCOME_COLUMNS.length);
    for (const { lang, column, text } of written) expect([lang, text, headingOf(text).column]).toEqual([lang, text, column]);
  });

  it('two of them as one heading, of one language or of two, are taken for neither', () => {
    const measured = written.filter(({ column }) => MEASURED.includes(column));
    fc.assert(fc.property(fc.constantFrom(...measured), fc.constantFrom(...measured), fc.constantFrom(' ', ' / ', ' (', ', ', '-'), (first, second, between) => {
      fc.pre(first.column !== second.column);
      // "Expected after the operation" is what was expected.
      fc.pre(![first, second].some(({ column }) => column.startsWith('predicted')) || ![first, second].some(({ column }) => column.endsWith('After')));
      const text = first.text + between + second.text;
      expect([text, headingOf(text).column]).toEqual([text, null]);
    }), { numRuns: 5000, seed: 22 });
  });
});

describe.each(catalogues)('%s', (lang, catalogue) => {
  const columns = catalogue['outcomeColumns']!;
  const right = catalogue['shared']!['rightEye']!;
  const arcs: Cells = { arcCount: '2', arcLength: '40', arcSite: '90' };

  /** A table in the words of the language. */
  function tableOf(eyes: readonly Cells[], headings: Readonly<Record<string, string>> = columns): string {
    const rows = eyes.map((eye, index) => OUTCOME_COLUMNS.map((column) => ({ ...EYE, eye: right, label: `${index + 1}`, ...eye })[column]));
    return [OUTCOME_COLUMNS.map((column) => headings[column]!), ...rows].map((cells) => cells.join('\t')).join('\n');
  }

  const saved = (text: string): string => exportTable(readTable(text), exportIn(exportWords(languageOf(lang))));

  it('the names of the columns are understood as headings, without a doubt', () => {
    const { headings, problems } = readTable(tableOf([{}]));
    expect(headings.map(({ column, why }) => [column, why])).toEqual(OUTCOME_COLUMNS.map((column) => [column, null]));
    expect(problems).toEqual([]);
  });

  it('headings of what is added to a saved table are taken for no column', () => {
    const { headings } = readTable([...Object.values(columns), ...Object.values(catalogue['outcomeHeadings']!)].join('\t'));
    expect(headings.slice(OUTCOME_COLUMNS.length).map(({ text, column, why }) => [text, column, why])).toEqual(Object.values(catalogue['outcomeHeadings']!).map((text) => [text, null, null]));
  });

  it.each(['blade', 'laser'] as const)('eyes and %s are understood as the library calls them', (method) => {
    const { records, refused } = readTable(tableOf([{ ...arcs, arcMethod: catalogue['entry']![method]! }, { ...arcs, eye: catalogue['shared']!['leftEye']! }]));
    expect(refused).toEqual([]);
    expect(records.map(({ eye }) => eye)).toEqual(['right', 'left']);
    expect(records[0]!.arcs!.method).toBe(method);
  });

  it('a saved table is read again as it was, and says in the language why a row is not counted', () => {
    const text = tableOf([{}, { age: '500' }, { meridianBefore: '' }, { eye: catalogue['shared']!['leftEye']! }]);
    const table = readTable(text);
    const out = saved(text);
    const again = readTable(out);
    expect(again.records).toEqual(table.records);
    expect(again.records).toHaveLength(2);
    expect([again.problems, again.refused.map(({ line, faults }) => [line, faults])]).toEqual([[], table.refused.map(({ line, faults }) => [line, faults])]);
    const [headings, ...rows] = out.slice(1).split(/\r?\n/).filter(Boolean).map((row) => row.split('\t'));
    expect(headings!.slice(-11)).toEqual(Object.values(catalogue['outcomeHeadings']!));
    // Once more, and nothing is added to what was added that could be taken for a measurement.
    expect(readTable(saved(out)).records).toEqual(table.records);
    expect(rows.map((row) => row.at(-1) === '')).toEqual([true, false, false, true]);
    expect(rows[1]!.at(-1)).toContain(columns['age']!);
    expect(rows[1]!.at(-1)).toContain('500');
    expect(rows[2]!.at(-1)).toContain(catalogue['refusals']!['none']!);
    expect(rows[2]!.at(-1)).toContain(catalogue['outcomeTexts']!['missing']!);
    expect(rows[2]!.at(-1)).not.toMatch(/\{|\$/);
  });

  it('a row that is wrong as a whole is called one', () => {
    expect(saved(`${tableOf([{}])}\nx`).trimEnd().split('\n').at(-1)).toContain(`${catalogue['outcomeTexts']!['wholeRow']!}`);
  });
});
