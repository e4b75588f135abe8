import { describe, expect, test } from 'vitest';
import {
  BACK_SURFACE_LIMITS, DEFAULTS, FIELDS, LIMITS, RefusedValue, arcFlattening, atVertex, backSurface, cautionsFor, chanceWithin,
  completePlan, dioptresFromRadius, evaluatePlan, fromReadings, incisionFlattening, lensPlaneRatio, meridian, misplacedLens,
  radiusFromDioptres, site, siteFromClock, toPowerVector, toVector, type EyePlan,
} from '../../core/index.js';
import { allowed } from '../../core/check.js';

type Numeric = keyof typeof LIMITS;

/** A plan in which everything is planned, so that no field is ignored. */
const FULL: EyePlan = {
  eye: 'right', flatK: 43, steepK: 44, steepMeridian: 90, age: 65, backSurface: 'typical', incisionSite: 90, incisionWidth: 2.4,
  incisionFlattening: 0.2, arcSite: 270, arcLength: 45, arcCount: 1, arcZone: 11, arcDepth: 500, arcMethod: 'blade',
  arcFlattening: 0.5, localThickness: 600, lensCylinder: 1, lensMeridian: 90, risks: 'dry-eye',
  ownFigures: { incision: { flattening: 0.2, torque: 0.1, sd: 0.3, eyes: 50 }, arcs: { share: 0.6, sdAlong: 0.3, sdAcross: 0.3, eyes: 20 } },
};

/** The full plan with one field changed, and the other reading moved out of its way. */
function having(field: keyof EyePlan, value: unknown): EyePlan {
  const plan = { ...FULL, [field]: value } as EyePlan;
  if (field === 'steepK') plan.flatK = LIMITS.flatK.min;
  if (field === 'flatK') plan.steepK = LIMITS.steepK.max;
  return plan;
}

function refusal(plan: () => unknown): RefusedValue {
  try {
    plan();
  } catch (error) {
    return error as RefusedValue;
  }
  throw new Error('nothing was refused');
}

/** A step just beyond a limit, as small as a form could send it. */
const BEYOND = 1e-6;

const fields = Object.keys(LIMITS) as Numeric[];
const measured = fields.filter((field) => field !== 'arcCount');

describe('a number', () => {
  test.each(measured.flatMap((field) => [[field, LIMITS[field].min], [field, LIMITS[field].max]] as const))('%s = %d is accepted', (field, value) => {
    expect(() => evaluatePlan(having(field, value))).not.toThrow();
  });

  test.each(measured.flatMap((field) => [[field, LIMITS[field].min - BEYOND], [field, LIMITS[field].max + BEYOND]] as const))(
    '%s = %d is refused, with the field, the value and both limits',
    (field, value) => {
      const error = refusal(() => evaluatePlan(having(field, value)));
      expect(error).toBeInstanceOf(RangeError);
      expect(error).toBeInstanceOf(RefusedValue);
      for (const part of [field, value, LIMITS[field].min, LIMITS[field].max, LIMITS[field].unit]) expect(error.message).toContain(String(part));
      expect([error.field, error.value]).toEqual([field, value]);
    },
  );

  test.each(fields.flatMap((field) => [NaN, Infinity, -Infinity, '44', '', true, [44], {}].map((value) => [field, value] as const)))(
    '%s = %j is refused',
    (field, value) => {
      const error = refusal(() => evaluatePlan(having(field, value)));
      expect(error).toBeInstanceOf(RangeError);
      expect(error.message.startsWith(`${field}:`)).toBe(true);
    },
  );

  test.each([-1, 3, 1.5, '1'])('%j arcs are refused, with the counts that exist', (count) => {
    const error = refusal(() => evaluatePlan(having('arcCount', count)));
    expect(error.message).toMatch(/^arcCount: .*0, 1, 2/);
  });

  test('a long text is shortened in the message', () => {
    expect(refusal(() => evaluatePlan(having('age', 'x'.repeat(5000)))).message.length).toBeLessThan(120);
  });
});

describe('nothing said', () => {
  test.each(FIELDS.flatMap((field) => [[field, null], [field, undefined]] as const))('%s = %s takes the default', (field, nothing) => {
    expect(completePlan({ [field]: nothing })).toEqual(DEFAULTS);
  });

  test('an empty plan is a round cornea without surgery', () => {
    expect(evaluatePlan({})).toMatchObject({ before: { magnitude: 0 }, steps: [], after: { magnitude: 0, meridian: 180 } });
  });

  test('a null among required fields does not hide another refusal', () => {
    expect(refusal(() => evaluatePlan({ flatK: null, incisionWidth: 9 })).field).toBe('incisionWidth');
  });
});

describe('what does not go together', () => {
  test('a steep reading below the flat one', () => {
    const error = refusal(() => evaluatePlan({ flatK: 44, steepK: 43.99 }));
    expect(error).toBeInstanceOf(RangeError);
    for (const part of ['steepK', '43.99', '44', '75']) expect(error.message).toContain(part);
    expect(() => evaluatePlan({ flatK: 44, steepK: 44 })).not.toThrow();
  });

  test.each([1, 2] as const)('%d arc(s) without a site', (arcCount) => {
    const error = refusal(() => evaluatePlan({ arcCount }));
    expect(error).toBeInstanceOf(RangeError);
    expect(error.message).toMatch(/^arcSite: .*0 to 360/);
    expect(() => evaluatePlan({ arcCount: 0, arcLength: 60 })).not.toThrow();
  });

  test('a lens without a meridian', () => {
    const error = refusal(() => evaluatePlan({ lensCylinder: 1.5 }));
    expect(error).toBeInstanceOf(RangeError);
    expect(error.message).toMatch(/^lensMeridian: .*0 to 180/);
    expect(() => evaluatePlan({ lensCylinder: 0 })).not.toThrow();
  });
});

describe('words', () => {
  test.each([['eye', 'centre', 'right'], ['eye', 'Right', 'left'], ['arcMethod', 'knife', 'blade'], ['backSurface', 'thick', 'typical']] as const)(
    '%s = %s is refused, with what would be accepted',
    (field, word, accepted) => {
      const error = refusal(() => evaluatePlan(having(field, word)));
      expect(error).toBeInstanceOf(RangeError);
      for (const part of [field, word, accepted]) expect(error.message).toContain(part);
    },
  );

  test.each(['0.3', '@180', '0.3@', '0.3@181', '3.01@90', '-0.3@90', '0.3x180', '0.3 D@180', 'NaN@90', '0.3@-10', '0.3@90@90', '1e1@90', '', 0.3, true, {}, ['0.3@180']])(
    'a back surface of %j is refused',
    (text) => {
      const error = refusal(() => evaluatePlan(having('backSurface', text)));
      expect(error).toBeInstanceOf(RangeError);
      expect(error.message).toMatch(/^backSurface: /);
      expect(error.message).toContain(`${BACK_SURFACE_LIMITS.min} to ${BACK_SURFACE_LIMITS.max} D`);
    },
  );

  test('a zero loses its sign', () => expect(allowed(LIMITS.incisionFlattening, -0)).toBe(0));

  test.each(Object.entries(LIMITS))('the limits of %s say that they are its own', (name, { field }) => expect(field).toBe(name));

  test('what a back surface may add is in the unit of the readings', () => expect(BACK_SURFACE_LIMITS.unit).toBe(LIMITS.steepK.unit));

  test.each([['0@0', 0, 180], ['3@180', 3, 180], ['0.30@90', 0.3, 90], [' 0.3 @ 45.5° ', 0.3, 45.5]] as const)('a back surface of %j is read', (text, magnitude, along) => {
    expect(backSurface(text as '0@0')).toEqual({ magnitude, meridian: along });
  });
});

describe('the ends of the dial', () => {
  test.each([[0, 180], [180, 180], [90, 90]])('a steep meridian of %d° is %d°, and so is that of a lens', (given, kept) => {
    expect(completePlan({ steepMeridian: given, lensMeridian: given })).toMatchObject({ steepMeridian: kept, lensMeridian: kept });
  });

  test.each([[0, 0], [180, 180], [360, 0]])('a site of %d° is %d°', (given, kept) => {
    expect(completePlan({ incisionSite: given, arcSite: given })).toMatchObject({ incisionSite: kept, arcSite: kept });
  });

  test('an outcome at 0 and 180, 0 and 360 is one', () => {
    const at = (steepMeridian: number, place: number) =>
      JSON.stringify(evaluatePlan({ ...FULL, steepMeridian, lensMeridian: steepMeridian, incisionSite: place, arcSite: place }));
    expect(at(0, 360)).toBe(at(180, 0));
  });
});

test.each([
  ['meridian', () => meridian(NaN)],
  ['site', () => site(Infinity)],
  ['siteFromClock', () => siteFromClock(NaN)],
  ['toVector, negative', () => toVector({ magnitude: -1, meridian: 90 })],
  ['toVector, no meridian', () => toVector({ magnitude: 1, meridian: NaN })],
  ['toPowerVector', () => toPowerVector({ sphere: 0, cylinder: NaN, axis: 0 })],
  ['atVertex, focus in front', () => atVertex({ sphere: 84, cylinder: 0, axis: 180 }, 12)],
  ['atVertex, distance', () => atVertex({ sphere: 1, cylinder: 0, axis: 180 }, 31)],
  ['fromReadings', () => fromReadings({ flat: 44, steep: 43, steepMeridian: 90 })],
  ['dioptresFromRadius', () => dioptresFromRadius(2.99)],
  ['radiusFromDioptres', () => radiusFromDioptres(112.6)],
  ['incisionFlattening', () => incisionFlattening({ width: 3.6, site: 0, eye: 'right' })],
  ['arcFlattening', () => arcFlattening({ length: 121, count: 1, rule: 'with', method: 'blade' })],
  ['lensPlaneRatio', () => lensPlaneRatio({ k: 43, depth: 1.9 })],
  ['misplacedLens', () => misplacedLens({ cylinder: 12.1, meridian: 90, placed: 90 })],
  ['misplacedLens, no meridian', () => misplacedLens({ cylinder: 1, meridian: 90, placed: NaN })],
  ['chanceWithin', () => chanceWithin({ mean: { x: 0, y: 0 }, covariance: [[1, 0], [0, 1]] }, -1)],
  ['cautionsFor', () => cautionsFor({ age: 0 })],
  ['incisionFlattening, no eye', () => incisionFlattening({ width: 2.4, site: 0, eye: 'middle' as 'left' })],
] as const)('%s refuses with a RangeError of its own', (_, call) => {
  expect(refusal(call)).toBeInstanceOf(RefusedValue);
});
