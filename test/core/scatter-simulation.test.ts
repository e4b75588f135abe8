/** The chances and moments of a plan against a million eyes, each drawn error by error. */
import { describe, expect, test } from 'vitest';
import { evaluatePlan } from '../../core/index.js';
import { APPROXIMATE, ASKED, EXACT } from './nested-cases.js';
import { drawer, exactChance, planOf, type Described } from './nested.js';
import { moments, normals } from './random.js';

const DRAWS = 1_000_000;

/** A million sizes of what is left, and their moments on the way. */
function simulated(name: string, eye: Described) {
  const next = drawer(eye, normals(`scatter: ${name}`));
  const sizes = new Float64Array(DRAWS);
  let index = 0;
  const seen = moments(DRAWS, () => {
    const drawn = next();
    sizes[index++] = Math.hypot(drawn.x, drawn.y);
    return drawn;
  });
  return { seen, share: (limit: number) => sizes.reduce((hits, size) => hits + Number(size <= limit), 0) / DRAWS };
}

const standardError = (chance: number): number => Math.sqrt((chance * (1 - chance)) / DRAWS);

const cases: [string, Described, number][] = [...EXACT.map(([name, eye]): [string, Described, number] => [name, eye, 0]), ...APPROXIMATE];

describe.each(cases)('a million eyes with %s', (name, eye, most) => {
  const { seen, share } = simulated(name, eye);
  const outcome = evaluatePlan(planOf(eye));

  test('are as often within a limit as the exact integral says, within four standard errors', () => {
    for (const limit of ASKED) {
      const exact = exactChance(eye, limit, { steps: 160, inner: 80 });
      expect(Math.abs(share(limit) - exact), `limit ${limit}`).toBeLessThanOrEqual(4 * standardError(exact));
    }
  });

  // Beside cuts the lens's own turn is approximated; how much that makes is measured in scatter.test.ts.
  test.each(ASKED)(`are within %d D as often as the plan says, within four standard errors${most ? ` and ${most}` : ''}`, (limit) => {
    const chance = outcome.chanceWithin(limit);
    expect(Math.abs(share(limit) - chance)).toBeLessThanOrEqual(4 * standardError(share(limit)) + most);
  });

  test.each(['x', 'y', 'xx', 'xy', 'yy'] as const)('have the moments of the plan within four standard errors: %s', (part) => {
    const { mean, covariance: [[xx, xy], [, yy]] } = outcome.spread;
    expect(Math.abs(seen[part].value - { ...mean, xx, xy, yy }[part])).toBeLessThanOrEqual(4 * seen[part].error);
  });
});

// Simulated anew with the seeds above; the exact integral adds the digits.
test.each([[3, 0.5064], [6, 0.2803], [12, 0.1442]])('a lens of %d D that matches the cornea leaves 0.5 D or less in %d of eyes', (cylinder, share) => {
  const eye: Described = { front: [cylinder, 90], lens: { cylinder, meridian: 90 } };
  expect(Math.abs(exactChance(eye, 0.5) - share)).toBeLessThanOrEqual(0.00005);
  const next = drawer(eye, normals(`matched ${cylinder}`));
  let hits = 0;
  for (let i = 0; i < DRAWS; i += 1) {
    const { x, y } = next();
    hits += Number(Math.hypot(x, y) <= 0.5);
  }
  expect(Math.abs(hits / DRAWS - share)).toBeLessThanOrEqual(4 * standardError(share) + 0.00005);
});
