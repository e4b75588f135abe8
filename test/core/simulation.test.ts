/** The spread of a plan against a simulation of the model that its constants describe, error by error. */
import { describe, expect, test } from 'vitest';
import {
  MODEL, arcFlattening, evaluatePlan, incisionFlattening, ruleOf, toVector, type EyePlan, type PlanOutcome, type Vector,
} from '../../core/index.js';
import { moments, normals } from './random.js';

const DRAWS = 1_000_000;

/** `approximate`: how much the lens's own turn, taken as a normal beside cuts, was measured to change a chance, rounded up. */
const PLANS: [name: string, plan: EyePlan, approximate: number][] = [
  ['an entry and one arc', {
    eye: 'right', flatK: 42.5, steepK: 44, steepMeridian: 20, age: 71, backSurface: 'typical',
    incisionSite: 200, incisionWidth: 2.4, arcSite: 20, arcLength: 50, arcCount: 1,
  }, 0],
  ['a pair of arcs by laser', {
    eye: 'left', flatK: 41, steepK: 43.75, steepMeridian: 105, age: 58, backSurface: '0.35@170',
    incisionSite: 10, incisionWidth: 2.75, arcSite: 105, arcLength: 70, arcCount: 2, arcMethod: 'laser',
  }, 0],
  ['a lens and a wide entry', {
    eye: 'right', flatK: 43, steepK: 46, steepMeridian: 140, age: 66, backSurface: 'omitted',
    incisionSite: 140, incisionWidth: 3.2, lensCylinder: 2.5, lensMeridian: 141,
  }, 3e-5],
];

const vector = (dioptres: number, degrees: number): Vector => {
  const doubled = (2 * degrees * Math.PI) / 180;
  return { x: dioptres * Math.cos(doubled), y: dioptres * Math.sin(doubled) };
};

const turned = ({ x, y }: Vector, degrees: number): Vector => {
  const unit = vector(1, degrees);
  return { x: x * unit.x - y * unit.y, y: x * unit.y + y * unit.x };
};

/** One eye of those that a plan may become: the marks turn everything that is placed by them, scatter included. */
function becoming(plan: EyePlan, normal: () => number): () => Vector {
  const { steps, before } = evaluatePlan(plan);
  const { keratometry, backSurface, placement, lensRotation } = MODEL.uncertainty;
  const planned = Object.fromEntries(steps.map((step) => [step.source, step.vector]));
  const start = toVector(before);
  const entry = planned.incision && incisionFlattening({ width: plan.incisionWidth!, site: plan.incisionSite!, eye: plan.eye! });
  const arcs = planned.arcs && arcFlattening({
    length: plan.arcLength!, count: plan.arcCount!, age: plan.age, rule: ruleOf(before), method: plan.arcMethod ?? 'blade',
  });

  return () => {
    const done: Vector[] = [];
    if (entry) done.push(planned.incision!, { x: entry.sd * normal(), y: entry.sd * normal() });
    if (arcs) done.push(planned.arcs!, vector(arcs.sdAlong * normal(), plan.arcSite!), vector(arcs.sdAcross * normal(), plan.arcSite! + 45));
    if (planned.lens) done.push(turned(planned.lens, lensRotation * normal()));
    const marks = placement * normal();
    const placed = done.map((part) => turned(part, marks));
    const measured = [keratometry, backSurface].map((sd) => ({ x: sd * normal(), y: sd * normal() }));
    return [start, planned.backSurface ?? { x: 0, y: 0 }, ...placed, ...measured].reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }));
  };
}

const flat = ({ spread: { mean, covariance: [[xx, xy], [, yy]] } }: PlanOutcome) => ({ x: mean.x, y: mean.y, xx, xy, yy });

describe('a million simulated eyes', () => {
  test('are drawn from a standard normal distribution', () => {
    const normal = normals('check');
    const { x, y, xx, xy, yy } = moments(DRAWS, () => ({ x: normal(), y: normal() }));
    for (const [seen, exact] of [[x, 0], [y, 0], [xx, 1], [xy, 0], [yy, 1]] as const) {
      expect(Math.abs(seen.value - exact)).toBeLessThanOrEqual(4 * seen.error);
    }
  });

  describe.each(PLANS)('with %s', (name, plan, approximate) => {
    const seen = moments(DRAWS, becoming(plan, normals(name)));
    const outcome = evaluatePlan(plan);

    test.each(['xx', 'xy', 'yy'] as const)('have the covariance of the plan within four standard errors: %s', (part) => {
      expect(Math.abs(seen[part].value - flat(outcome)[part])).toBeLessThanOrEqual(4 * seen[part].error);
    });

    test.each(['x', 'y'] as const)('have the mean of the plan within four standard errors: %s', (part) => {
      expect(Math.abs(seen[part].value - flat(outcome)[part])).toBeLessThanOrEqual(4 * seen[part].error);
    });

    test('are within 0.5, 0.75 and 1 D as often as the plan says, within four standard errors', () => {
      const next = becoming(plan, normals(`${name}, counted`));
      const sizes = Array.from({ length: DRAWS }, () => {
        const { x, y } = next();
        return Math.hypot(x, y);
      });
      for (const limit of [0.5, 0.75, 1]) {
        const counted = sizes.reduce((hits, size) => hits + Number(size <= limit), 0) / DRAWS;
        const chance = outcome.chanceWithin(limit);
        const error = Math.sqrt((chance * (1 - chance)) / DRAWS);
        expect(Math.abs(counted - chance), `limit ${limit}`).toBeLessThanOrEqual(4 * error + approximate);
      }
    });
  });
});
