/** Numbers in cautions, as `toFixed` rounds them: next to a half a product can be rounded across it. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { caution, degrees, dioptres, whole } from '../../core/caution.js';

const written = (value: number): string => caution('hardly-any', 'note', 'assumed', { magnitude: dioptres(value), worthwhile: whole(value, '%') }).text;
const expected = (value: number): string => `There are only ${value.toFixed(2)} D to correct. Less than ${value.toFixed(0)} % does not disturb most eyes.`;

/** Halves of the last place and their neighbours, where a product is most easily wrong. */
const halves = fc.integer({ min: -400, max: 20_000 }).chain((n) => fc.constantFrom(n / 200, (n / 200) * (1 + 2 ** -52), (n / 200) * (1 - 2 ** -53), n / 20, n / 2));

test('dioptres with two decimals and shares without', () => {
  for (const value of [0, -0, 0.004, 0.005, 0.285, 1.005, 1.115, 1.255, 8.345, 9.995, 99.995, 0.5, 1.5, 2.5, -0.001, -1.25, 1e6]) expect(written(value)).toBe(expected(value));
  fc.assert(fc.property(fc.oneof(halves, fc.double({ min: -10, max: 1000, noNaN: true })), (value) => written(value) === expected(value)), { numRuns: 20_000, seed: 47 });
});

test('degrees to tenths, and 180 for 0', () => {
  fc.assert(fc.property(fc.oneof(halves.map((value) => 10 * value), fc.double({ min: -1, max: 361, noNaN: true })), (value) => {
    const tenths = Number(value.toFixed(1)) || 180;
    expect(degrees(value)).toEqual({ value: tenths, unit: '°', digits: Number.isInteger(tenths) ? 0 : 1 });
  }), { numRuns: 20_000, seed: 48 });
});
