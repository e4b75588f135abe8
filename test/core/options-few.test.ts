/** The whole list of a few eyes by the rules as they are written, from every plan of a small grid. */
import { describe, expect, test } from 'vitest';
import { evaluatePlan, fromTemporal, suggestPlans, type EyePlan } from '../../core/index.js';
import { EYES, less, noMore, said, tryAll, type Grid, type Tried } from './options-support.js';

const LIMITS: Grid = { sites: [180, 90, 0], widths: [2.2, 2.8], lenses: [1.5, 3] };

interface Ranked extends Tried {
  chance: number;
}

const order = (a: Ranked, b: Ranked): number =>
  b.ofHundred - a.ofHundred || a.surgery.arcs - b.surgery.arcs || Number(a.surgery.lens > 0) - Number(b.surgery.lens > 0) || a.surgery.arcDegrees - b.surgery.arcDegrees ||
  a.surgery.width - b.surgery.width || Math.round(1e9 * (b.chance - a.chance)) || fromTemporal(a.plan.incisionSite!, a.plan.eye) - fromTemporal(b.plan.incisionSite!, b.plan.eye);

/** The first of each kind, in the order of the list. */
function firsts(list: readonly Ranked[], kind: (one: Ranked) => string): Ranked[] {
  const seen = new Set<string>();
  return list.filter((one) => !seen.has(kind(one)) && seen.add(kind(one)));
}

/** All that are worth a place, the list's length apart. */
function worthwhile(eye: EyePlan, grid: Grid): Ranked[] {
  const all = tryAll(eye, grid).map((tried) => ({ ...tried, chance: evaluatePlan(tried.plan).chanceWithin(0.5) })).sort(order);
  const bestOfSame = firsts(all, ({ surgery: { arcs, arcDegrees, lens, width } }) => [arcs, arcDegrees, lens > 0, width].join());
  const unbeaten = bestOfSame.filter((one) => !bestOfSame.some((other) => other.ofHundred >= one.ofHundred && noMore(other.surgery, one.surgery) && (other.ofHundred > one.ofHundred || less(other.surgery, one.surgery))));
  return firsts(unbeaten, ({ plan, surgery }) => [plan.incisionSite, plan.incisionWidth, surgery.arcs, surgery.lens > 0].join());
}

function shortened(kinds: Ranked[], grid: Grid): Ranked[] {
  return kinds.length > 6 ? [...kinds.slice(0, 5), kinds.find(({ surgery }) => surgery.arcs === 0 && surgery.lens === 0 && surgery.width === Math.min(...grid.widths))!] : kinds;
}

/** Which end of its meridian an arc lies at is tested elsewhere. */
const shown = (list: readonly Tried[]): string[] => list.map((one) => said(one).replace(/(× \d+° at) \d+/, '$1 …'));

describe.each(EYES)('%s', (_, eye) => {
  test.each<[string, Partial<Grid>]>([['everything', {}], ['one arc, strong lenses', { arcs: 1, lenses: [2, 4.5] }], ['no lens', { lenses: [] }], ['no arcs', { arcs: 0 }]])('%s', (_name, some) => {
    const grid = { ...LIMITS, ...some };
    expect(shown(suggestPlans(eye, grid))).toEqual(shown(shortened(worthwhile(eye, grid), grid)));
  });
});

// Eyes and blades with which seven to nine plans remain: the last one listed is that with the least surgery, and no other.
test.each<[string, EyePlan, Grid]>([
  ['five widths against the rule', { eye: 'left', flatK: 43, steepK: 44, steepMeridian: 5, age: 70 }, { sites: [180, 90, 0], widths: [1.8, 2.2, 2.6, 3, 3.4], lenses: [2] }],
  ['five widths, the widest first', { eye: 'left', flatK: 43, steepK: 44, steepMeridian: 5, age: 70 }, { sites: [180, 90, 0], widths: [3.4, 3, 2.6, 2.2, 1.8], lenses: [2] }],
  ['two widths and three dioptres', { eye: 'right', flatK: 43, steepK: 46, steepMeridian: 150, age: 70, backSurface: 'typical' }, { sites: [180, 90, 0], widths: [2.2, 2.8], lenses: [2] }],
])('of more than six plans the first five and the last: %s', (_, eye, grid) => {
  const all = worthwhile(eye, grid);
  expect(all.length).toBeGreaterThan(6);
  expect(shown(suggestPlans(eye, grid))).toEqual(shown(shortened(all, grid)));
});

test('what a plan gains is told over the best of those with less surgery and less chance', () => {
  for (const [, eye] of EYES) {
    const list = suggestPlans(eye, LIMITS);
    for (const [index, { ofHundred, surgery, why }] of list.entries()) {
      const simpler = list.filter((other) => less(other.surgery, surgery) && other.ofHundred < ofHundred).map((other) => other.ofHundred);
      expect(why.gain?.eyes, JSON.stringify([eye, surgery])).toBe(simpler.length > 0 ? ofHundred - Math.max(...simpler) : undefined);
      expect([why.best, why.least]).toEqual([index === 0, list.every((other) => other.surgery === surgery || less(surgery, other.surgery))]);
    }
  }
});
