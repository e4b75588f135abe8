/** How long the core takes, beside the same sums in generic complex arithmetic and written out by hand. */
import { abs, add, arg, complex, erf } from 'mathjs';
import { Bench } from 'tinybench';
import { chanceByHand, planByHand } from './core-plain.mjs';
import { loaded } from './page.mjs';

export const title = 'Core, µs a call';

/** An invented eye with all that a plan can hold. */
const PLAN = {
  eye: 'right',
  flatK: 42.5,
  steepK: 44.25,
  steepMeridian: 170,
  age: 70,
  backSurface: '0.30@175',
  incisionSite: 200,
  incisionWidth: 2.75,
  arcSite: 10,
  arcLength: 45,
  arcCount: 2,
  arcDepth: 500,
  localThickness: 620,
  lensCylinder: 1,
  lensMeridian: 172,
};

const BACK = { magnitude: 0.3, meridian: 175 };

const DEGREES = 360;

/** Longer than plain arithmetic by at most so much. */
const GOAL = 2;

export async function run() {
  const core = await loadCore();
  const outcomes = Array.from({ length: DEGREES }, (_, site) => core.evaluatePlan({ ...PLAN, incisionSite: site }));
  // What is before, and what each step adds, as figures: where the sum starts in all three ways of doing it.
  const sums = outcomes.map(({ before, steps }) => [before, ...steps.map(({ vector }) => core.fromVector(vector))]);
  const plans = outcomes.map((_, site) => ({ ...PLAN, incisionSite: site }));
  const scatters = plans.map((plan) => planByHand({ ...plan, back: BACK }).scatter);
  check(core, sums);
  checkPlans(plans, outcomes, core.normal);

  const names = {
    plan: 'evaluatePlan: four steps with spread, and checks, refusals and cautions',
    figures: 'the figures of it alone',
    planByHand: 'these figures written out by hand',
    chance: 'chanceWithin 0.50 D',
    chanceByHand: 'the same chance written out by hand',
    chanceGeneric: 'the same with erf of mathjs',
    sum: 'sum of before and steps',
    sumByHand: 'the same sum written out by hand',
    sumGeneric: 'the same sum, mathjs complex',
  };
  const bench = new Bench({ time: 600, warmupTime: 200 });
  const each = (name, task, inputs) => {
    let index = 0;
    bench.add(name, () => task(inputs[(index = (index + 1) % DEGREES)]));
  };
  const plain = plans.map((plan) => ({ ...plan, back: BACK }));
  each(names.plan, (plan) => core.evaluatePlan(plan), plans);
  each(names.figures, core.judge, plans.map(core.completePlan));
  each(names.planByHand, planByHand, plain);
  each(names.chance, (outcome) => outcome.chanceWithin(0.5), outcomes);
  each(names.chanceByHand, (scatter) => chanceByHand(scatter, 0.5, core.normal), scatters);
  each(names.chanceGeneric, (scatter) => chanceByHand(scatter, 0.5, normalGeneric), scatters);
  each(names.sum, (parts) => core.sum(...parts), sums);
  each(names.sumByHand, sumByHand, sums);
  each(names.sumGeneric, sumGeneric, sums);
  await bench.run();
  return table(bench, names);
}

/** All of the core, and some of what it keeps to itself. */
const SOURCE = `export * from './core/index.js';
  export { judge } from './core/effects.js'; export { completePlan } from './core/fields.js'; export { normal } from './core/spread.js';`;

export const loadCore = () => loaded('core', SOURCE);

/** A complex number at twice the angle is what a double-angle vector is. */
function sumGeneric(parts) {
  const total = parts.map(({ magnitude, meridian }) => complex({ r: magnitude, phi: (meridian * Math.PI) / 90 })).reduce((sum, part) => add(sum, part));
  return { magnitude: abs(total), meridian: printed((arg(total) * 90) / Math.PI) };
}

function sumByHand(parts) {
  let x = 0;
  let y = 0;
  for (const { magnitude, meridian } of parts) {
    const angle = (meridian * Math.PI) / 90;
    x += magnitude * Math.cos(angle);
    y += magnitude * Math.sin(angle);
  }
  return { magnitude: Math.sqrt(x * x + y * y), meridian: printed((Math.atan2(y, x) * 90) / Math.PI) };
}

function printed(degrees) {
  return degrees > 0 ? degrees : degrees + 180;
}

/** Ways that disagree are not worth timing. */
function check(core, sums) {
  for (const parts of sums) {
    const [a, b, c] = [core.sum(...parts), sumByHand(parts), sumGeneric(parts)];
    const off = Math.max(Math.abs(a.magnitude - b.magnitude), Math.abs(a.magnitude - c.magnitude), Math.abs(a.meridian - b.meridian), Math.abs(a.meridian - c.meridian));
    if (!(off < 1e-9)) throw new Error('The three sums disagree.');
  }
}

function checkPlans(plans, outcomes, normal) {
  plans.forEach((plan, index) => {
    const { after, afterIntended, spread, chanceWithin } = outcomes[index];
    const hand = planByHand({ ...plan, back: BACK });
    const pairs = [
      [after.magnitude, hand.after.magnitude], [after.meridian, hand.after.meridian],
      [afterIntended.magnitude, hand.afterIntended.magnitude], [afterIntended.meridian, hand.afterIntended.meridian],
      [spread.mean.x, hand.spread.x], [spread.mean.y, hand.spread.y],
      [spread.covariance[0][0], hand.spread.xx], [spread.covariance[0][1], hand.spread.xy], [spread.covariance[1][1], hand.spread.yy],
    ];
    if (pairs.some(([a, b]) => !(Math.abs(a - b) < 1e-9))) throw new Error(`The plan by hand is another one at ${index}°: ${JSON.stringify(pairs)}.`);
    const [core, byHand] = [chanceWithin(0.5), chanceByHand(hand.scatter, 0.5, normal)];
    if (!(Math.abs(core - byHand) < 1e-5)) throw new Error(`The chance by hand is another one at ${index}°: ${byHand} for ${core}.`);
  });
}

function normalGeneric(z) {
  return (1 + erf(z / Math.SQRT2)) / 2;
}

function table(bench, names) {
  const microseconds = (name) => 1000 * bench.tasks.find((task) => task.name === name).result.latency.p50;
  const row = (name, beside, goal) => {
    const value = microseconds(name);
    return { what: `${name}; beside: ${beside}`, value, beside: microseconds(beside), ratio: value / microseconds(beside), goal };
  };
  return [
    row(names.plan, names.planByHand, GOAL),
    row(names.figures, names.planByHand, GOAL),
    row(names.plan, names.sumGeneric),
    row(names.chance, names.chanceByHand, GOAL),
    row(names.chance, names.chanceGeneric),
    row(names.sum, names.sumByHand, GOAL),
    row(names.sum, names.sumGeneric),
  ];
}
