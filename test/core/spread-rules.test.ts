/** The equal steps in which a chance is summed: that there are enough of them for every width of the spread. */
import { describe, expect, test } from 'vitest';
import { chanceWithin } from '../../core/index.js';
import { discChance } from './nested.js';
import { chanceByQuadrature, spreadOf } from './random.js';

/** What the comment of the sum promises. */
const DOCUMENTED = 1e-10;

/** The disc is 1 D; this is the extent of what is summed, in standard deviations across the long axis. */
const width = (offset: number, short: number): number => {
  const end = (sign: 1 | -1) => Math.max(-1, Math.min(1, offset + sign * 8.5 * short));
  return (end(1) - end(-1)) / short;
};

/** Short deviations at which the extent is `wide`, by halving in each stretch where it passes that value. */
function shortsFor(wide: number, offset: number): number[] {
  const found: number[] = [];
  for (let low = 0.01; low < 10; low *= 1.02) {
    let [a, b] = [low, low * 1.02];
    if ((width(offset, a) - wide) * (width(offset, b) - wide) >= 0) continue;
    for (let step = 0; step < 60; step += 1) {
      const middle = (a + b) / 2;
      if ((width(offset, a) - wide) * (width(offset, middle) - wide) <= 0) b = middle;
      else a = middle;
    }
    found.push((a + b) / 2);
  }
  return found;
}

const ACROSS = [0, 0.1, 0.3, 0.6, 0.9, 1, 1.3, 2, 3];
const ALONG = [0, 0.3, 0.6, 0.9, 1, 1.1, 1.5, 2.5];
const RATIOS = [1, 1.1, 1.5, 2, 4, 10, 100];

/** Largest error at one width over centres inside, on and outside the disc, and over shapes from round to a streak. */
function worstAt(wide: number): { error: number; where: string; count: number } {
  let worst = { error: 0, where: '', count: 0 };
  for (const across of ACROSS) {
    for (const short of shortsFor(wide, across)) {
      for (const along of ALONG) {
        for (const ratio of RATIOS) {
          const [xx, yy] = [(short * ratio) ** 2, short * short];
          const chance = chanceWithin({ mean: { x: along, y: across }, covariance: [[xx, 0], [0, yy]] }, 1);
          // The axes change places: the reference sums along its first one, which has to be the narrow one.
          const error = Math.abs(chance - discChance({ x: across, y: along }, [yy, 0, xx], 1, 400));
          const where = `ratio ${ratio}, centre ${along} along and ${across} across`;
          worst = { ...(error > worst.error ? { error, where } : { error: worst.error, where: worst.where }), count: worst.count + 1 };
        }
      }
    }
  }
  return worst;
}

describe('the steps in which a chance is summed', () => {
  // The widest extent there is: 8.5 deviations either way.
  test.each([0.1, 0.5, 1, 2, 4, 6, 8, 13, 16.99])('the error at a width of %d is below 1e-10', (wide) => {
    const { error, where, count } = worstAt(wide);
    console.log(`width ${wide}: worst error ${error.toExponential(1)} of ${count}; ${where}`);
    expect(count).toBeGreaterThan(100);
    expect(error).toBeLessThan(DOCUMENTED);
  });

  test.each([0.01, 0.003, 0.001, 0.0003])('nor is it larger near the edge of a disc that is 1 D where the spread is %d D', (short) => {
    for (const ratio of [1, 2, 10]) {
      for (const off of [-4, -1, 0, 1, 4]) {
        for (const degrees of [0, 30, 60, 85, 89, 90]) {
          const far = 1 + off * short;
          const mean = { x: far * Math.cos((degrees * Math.PI) / 180), y: far * Math.sin((degrees * Math.PI) / 180) };
          const [xx, yy] = [(short * ratio) ** 2, short * short];
          const chance = chanceWithin({ mean, covariance: [[xx, 0], [0, yy]] }, 1);
          const reference = discChance({ x: mean.y, y: mean.x }, [yy, 0, xx], 1, Math.ceil(20 / short));
          expect(Math.abs(chance - reference), `ratio ${ratio}, ${off} off, at ${degrees}`).toBeLessThan(DOCUMENTED);
        }
      }
    }
  });

  test('a spread that asks for more steps than there are is still answered, and soon', () => {
    for (const x of [0, 0.7, 1 - 1e-9, 1, 1 + 1e-9, 1.3]) {
      const started = performance.now();
      const chance = chanceWithin(spreadOf({ x, y: 0 }, 1e-8, 1e-8, 0), 1);
      expect(performance.now() - started).toBeLessThan(50);
      expect(Math.abs(chance - (x < 0.9 ? 1 : x > 1.1 ? 0 : chance))).toBeLessThan(1e-9);
      expect(chance).toBeGreaterThanOrEqual(0);
      expect(chance).toBeLessThanOrEqual(1);
    }
    // Seen from so near, the edge is straight, and the mean stands on it.
    expect(Math.abs(chanceWithin(spreadOf({ x: 1, y: 0 }, 1e-8, 1e-8, 0), 1) - 0.5)).toBeLessThan(1e-6);
  });

  test('makes no step that a chance would show where another one is added', () => {
    for (let limit = 0.2; limit < 1; limit += 0.001) {
      const at = (to: number) => chanceWithin(spreadOf({ x: 0.1, y: 0.2 }, 0.25, 0.25, 0), to);
      // The chance itself grows by less than 1e-9 between the two.
      expect(Math.abs(at(limit * (1 + 1e-10)) - at(limit * (1 - 1e-10)))).toBeLessThan(1e-9);
    }
  });
});

test('the reference at these widths agrees with the density summed in polar coordinates', () => {
  for (const [short, ratio] of [[0.5, 1], [0.25, 1], [0.25, 4], [0.5, 2]] as const) {
    for (const mean of [{ x: 0, y: 0 }, { x: 0.3, y: 0.9 }]) {
      const covariance: [[number, number], [number, number]] = [[(short * ratio) ** 2, 0], [0, short * short]];
      const reference = discChance({ x: mean.y, y: mean.x }, [short * short, 0, (short * ratio) ** 2], 1, 400);
      expect(Math.abs(reference - chanceByQuadrature({ mean, covariance }, 1, 120))).toBeLessThan(1e-9);
    }
  }
});
