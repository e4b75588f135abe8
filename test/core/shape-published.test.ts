import { afterAll, describe, expect, test } from 'vitest';
import { cornealSurface, shapeFactors } from '../../core/shape.js';
import published from '../fixtures/published.json' with { type: 'json' };
import { elsewhere } from './elsewhere.js';
import type { Entry, Value } from './published.js';
import { round } from './shape-support.js';

/** What the other test leaves to this one: whole entries, and single fields of entries. */
const left = [...elsewhere].filter(([, reason]) => reason.includes('shape-published.test.ts')).map(([id]) => id);
const all = published.entries as unknown as Entry[];

/** Area of a cap of revolution as deep as `sag`: 2π·∫ρ·√(1 + z′²)dρ by Simpson’s rule, up to where the depth is reached. */
function capArea(radius: number, conic: number, sag: number): number {
  const at = cornealSurface(round(radius, conic));
  let [low, high] = [0, 7];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (at({ distance: middle, direction: 0 }).sagitta < sag) low = middle;
    else high = middle;
  }
  const steps = 400;
  let total = 0;
  for (let i = 0; i <= steps; i += 1) {
    const distance = (low * i) / steps;
    total += 2 * Math.PI * distance * Math.hypot(1, at({ distance, direction: 0 }).slope) * (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2);
  }
  return (total * low) / (3 * steps);
}

const follows = (rule: (q: number) => boolean): boolean => [-0.6, -0.26, 0, 0.4].every(rule);

const READERS: [kind: RegExp, read: (inputs: Entry['inputs']) => Record<string, Value>][] = [
  [/^sag-/, ({ radiusMm, chordMm, Q = 0 }) => ({ sagMm: cornealSurface(round(radiusMm, Q))({ distance: chordMm / 2, direction: 0 }).sagitta })],
  [/^corneal-area/, ({ R, Q = 0, sagMm }) => ({ areaMm2: capArea(R, Q, sagMm) })],
  [/^ansiz8023/, () => ({
    shapeFactorE: follows((q) => shapeFactors({ p: 1 + q }).e === 1 - (1 + q)) ? 'E=1-p' : 'another rule',
    asphericityQ: follows((q) => shapeFactors({ e: -q }).q === q) ? 'Q=-E' : 'another rule',
  })],
];

const worst = new Map<string, { count: number; error: number; allowed: number }>();

describe('published figures on the shape of the cornea', () => {
  test.each(left)('%s', (id) => {
    const entry = all.find((candidate) => id === candidate.id || id.startsWith(`${candidate.id}.`))!;
    const fields = id === entry.id ? Object.keys(entry.expected) : [id.slice(entry.id.length + 1)];
    const ours = READERS.find(([kind]) => kind.test(entry.id))![1](entry.inputs);
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
