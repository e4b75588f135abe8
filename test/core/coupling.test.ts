import { expect, test, vi } from 'vitest';
import { evaluatePlan, meanPowerShift, type EyePlan } from '../../core/index.js';

// With the default ratio of 1 nothing shifts, so a rule about what shifts can only be seen with another one: that of
// the cadaver series, 1.47 (Arch Ophthalmol 1988).
vi.mock('../../core/model.js', async (original) => {
  const { MODEL } = await original<typeof import('../../core/model.js')>();
  return { MODEL: { ...MODEL, arcs: { ...MODEL.arcs, couplingRatio: 1.47 } } };
});

const EYE: EyePlan = { flatK: 43, steepK: 45, steepMeridian: 90, backSurface: 'typical' };

const shift = (plan: EyePlan): number => evaluatePlan({ ...EYE, ...plan }).meanPowerShift;

test('a cut that flattens more than it steepens takes power off the cornea', () => {
  expect(shift({ incisionSite: 180, incisionFlattening: 0.5 })).toBeCloseTo(meanPowerShift(0.5, 1.47), 12);
  expect(shift({ arcSite: 90, arcCount: 1, arcFlattening: 1 })).toBeCloseTo(meanPowerShift(1, 1.47), 12);
  expect(meanPowerShift(1, 1.47)).toBeLessThan(0);
});

test('cuts add up, wherever they lie', () => {
  const both = shift({ incisionSite: 180, incisionFlattening: 0.5, arcSite: 90, arcCount: 2, arcFlattening: 1 });
  expect(both).toBeCloseTo(meanPowerShift(1.5, 1.47), 12);
});

test('a lens and the back surface leave the power of the cornea alone', () => {
  expect(shift({})).toBe(0);
  expect(shift({ lensCylinder: 2, lensMeridian: 90 })).toBe(0);
});

test('an entry of which steepening is recorded adds power', () => {
  expect(shift({ incisionSite: 180, incisionFlattening: -0.5 })).toBeCloseTo(-meanPowerShift(0.5, 1.47), 12);
});
