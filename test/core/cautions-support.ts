/** Plans without a caution, and how the tests of the cautions look at them. */
import { expect } from 'vitest';
import { cautionsFor, change, type Astigmatism, type Caution, type EyePlan } from '../../core/index.js';

/** An eye without a caution: little astigmatism, back surface entered, no surgery. */
export const QUIET: EyePlan = { flatK: 43, steepK: 44, steepMeridian: 90, age: 65, backSurface: 'typical' };

/** One arc that draws no caution of its own. */
export const ARC: EyePlan = { ...QUIET, steepK: 45, arcSite: 90, arcLength: 45, arcCount: 1, arcDepth: 500, localThickness: 600 };

/** The quiet eye with a back surface that is entered and adds nothing, so that the sums can be done by hand. */
export const BARE: EyePlan = { ...QUIET, backSurface: '0@180' };

export const ids = (plan: EyePlan): string[] => cautionsFor(plan).map(({ id }) => id);

export const found = (plan: EyePlan, id: string): Caution | undefined => cautionsFor(plan).find((caution) => caution.id === id);

export const level = (plan: EyePlan, id: string): string | undefined => found(plan, id)?.level;

/** That the caution is absent from the first plan and present in the second, which differ by a hair. */
export function edge(id: string, without: EyePlan, having: EyePlan): void {
  expect(ids(without), 'just not').not.toContain(id);
  expect(ids(having), 'just so').toContain(id);
}

/** The lens that leaves exactly `after` of `before`: it adds what the difference lacks. */
export function lensFor(before: Astigmatism, after: Astigmatism): EyePlan {
  const { magnitude, meridian } = change(after, before);
  return { lensCylinder: magnitude, lensMeridian: meridian };
}
