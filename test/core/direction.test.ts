/** The sector of remaining steep meridians, against draws and against what is known in closed form. */
import { describe, expect, test } from 'vitest';
import { evaluatePlan, fromVector, meridianSpread } from '../../core/numbers.js';
import { drawFrom, normals, spreadOf } from './random.js';

const DRAWS = 40_000;

/** Half a step of the sum, degrees on the eye: within a step the share is taken as even. */
const STEP = 0.25;

/** Degrees between two meridians, 0 to 90. */
const between = (a: number, b: number): number => Math.abs(((a - b + 270) % 180) - 90);

describe('the sector of the remaining steep meridian', () => {
  test.each([
    ['round and near', { x: 0.3, y: 0.1 }, 0.3, 0.3, 0],
    ['round and far', { x: -1.2, y: 0.9 }, 0.35, 0.35, 0],
    ['long towards the mean', { x: 0.6, y: 0.6 }, 0.5, 0.2, 45],
    ['long across the mean', { x: 0.6, y: 0.6 }, 0.5, 0.2, 135],
    ['slanting', { x: -0.2, y: -0.7 }, 0.6, 0.25, 20],
  ] as const)('holds as many draws as it says: %s', (name, mean, long, short, degrees) => {
    const spread = spreadOf(mean, long, short, degrees);
    const normal = normals(name);
    const drawn = Array.from({ length: DRAWS }, () => fromVector(drawFrom(spread, normal)).meridian);
    for (const share of [0.25, 0.5, 0.9]) {
      const { meridian, halfWidth } = meridianSpread(spread, share);
      expect(between(meridian, fromVector(mean).meridian)).toBeLessThan(1e-9);
      const held = (reach: number): number => drawn.filter((one) => between(one, meridian) <= reach).length / DRAWS;
      const error = 4.5 * Math.sqrt((share * (1 - share)) / DRAWS);
      expect(held(halfWidth + STEP), `${share}`).toBeGreaterThan(share - error);
      expect(held(halfWidth - STEP), `${share}`).toBeLessThan(share + error);
    }
  });

  test.each([0.1, 0.5, 0.95])('is that share of all directions where nothing has a direction: %d', (share) => {
    expect(meridianSpread(spreadOf({ x: 0, y: 0 }, 0.4, 0.4, 0), share).halfWidth).toBeCloseTo(90 * share, 9);
  });

  test('is nothing for no eye, and all directions for all eyes', () => {
    const { spread } = evaluatePlan({ steepK: 44.5, incisionSite: 90 });
    expect(meridianSpread(spread, 0).halfWidth).toBe(0);
    expect(meridianSpread(spread, 1).halfWidth).toBeCloseTo(90, 6);
  });

  // A normal spread ends nowhere, so that no sector short of all directions holds every eye. What lies beyond some of these
  // is less than rounding leaves of 1: whether their shares add up to just 1 before the last is chance.
  test.each([[1, 0.12], [1.5, 0.15], [2, 0.1], [2, 0.12], [2, 0.25], [3, 0.1], [3, 0.2], [8, 0.05]])('is all directions for all eyes, and is around %d D, with %d D of scatter too', (x, sd) => {
    for (const [mean, along] of [[{ x, y: 0 }, 180], [{ x: 0, y: x }, 45], [{ x: -x, y: 0 }, 90]] as const) {
      expect(meridianSpread(spreadOf(mean, sd, sd, 0), 1).halfWidth).toBe(90);
      expect(meridianSpread(spreadOf(mean, sd, sd, 0), 1).meridian).toBeCloseTo(along, 9);
    }
  });

  test('is narrower where more is left, and does not overflow far away', () => {
    const widths = [0.2, 0.5, 1, 3, 8].map((x) => meridianSpread(spreadOf({ x, y: 0 }, 0.3, 0.3, 0), 0.5).halfWidth);
    expect(widths.every(Number.isFinite)).toBe(true);
    expect([...widths].sort((a, b) => b - a)).toEqual(widths);
  });

  test.each([-0.01, 1.01, NaN])('refuses a share of %d', (share) => {
    expect(() => meridianSpread(spreadOf({ x: 1, y: 0 }, 0.3, 0.3, 0), share)).toThrow(/^p: .* is refused; allowed is 0 to 1/);
  });
});
