import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { RISKS, cautionsFor, evaluatePlan, references, type EyePlan } from '../../core/index.js';
import { ARC, QUIET, edge, found, ids, level } from './cautions-support.js';
import { RUNS, anyPlan } from './plans.js';

test('a quiet eye and a sound arc draw none', () => {
  expect(ids(QUIET)).toEqual([]);
  expect(ids(ARC)).toEqual([]);
});

describe('irregular-cornea', () => {
  test('from above 48 D', () => edge('irregular-cornea', { ...QUIET, flatK: 46, steepK: 48 }, { ...QUIET, flatK: 46, steepK: 48.01 }));
  test('from a difference above 4 D', () => edge('irregular-cornea', { ...QUIET, steepK: 47 }, { ...QUIET, steepK: 47.01 }));
  test('not from a difference of 4.00 D as typed, whatever the readings', () => {
    const at = (hundredths: number): EyePlan => ({ ...QUIET, flatK: hundredths / 100, steepK: (hundredths + 400) / 100 });
    const raised = Array.from({ length: 1601 }, (_, i) => 2800 + i).filter((hundredths) => ids(at(hundredths)).includes('irregular-cornea'));
    expect(raised.length).toBe(0);
  });
  test('stops arcs, and makes think of anything else', () => {
    expect(level({ ...QUIET, steepK: 47.5 }, 'irregular-cornea')).toBe('think');
    expect(level({ ...QUIET, steepK: 47.5, incisionSite: 90 }, 'irregular-cornea')).toBe('think');
    expect(level({ ...ARC, steepK: 47.5 }, 'irregular-cornea')).toBe('stop');
  });
  test('says what it was raised by', () => {
    expect(found({ ...QUIET, flatK: 46, steepK: 48.5 }, 'irregular-cornea')!.text).toContain('48.50 D');
    expect(found({ ...QUIET, steepK: 47.25 }, 'irregular-cornea')!.text).toContain('4.25 D');
  });
});

describe.each(RISKS)('risk-%s', (risk) => {
  const id = `risk-${risk}`;

  test('when it is ticked, and not otherwise', () => {
    edge(id, QUIET, { ...QUIET, risks: risk });
    edge(id, ARC, { ...ARC, risks: risk });
    const others = RISKS.filter((other) => other !== risk);
    edge(id, { ...ARC, risks: others.join(' ') }, { ...ARC, risks: RISKS.join(' ') });
  });
  test('stops one arc and a pair, and makes think of anything else', () => {
    for (const arcCount of [1, 2] as const) expect(level({ ...ARC, arcCount, risks: risk }, id)).toBe('stop');
    for (const plan of [QUIET, { ...QUIET, incisionSite: 90 }, { ...QUIET, lensCylinder: 1, lensMeridian: 90 }, { ...ARC, arcCount: 0 as const }]) {
      expect(level({ ...plan, risks: risk }, id)).toBe('think');
    }
  });
  test('says something else where arcs are planned', () => {
    expect(found({ ...ARC, risks: risk }, id)!.text).not.toBe(found({ ...QUIET, risks: risk }, id)!.text);
  });
  test('comes first when it stops', () => {
    expect(cautionsFor({ ...ARC, risks: risk, age: null, localThickness: null })[0]).toMatchObject({ id, level: 'stop' });
  });
});

describe('risks', () => {
  test('are said in one order, however they are ticked', () => {
    const expected = RISKS.map((risk) => `risk-${risk}`).sort();
    const forwards = ids({ ...ARC, risks: RISKS.join(' ') });
    expect(ids({ ...ARC, risks: [...RISKS].reverse().join('  ') })).toEqual(forwards);
    expect([...forwards].sort()).toEqual(expected);
  });

  // A dry eye reads 0.25 D per component instead of 0.15 D (upper end of Gjerdrum et al. 2020); the back surface is the same.
  test('a dry eye is read less surely, the others as surely as any', () => {
    const variance = (risks: string) => evaluatePlan({ ...QUIET, risks }).spread.covariance[0][0];
    expect(variance('dry-eye')).toBeCloseTo(0.25 ** 2 + 0.15 ** 2, 12);
    expect(variance(RISKS.join(' '))).toBeCloseTo(0.25 ** 2 + 0.15 ** 2, 12);
    for (const risk of RISKS.filter((name) => name !== 'dry-eye')) expect(variance(risk), risk).toBeCloseTo(0.15 ** 2 + 0.15 ** 2, 12);
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
    expect(level(omitted(44, 120), 'back-surface-omitted')).toBe('think');
    expect(level(omitted(44, 150), 'back-surface-omitted')).toBe('note');
    for (const oblique of [120.1, 135, 149.9]) expect(ids(omitted(44, oblique))).not.toContain('back-surface-omitted');
  });
  test('says which way it errs: over with the rule, under against it', () => {
    expect(found(omitted(44, 90), 'back-surface-omitted')!.text).toMatch(/90°.*over-correct/);
    expect(found(omitted(44, 180), 'back-surface-omitted')!.text).toMatch(/180°.*under-correct/);
  });
  test('not when it is entered, as an estimate or a measurement', () => {
    for (const backSurface of ['typical', '0@180'] as const) expect(ids({ ...omitted(44, 90), backSurface })).not.toContain('back-surface-omitted');
  });
});

describe('every caution', () => {
  const KNOWN = [
    'irregular-cornea', ...RISKS.map((risk) => `risk-${risk}`), 'arc-too-long', 'arc-short', 'thickness-unknown', 'arc-too-deep',
    'arc-shallow', 'arc-zone', 'arc-over-incision', 'oblique', 'hardly-any', 'beyond-arcs', 'age-unknown', 'age-outside',
    'back-surface-omitted', 'over-correction', 'over-correction-if-full', 'more-than-before', 'lens-off',
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
        expect(text).not.toMatch(/NaN|undefined|null|Infinity|\[object|-0\.00|\s{2}|\b0°/);
        expect(text).toMatch(/^[A-Z0-9].*\.$/);
      }
      const order = cautions.map((caution) => ['stop', 'think', 'note'].indexOf(caution.level));
      expect(order).toEqual([...order].sort());
      expect(order).not.toContain(-1);
    }), { ...RUNS, numRuns: 3000 });
    expect([...seen].sort()).toEqual([...KNOWN].sort());
  });

  test('writes figures as people do, without the digits of a binary form', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      for (const { id, text } of cautionsFor(plan)) expect(text, id).not.toMatch(/\d\.\d{3}/);
    }), RUNS));

  test('stops only plans with arcs', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      expect(cautionsFor({ ...plan, arcCount: 0 }).map((caution) => caution.level)).not.toContain('stop');
    }), RUNS));
});
