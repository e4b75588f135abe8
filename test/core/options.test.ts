/** What the list of suggested plans promises, whatever the eye. */
import { describe, expect, test } from 'vitest';
import { REASON_TEXT, completePlan, evaluatePlan, reasonText, suggestPlans, type EyePlan, type PlanLimits, type PlanReason, type SuggestedPlan, type Surgery } from '../../core/index.js';
import { filled } from '../../core/fill.js';
import { noMore as noMoreInCore, reasonFor } from '../../core/options-reasons.js';
import { EYES, less, mirroredEye, mirroredSurgery, noMore, said, surgeryIn } from './options-support.js';

const ALLOWED: [string, PlanLimits][] = [
  ['nothing said', {}],
  ['no lenses', { lenses: [] }],
  ['no arcs', { arcs: 0 }],
  ['one arc, strong lenses', { arcs: 1, lenses: [2, 4, 6, 9, 12] }],
  ['two widths', { widths: [2.2, 2.75], lenses: [1.5, 3] }],
  ['a narrow, a middle and a wide entry on the steep meridian', { sites: ['steep'], widths: [1.8, 2.4, 3.2], lenses: [1] }],
];

const lists = EYES.flatMap(([eye, plan]) => ALLOWED.map(([limits, given]) => [`${eye}; ${limits}`, plan, given] as const));

const written = (list: SuggestedPlan[]): string =>
  JSON.stringify(list.map((one) => ({ ...one, chances: [0.25, 0.5, 1].map((limit) => one.outcome.chanceWithin(limit)) })));

describe.each(lists)('%s', (_, eye, limits) => {
  const list = suggestPlans(eye, limits);

  test('is the same every time, and leaves eye and limits as they were', () => {
    const before = JSON.stringify([eye, limits]);
    expect(written(suggestPlans(eye, limits))).toBe(written(list));
    expect(written(suggestPlans(structuredClone(eye), structuredClone(limits)))).toBe(written(list));
    expect(JSON.stringify([eye, limits])).toBe(before);
  });

  test('has one plan at least and six at most, no two alike', () => {
    expect(list.length).toBeGreaterThan(0);
    expect(list.length).toBeLessThanOrEqual(6);
    expect(new Set(list.map(({ surgery: { arcs, arcDegrees, lens, width } }) => `${arcs} ${arcDegrees} ${lens > 0} ${width}`)).size).toBe(list.length);
  });

  test('has the outcome, the chance and the surgery of each plan', () => {
    for (const { plan, outcome, ofHundred, surgery } of list) {
      const again = evaluatePlan(plan);
      expect(JSON.stringify(outcome)).toBe(JSON.stringify(again));
      for (const limit of [0.25, 0.5, 0.75, 1]) expect(outcome.chanceWithin(limit)).toBe(again.chanceWithin(limit));
      expect(ofHundred).toBe(Math.round(100 * again.chanceWithin(0.5)));
      expect(surgery).toEqual(surgeryIn(plan));
      expect(completePlan(plan)).toEqual(plan);
    }
  });

  test('changes nothing of the eye and nothing that it does not plan', () => {
    const { incisionSite: _i, incisionWidth: _w, arcSite: _s, arcCount: _c, arcLength: _l, lensCylinder: _y, lensMeridian: _m, ...kept } = completePlan(eye);
    for (const { plan } of list) expect(plan).toMatchObject(kept);
  });

  test('is ordered by the chance, then by least surgery', () => {
    const key = ({ ofHundred, surgery: { arcs, lens, arcDegrees, width } }: SuggestedPlan) => [-ofHundred, arcs, Number(lens > 0), arcDegrees, width];
    const compare = (a: number[], b: number[]) => a.map((value, index) => value - b[index]!).find((difference) => difference !== 0) ?? 0;
    expect(list).toEqual([...list].sort((a, b) => compare(key(a), key(b))));
  });

  test('has no plan that another on it beats', () => {
    for (const one of list) {
      const better = list.filter((other) => other !== one && other.ofHundred >= one.ofHundred && noMore(other.surgery, one.surgery));
      expect(better.map(said), said(one)).toEqual([]);
    }
  });

  test('stops nothing', () => {
    for (const { outcome } of list) expect(outcome.cautions.map(({ level }) => level)).not.toContain('stop');
  });
});

describe('reasons', () => {
  const PART: Record<string, (a: SuggestedPlan['surgery'], b: SuggestedPlan['surgery']) => boolean> = {
    'one arc': (a, b) => a.arcs === 0 && b.arcs === 1,
    'a pair of arcs': (a, b) => a.arcs === 0 && b.arcs === 2,
    'one arc more': (a, b) => a.arcs === 1 && b.arcs === 2,
    'a longer arc': (a, b) => a.arcs === b.arcs && a.arcDegrees < b.arcDegrees,
    'a toric lens': (a, b) => a.lens === 0 && b.lens > 0,
    'a wider entry': (a, b) => a.width < b.width,
  };

  /** What is wrong with a reason, if anything: the gain has to be that over a listed plan without what is named. */
  function wrong(option: SuggestedPlan, list: SuggestedPlan[]): string | null {
    const claim = /^(?:the best chance; )?(.+) gains (-?\d+) in (\d+)$/.exec(option.reason);
    if (!claim) return /^(the best chance, with the least surgery|the least surgery)$/.test(option.reason) ? null : 'unknown words';
    const parts = claim[1]!.split(' and ');
    const without = list.filter((other) => parts.every((part) => PART[part]?.(other.surgery, option.surgery)));
    if (claim[3] !== '100') return 'not of a hundred';
    if (Number(claim[2]) <= 0) return 'gains nothing';
    return without.some((other) => option.ofHundred - other.ofHundred === Number(claim[2])) ? null : 'not the difference of two plans on the list';
  }

  test.each(lists)('name what is gained over a listed plan that does without: %s', (_, eye, limits) => {
    const list = suggestPlans(eye, limits);
    const faults = list.map((option) => [wrong(option, list), option.reason, said(option)]).filter(([fault]) => fault !== null);
    expect(faults).toEqual([]);
  });

  const BY: Record<string, keyof typeof PART> = {
    byOneArc: 'one arc',
    byPair: 'a pair of arcs',
    byArcMore: 'one arc more',
    byLongerArc: 'a longer arc',
    byLens: 'a toric lens',
    byWiderEntry: 'a wider entry',
  };

  test.each(lists)('say without a language what they say in words: %s', (_, eye, limits) => {
    for (const { reason, why } of suggestPlans(eye, limits)) {
      expect(why.best, reason).toBe(reason.startsWith('the best chance'));
      expect(why.least, reason).toBe(reason.endsWith('the least surgery'));
      const claim = /^(?:the best chance; )?(.+) gains (\d+) in 100$/.exec(reason);
      expect(why.gain && { by: why.gain.by.map((part) => BY[part]), eyes: why.gain.eyes }).toEqual(claim ? { by: claim[1]!.split(' and '), eyes: Number(claim[2]) } : undefined);
    }
  });

  // Two eyes in which another kind of plan does better with less of one thing and more of another.
  test.each<[string, EyePlan, PlanLimits]>([
    ['an arc less long and a lens', {
      eye: 'left', flatK: 43, steepK: 44.75, steepMeridian: 51, age: 70, arcMethod: 'laser',
      ownFigures: { incision: { flattening: 0.3, torque: 0.1, sd: 0.2 }, arcs: { share: 0.8, sdAlong: 0.2, sdAcross: 0.2 } },
    }, { sites: ['steep'], widths: [1.8], lenses: [0.5, 1, 6] }],
    ['a short pair for a long arc', {
      eye: 'left', flatK: 43, steepK: 44.75, steepMeridian: 105, age: 70, backSurface: 'typical',
      ownFigures: { incision: { flattening: 0.3, torque: 0.1, sd: 0.2 }, arcs: { share: 0.8, sdAlong: 0.2, sdAcross: 0.2 } },
    }, { lenses: [2, 4, 6, 8, 10, 12] }],
  ])('never claim a gain of nothing or less: %s', (_, eye, limits) => {
    const list = suggestPlans(eye, limits);
    expect(list.map((option) => [wrong(option, list), option.reason]).filter(([fault]) => fault !== null)).toEqual([]);
  });

  test.each(lists)('say of one plan only that it is the best, and of one only that it is the least surgery: %s', (_, eye, limits) => {
    const list = suggestPlans(eye, limits);
    expect(list.map(({ reason }) => reason.includes('the best chance'))).toEqual(list.map((__, index) => index === 0));
    const least = list.filter(({ reason }) => reason.includes('the least surgery'));
    expect(least.map(said)).toHaveLength(1);
    for (const other of list) expect(less(other.surgery, least[0]!.surgery), said(other)).toBe(false);
  });

  test.each(lists)('give no odds of one in so many: %s', (_, eye, limits) => {
    for (const { reason } of suggestPlans(eye, limits)) {
      for (const [, , whole] of reason.matchAll(/(\d+) in (\d+)/g)) expect(whole).toBe('100');
      expect(reason).not.toMatch(/one in|odds|%|NaN|undefined|null/);
    }
  });
});

describe('a reason in words', () => {
  const text = (reason: PlanReason): string => reasonText(reason, (id, values = {}) => filled(REASON_TEXT[id], values, String));

  // `suggestPlans` gives a gain to all but the least surgery; whoever shortens its list may have to say the others.
  test.each<[string, PlanReason]>([
    ['the best chance, with the least surgery', { best: true, least: true }],
    ['the best chance', { best: true, least: false }],
    ['the least surgery', { best: false, least: true }],
    ['another way', { best: false, least: false }],
    ['one arc more gains 4 in 100', { best: false, least: false, gain: { by: ['byArcMore'], eyes: 4 } }],
    ['the best chance; a pair of arcs and a toric lens and a wider entry gains 30 in 100', { best: true, least: false, gain: { by: ['byPair', 'byLens', 'byWiderEntry'], eyes: 30 } }],
  ])('%s', (words, reason) => expect(text(reason)).toBe(words));

  test('tells the best chance from another way among plans of which none is less than the other', () => {
    const of = (surgery: Surgery, ofHundred: number): SuggestedPlan => ({ ...suggestPlans({ flatK: 43, steepK: 44 }, { arcs: 0, lenses: [] })[0]!, surgery, ofHundred });
    const [arc, lens] = [of({ arcs: 1, arcDegrees: 45, lens: 0, width: 2.4 }, 60), of({ arcs: 0, arcDegrees: 0, lens: 2, width: 2.4 }, 55)];
    expect(reasonFor(arc, [arc, lens])).toEqual({ best: true, least: false });
    expect(reasonFor(lens, [arc, lens])).toEqual({ best: false, least: false });
  });
});

describe('less surgery', () => {
  const of = (arcs: 0 | 1 | 2, arcDegrees: number, lens: number, width: number): Surgery => ({ arcs, arcDegrees, lens, width });
  test.each([
    [of(2, 60, 0, 2.4), of(1, 90, 0, 2.4), false], [of(1, 90, 0, 2.4), of(2, 60, 0, 2.4), false], [of(1, 45, 0, 2.4), of(1, 45, 0, 2.4), true], [of(1, 45, 0, 2.4), of(2, 90, 2, 2.8), true],
    [of(0, 0, 2, 2.4), of(0, 0, 3, 2.4), true], [of(0, 0, 3, 2.4), of(0, 0, 2, 2.4), true], [of(0, 0, 2, 2.4), of(2, 90, 0, 2.4), false], [of(0, 0, 0, 2.5), of(1, 45, 2, 2.4), false],
  ])('%j is no more than %j: %s', (a, b, expected) => expect(noMoreInCore(a, b)).toBe(expected));

  test('a gain is told over the best of those with less surgery and less chance, in whatever order they come', () => {
    const one = suggestPlans({ flatK: 43, steepK: 44 }, { arcs: 0, lenses: [] })[0]!;
    const option = (surgery: Surgery, ofHundred: number): SuggestedPlan => ({ ...one, surgery, ofHundred });
    const most = option(of(2, 90, 0, 2.4), 70);
    const others = [option(of(0, 0, 0, 2.4), 40), option(of(1, 45, 0, 2.4), 55), option(of(1, 30, 0, 2.4), 50), option(of(0, 0, 0, 2.2), 75)];
    for (const list of [[most, ...others], [...others, most], [most, ...others.toReversed()]]) expect(reasonFor(most, list).gain).toEqual({ by: ['byArcMore'], eyes: 15 });
  });
});

describe('a mirrored eye', () => {
  test.each(lists)('has the same chances for the same surgery, and the lens on the mirrored meridian: %s', (_, eye, limits) => {
    const [here, there] = [suggestPlans(eye, limits), suggestPlans(mirroredEye(eye), limits)];
    expect(there.map(({ ofHundred, surgery, reason }) => ({ ofHundred, surgery, reason }))).toEqual(
      here.map(({ ofHundred, surgery, reason }) => ({ ofHundred, surgery, reason })),
    );
    expect(there.map(({ plan }) => plan.lensMeridian)).toEqual(here.map(({ plan }) => mirroredSurgery(plan).lensMeridian));
  });

  test.each(lists)('is entered and cut at the mirrored places: %s', (_, eye, limits) => {
    const [here, there] = [suggestPlans(eye, limits), suggestPlans(mirroredEye(eye), limits)];
    const places = ({ incisionSite, arcSite }: { incisionSite: number | null; arcSite: number | null }) => ({ incisionSite, arcSite });
    expect(there.map(({ plan }) => places(plan))).toEqual(here.map(({ plan }) => places(mirroredSurgery(plan))));
  });
});
