/** Each caution as it is read: how strongly, from which source, with which figures. The figures were worked by hand. */
import { describe, expect, test } from 'vitest';
import { RISKS, cautionsFor, type EyePlan } from '../../core/index.js';
import { ARC, BARE, QUIET, ids } from './cautions-support.js';

const NO_ARCS = 'the cornea may be irregular or thinning. No arcs without topography.';

test.each<[id: string, level: string, source: string, plan: EyePlan, text: string]>([
  ['arc-too-long', 'stop', 'relaxingTable', { ...ARC, arcLength: 90.5 }, 'An arc of 90.5° is longer than any in the table (90°). Its effect is counted as that of 90°.'],
  ['arc-short', 'note', 'relaxingTable', { ...ARC, arcLength: 22.5 }, 'The table has no arc shorter than 30°. The effect of 22.5° is extrapolated.'],
  ['thickness-unknown', 'think', 'commonPractice', { ...ARC, localThickness: null }, 'The thickness where the arc will lie is not known. Measure at the site before any cut; the central thickness does not tell.'],
  ['thickness-unknown', 'think', 'commonPractice', { ...ARC, arcDepth: null }, 'The depth of the arc is not given. Measure at the site before any cut; the central thickness does not tell.'],
  // 545 / 600 is 90.8 %, 455 / 600 is 75.8 %.
  ['arc-too-deep', 'stop', 'commonPractice', { ...ARC, arcDepth: 545 }, '545 µm is 91 % of the local thickness (600 µm). From 90 % the cornea may be perforated.'],
  ['arc-shallow', 'note', 'commonPractice', { ...ARC, arcDepth: 455 }, '455 µm is 76 % of the local thickness (600 µm). The effect is that of arcs at 80–90 %; shallower ones do less.'],
  ['arc-zone', 'note', 'duffey1988', { ...ARC, arcZone: 8.5 }, 'The effect is that of arcs on a circle of about 11 mm. On one of 8.5 mm it differs; a smaller circle does more.'],
  ['hardly-any', 'think', 'villegas2014', { ...ARC, steepK: 43.3, backSurface: '0@180' }, 'There are only 0.30 D to correct. Less than 0.50 D does not disturb most eyes.'],
  // 4 D in front and 0.25 D more from a back that adds with the rule.
  ['beyond-arcs', 'think', 'relaxingTable', { ...ARC, steepK: 47, backSurface: '0.25@90' }, '4.25 D are more than the table of arcs covers (4 D).'],
  ['age-unknown', 'note', 'assumed', { ...ARC, age: null }, 'No age is given; the arcs are calculated for 65 years.'],
  ['age-outside', 'note', 'relaxingTable', { ...ARC, age: 30.5 }, 'The table covers ages from 40 to 90. At 30.5 the nearer limit is used.'],
  ['age-outside', 'note', 'relaxingTable', { ...ARC, age: 95 }, 'The table covers ages from 40 to 90. At 95 the nearer limit is used.'],
  ['arc-over-incision', 'think', 'commonPractice', { ...ARC, incisionSite: 90 }, 'The arc and the incision overlap. Cut the arc after the entry is closed, or move one of them.'],
  ['oblique', 'note', 'ueno2021', { ...ARC, steepMeridian: 45 }, 'Oblique astigmatism is irregular more often than other astigmatism. Look at the topography.'],
  ['irregular-cornea', 'think', 'commonPractice', { ...QUIET, steepK: 48.25 }, `With a reading of 48.25 D ${NO_ARCS}`],
  ['irregular-cornea', 'stop', 'commonPractice', { ...ARC, steepK: 48.25 }, `With a reading of 48.25 D ${NO_ARCS}`],
  ['irregular-cornea', 'think', 'commonPractice', { ...QUIET, steepK: 47.5 }, `With a difference of 4.50 D ${NO_ARCS}`],
  ['back-surface-omitted', 'think', 'savini2015', { ...QUIET, backSurface: 'omitted' }, 'The back of the cornea is not taken into account. In an eye that is steep near 90° this tends to over-correct.'],
  ['back-surface-omitted', 'note', 'savini2015', { ...QUIET, backSurface: 'omitted', steepMeridian: 5 }, 'The back of the cornea is not taken into account. In an eye that is steep near 180° this tends to under-correct.'],
  ['over-correction', 'think', 'commonPractice', { ...BARE, lensCylinder: 1.5, lensMeridian: 90 }, 'Over-correction is expected: the steep meridian turns from 90° to 180°.'],
  // 2 D less 0.27 D are 1.73 D; 90° of arc intend 1.70 · 1.5 = 2.55 D.
  ['over-correction-if-full', 'note', 'commonPractice', { ...ARC, arcLength: 90 }, 'If the full intended effect were reached, this eye would be over-corrected by 0.82 D.'],
  ['more-than-before', 'think', 'commonPractice', { ...BARE, incisionSite: 0, incisionFlattening: 0.5 }, 'The plan leaves more astigmatism (1.50 D) than there is without it (1.00 D).'],
  ['lens-off', 'think', 'felipe2011', { ...BARE, lensCylinder: 1, lensMeridian: 102.5 }, 'The lens is 12.5° off the steep meridian that it has to answer (90°). At 10° a third of its effect is lost.'],
])('%s: %s, %s', (id, level, source, plan, text) => {
  const found = cautionsFor(plan).find((caution) => caution.id === id);
  expect(found).toMatchObject({ id, level, source, text });
});

test.each(RISKS)('the risk %s is common practice, and has one text with arcs and another without', (risks) => {
  const of = (plan: EyePlan) => cautionsFor({ ...plan, risks }).find(({ id }) => id === `risk-${risks}`)!;
  expect(of(QUIET)).toMatchObject({ level: 'think', source: 'commonPractice', wording: `risk-${risks}` });
  expect(of(ARC)).toMatchObject({ level: 'stop', source: 'commonPractice', wording: `risk-${risks}-arcs` });
});

test('what stops comes first, what is only noted last, whichever was found first', () => {
  const of = (plan: EyePlan) => cautionsFor(plan).map(({ id, level }) => [id, level]);
  // In the order of finding: the cornea, depth, zone, length of the arc.
  expect(of({ ...ARC, risks: 'ectasia', arcZone: 8, arcDepth: 550, age: 30, localThickness: 600, steepMeridian: 45, arcSite: 45 })).toEqual([
    ['risk-ectasia', 'stop'], ['arc-too-deep', 'stop'], ['arc-zone', 'note'], ['age-outside', 'note'], ['oblique', 'note'],
  ]);
  expect(of({ ...QUIET, backSurface: 'omitted', risks: 'ectasia', arcSite: 90, arcLength: 20, arcCount: 1 })).toEqual([
    ['risk-ectasia', 'stop'], ['thickness-unknown', 'think'], ['back-surface-omitted', 'think'], ['arc-short', 'note'],
  ]);
});

describe('an arc and an incision share a part of the limbus', () => {
  test('nowhere without an incision, wherever the arc is', () => {
    for (const arcSite of [0, 90, 180, 270, 360]) expect(ids({ ...ARC, arcSite, steepMeridian: arcSite % 180, arcCount: 2 })).not.toContain('arc-over-incision');
  });

  test('nowhere without an arc, wherever the incision is', () => {
    for (const incisionSite of [0, 90, 180, 270]) expect(ids({ ...QUIET, incisionSite, arcSite: incisionSite })).not.toContain('arc-over-incision');
  });
});
