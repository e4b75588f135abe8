import { expect, test } from 'vitest';
import { backSurface, cautionsFor, evaluatePlan, type EyePlan } from '../../core/index.js';

/** An invented eye whose plan has cautions. */
const PLAN: EyePlan = { flatK: 42, steepK: 44, steepMeridian: 90, arcSite: 90, arcCount: 2, incisionSite: 90 };

test('the cautions of an outcome are a field like the others, whoever reads it', () => {
  const expected = cautionsFor(PLAN);
  expect(expected.length).toBeGreaterThan(1);
  const outcome = evaluatePlan(PLAN);
  expect(Reflect.ownKeys(outcome).filter((key) => typeof key === 'string').at(-1)).toBe('cautions');
  expect(Object.getOwnPropertySymbols({ ...outcome })).toEqual([]);
  expect({ ...evaluatePlan(PLAN) }.cautions).toEqual(expected);
  expect(JSON.parse(JSON.stringify(evaluatePlan(PLAN))).cautions).toEqual(JSON.parse(JSON.stringify(expected)));
  expect(Object.freeze(evaluatePlan(PLAN)).cautions).toEqual(expected);
  // As frameworks wrap what they watch.
  expect(new Proxy(evaluatePlan(PLAN), {}).cautions).toEqual(expected);
});

test('they are put together once', () => {
  const outcome = evaluatePlan(PLAN);
  expect(outcome.cautions).toBe(outcome.cautions);
  expect(evaluatePlan(PLAN).cautions).not.toBe(outcome.cautions);
});

test('a measured back surface is read anew where it is another, and nobody can change what was read', () => {
  const first = backSurface('0.30@175');
  expect(first).toEqual({ magnitude: 0.3, meridian: 175 });
  first.magnitude = 9;
  expect(backSurface('0.30@175')).toEqual({ magnitude: 0.3, meridian: 175 });
  expect(() => backSurface('0.30@190' as never)).toThrow(RangeError);
  expect(() => backSurface('0.30@190' as never)).toThrow(RangeError);
  expect(backSurface('0.40@20')).toEqual({ magnitude: 0.4, meridian: 20 });
  expect(backSurface('0.30@175')).toEqual({ magnitude: 0.3, meridian: 175 });
});
