/** The steps in which the error of the marks is summed, against steps so fine that nothing depends on them. */
import { expect, test } from 'vitest';
import { RADIANS } from '../../core/angle.js';
import { chanceOf, type Scatter } from '../../core/scatter.js';
import { chanceWithin } from '../../core/spread.js';

/** The same mixture, summed from −7 to 7 in steps of 0.02, with rotations written out as matrices. */
function finely({ start, base, placed, own, turning }: Scatter, limit: number): number {
  const step = 0.02;
  let sum = 0;
  for (let z = -7; z <= 7; z += step) {
    const angle = 2 * RADIANS * turning * z;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const turn = [[c, -s], [s, c]] as const;
    const entry = (i: 0 | 1, j: 0 | 1) => [0, 1].flatMap((k) => [0, 1].map((l) => turn[i][k]! * own[k + l]! * turn[j][l]!)).reduce((a, b) => a + b) + (i === j ? base : 0);
    const mean = { x: start.x + c * placed.x - s * placed.y, y: start.y + s * placed.x + c * placed.y };
    sum += ((step * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI)) * chanceWithin({ mean, covariance: [[entry(0, 0), entry(0, 1)], [entry(1, 0), entry(1, 1)]] }, limit);
  }
  return sum;
}

const TURNINGS = [0, 5, Math.hypot(5, 4), 8];
const STRENGTHS = [0.2, 0.5, 1, 1.5, 2.5, 4, 6, 10];
/** Variances of the rest: good readings alone, readings and back surface, a dry eye. */
const BASES = [0.15 ** 2, 0.045, 0.1];

test.each(TURNINGS.flatMap((turning) => STRENGTHS.map((strength) => [turning, strength] as const)))('turned by %f°, %f D', (turning, strength) => {
  for (const base of BASES) {
    for (const own of [0, 0.09, 0.8]) {
      for (const [direction, answered] of [[0, 0], [0, 1], [20, 1], [160, 0.8], [60, 1.2]] as const) {
        const along = { x: Math.cos(direction * RADIANS), y: Math.sin(direction * RADIANS) };
        const scatter: Scatter = { start: { x: answered * strength * along.x, y: answered * strength * along.y }, base, placed: { x: -strength, y: 0 }, own: [own, own / 4, own / 2], turning };
        for (const limit of [0.25, 0.5, 1]) expect(Math.abs(chanceOf(scatter, limit) - finely(scatter, limit))).toBeLessThan(1e-6);
      }
    }
  }
});
