import { describe, expect, test } from 'vitest';
import { MODEL } from '../../core/index.js';
import { cells, intended, target } from './relaxing-table.js';

const rms = (errors: number[]): number => Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);

// The four constants were searched on these very cells, with their mid-points as targets: this shows that the formula
// was transcribed, and how closely it fits. It is no validation.
describe('the published table of relaxing arcs (a fixture, not advice)', () => {
  test('has 50 cells, one for each cylinder, age band and rule', () => {
    const keys = cells.map(({ rule, cylinder, age }) => `${rule} ${cylinder} ${age}`);
    expect(new Set(keys).size).toBe(50);
    expect(cells).toHaveLength(50);
  });

  test('is fitted by the intended effect with a root mean square error of 0.19 D', () => {
    expect(Math.abs(rms(cells.map((cell) => intended(cell) - target(cell))) - 0.19)).toBeLessThanOrEqual(0.01);
  });

  test.each(['with', 'against'] as const)('is fitted %s the rule without an offset of more than a tenth of a dioptre', (rule) => {
    const errors = cells.filter((cell) => cell.rule === rule).map((cell) => intended(cell) - target(cell));
    expect(Math.abs(errors.reduce((sum, error) => sum + error, 0) / errors.length)).toBeLessThan(0.1);
  });

  test('is not fitted by a pair counted as two single arcs, nor without the age', () => {
    const twice = cells.map((cell) => intended({ ...cell, count: 1 }) * cell.count - target(cell));
    const ageless = cells.map((cell) => intended({ ...cell, age: [65, 65] }) - target(cell));
    expect(rms(twice)).toBeGreaterThan(0.3);
    expect(rms(ageless)).toBeGreaterThan(0.22);
  });

  test('ends where the arcs end that are counted in full', () => {
    const lengths = cells.map(({ degrees }) => degrees);
    expect(Math.min(...lengths)).toBe(MODEL.cautions.shortestArc);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(MODEL.arcs.longest);
  });
});
