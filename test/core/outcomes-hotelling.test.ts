/** Hotelling's T² of a series: what it is, when there is none, and that it has no unit. */
import { describe, expect, test } from 'vitest';
import { summarise } from '../../core/outcomes.js';
import { polygon } from './outcomes-readers.js';
import type { Vector } from '../../core/types.js';

const moved = (eyes: readonly Vector[], { x, y }: Vector, size = 1): Vector[] => eyes.map((eye) => ({ x: size * (eye.x + x), y: size * (eye.y + y) }));

describe('T²', () => {
  // With the unit matrix for a covariance it is n times the square of the mean; F has 2 and n − 2 degrees of freedom.
  test.each([[5, 0.3, 0.4], [10, 0.3, 0.4], [40, -0.1, 0.2], [12, 0, 0]])('of %d eyes round (%d, %d) is n·m², and its chance the tail of F', (n, x, y) => {
    const { t2, pValue, omitted } = summarise(moved(polygon(n), { x, y }));
    const expected = n * (x * x + y * y);
    expect(t2).toBeCloseTo(expected, 10);
    expect(pValue).toBeCloseTo((1 + expected / (n - 1)) ** (-(n - 2) / 2), 10);
    expect(omitted).toEqual([]);
  });

  test.each([1e-6, 1e6])('is the same in another unit: %d', (size) => {
    const { t2, pValue } = summarise(moved(polygon(10), { x: 0.3, y: 0.4 }, size));
    expect(t2).toBeCloseTo(2.5, 8);
    expect(pValue).toBeCloseTo((1 + 2.5 / 9) ** -4, 8);
  });

  test.each([-3, -1, -1 / 3, 0, 0.1, 1, 7])('is none for eyes on a line of slope %d, and that is said of it and its chance alone', (slope) => {
    for (const start of [0.3, 1 / 7, 2.9]) {
      const { t2, pValue, omitted } = summarise([0.1, 0.2, 0.7, 0.9].map((x) => ({ x, y: start + slope * x })));
      expect([t2, pValue, omitted.map(({ figures, reason }) => [figures, reason.id])]).toEqual([null, null, [[['t2', 'pValue'], 'inLine']]]);
    }
  });
});

describe('refused, word for word', () => {
  test.each<[string, () => unknown]>([
    ['p: 0 is refused; allowed is 0.000001 to 0.999999.', () => summarise([], 0)],
    ['x: NaN is refused; allowed is a finite number of D.', () => summarise([{ x: NaN, y: 0 }])],
    ['y: Infinity is refused; allowed is a finite number of D.', () => summarise([{ x: 0, y: Infinity }])],
  ])('%s', (message, call) => expect(call).toThrow(message));
});
