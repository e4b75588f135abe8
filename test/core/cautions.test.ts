import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MODEL, cautionsFor, change, evaluatePlan, references, type Astigmatism, type EyePlan } from '../../core/index.js';
import { RUNS, anyPlan } from './plans.js';

/** An eye without a caution: little astigmatism, back surface entered, no surgery. */
const QUIET: EyePlan = { flatK: 43, steepK: 44, steepMeridian: 90, age: 65, backSurface: 'typical' };

/** One arc that draws no caution of its own. */
const ARC: EyePlan = { ...QUIET, steepK: 45, arcSite: 90, arcLength: 45, arcCount: 1, arcDepth: 500, localThickness: 600 };

const ids = (plan: EyePlan): string[] => cautionsFor(plan).map(({ id }) => id);
const level = (plan: EyePlan, id: string) => cautionsFor(plan).find((caution) => caution.id === id)?.level;

/** That the caution is absent from the first plan and present in the second, which differ by a hair. */
function edge(id: string, without: EyePlan, having: EyePlan): void {
  expect(ids(without), 'just not').not.toContain(id);
  expect(ids(having), 'just so').toContain(id);
}

/** The lens that leaves exactly `after` of `before`: it adds what the difference lacks. */
function lensFor(before: Astigmatism, after: Astigmatism): EyePlan {
  const { magnitude, meridian } = change(after, before);
  return { lensCylinder: magnitude, lensMeridian: meridian };
}

const EYE: Astigmatism = { magnitude: 1, meridian: 90 };
const BARE: EyePlan = { ...QUIET, backSurface: '0@180' };

test('a quiet eye and a sound arc draw none', () => {
  expect(ids(QUIET)).toEqual([]);
  expect(ids(ARC)).toEqual([]);
});

describe('irregular-cornea', () => {
  test('from above 48 D', () => edge('irregular-cornea', { ...QUIET, flatK: 46, steepK: 48 }, { ...QUIET, flatK: 46, steepK: 48.01 }));
  test('from a difference above 4 D', () => edge('irregular-cornea', { ...QUIET, steepK: 47 }, { ...QUIET, steepK: 47.01 }));
  test('stops arcs, and makes think of anything else', () => {
    expect(level({ ...QUIET, steepK: 47.5 }, 'irregular-cornea')).toBe('think');
    expect(level({ ...ARC, steepK: 47.5 }, 'irregular-cornea')).toBe('stop');
  });
});

describe('of arcs', () => {
  test('arc-too-deep from 90 % of the local thickness', () =>
    edge('arc-too-deep', { ...ARC, arcDepth: 539.4, localThickness: 600 }, { ...ARC, arcDepth: 540, localThickness: 600 }));
  test('arc-too-deep at exactly 90 %, whatever the thickness', () => {
    for (let localThickness = 300; localThickness <= 1000; localThickness += 10) {
      expect(ids({ ...ARC, localThickness, arcDepth: (localThickness / 10) * 9 }), String(localThickness)).toContain('arc-too-deep');
    }
  });
  test('thickness-unknown without the thickness, and without the depth', () => {
    expect(ids(ARC)).not.toContain('thickness-unknown');
    for (const missing of ['localThickness', 'arcDepth']) expect(ids({ ...ARC, [missing]: null })).toContain('thickness-unknown');
    expect(ids({ ...ARC, localThickness: null })).not.toContain('arc-too-deep');
  });
  test('arc-too-long above 90°', () => edge('arc-too-long', { ...ARC, arcLength: 90 }, { ...ARC, arcLength: 90.1 }));
  test('arc-short below 30°', () => edge('arc-short', { ...ARC, arcLength: 30 }, { ...ARC, arcLength: 29.9 }));
  test('age-unknown, unless the figure is the surgeon’s own', () => {
    edge('age-unknown', ARC, { ...ARC, age: null });
    expect(ids({ ...ARC, age: null, arcFlattening: 0.4 })).not.toContain('age-unknown');
  });
  test('are not raised without arcs', () => {
    const none = ids({ ...ARC, arcCount: 0, arcLength: 120, arcDepth: 900, age: null });
    expect(none).toEqual([]);
  });
});

describe('arc-over-incision', () => {
  // Half the entry is a right triangle with its hypotenuse from the centre to the limbus.
  const halfEntry = (Math.asin(2.4 / 2 / (MODEL.eye.limbusDiameter.value / 2)) * 180) / Math.PI;
  const touching = 45 / 2 + halfEntry;
  const entered = (incisionSite: number, arcCount: 1 | 2 = 1): EyePlan => ({ ...ARC, arcCount, incisionSite, incisionWidth: 2.4, incisionFlattening: 0 });

  test.each([1, -1])('where the two touch, on either side (%d)', (side) =>
    edge('arc-over-incision', entered(90 + side * (touching + 0.01)), entered(90 + side * (touching - 0.01))));
  test('over the end of the dial', () => {
    const across = (incisionSite: number): EyePlan => ({ ...entered(incisionSite), arcSite: 355 });
    edge('arc-over-incision', across(355 + touching + 0.01 - 360), across(355 + touching - 0.01 - 360));
  });
  test('on the side of the second arc of a pair', () => {
    expect(ids(entered(270, 1))).not.toContain('arc-over-incision');
    edge('arc-over-incision', entered(270 + touching + 0.01, 2), entered(270 + touching - 0.01, 2));
  });
});

describe('back-surface-omitted', () => {
  const omitted = (steepK: number, steepMeridian: number): EyePlan => ({ ...QUIET, steepK, steepMeridian, backSurface: 'omitted' });
  test('above 0.1 D', () => edge('back-surface-omitted', omitted(43.09, 90), omitted(43.11, 90)));
  test('not at 0.10 D as typed, whatever the readings', () => {
    const at = (hundredths: number): EyePlan => ({ ...QUIET, backSurface: 'omitted', flatK: hundredths / 100, steepK: (hundredths + 10) / 100 });
    const raised = Array.from({ length: 1001 }, (_, i) => 3800 + i).filter((hundredths) => ids(at(hundredths)).includes('back-surface-omitted'));
    expect(raised.length).toBe(0);
  });
  test('think with the rule, note against it, nothing between', () => {
    expect(level(omitted(44, 60), 'back-surface-omitted')).toBe('think');
    expect(level(omitted(44, 30), 'back-surface-omitted')).toBe('note');
    expect(ids(omitted(44, 59.9))).not.toContain('back-surface-omitted');
    expect(ids(omitted(44, 30.1))).not.toContain('back-surface-omitted');
  });
  test('not when it is entered, as an estimate or a measurement', () => {
    for (const backSurface of ['typical', '0@180'] as const) expect(ids({ ...omitted(44, 90), backSurface })).not.toContain('back-surface-omitted');
  });
});

describe('of the result', () => {
  const leaving = (magnitude: number, meridian: number): EyePlan => ({ ...BARE, ...lensFor(EYE, { magnitude, meridian }) });

  test('over-correction when the meridian turns by more than 60°', () => edge('over-correction', leaving(0.5, 30.1), leaving(0.5, 29.9)));
  test('over-correction when more than 0.1 D is left', () => edge('over-correction', leaving(0.09, 180), leaving(0.11, 180)));
  test('over-correction only of what was there', () => {
    const from = (magnitude: number): EyePlan => ({ ...BARE, steepK: 43 + magnitude, ...lensFor({ magnitude, meridian: 90 }, { magnitude: 0.5, meridian: 180 }) });
    edge('over-correction', from(0.09), from(0.11));
  });
  test('over-correction counts from what front and back come to together', () => {
    // The front alone is steep at 90; with its back surface the eye is steep at 180 and is turned over by the lens.
    const plan: EyePlan = { ...BARE, steepK: 43.3, backSurface: '0.5@180', lensCylinder: 0.4, lensMeridian: 180 };
    expect(evaluatePlan(plan).after.meridian).toBe(90);
    expect(ids(plan)).toContain('over-correction');
    expect(ids({ ...plan, lensCylinder: 0.05 })).not.toContain('over-correction');
  });

  test('over-correction-if-full when only the intended effect would do it', () => {
    // One arc of 60° at 65 with the rule: 1.70 D intended, 0.85 D expected.
    const arc = (magnitude: number): EyePlan => ({ ...ARC, ...BARE, steepK: 43 + magnitude, arcLength: 60 });
    edge('over-correction-if-full', arc(1.61), arc(1.59));
    expect(ids(arc(0.7))).toContain('over-correction');
    expect(ids(arc(0.7))).not.toContain('over-correction-if-full');
  });

  test('more-than-before when the plan adds more than 0.1 D', () =>
    edge('more-than-before', { ...BARE, lensCylinder: 0.09, lensMeridian: 180 }, { ...BARE, lensCylinder: 0.11, lensMeridian: 180 }));

  test('nothing of it without surgery', () => {
    expect(ids({ ...QUIET, steepK: 43.2, backSurface: '1@180' })).toEqual([]);
  });
});

describe('every caution', () => {
  const KNOWN = [
    'irregular-cornea', 'arc-too-deep', 'thickness-unknown', 'arc-too-long', 'arc-short', 'age-unknown', 'arc-over-incision',
    'back-surface-omitted', 'over-correction', 'over-correction-if-full', 'more-than-before',
  ];

  test('has a known id, once, a source among the references and a whole sentence; stop comes before think before note', () => {
    const seen = new Set<string>();
    fc.assert(fc.property(anyPlan, (plan) => {
      const cautions = evaluatePlan(plan).cautions;
      expect(new Set(cautions.map(({ id }) => id)).size).toBe(cautions.length);
      for (const { id, text, source } of cautions) {
        seen.add(id);
        expect(KNOWN).toContain(id);
        expect(Object.keys(references), id).toContain(source);
        expect(text).not.toMatch(/NaN|undefined|null|Infinity|\[object|-0\.00|\s{2}/);
        expect(text).toMatch(/^[A-Z0-9].*\.$/);
      }
      const order = cautions.map((caution) => ['stop', 'think', 'note'].indexOf(caution.level));
      expect(order).toEqual([...order].sort());
      expect(order).not.toContain(-1);
    }), { ...RUNS, numRuns: 3000 });
    expect([...seen].sort()).toEqual([...KNOWN].sort());
  });
});
