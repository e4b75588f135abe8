import { afterAll, describe, expect, test } from 'vitest';
import { OUTCOME_CONSTANTS, outcomeReferences } from '../../core/outcomes.js';
import { references } from '../../core/references.js';
import { compute, entries } from './outcomes-readers.js';

const compared = new Map<string, { error: number; allowed: number }>();

describe('published figures on series of eyes', () => {
  test.each(entries.map((entry) => [entry.id, entry] as const))('%s', (id, entry) => {
    const ours = compute(entry);
    expect(ours, 'no reader for this entry').not.toBeNull();
    expect(Object.keys(ours!).sort()).toEqual(Object.keys(entry.expected).sort());
    for (const [field, value] of Object.entries(entry.expected)) {
      const allowed = typeof entry.tolerance === 'number' ? entry.tolerance : entry.tolerance[field]!;
      expect(allowed, `tolerance of ${field}`).toBeGreaterThan(0);
      const error = Math.abs(ours![field]! - (value as number));
      expect(error, `${field}: ${ours![field]} against ${String(value)}`).toBeLessThanOrEqual(allowed);
      compared.set(`${id}.${field}`, { error, allowed });
    }
  });

  test('none was left out; with those in the other fixture topic 9 is complete', () => {
    expect(entries).toHaveLength(11);
    expect(compared.size).toBe(8 + 3 * 3);
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
    for (const entry of entries) if (entry.status === 'read') expect(entry, entry.id).toHaveProperty('address', expect.stringMatching(/^https?:/));
  });

  afterAll(() => {
    for (const [field, { error, allowed }] of compared) console.log(`${field.padEnd(36)} ${error.toExponential(1)}  allowed ${allowed.toExponential(1)}`);
  });
});

describe('constants and sources', () => {
  test.each(Object.entries(OUTCOME_CONSTANTS))('%s has a number, a unit, a source and a note', (_, { value, unit, source, note }) => {
    expect(Number.isFinite(value)).toBe(true);
    expect(unit).toBeTypeOf('string');
    expect(note.trim()).not.toBe('');
    expect(source.length).toBeGreaterThan(0);
    for (const id of source) expect(Object.keys(references)).toContain(id);
  });

  test.each(Object.entries(outcomeReferences))('%s says whether it was read, and what is taken from it', (_, record) => {
    expect(['read', 'memory']).toContain(record.status);
    for (const part of [record.authors, record.title, record.journal, record.use]) expect(part.trim()).not.toBe('');
  });
});
