import { afterAll, describe, expect, test } from 'vitest';
import { elsewhere } from './elsewhere.js';
import { compute, distance, entries, isDirection, type Entry } from './published.js';

/** Errors of a group of compared values; the worst one is the one that uses up most of its tolerance. */
interface Tally {
  count: number;
  total: number;
  worst: number;
  allowed: number;
}

const tallies = new Map<string, Tally>();

const allowedFor = ({ tolerance }: Entry, field: string): number | undefined =>
  typeof tolerance === 'number' ? tolerance : tolerance[field];

const STATUS = { read: 'read', 'formula read, number computed': 'formula read', 'memory or identity': 'memory' } as const;

/** Degrees are tallied apart from everything else, so that a mean error means something. */
const isAngle = (field: string): boolean => isDirection(field) || /deg$|^vertical|Range$/i.test(field);

function note(entry: Entry, field: string, error: number, allowed: number): void {
  const key = `${entry.topic}|${STATUS[entry.status]}|${isAngle(field) ? 'degrees' : 'others'}`;
  const tally = tallies.get(key) ?? { count: 0, total: 0, worst: error, allowed };
  tally.count += 1;
  tally.total += error;
  if (error * tally.allowed > tally.worst * allowed) Object.assign(tally, { worst: error, allowed });
  tallies.set(key, tally);
}

const computed = entries.filter(({ id }) => !elsewhere.has(id));

describe('published figures', () => {
  test.each(computed.map((entry) => [entry.id, entry] as const))('%s', (_, entry) => {
    const ours = compute(entry)!;
    expect(ours, 'no function of the core is called for this entry').not.toBeNull();
    for (const [field, expected] of Object.entries(entry.expected)) {
      if (elsewhere.has(`${entry.id}.${field}`)) continue;
      const got = ours[field];
      if (typeof expected === 'string' || typeof expected === 'boolean') {
        expect(got, field).toBe(expected);
        continue;
      }
      const allowed = allowedFor(entry, field)!;
      expect(allowed, `tolerance of ${field}`).toBeTypeOf('number');
      const [want, have] = [[expected].flat(), [got].flat()] as [number[], number[]];
      expect(have, field).toHaveLength(want.length);
      want.forEach((value, index) => {
        const error = distance(field, have[index]!, value);
        expect(error, `${field}: ${have[index]} against ${value}`).toBeLessThanOrEqual(allowed);
        note(entry, field, error, allowed);
      });
    }
  });

  test('every entry and field is either calculated or listed as belonging elsewhere, never both', () => {
    for (const entry of entries) {
      const ours = compute(entry);
      if (elsewhere.has(entry.id)) {
        expect(ours, `${entry.id} is listed as belonging elsewhere and is calculated`).toBeNull();
        continue;
      }
      for (const field of Object.keys(entry.expected)) {
        const listed = elsewhere.has(`${entry.id}.${field}`);
        const calculated = ours !== null && Object.hasOwn(ours, field);
        expect([listed, calculated], `${entry.id}.${field}: listed, calculated`).toEqual([!calculated, !listed]);
      }
    }
  });

  test('whatever belongs elsewhere is in the fixture, with a reason', () => {
    const known = new Set(entries.flatMap(({ id, expected }) => [id, ...Object.keys(expected).map((field) => `${id}.${field}`)]));
    for (const [id, reason] of elsewhere) {
      expect(known, id).toContain(id);
      expect(reason, id).not.toBe('');
    }
  });

  test('ids are unique, and all that was read has an address', () => {
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
    for (const entry of entries) {
      expect(Object.keys(STATUS), entry.id).toContain(entry.status);
      if (entry.status === 'read') expect(entry, entry.id).toHaveProperty('address', expect.stringMatching(/^https?:/));
    }
  });

  afterAll(() => {
    const rows = [...tallies].sort(([a], [b]) => a.localeCompare(b)).map(([key, { count, total, worst, allowed }]) => {
      return [...key.split('|'), String(count), worst.toExponential(1), (total / count).toExponential(1), allowed.toExponential(1)];
    });
    const table = [['topic', 'status of the source', 'values', 'number', 'worst error', 'mean error', 'tolerance at the worst'], ...rows];
    const widths = table[0]!.map((_, column) => Math.max(...table.map((row) => row[column]!.length)));
    console.log(table.map((row) => row.map((cell, column) => cell.padEnd(widths[column]!)).join('  ')).join('\n'));
  });
});
