/** That the tables of accuracy count what they say they count. */
import { describe, expect, test } from 'vitest';
import { figure } from '../accuracy/print.js';
import { belongsTo, rowOf } from '../accuracy/rows.js';
import { BY_SECOND_METHOD, CHECKED } from '../accuracy/tables.js';
import { STATUS, VALUES, type Compared } from '../accuracy/values.js';
import { LENSES, NOT_COUNTED, SCHEMATIC, SIGHT, STATISTICS, WORKED, type PublishedSource } from '../fixtures/sources.js';
import { compute, entries as clinical } from './clinical-readers.js';
import { entries as tracedToo } from './eye-readers.js';
import { entries as seen } from './sight-readers.js';
import { entries as published } from './published.js';
import { entries as series } from './outcomes-readers.js';
import { elsewhere } from './elsewhere.js';

const ROWS = [...LENSES, ...SCHEMATIC, ...STATISTICS, ...SIGHT, ...WORKED];

/** Entries that were read but of which a row says less, with the reason. */
const SAID_TO_BE_LESS: Record<string, string> = {
  'eye-gullstrand-cornea.P1': 'read as 48.8 only',
  'incision-B.mag': 'the direction was read, the size chosen',
  'incision-B.meridian': 'a direction in words, against the rule',
};

describe('what is counted', () => {
  test('is every published number that the core calculates, once', () => {
    for (const value of VALUES) {
      const counted = [...ROWS, ...NOT_COUNTED].filter((row) => belongsTo(row, value));
      expect(counted, `${value.id}.${value.field}`).toHaveLength(1);
    }
  });

  test('leaves no number of a fixture out, but those that belong elsewhere', () => {
    const compared = new Set(VALUES.map(({ id, field }) => `${id}.${field}`));
    const drawn = (id: string): boolean => /belong to what is drawn|plane geometry|tolerances are not used|a sentence|stated as an input/.test(elsewhere.get(id) ?? '');
    for (const { id, expected } of [...published, ...tracedToo, ...seen, ...series]) {
      for (const [field, value] of Object.entries(expected)) {
        const numbers = [value].flat().every((part) => typeof part === 'number');
        if (numbers && !drawn(id) && !drawn(`${id}.${field}`)) expect(compared, `${id}.${field}`).toContain(`${id}.${field}`);
      }
    }
  });

  test.each(ROWS.map((row) => [`${row.source}, ${row.what}, ${row.unit}`, row] as const))('%s: printed to the digit that is said', (_, row) => {
    for (const { id, field, published: value } of rowOf(row).values) {
      const steps = value / row.step;
      expect(Math.abs(steps - Math.round(steps)), `${id}.${field}: ${value} in steps of ${row.step}`).toBeLessThan(1e-5);
    }
  });

  test('no row says more of its source than the fixture does', () => {
    for (const row of ROWS) {
      const read = row.known === 'read' || row.known === 'quoted';
      for (const { id, field } of rowOf(row).values) {
        const less = Object.hasOwn(SAID_TO_BE_LESS, `${id}.${field}`);
        expect(STATUS.get(id) === 'read' && !less, `${id}.${field}`).toBe(read);
      }
    }
  });

  test('an error beyond rounding has its reason, and no other row has one', () => {
    for (const { source, what, beyond, note } of [...CHECKED, ...BY_SECOND_METHOD]) expect(beyond.length > 0, `${source}, ${what}`).toBe(note !== undefined);
  });

  test('all clinical figures can be compared', () => {
    for (const entry of clinical) expect(compute(entry), entry.id).toBeGreaterThan(0);
    expect(new Set(clinical.map(({ id }) => id)).size).toBe(clinical.length);
  });
});

describe('the errors of a source', () => {
  const source: PublishedSource = { ids: /^invented/, fields: ['K'], source: 'invented', known: 'read', what: 'invented', unit: 'D', step: 0.1 };
  const value = (id: string, calculated: number, field = 'K'): Compared => ({ id, field, published: 1, calculated, error: Math.abs(calculated - 1) });

  test('are those of its own values', () => {
    const row = rowOf(source, [value('invented-1', 1.02), value('invented-2', 0.9), value('invented-2', 7, 'other'), value('another', 5)]);
    expect(row.values).toHaveLength(2);
    expect(row.mean).toBeCloseTo(0.06, 12);
    expect(row.worst).toBeCloseTo(0.1, 12);
    expect(row.beyond.map(({ id }) => id)).toEqual(['invented-2']);
  });

  test('may be half a digit, and no more', () => {
    expect(rowOf(source, [value('invented', 1.05)]).beyond).toHaveLength(0);
    expect(rowOf(source, [value('invented', 1.0501)]).beyond).toHaveLength(1);
  });

  test('of a source without values are not nought', () => expect(() => rowOf(source, [])).toThrow(/No published figure/));

  test.each([[0, '0'], [1.1e-14, '0'], [0.00384, '0.0038'], [0.5, '0.5'], [364, '360'], [4.83e-9, '4.8·10⁻⁹'], [8.6e-10, '8.6·10⁻¹⁰']])('%d is written %s', (error, text) => {
    expect(figure(error)).toBe(text);
  });
});
