import { afterAll, describe, expect, test } from 'vitest';
import { compute, entries } from './eye-readers.js';
import { distance } from './published.js';

const worst = new Map<string, { count: number; error: number; allowed: number }>();
const compared = new Set<string>();

function note(kind: string, error: number, allowed: number): void {
  const tally = worst.get(kind) ?? { count: 0, error: 0, allowed };
  worst.set(kind, error / allowed >= tally.error / tally.allowed ? { count: tally.count + 1, error, allowed } : { ...tally, count: tally.count + 1 });
}

/** What several entries have in common: the id without its numbers, and how well the source is known. */
const kindOf = (id: string, status: string): string => `${id.replace(/-(plus|minus|exact)-.*$/, '-$1').replace(/(-?\d+(\.\d+)?D?)+$/, '')}  [${status}]`;

describe('published figures on schematic eyes and lenses in them', () => {
  test.each(entries.map((entry) => [entry.id, entry] as const))('%s', (id, entry) => {
    const ours = compute(entry);
    expect(ours, 'no reader for this entry').not.toBeNull();
    for (const [field, value] of Object.entries(entry.expected)) {
      const allowed = typeof entry.tolerance === 'number' ? entry.tolerance : entry.tolerance[field]!;
      expect(allowed, `tolerance of ${field}`).toBeGreaterThan(0);
      const error = distance(field, ours![field] as number, value as number);
      expect(error, `${field}: ${String(ours![field])} against ${String(value)}`).toBeLessThanOrEqual(allowed);
      note(kindOf(id, entry.status), error, allowed);
      compared.add(`${id}.${field}`);
    }
  });

  test('none was left out', () => {
    expect(entries.length).toBe(83 + 9);
    expect(compared.size).toBe(entries.flatMap(({ expected }) => Object.keys(expected)).length);
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
  });

  test('all that was read has an address', () => {
    for (const entry of entries) {
      if (entry.status === 'read') expect(entry, entry.id).toHaveProperty('address', expect.stringMatching(/\w/));
    }
  });

  afterAll(() => {
    const width = Math.max(...[...worst.keys()].map((kind) => kind.length));
    for (const [kind, { count, error, allowed }] of [...worst].sort()) {
      console.log(`${kind.padEnd(width)}  ${String(count).padStart(3)}  worst ${error.toExponential(1)}  allowed ${allowed.toExponential(1)}`);
    }
  });
});
