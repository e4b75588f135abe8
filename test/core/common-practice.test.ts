import { describe, expect, test } from 'vitest';
import { clockFromSite, evaluatePlan, flatteningAndTorque, siteFromClock, type Astigmatism, type EyePlan } from '../../core/index.js';

/** A right eye steep by one dioptre at 180°, entered temporally. */
const EYE: EyePlan = { eye: 'right', flatK: 43, steepK: 44, steepMeridian: 180, age: 70, incisionSite: 180, incisionWidth: 2.75 };

/** One clock hour of arc on the nasal side, at about 500 µm. */
const WITH_ARC: EyePlan = { ...EYE, arcSite: 0, arcLength: 30, arcCount: 1, arcDepth: 500, localThickness: 620 };

/** Dioptres by which the meridian at 180° has become flatter. */
const flattened = (before: Astigmatism, after: Astigmatism): number =>
  flatteningAndTorque(after, 180).flattening - flatteningAndTorque(before, 180).flattening;

describe('common practice, no source', () => {
  test.each([[12, 90], [3, 0], [6, 270], [9, 180]])('the dot at %d o’clock is at %d°', (hour, degrees) => {
    expect(siteFromClock(hour)).toBe(degrees);
    expect(clockFromSite(degrees)).toBe(hour);
  });

  test('an entry of 2.75 mm on a steep meridian at 180° takes a little off 1 D against the rule', () => {
    const { before, after } = evaluatePlan(EYE);
    const reduction = before.magnitude - after.magnitude;
    expect(reduction).toBeGreaterThan(0.1);
    expect(reduction).toBeLessThan(0.35);
    expect(after.meridian).toBe(180);
  });

  test('with one clock hour of arc opposite, expected and intended flattening bracket 1 D', () => {
    const { before, after, afterIntended } = evaluatePlan(WITH_ARC);
    expect(flattened(before, after)).toBeLessThan(1);
    expect(flattened(before, afterIntended)).toBeGreaterThan(1);
  });

  test('the mirrored plan in a left eye comes to the same', () => {
    const left = evaluatePlan({ ...WITH_ARC, eye: 'left', incisionSite: 0, arcSite: 180 });
    const right = evaluatePlan(WITH_ARC);
    expect(left.after.magnitude).toBeCloseTo(right.after.magnitude, 12);
    expect(left.after.meridian).toBe(right.after.meridian);
  });
});
