/** Any text at all: nothing throws, nothing is lost, nothing comes out that a plan would refuse. */
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { evaluatePlan } from '../../core/index.js';
import {
  OUTCOME_COLUMNS, eyeResult, exportTable, planOf, readTable, summarise, vectorsOf, type OutcomeColumn, type OutcomeTable,
} from '../../core/outcomes.js';
import { EYE, numbersIn } from './outcomes-support.js';

const RUNS = { seed: 20240229, numRuns: 20_000 } as const;
const counted = { tables: 0, rows: 0, records: 0, refused: 0 };

/** What must hold of every table, whatever the text. */
function sound(table: OutcomeTable): void {
  counted.tables += 1;
  counted.rows += table.rows;
  counted.records += table.records.length;
  counted.refused += table.refused.length;
  expect(table.records.length + table.refused.length).toBe(table.rows);
  expect(table.cells).toHaveLength(table.records.length);
  for (const { faults, line, lastLine } of table.refused) {
    expect(faults.length).toBeGreaterThan(0);
    expect(lastLine).toBeGreaterThanOrEqual(line);
  }
  const lines = [...table.records, ...table.refused].map(({ line }) => line);
  expect(new Set(lines).size).toBe(lines.length);
  expect([...numbersIn(table.records)].every(Number.isFinite)).toBe(true);
  // Throws for whatever a plan would refuse.
  for (const record of table.records) evaluatePlan(planOf(record));
}

const junk = fc.constantFrom('', ' ', '"', '""', ',', ';', '\t', '\n', '\r\n', '-', '=1+1', '٤٣', '１', '\uFEFF', '\0', 'NaN', '1e309', '1,5', '1.5', '90°', 'R', 'OS', 'OU', '右', 'يسار', '\u2028', '😀');
const heading = fc.constantFrom(...OUTCOME_COLUMNS, 'Alter', 'axe avant', 'K1 pre', '术前散光', 'x', '', '__proto__', 'constructor');
const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.array(fc.oneof(junk, heading, fc.string({ maxLength: 4 })), { maxLength: 120 }).map((parts) => parts.join('')),
  fc.array(fc.array(fc.oneof(junk, heading), { maxLength: 8 }).map((cells) => cells.join(';')), { maxLength: 12 }).map((rows) => rows.join('\n')),
);

describe('any text', () => {
  test('is read without an error, and every row is a record or refused', () => fc.assert(fc.property(anyText, (text) => sound(readTable(text))), RUNS), 120_000);

  test('even with a mapping that makes no sense', () => {
    const mapping = fc.dictionary(fc.constantFrom<OutcomeColumn>(...OUTCOME_COLUMNS), fc.integer({ min: 0, max: 20 }));
    const rows = fc.array(fc.array(fc.oneof(junk, fc.integer({ min: -9, max: 199 }).map(String)), { minLength: 21, maxLength: 21 }).map((cells) => cells.map((cell) => cell.replace(/[;\n\r"]/g, '')).join(';')), { minLength: 1, maxLength: 6 });
    fc.assert(fc.property(rows, mapping, fc.boolean(), (lines, chosen, headings) => sound(readTable(lines.join('\n'), { mapping: chosen, headings, delimiter: ';' }))), { ...RUNS, numRuns: 5000 });
  }, 120_000);
});

/** Cells of which most are fine, so that eyes are accepted; without quotation marks and line ends, so that rows can be counted. */
const cellOf = (column: OutcomeColumn): fc.Arbitrary<string> => fc.oneof(
  { weight: 150, arbitrary: column === 'label' ? fc.integer({ min: 1, max: 60 }).map(String) : fc.constant(EYE[column]) },
  { weight: 4, arbitrary: fc.integer({ min: -20, max: 400 }).map((value) => String(value / 4)) },
  { weight: 1, arbitrary: fc.oneof(junk, fc.string({ maxLength: 6 })).map((cell) => cell.replace(/["\r\n;]/g, '')) },
);
const row = fc.tuple(...OUTCOME_COLUMNS.map(cellOf)).map((cells) => cells.join(';'));

describe('tables with a few slips', () => {
  test('have as many rows as there are lines that are not blank', () =>
    fc.assert(fc.property(fc.array(fc.oneof({ weight: 9, arbitrary: row }, { weight: 1, arbitrary: fc.constantFrom('', ';;', '  ') }), { maxLength: 12 }), (lines) => {
      const table = readTable([OUTCOME_COLUMNS.join(';'), ...lines].join('\n'));
      sound(table);
      const filled = lines.filter((line) => line.replace(/[;\s]/g, '') !== '').length;
      expect(table.rows).toBe(filled);
      expect(table.blankLines).toBe(lines.length - filled - (lines.at(-1) === '' ? 1 : 0));
    }), { ...RUNS, numRuns: 4000 }), 120_000);

  test('come to finite figures, and out again as they went in', () =>
    fc.assert(fc.property(fc.array(row, { minLength: 1, maxLength: 8 }), (lines) => {
      const table = readTable([OUTCOME_COLUMNS.join(';'), ...lines].join('\n'));
      const results = table.records.map((record) => eyeResult(record));
      expect([...numbersIn(results)].every(Number.isFinite)).toBe(true);
      for (const which of ['induced', 'atIncision', 'remaining', 'error'] as const) {
        expect([...numbersIn(summarise(vectorsOf(results, which)))].every(Number.isFinite)).toBe(true);
      }
      const again = readTable(exportTable(table));
      expect(again.rows).toBe(table.rows);
      expect(again.records.map(({ label: _, line: __, ...rest }) => rest)).toEqual(table.records.map(({ label: _, line: __, ...rest }) => rest));
    }), { ...RUNS, numRuns: 2000 }), 120_000);
});

afterAll(() => {
  console.log(`${counted.tables} tables, ${counted.rows} rows: ${counted.records} eyes, ${counted.refused} refused`);
  expect(counted.records).toBeGreaterThan(10_000);
  expect(counted.refused).toBeGreaterThan(10_000);
});
