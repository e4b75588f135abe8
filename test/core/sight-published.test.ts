import { afterAll, describe, expect, test } from 'vitest';
import { elsewhere } from './elsewhere.js';
import { compute, entries } from './sight-readers.js';

/** Angles of one minute of arc go through a tangent and back: "exactly" is to rounding. */
const ROUNDING = 1e-12;

const worst = new Map<string, { count: number; error: number; allowed: number }>();
const compared = new Set<string>();

function note(kind: string, error: number, allowed: number): void {
  const tally = worst.get(kind) ?? { count: 0, error: 0, allowed };
  worst.set(kind, error / allowed >= tally.error / tally.allowed ? { count: tally.count + 1, error, allowed } : { ...tally, count: tally.count + 1 });
}

/** What several entries have in common: the id without its numbers, and how well the source is known. */
const kindOf = (id: string, status: string): string => `${id.replace(/(-?\d+(\.\d+)?)+$/, '')}  [${status}]`;

describe('published figures on sight', () => {
  test.each(entries.map((entry) => [entry.id, entry] as const))('%s', (id, entry) => {
    const { expected, tolerance, status } = entry;
    const ours = compute(entry);
    expect(ours, 'no reader for this entry').not.toBeNull();
    expect(Object.keys(ours!).sort()).toEqual(Object.keys(expected).sort());
    for (const [field, value] of Object.entries(expected)) {
      const got = ours![field];
      if (typeof value === 'string') {
        expect(got, field).toBe(value);
      } else {
        const allowed = (typeof tolerance === 'number' ? tolerance : tolerance[field]!) || ROUNDING;
        const error = Math.abs((got as number) - (value as number));
        expect(error, `${field}: ${String(got)} against ${String(value)}`).toBeLessThanOrEqual(allowed);
        note(kindOf(id, status), error, allowed);
      }
      compared.add(`${id}.${field}`);
    }
  });

  test('none was left out, and what the other fixture leaves to this test is compared here', () => {
    expect(entries.length).toBe(57);
    expect(compared.size).toBe(entries.flatMap(({ expected }) => Object.keys(expected)).length);
    const left = [...elsewhere].filter(([, reason]) => reason.includes('sight-published.test.ts')).map(([id]) => id);
    expect(left.length).toBeGreaterThan(0);
    for (const id of left) expect(entries.map((entry) => entry.id)).toContain(id);
  });

  test('ids are unique, and all that was read has an address', () => {
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
    for (const entry of entries) {
      if (entry.status === 'read') expect(entry, entry.id).toHaveProperty('address', expect.stringMatching(/^https?:/));
    }
  });

  afterAll(() => {
    const width = Math.max(...[...worst.keys()].map((kind) => kind.length));
    for (const [kind, { count, error, allowed }] of [...worst].sort()) {
      console.log(`${kind.padEnd(width)}  ${String(count).padStart(3)}  worst ${error.toExponential(1)}  allowed ${allowed.toExponential(1)}`);
    }
  });
});
