/** Random plans for the property tests, built from the limits themselves so that they reach every edge. */
import fc from 'fast-check';
import { BACK_SURFACE_LIMITS, LIMITS, OWN_LIMITS, RISKS, type EyePlan, type OwnFigures } from '../../core/index.js';

type Numeric = Exclude<keyof typeof LIMITS, 'arcCount'>;

/** Every run draws the same plans, so that a failure can be repeated. */
export const RUNS = { seed: 20240229, numRuns: 400 } as const;

/** Angles and dioptres on a grid of powers of two: mirroring and adding them is then exact, up to the last bit. */
const GRID = 1 / 64;

/** Parts into which a range is divided evenly. */
const PARTS = 1_000_000;

/**
 * A number between two limits: on them, evenly between, and now and then of a size that nobody would type. Evenly, for
 * doubles drawn by their bits are nearly all tiny where 0 is in range, and hardly a meridian would be oblique.
 */
export function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.oneof(
    { weight: 1, arbitrary: fc.constantFrom(min, max) },
    { weight: 4, arbitrary: fc.integer({ min: 0, max: PARTS }).map((part) => Math.min(max, min + ((max - min) * part) / PARTS)) },
    // A zero without a sign, for text does not keep it.
    { weight: 1, arbitrary: fc.double({ min, max, noNaN: true }).map((value) => value + 0) },
  );
}

/** A number of a field. */
export const within = (field: Numeric): fc.Arbitrary<number> => between(LIMITS[field].min, LIMITS[field].max);

const own = (figure: keyof typeof OWN_LIMITS): fc.Arbitrary<number> => between(OWN_LIMITS[figure].min, OWN_LIMITS[figure].max);

/** The same on the grid. */
export function onGrid(min: number, max: number): fc.Arbitrary<number> {
  return fc.integer({ min: Math.ceil(min / GRID), max: Math.floor(max / GRID) }).map((steps) => steps * GRID);
}

const maybe = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(arbitrary, { nil: null, freq: 3 });

const backSurface = fc.oneof(
  fc.constantFrom('omitted' as const, 'typical' as const),
  fc
    .tuple(fc.integer({ min: 0, max: BACK_SURFACE_LIMITS.max * 100 }), fc.integer({ min: 0, max: 720 }))
    .map(([hundredths, quarters]) => `${hundredths / 100}@${quarters / 4}` as `${number}@${number}`),
);

/** Risks in any order and with any space between; mostly none, for they would drown what else is to be seen. */
const risks = fc.oneof(
  { weight: 3, arbitrary: fc.constant('') },
  { weight: 1, arbitrary: fc.tuple(fc.shuffledSubarray([...RISKS]), fc.constantFrom(' ', '  ', '\n')).map(([names, space]) => names.join(space)) },
);

const eyes = maybe(fc.integer({ min: OWN_LIMITS.eyes.min, max: OWN_LIMITS.eyes.max }));

/** Own figures with one part, both or none of them. */
export const ownFigures: fc.Arbitrary<OwnFigures> = fc.record({
  incision: maybe(fc.record({
    flattening: own('flattening'),
    torque: maybe(own('torque')),
    sd: own('sd'),
    eyes,
  })),
  arcs: maybe(fc.record({ share: own('share'), sdAlong: own('sd'), sdAcross: own('sd'), eyes })),
});

/** Plans that are accepted; `number` and `angle` say how numbers are drawn. */
function plans(number: (field: Numeric) => fc.Arbitrary<number>, angle: (field: Numeric) => fc.Arbitrary<number>): fc.Arbitrary<EyePlan> {
  return fc
    .record({
      eye: fc.constantFrom('right' as const, 'left' as const),
      flatK: number('flatK'),
      steepK: number('steepK'),
      steepMeridian: angle('steepMeridian'),
      age: maybe(number('age')),
      backSurface,
      incisionSite: maybe(angle('incisionSite')),
      incisionWidth: number('incisionWidth'),
      incisionFlattening: maybe(number('incisionFlattening')),
      arcSite: maybe(angle('arcSite')),
      arcLength: number('arcLength'),
      arcCount: fc.constantFrom(0 as const, 1 as const, 2 as const),
      arcZone: number('arcZone'),
      arcDepth: maybe(number('arcDepth')),
      arcMethod: fc.constantFrom('blade' as const, 'laser' as const),
      arcFlattening: maybe(number('arcFlattening')),
      localThickness: maybe(number('localThickness')),
      lensCylinder: maybe(number('lensCylinder')),
      lensMeridian: maybe(angle('lensMeridian')),
      risks,
      ownFigures: fc.option(ownFigures, { nil: null, freq: 1 }),
    })
    .map((plan) => ({
      ...plan,
      flatK: Math.min(plan.flatK, plan.steepK),
      steepK: Math.max(plan.flatK, plan.steepK),
      arcCount: plan.arcSite === null ? 0 : plan.arcCount,
      lensCylinder: plan.lensMeridian === null ? null : plan.lensCylinder,
    }));
}

/** Any accepted plan. */
export const anyPlan = plans(within, within);

/** Accepted plans whose mirror image is exact. */
export const gridPlan = plans(within, (field) => onGrid(LIMITS[field].min, LIMITS[field].max));

/** The numbers in a value, with where they are. */
export function* numbersIn(value: unknown, path = ''): Generator<[path: string, value: number]> {
  if (typeof value === 'number') yield [path, value];
  else if (value !== null && typeof value === 'object') {
    for (const [key, inner] of Object.entries(value)) yield* numbersIn(inner, `${path}.${key}`);
  }
}
