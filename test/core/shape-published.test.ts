import { afterAll, describe, expect, test } from 'vitest';
import published from '../fixtures/published.json' with { type: 'json' };
import { elsewhere } from './elsewhere.js';
import type { Entry } from './published.js';
import { compute } from './shape-readers.js';

/** What the other test leaves to this one: whole entries, and single fields of entries. */
const left = [...elsewhere].filter(([, reason]) => reason.includes('shape-published.test.ts')).map(([id]) => id);
const all = published.entries as unknown as Entry[];

const worst = new Map<string, { count: number; error: number; allowed: number }>();

describe('published figures on the shape of the cornea', () => {
  test.each(left)('%s', (id) => {
    const entry = all.find((candidate) => id === candidate.id || id.startsWith(`${candidate.id}.`))!;
    const fields = id === entry.id ? Object.keys(entry.expected) : [id.slice(entry.id.length + 1)];
    const ours = compute(entry)!;
    expect(fields.length).toBeGreaterThan(0);
    for (const field of fields) {
      const expected = entry.expected[field];
      if (typeof expected === 'string') {
        expect(ours[field]).toBe(expected);
        continue;
      }
      const allowed = entry.tolerance as number;
      const error = Math.abs((ours[field] as number) - (expected as number));
      expect(error, `${field}: ${String(ours[field])} against ${String(expected)}`).toBeLessThanOrEqual(allowed);
      const kind = `${id.replace(/-\d.*$/, '')}  [${entry.status}]`;
      const tally = worst.get(kind) ?? { count: 0, error: 0, allowed };
      worst.set(kind, { count: tally.count + 1, error: Math.max(tally.error, error), allowed });
    }
  });

  test('none was left out', () => {
    expect(left.filter((id) => id.startsWith('sag-'))).toHaveLength(all.filter(({ id }) => id.startsWith('sag-')).length);
    expect(left.filter((id) => id.startsWith('corneal-area'))).toHaveLength(all.filter(({ id }) => id.startsWith('corneal-area')).length);
    expect(left.length).toBe(13);
  });

  afterAll(() => {
    for (const [kind, { count, error, allowed }] of worst) console.log(`${kind.padEnd(60)} ${count}  worst ${error.toExponential(1)}  allowed ${allowed.toExponential(1)}`);
  });
});
