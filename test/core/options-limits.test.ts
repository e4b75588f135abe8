/** What the surgeon and the eye allow, what is refused, and the ends of the dial. */
import { describe, expect, test } from 'vitest';
import { LIMITS, RISKS, RefusedValue, completePlan, siteName, suggestPlans, type EyePlan, type PlanLimits } from '../../core/index.js';
import { candidates } from '../../core/options-candidates.js';
import { EYES, LENSES, LENGTHS, mirroredEye, mirroredSurgery, said } from './options-support.js';

const EYE: EyePlan = { eye: 'right', flatK: 43, steepK: 45, steepMeridian: 100, age: 70, backSurface: 'typical' };

const sitesOf = (eye: EyePlan, limits?: PlanLimits): number[] => [...new Set(suggestPlans(eye, limits).map(({ plan }) => plan.incisionSite!))];

describe.each(EYES)('within the limits: %s', (_, eye) => {
  test('nothing said: temporal, superior or steep; the width of the plan; arcs of the table; the usual lenses', () => {
    const steep = eye.steepMeridian!;
    for (const { plan } of suggestPlans({ ...eye, incisionWidth: 2.75 })) {
      expect([eye.eye === 'left' ? 0 : 180, 90, steep, steep + 180]).toContain(plan.incisionSite);
      expect(plan.incisionWidth).toBe(2.75);
      if (plan.arcCount) expect(LENGTHS).toContain(plan.arcLength);
      if (plan.lensCylinder !== null) expect(LENSES).toContain(plan.lensCylinder);
    }
  });

  test.each([0, 1, 2] as const)('%d arcs at most', (arcs) => {
    for (const { plan } of suggestPlans(eye, { arcs })) expect(plan.arcCount).toBeLessThanOrEqual(arcs);
  });

  test.each([[['temporal']], [['superior']], [['steep']], [[200]], [[0, 270]], [[360]], [['temporal', 17.5]]] as const)('sites %j', (sites) => {
    const allowed = (sites as readonly (string | number)[]).flatMap((name) => {
      if (typeof name === 'number') return [name % 360];
      return name === 'temporal' ? [eye.eye === 'left' ? 0 : 180] : name === 'superior' ? [90] : [eye.steepMeridian! % 360, (eye.steepMeridian! + 180) % 360];
    });
    const used = sitesOf(eye, { sites });
    expect(used.length).toBeGreaterThan(0);
    for (const site of used) expect(allowed).toContain(site);
  });

  test.each([[[2.2]], [[1.8, 3.5]], [[3, 2.4, 2.75]]])('widths %j', (widths) => {
    for (const { plan } of suggestPlans(eye, { widths })) expect(widths).toContain(plan.incisionWidth);
  });

  test.each([[[]], [[0]], [[2]], [[12, 6, 3, 3]]])('lenses %j', (lenses) => {
    for (const { plan } of suggestPlans(eye, { lenses })) expect([null, ...lenses.filter(Boolean)]).toContain(plan.lensCylinder);
  });

  test('with a plan already made: what was planned is not carried over', () => {
    const planned: EyePlan = { ...eye, incisionSite: 33, arcSite: 77, arcCount: 2, arcLength: 120, lensCylinder: 5, lensMeridian: 11 };
    const bare = (list: ReturnType<typeof suggestPlans>) => list.map((option) => said(option));
    expect(bare(suggestPlans(planned))).toEqual(bare(suggestPlans(eye)));
  });
});

describe('the steep meridian is entered from the end in reach: nearer to the temple or to 12 o’clock', () => {
  const sites = (side: 'right' | 'left', steepMeridian: number): number[] => {
    const plan = completePlan({ eye: side, flatK: 43, steepK: 45, steepMeridian });
    return [...new Set([...candidates(plan, { sites: ['steep'], lenses: [], arcs: 0 }, true)].map(({ incisionSite }) => incisionSite!))];
  };
  // The temple is at 180° in a right eye and at 0° in a left one.
  test.each([[44, 224], [46, 46], [90, 90], [100, 100], [135, 135], [170, 170], [180, 180], [1, 181]])('right, %d°: from %d°', (steep, end) => expect(sites('right', steep)).toEqual([end]));
  test.each([[136, 316], [134, 134], [90, 90], [80, 80], [45, 45], [10, 10], [180, 0], [179, 359]])('left, %d°: from %d°', (steep, end) => expect(sites('left', steep)).toEqual([end]));
  test('from both where neither is nearer', () => {
    expect(sites('right', 45)).toEqual([45, 225]);
    expect(sites('left', 135)).toEqual([135, 315]);
  });
});

describe('empty lists', () => {
  test('of sites or widths leave nothing to suggest', () => {
    expect(suggestPlans(EYE, { sites: [] })).toEqual([]);
    expect(suggestPlans(EYE, { widths: [] })).toEqual([]);
  });

  test('of lenses are no lenses; nothing but the entry is left without arcs', () => {
    const list = suggestPlans(EYE, { lenses: [], arcs: 0 });
    expect(list).toHaveLength(1);
    expect(list[0]).toMatchObject({ surgery: { arcs: 0, arcDegrees: 0, lens: 0, width: 2.4 }, reason: 'the best chance, with the least surgery' });
  });

  test('nothing said is said by undefined too', () => {
    const none: PlanLimits = { sites: undefined, widths: undefined, arcs: undefined, lenses: undefined };
    expect(JSON.stringify(suggestPlans(EYE, none))).toBe(JSON.stringify(suggestPlans(EYE)));
  });
});

describe('arcs are not offered', () => {
  const arcsIn = (eye: EyePlan): number => suggestPlans({ ...EYE, ...eye }, { lenses: [] }).filter(({ surgery }) => surgery.arcs > 0).length;

  test('unless something speaks against them', () => expect(arcsIn({})).toBeGreaterThan(0));
  test.each(RISKS)('with the risk %s', (risks) => expect(arcsIn({ risks })).toBe(0));
  test('above 48 D', () => {
    expect(arcsIn({ flatK: 46, steepK: 48 })).toBeGreaterThan(0);
    expect(arcsIn({ flatK: 46, steepK: 48.01 })).toBe(0);
  });
  test('above a difference of 4 D', () => {
    expect(arcsIn({ steepK: 47 })).toBeGreaterThan(0);
    expect(arcsIn({ steepK: 47.01 })).toBe(0);
  });
  test('at a depth of 90 % or more of the local thickness', () => {
    expect(arcsIn({ localThickness: 600, arcDepth: 539 })).toBeGreaterThan(0);
    expect(arcsIn({ localThickness: 600, arcDepth: 540 })).toBe(0);
    // Too long as planned is no reason: the search has lengths of its own.
    expect(arcsIn({ arcLength: 120 })).toBeGreaterThan(0);
  });
  test('but lenses are, with all of these', () => {
    for (const eye of [{ risks: 'ectasia' }, { steepK: 47.5 }, { localThickness: 600, arcDepth: 560 }]) {
      const list = suggestPlans({ ...EYE, ...eye });
      expect(list.every(({ surgery }) => surgery.arcs === 0)).toBe(true);
      expect(list.some(({ surgery }) => surgery.lens > 0)).toBe(true);
    }
  });
});

describe('an eye with next to nothing', () => {
  test.each([0, 0.1, 0.25])('of %d D has neither arcs nor a lens first', (magnitude) => {
    for (const steepMeridian of [20, 90, 180]) {
      const first = suggestPlans({ ...EYE, steepK: 43 + magnitude, steepMeridian, backSurface: 'omitted' })[0]!;
      expect(first.surgery, said(first)).toMatchObject({ arcs: 0, lens: 0 });
      expect(first.reason).toBe('the best chance, with the least surgery');
    }
  });
});

describe('refused', () => {
  function refusal(limits: object, eye: EyePlan = EYE): RefusedValue {
    try {
      suggestPlans(eye, limits as PlanLimits);
    } catch (error) {
      expect(error).toBeInstanceOf(RefusedValue);
      return error as RefusedValue;
    }
    throw new Error('nothing was refused');
  }

  const { incisionWidth, incisionSite, lensCylinder } = LIMITS;

  test.each([
    ['sites', -1, [0, 360]], ['sites', incisionSite.max + 0.01, [0, 360]], ['sites', NaN, [0, 360]], ['sites', 'nasal', [0, 360]], ['sites', '90', [0, 360]], ['sites', null, [0, 360]],
    ['widths', incisionWidth.min - 0.01, [1.8, 3.5]], ['widths', incisionWidth.max + 0.01, [1.8, 3.5]], ['widths', NaN, [1.8, 3.5]], ['widths', '2.4', [1.8, 3.5]],
    ['lenses', -0.5, [0, 12]], ['lenses', lensCylinder.max + 0.5, [0, 12]], ['lenses', Infinity, [0, 12]], ['lenses', '2', [0, 12]],
  ] as const)('%s with %j among them, by field, value and limits', (field, value, bounds) => {
    const good = { sites: ['temporal'], widths: [2.4], lenses: [2] }[field];
    const error = refusal({ [field]: [...good, value] });
    expect([error.field, error.value]).toEqual([field, value]);
    for (const part of [field, value === null ? 'none' : String(value), ...bounds.map(String)]) expect(error.message).toContain(part);
    if (field === 'sites') for (const word of ['temporal', 'superior', 'steep']) expect(error.message).toContain(word);
  });

  test.each([-1, 3, 1.5, '2', NaN])('%j arcs', (arcs) => {
    expect(refusal({ arcs }).message).toMatch(/^arcs: .*0, 1, 2/);
  });

  test('a count of arcs that is none, also in an eye that has no arcs anyway', () => {
    expect(refusal({ arcs: 7 }, { ...EYE, risks: 'ectasia' }).field).toBe('arcs');
  });

  test('an eye that no plan accepts, by its own field', () => {
    for (const [eye, field] of [[{ steepK: 80 }, 'steepK'], [{ steepK: 42 }, 'steepK'], [{ age: 0 }, 'age'], [{ risks: 'x' }, 'risks']] as const) {
      expect(refusal({}, { ...EYE, ...eye }).field).toBe(field);
    }
  });
});

describe('the ends of the dial', () => {
  test('a steep meridian of 180° and one of 0° are one', () => {
    for (const eye of ['right', 'left'] as const) {
      expect(JSON.stringify(suggestPlans({ ...EYE, eye, steepMeridian: 0 }))).toBe(JSON.stringify(suggestPlans({ ...EYE, eye, steepMeridian: 180 })));
    }
  });

  test.each([180, 1, 179, 90, 91])('steep at %d°: no plan twice, every degree in its printed range', (steepMeridian) => {
    for (const eye of ['right', 'left'] as const) {
      const list = suggestPlans({ ...EYE, eye, steepMeridian });
      expect(new Set(list.map(said)).size).toBe(list.length);
      for (const { plan } of list) {
        for (const site of [plan.incisionSite!, plan.arcSite ?? 0]) expect(site >= 0 && site < 360, said(list[0]!)).toBe(true);
        if (plan.lensMeridian !== null) expect(plan.lensMeridian > 0 && plan.lensMeridian <= 180).toBe(true);
      }
    }
  });

  test('temporal and steep, superior and steep, are one place where they coincide', () => {
    for (const [eye, steepMeridian, name] of [['right', 180, 'temporal'], ['left', 180, 'temporal'], ['right', 90, 'superior'], ['left', 90, 'superior']] as const) {
      const plan: EyePlan = { ...EYE, eye, steepMeridian };
      const said = (sites: PlanLimits['sites']) => JSON.stringify(suggestPlans(plan, { sites }));
      expect(said(['steep', name])).toBe(said(['steep']));
      expect(said([name, name, 'steep'])).toBe(said(['steep']));
    }
  });

  test('one arc lies where the incision is not, and the lens and the arcs on what is left', () => {
    for (const [, eye] of EYES) {
      for (const { plan } of suggestPlans(eye, { arcs: 1 })) {
        if (plan.arcCount !== 1) continue;
        const apart = Math.abs(((plan.arcSite! - plan.incisionSite! + 540) % 360) - 180);
        expect(apart, `${plan.arcSite} and ${plan.incisionSite}`).toBeGreaterThanOrEqual(90);
      }
    }
  });

  // Exactly horizontal is where a mirror sends each end to the other and both have the same number of degrees.
  const own = { incision: { flattening: 0.3, torque: 0, sd: 0.2 }, arcs: null };
  test.each([['the model', {}], ['own figures, which do the same on either side', { ownFigures: own }]] as const)('a horizontal eye is mirrored like any other: %s', (_, figures) => {
    for (const sites of [undefined, ['steep'], ['superior']] as const) {
      const eye: EyePlan = { ...EYE, ...figures, steepMeridian: 180 };
      const [here, there] = [suggestPlans(eye, { sites }), suggestPlans(mirroredEye(eye), { sites })];
      expect(there.map(({ ofHundred }) => ofHundred)).toEqual(here.map(({ ofHundred }) => ofHundred));
      const side = (place: number | null, who: EyePlan) => place === null ? null : siteName(place, who.eye!);
      const ends = (list: typeof here, who: EyePlan) => list.map(({ plan }) => [side(plan.incisionSite, who), side(plan.arcSite, who)]);
      expect(ends(there, mirroredEye(eye)), String(sites)).toEqual(ends(here, eye));
      expect(there.map(({ plan }) => plan.lensMeridian)).toEqual(here.map(({ plan }) => mirroredSurgery(plan).lensMeridian));
    }
  });
});

describe('every plan that is tried', () => {
  const plan = (eye: 'left' | 'right', steepMeridian: number) => completePlan({ eye, flatK: 43, steepK: 45, steepMeridian });
  const arcSites = (eye: 'left' | 'right', steepMeridian: number, site: 'temporal' | 'superior'): (number | null)[] =>
    [...new Set([...candidates(plan(eye, steepMeridian), { sites: [site], lenses: [], arcs: 1 }, true)].filter(({ arcCount }) => arcCount === 1).map(({ arcSite }) => arcSite))];

  test.each([
    ['right', 90, 'temporal', 90], ['left', 90, 'temporal', 90], ['right', 180, 'superior', 180], ['left', 180, 'superior', 0],
    // Where the incision lies on the steep meridian itself, the arc is across from it.
    ['right', 90, 'superior', 270], ['left', 90, 'superior', 270], ['right', 180, 'temporal', 0], ['left', 180, 'temporal', 180],
  ] as const)('in a %s eye, steep at %d°, entered %sly, has a single arc at %d°', (eye, steepMeridian, site, arcSite) => expect(arcSites(eye, steepMeridian, site)).toEqual([arcSite]));

  test('a lens without a cylinder is no lens', () => {
    const tried = (lenses: number[]) => [...candidates(plan('right', 90), { sites: ['temporal'], lenses }, true)];
    expect(tried([0])).toEqual(tried([]));
    expect(tried([0, 2])).toEqual(tried([2]));
  });
});
