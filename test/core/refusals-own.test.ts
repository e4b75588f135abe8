/** What is refused of the risks and of the surgeon's own figures. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OWN_LIMITS, RISKS, RefusedValue, completePlan, evaluatePlan, suggestPlans, type EyePlan, type OwnFigures } from '../../core/index.js';
import { RUNS, anyPlan } from './plans.js';

const EYE: EyePlan = { steepK: 45, incisionSite: 180, arcSite: 90, arcCount: 1 };

const OWN = {
  incision: { flattening: 0.2, torque: 0.1, sd: 0.3, eyes: 50 },
  arcs: { share: 0.6, sdAlong: 0.3, sdAcross: 0.25, eyes: 20 },
} as const;

/** Every figure with the limits that it has to keep. */
const FIGURES = [
  ['incision', 'flattening', OWN_LIMITS.flattening],
  ['incision', 'torque', OWN_LIMITS.torque],
  ['incision', 'sd', OWN_LIMITS.sd],
  ['incision', 'eyes', OWN_LIMITS.eyes],
  ['arcs', 'share', OWN_LIMITS.share],
  ['arcs', 'sdAlong', OWN_LIMITS.sd],
  ['arcs', 'sdAcross', OWN_LIMITS.sd],
  ['arcs', 'eyes', OWN_LIMITS.eyes],
] as const;

const OPTIONAL = ['torque', 'eyes'];

const plan = (ownFigures: unknown): EyePlan => ({ ...EYE, ownFigures: ownFigures as OwnFigures });

const having = (part: 'incision' | 'arcs', name: string, value: unknown): EyePlan => plan({ ...OWN, [part]: { ...OWN[part], [name]: value } });

function refusal(call: () => unknown): RefusedValue {
  try {
    call();
  } catch (error) {
    expect(error).toBeInstanceOf(RefusedValue);
    expect(error).toBeInstanceOf(RangeError);
    return error as RefusedValue;
  }
  throw new Error('nothing was refused');
}

const BEYOND = 1e-6;

test.each(['incision', 'arcs'] as const)('%s: 2.5 eyes are refused, with the limits and the need of a whole number', (part) => {
  const { message, field } = refusal(() => evaluatePlan(having(part, 'eyes', 2.5)));
  expect(field).toBe(`ownFigures.${part}.eyes`);
  expect(message).toContain('2.5 is refused; allowed is 1 to 1000000 eyes, a whole number');
});

describe.each(FIGURES)('ownFigures.%s.%s', (part, name, { min, max, unit }) => {
  test.each([min, max])('of %d is accepted and kept', (value) => {
    expect((completePlan(having(part, name, value)).ownFigures![part] as unknown as Record<string, unknown>)[name]).toBe(value);
    expect(() => evaluatePlan(having(part, name, value))).not.toThrow();
  });

  test.each([min - BEYOND, max + BEYOND])('of %d is refused, with the figure, the value and both limits', (value) => {
    const error = refusal(() => evaluatePlan(having(part, name, value)));
    const field = `ownFigures.${part}.${name}`;
    expect([error.field, error.value]).toEqual([field, value]);
    for (const word of [field, value, min, max, unit]) expect(error.message).toContain(String(word));
  });

  test.each([NaN, Infinity, -Infinity, '0.3', '', true, false, [], [0.3], {}])('of %j is refused', (value) => {
    expect(refusal(() => evaluatePlan(having(part, name, value))).field).toBe(`ownFigures.${part}.${name}`);
  });

  test.each([null, undefined])(OPTIONAL.includes(name) ? 'of %s counts as not given' : 'of %s is refused, for nothing takes its place', (value) => {
    const call = () => completePlan(having(part, name, value));
    if (!OPTIONAL.includes(name)) expect(refusal(call).field).toBe(`ownFigures.${part}.${name}`);
    else expect(call().ownFigures![part]).toMatchObject({ [name]: name === 'torque' ? 0 : null });
  });
});

describe('ownFigures', () => {
  test.each(['0.3', 0.3, 0, true, false])('%j is refused', (value) => {
    const error = refusal(() => evaluatePlan(plan(value)));
    expect(error.field).toBe('ownFigures');
    expect(error.message).toContain('incision, arcs or both');
  });

  // Whoever stored a 0 where the figures should be has lost them, and should hear of it.
  test.each(['incision', 'arcs'].flatMap((part) => [0.3, 'much', [], 0, false, ''].map((value) => [part, value] as const)))(
    'with %s of %j is refused',
    (part, value) => expect(refusal(() => evaluatePlan(plan({ [part]: value }))).field).toMatch(/^ownFigures/),
  );

  test.each([{}, { incision: null }, { arcs: null }, { incision: undefined, arcs: null }])('%j is none', (value) => {
    expect(completePlan(plan(value)).ownFigures).toBeNull();
  });

  test('are refused by the search as by the plan', () => {
    expect(refusal(() => suggestPlans(having('arcs', 'share', 60))).field).toBe('ownFigures.arcs.share');
  });

  test('a share in per cent is caught', () => {
    expect(() => evaluatePlan(having('arcs', 'share', 65))).toThrow(/ownFigures\.arcs\.share: 65 .*0 to 1\.5/);
  });
});

describe('risks', () => {
  test.each(['rheuma', 'Ectasia', 'dry eye', 'dry-eye,ectasia', 'ectasia x', 'x', 0, 1, true, {}, ['ectasia'], []])('%j is refused, with the names that exist', (value) => {
    const error = refusal(() => evaluatePlan({ ...EYE, risks: value as string }));
    expect([error.field, error.value]).toEqual(['risks', value]);
    for (const name of RISKS) expect(error.message).toContain(name);
  });

  test.each(['', ' ', null, undefined])('%j is none', (value) => expect(completePlan({ ...EYE, risks: value }).risks).toBe(''));

  test.each(RISKS)('%s is accepted, once and with space around it', (risk) => {
    expect(completePlan({ ...EYE, risks: `  ${risk}\n${risk} ` }).risks).toBe(risk);
  });

  test('come out in one order', () => {
    expect(completePlan({ risks: [...RISKS].reverse().join(' ') }).risks).toBe(RISKS.join(' '));
  });
});

describe('a completed plan', () => {
  test('completed again is itself', () =>
    fc.assert(fc.property(anyPlan, (given) => {
      const once = completePlan(given);
      expect(completePlan(once)).toEqual(once);
    }), RUNS));

  test('survives being written down and read', () =>
    fc.assert(fc.property(anyPlan, (given) => {
      const once = completePlan(given);
      expect(completePlan(JSON.parse(JSON.stringify(given)))).toEqual(once);
      expect(JSON.parse(JSON.stringify(once))).toEqual(once);
    }), RUNS));

  test('shares no figures with the plan it was made of', () => {
    const figures = structuredClone(OWN) as unknown as OwnFigures;
    const complete = completePlan(plan(figures));
    figures.incision!.flattening = 2;
    expect(complete.ownFigures!.incision!.flattening).toBe(0.2);
  });
});
