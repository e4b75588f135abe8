/** How fast the core is, beside the same sum in generic complex arithmetic and written out by hand. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { abs, add, arg, complex } from 'mathjs';
import { Bench } from 'tinybench';
import { bundle, root } from './page.mjs';

export const title = 'Core, calls a second';

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

const DEGREES = 360;

export async function run() {
  const core = await loadCore();
  const outcomes = Array.from({ length: DEGREES }, (_, site) => core.evaluatePlan({ ...PLAN, incisionSite: site }));
  // What is before, and what each step adds, as figures: where the sum starts in all three ways of doing it.
  const sums = outcomes.map(({ before, steps }) => [before, ...steps.map(({ vector }) => core.fromVector(vector))]);
  const plans = outcomes.map((_, site) => ({ ...PLAN, incisionSite: site }));
  check(core, sums);

  const names = {
    plan: 'evaluatePlan, four steps with spread and cautions',
    chance: 'chanceWithin 0.50 D',
    sum: 'sum of before and steps, core',
    hand: 'the same sum, written out by hand',
    generic: 'the same sum, mathjs complex',
  };
  const bench = new Bench({ time: 600, warmupTime: 200 });
  const each = (name, task, inputs) => {
    let index = 0;
    bench.add(name, () => task(inputs[(index = (index + 1) % DEGREES)]));
  };
  each(names.plan, (plan) => core.evaluatePlan(plan), plans);
  each(names.chance, (outcome) => outcome.chanceWithin(0.5), outcomes);
  each(names.sum, (parts) => core.sum(...parts), sums);
  each(names.hand, sumByHand, sums);
  each(names.generic, sumGeneric, sums);
  await bench.run();
  return table(bench, names);
}

export async function loadCore() {
  const folder = join(root, 'test/out');
  mkdirSync(folder, { recursive: true });
  const file = join(folder, 'bench-core.mjs');
  writeFileSync(file, await bundle({ entryPoints: [join(root, 'core/index.ts')], platform: 'node' }));
  return import(`${pathToFileURL(file)}?${Date.now()}`);
}

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

function table(bench, names) {
  const perSecond = (name) => 1e3 / bench.tasks.find((task) => task.name === name).result.latency.p50;
  const row = (name, beside) => {
    const value = perSecond(name);
    return { what: `${name}; beside: ${beside}`, value, beside: perSecond(beside), ratio: value / perSecond(beside) };
  };
  return [
    row(names.plan, names.generic),
    row(names.plan, names.hand),
    row(names.chance, names.generic),
    row(names.chance, names.hand),
    row(names.sum, names.generic),
    row(names.sum, names.hand),
  ];
}
