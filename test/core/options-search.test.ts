/** The search against one without any cleverness: every plan of the documented grid, judged one by one. */
import seedrandom from 'seedrandom';
import { describe, expect, test } from 'vitest';
import { suggestPlans, type EyePlan, type PlanLimits } from '../../core/index.js';
import { less, noMore, said, tryAll, type Grid } from './options-support.js';

const random = seedrandom('eyes to search for');
const pick = <T>(...choices: T[]): T => choices[Math.floor(random() * choices.length)]!;

/** An eye of any kind that may or may not have arcs. */
function drawnEye(): EyePlan {
  const flatK = 41 + Math.round(random() * 12) / 4;
  return {
    eye: pick('right', 'left'), flatK, steepK: flatK + Math.round(random() * 20) / 4, steepMeridian: 1 + Math.floor(random() * 180),
    age: pick(null, 45, 68, 80), backSurface: pick('omitted', 'typical', '0.4@170'), arcMethod: pick('blade', 'laser'),
    risks: pick('', '', '', 'dry-eye'),
    ownFigures: pick(null, null, { incision: { flattening: 0.3, torque: 0.1, sd: 0.2 }, arcs: { share: 0.8, sdAlong: 0.2, sdAcross: 0.2 } }),
  };
}

const temporal = ({ eye }: EyePlan): number => (eye === 'right' ? 180 : 0);
/** Ends of the steep meridian from temporal to superior and 45° beyond: 45–225° in a right eye, 315–135° in a left one. */
const ends = ({ eye, steepMeridian }: EyePlan): number[] =>
  [steepMeridian! % 360, (steepMeridian! + 180) % 360].filter((end) => (eye === 'right' ? end >= 45 && end <= 225 : end >= 315 || end <= 135));

/** Small grids, with the same limits in the words of the search. */
const GRIDS: [name: string, limits: PlanLimits, grid: (eye: EyePlan) => Grid][] = [
  ['temporal, few lenses', { sites: ['temporal'], widths: [2.4], lenses: [1, 2.5] }, (eye) => ({ sites: [temporal(eye)], widths: [2.4], lenses: [1, 2.5] })],
  ['the steep meridian, no lenses', { sites: ['steep'], widths: [2.75], lenses: [] }, (eye) => ({ sites: ends(eye), widths: [2.75], lenses: [] })],
  ['two sites in degrees, one arc, strong lenses', { sites: [200, 90], widths: [2.2], lenses: [3, 6], arcs: 1 }, () => ({ sites: [200, 90], widths: [2.2], lenses: [3, 6], arcs: 1 })],
];

const WIDTHS: [string, PlanLimits, (eye: EyePlan) => Grid] = [
  'temporal, three widths',
  { sites: ['temporal'], widths: [1.8, 2.4, 3], lenses: [2] },
  (eye) => ({ sites: [temporal(eye)], widths: [1.8, 2.4, 3], lenses: [2] }),
];

const CASES = [...GRIDS, WIDTHS].map(([name, limits, grid]) => {
  const runs = Array.from({ length: 30 }, () => {
    const eye = drawnEye();
    return { eye, list: suggestPlans(eye, limits), all: tryAll(eye, grid(eye)) };
  });
  return [name, runs] as const;
});

describe.each(CASES)('%s', (_, runs) => {
  test('tries a grid that is worth the name', () => {
    expect(runs.filter(({ all }) => all.length > 1).length).toBeGreaterThan(15);
    expect(runs.filter(({ all }) => all.some(({ surgery }) => surgery.arcs > 0)).length).toBeGreaterThan(10);
  });

  test('nothing has a better chance than the first that is listed', () => {
    for (const { eye, list, all } of runs) {
      expect(list[0]!.ofHundred, JSON.stringify(eye)).toBe(Math.max(...all.map(({ ofHundred }) => ofHundred)));
    }
  });

  test('what is listed is in the grid, with the same chance', () => {
    for (const { list, all } of runs) {
      const known = new Set(all.map(said).map((text) => text.replace(/(× \d+° at) \d+/, '$1 …')));
      for (const option of list) expect(known).toContain(said(option).replace(/(× \d+° at) \d+/, '$1 …'));
    }
  });

  // “A plan is left out when another does as well with no more of anything.”
  test('nothing does as well as a listed plan with no more of anything and less of something, or better', () => {
    const beaten = runs.flatMap(({ list, all }) => list.flatMap((option) => {
      const by = all.find(({ ofHundred, surgery }) => noMore(surgery, option.surgery) && (ofHundred > option.ofHundred || (ofHundred === option.ofHundred && less(surgery, option.surgery))));
      return by ? [`${said(option)} — but ${said(by)}`] : [];
    }));
    expect(beaten).toEqual([]);
  });

  // “The plan with the least surgery is always one.”
  test('the least surgery is listed: no arcs, no lens, the narrowest entry', () => {
    const missing = runs.filter(({ list, all }) => {
      const width = Math.min(...all.map(({ surgery }) => surgery.width));
      return !list.some(({ surgery }) => surgery.arcs === 0 && surgery.lens === 0 && surgery.width === width);
    });
    expect(missing.map(({ eye, list }) => `${JSON.stringify(eye)}: ${list.map(said).join('; ')}`)).toEqual([]);
  });
});
