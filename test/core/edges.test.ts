/** Where one rule of the model gives way to the next, and cases that can be worked by hand, through whole plans. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  LIMITS, clockFromSite, evaluatePlan, lensPlaneRatio, meridianDistance, misplacedLens, site, siteFromClock, toVector,
  type EyePlan, type StepSource, type Vector,
} from '../../core/index.js';
import { RUNS, between } from './plans.js';

const EYE: EyePlan = { eye: 'right', flatK: 43, steepK: 45, steepMeridian: 90 };
const ARC: EyePlan = { ...EYE, arcSite: 90, arcCount: 1, arcLength: 60 };

const vectorOf = (plan: EyePlan, source: StepSource, part: 'vector' | 'intended' = 'vector'): Vector =>
  evaluatePlan(plan).steps.find((step) => step.source === source)![part];

const size = ({ x, y }: Vector): number => Math.hypot(x, y);

/** Intended effect of the arcs of a plan, D. */
const intended = (plan: EyePlan): number => size(vectorOf({ ...ARC, ...plan }, 'arcs', 'intended'));

describe('the age of a plan with arcs', () => {
  // One arc of 60° at 65 with the rule intends 1.70 D; each year is 0.6 % of it, from 40 to 90.
  test.each([[40, 0.85], [40.5, 0.853], [64, 0.994], [65, 1], [66, 1.006], [89.5, 1.147], [90, 1.15]])('%d years count %d', (age, factor) => {
    expect(intended({ age })).toBeCloseTo(1.7 * factor, 12);
  });
  test.each([[1, 40], [39.99, 40], [90.01, 90], [120, 90]])('%d years count as %d', (age, as) => expect(intended({ age })).toBe(intended({ age: as })));
  test('none counts as 65', () => expect(intended({ age: null })).toBe(intended({ age: 65 })));
  test('changes nothing without arcs, nor arcs of the surgeon’s own figure', () => {
    for (const plan of [{ ...EYE, incisionSite: 180, lensCylinder: 1, lensMeridian: 90 }, { ...ARC, arcFlattening: 0.8 }]) {
      const at = (age: number) => { const { after, spread } = evaluatePlan({ ...plan, age }); return { after, spread }; };
      expect(at(30)).toEqual(at(85));
    }
  });
});

describe('the rule by which arcs are counted', () => {
  // 1.15 times against the rule, from 150° over 180° to 30°, the limits included.
  test.each([
    [29.99, 1.15], [30, 1.15], [30.01, 1], [149.99, 1], [150, 1.15], [150.01, 1.15], [180, 1.15], [0, 1.15], [60, 1], [59.99, 1], [90, 1], [120, 1], [120.01, 1],
  ])('steep at %d°: %d times', (steepMeridian, times) => expect(intended({ steepMeridian, age: 65 })).toBeCloseTo(1.7 * times, 12));

  test('is that of the front surface, whatever the back or the place of the arc', () => {
    const flat: EyePlan = { steepMeridian: 180, age: 65, steepK: 43.2 };
    expect(intended({ ...flat, backSurface: '1@90' })).toBeCloseTo(1.7 * 1.15, 12);
    expect(intended({ ...flat, arcSite: 45 })).toBeCloseTo(1.7 * 1.15, 12);
  });
  test('jumps in what is left by what the factor says, and by nothing else', () => {
    const left = (steepMeridian: number) => toVector(evaluatePlan({ ...ARC, age: 65, steepMeridian, arcSite: 30 }).after);
    const [against, oblique] = [left(30), left(30 + 1e-9)];
    expect(Math.hypot(against.x - oblique.x, against.y - oblique.y)).toBeCloseTo(1.7 * 0.15 * 0.5, 6);
  });
});

describe('the length of arcs in a plan', () => {
  test('counts in proportion up to 90° and no further, down to the shortest that is accepted', () => {
    for (const arcLength of [15, 30, 60, 89, 90]) expect(intended({ arcLength, age: 65 })).toBeCloseTo((1.7 * arcLength) / 60, 12);
    for (const arcLength of [90.1, 105, 120]) expect(intended({ arcLength })).toBe(intended({ arcLength: 90 }));
  });
  test('a pair does 2 to the power of 0.6 times one arc, on the same meridian', () => {
    for (const arcLength of [30, 60, 120]) {
      const [one, two] = [1, 2].map((arcCount) => vectorOf({ ...ARC, arcLength, arcCount: arcCount as 1 | 2 }, 'arcs')) as [Vector, Vector];
      expect(two.x / one.x).toBeCloseTo(2 ** 0.6, 12);
      expect(Math.abs(one.y) + Math.abs(two.y)).toBeLessThan(1e-12);
    }
  });
});

describe('the dial', () => {
  test('hours and degrees answer each other all the way round', () =>
    fc.assert(fc.property(between(0, 360), (degrees) => {
      const hour = clockFromSite(degrees);
      expect(hour > 0 && hour <= 12).toBe(true);
      const apart = Math.abs(siteFromClock(hour) - site(degrees));
      expect(Math.min(apart, 360 - apart)).toBeLessThan(1e-10);
    }), RUNS));

  test('an hour later is 30° less', () => {
    for (let half = 1; half <= 24; half += 1) expect(site(siteFromClock(half / 2) - siteFromClock(half / 2 + 1))).toBe(30);
  });

  test('both ends of a meridian do the same to the astigmatism when the figure is the surgeon’s own', () =>
    fc.assert(fc.property(between(0, 180), between(0, 3), (degrees, dioptres) => {
      for (const source of ['incision', 'arcs'] as const) {
        const at = (place: number): Vector => source === 'incision'
          ? vectorOf({ ...EYE, incisionSite: place, incisionFlattening: dioptres }, source)
          : vectorOf({ ...ARC, arcSite: place, arcFlattening: dioptres }, source);
        const [here, there] = [at(degrees), at(degrees + 180)];
        expect(Math.hypot(here.x - there.x, here.y - there.y)).toBeLessThan(1e-12);
      }
    }), RUNS));

  test('the eye decides where temporal is, and with it how much an entry does', () => {
    const at = (eye: 'right' | 'left', incisionSite: number) => size(vectorOf({ ...EYE, eye, incisionSite, incisionWidth: 2.2 }, 'incision'));
    // Temporal 0.10 D, nasal 2.2 times as much, superior twice as much in either eye.
    expect([at('right', 180), at('left', 0), at('right', 360)].map((dioptres) => Number(dioptres.toFixed(12)))).toEqual([0.1, 0.1, 0.22]);
    expect(at('right', 90)).toBeCloseTo(0.2, 12);
    expect(at('left', 90)).toBeCloseTo(0.2, 12);
  });
});

describe('cylinder at the lens for one at the cornea', () => {
  // Second method: both principal meridians carried to the lens by F / (1 − d·F/n), and their difference taken.
  const carried = (power: number, mm: number) => power / (1 - ((mm / 1000) * power) / 1.336);

  test('is what two meridians a hair apart come to', () =>
    fc.assert(fc.property(between(LIMITS.flatK.min, LIMITS.steepK.max), between(2, 8), (k, depth) => {
      const hair = 1e-4;
      const ratio = (carried(k + hair / 2, depth) - carried(k - hair / 2, depth)) / hair;
      expect(Math.abs(lensPlaneRatio({ k, depth }) / ratio - 1)).toBeLessThan(1e-6);
    }), RUNS));

  test('for a whole dioptre is within a fiftieth of that', () => {
    for (const k of [40, 43, 46]) expect(Math.abs(lensPlaneRatio({ k, depth: 5 }) / (carried(k + 0.5, 5) - carried(k - 0.5, 5)) - 1)).toBeLessThan(0.02);
  });

  test('grows with the power and with the depth, and is above 1 at every limit', () => {
    for (const depth of [2, 5, 8]) expect(lensPlaneRatio({ k: 28, depth })).toBeLessThan(lensPlaneRatio({ k: 75, depth }));
    for (const k of [28, 43, 75]) expect(lensPlaneRatio({ k, depth: 2 })).toBeLessThan(lensPlaneRatio({ k, depth: 8 }));
    expect(lensPlaneRatio({ k: 28, depth: 2 })).toBeGreaterThan(1);
    expect(Number.isFinite(lensPlaneRatio({ k: 75, depth: 8 }))).toBe(true);
  });
});

describe('under- and over-correction along the steep meridian', () => {
  // 2 D at 90°: what is taken off is missing, too much appears across.
  test.each([[0, 2, 90], [0.5, 1.5, 90], [1.99, 0.01, 90], [2, 0, 180], [2.01, 0.01, 180], [3, 1, 180]])('%d D of 2 leave %d D at %d°', (taken, left, along) => {
    const plans: EyePlan[] = [{ ...EYE, lensCylinder: taken, lensMeridian: 90 }, { ...EYE, incisionSite: 270, incisionFlattening: taken }, { ...ARC, arcFlattening: taken }];
    for (const plan of plans) {
      const { after } = evaluatePlan(plan);
      expect(after.magnitude).toBeCloseTo(left, 10);
      expect(after.meridian).toBe(along);
    }
  });

  test('the expected effect may fall short while the intended one goes too far', () => {
    // One arc of 60° at 65 by blade: 0.85 D expected, 1.70 D intended, on 1.2 D.
    const { after, afterIntended } = evaluatePlan({ ...ARC, steepK: 44.2, age: 65 });
    expect([after.magnitude, after.meridian]).toEqual([expect.closeTo(0.35, 10), 90]);
    expect([afterIntended.magnitude, afterIntended.meridian]).toEqual([expect.closeTo(0.5, 10), 180]);
  });
});

describe('the turn of the axis', () => {
  // Equal cylinders β apart: what is left is steep β/2 − 45° from the cornea's meridian, 2·C·sin β in size.
  test.each([1, 5, 10, 20, 45, 60, 90])('by a lens of the right strength placed %d° counter-clockwise', (apart) => {
    const left = misplacedLens({ cylinder: 2, meridian: 70, placed: 70 + apart });
    expect(left.magnitude).toBeCloseTo(4 * Math.sin((apart * Math.PI) / 180), 12);
    expect(meridianDistance(left.meridian, 70 + apart / 2 - 45)).toBeLessThan(1e-9);
  });

  // The sine rule in the triangle of doubled angles: R·sin 2δ = F·sin 2β.
  test('by a cut beside the steep meridian obeys the sine rule, away from the cut', () =>
    fc.assert(fc.property(between(0.1, 3), between(1, 89), (dioptres, apart) => {
      const { before, after } = evaluatePlan({ ...EYE, incisionSite: 90 + apart, incisionFlattening: dioptres });
      const turn = (((after.meridian - before.meridian + 270) % 180) - 90) * (Math.PI / 90);
      expect(after.magnitude * Math.sin(turn)).toBeCloseTo(-dioptres * Math.sin((apart * Math.PI) / 90), 9);
    }), RUNS));

  // The turn is largest where what is left stands across the cut in the doubled plane: sin 2δ = 1/2, cos 2β = 1/2.
  test('by a cut of half the astigmatism is 15° at most, and that at 30° from the meridian', () => {
    const turn = (apart: number) => meridianDistance(evaluatePlan({ ...EYE, incisionSite: 90 + apart, incisionFlattening: 1 }).after.meridian, 90);
    const turns = Array.from({ length: 181 }, (_, half) => turn(half / 2));
    expect(Math.max(...turns)).toBeCloseTo(15, 9);
    expect(turns.indexOf(Math.max(...turns)) / 2).toBe(30);
  });
});
