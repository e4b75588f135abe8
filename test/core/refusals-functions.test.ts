/** What the single functions refuse, word for word: which field, which value, and what would be accepted. */
import { describe, expect, test } from 'vitest';
import {
  alongCircle, arcFlattening, atVertex, backSurface, chanceWithin, chordOf, clockFromSite, dioptresFromRadius, ellipse,
  flatteningAndTorque, fromPowerVector, fromReadings, fromVector, incisionFlattening, lensPlaneRatio, meridian, meridianSpread, misplacedLens,
  radiusFromDioptres, site, siteFromClock, spanOf, toPowerVector, toVector, transpose, type Refraction,
} from '../../core/index.js';
import { refusalOf } from './refusal.js';

const LENS: Refraction = { sphere: -2, cylinder: 1, axis: 90 };
const ARC = { length: 60, count: 1, age: 65, rule: 'with', method: 'blade' } as const;
const ENTRY = { width: 2.4, site: 180, eye: 'right' } as const;
const POINT = { mean: { x: 0, y: 0 }, covariance: [[1, 0], [0, 1]] as [[number, number], [number, number]] };
const readings = { flat: 43, steep: 44, steepMeridian: 90 };

test.each<[string, () => unknown]>([
  ['meridian: NaN is refused; allowed is a finite number of °.', () => meridian(NaN)],
  ['site: Infinity is refused; allowed is a finite number of °.', () => site(Infinity)],
  ['site: none is refused; allowed is a finite number of °.', () => clockFromSite(undefined as never)],
  ['clock hour: NaN is refused; allowed is a finite number of h.', () => siteFromClock(NaN)],
  ['magnitude: -0.5 is refused; allowed is 0 to 1.7976931348623157e+308 D.', () => toVector({ magnitude: -0.5, meridian: 90 })],
  ['meridian: NaN is refused; allowed is a finite number of °.', () => toVector({ magnitude: 1, meridian: NaN })],
  ['x: NaN is refused; allowed is a finite number of D.', () => fromVector({ x: NaN, y: 0 })],
  ['y: Infinity is refused; allowed is a finite number of D.', () => fromVector({ x: 0, y: Infinity })],
  ['meridian: “90” is refused; allowed is a finite number of °.', () => flatteningAndTorque({ magnitude: 1, meridian: 90 }, '90' as never)],
  ['sphere: NaN is refused; allowed is a finite number of D.', () => toPowerVector({ ...LENS, sphere: NaN })],
  ['cylinder: NaN is refused; allowed is a finite number of D.', () => toPowerVector({ ...LENS, cylinder: NaN })],
  ['axis: NaN is refused; allowed is a finite number of °.', () => toPowerVector({ ...LENS, axis: NaN })],
  ['m: NaN is refused; allowed is a finite number of D.', () => fromPowerVector({ m: NaN, j0: 0, j45: 0 })],
  ['j0: NaN is refused; allowed is a finite number of D.', () => fromPowerVector({ m: 0, j0: NaN, j45: 0 })],
  ['j45: NaN is refused; allowed is a finite number of D.', () => fromPowerVector({ m: 0, j0: 0, j45: NaN })],
  ['sphere: NaN is refused; allowed is a finite number of D.', () => transpose({ ...LENS, sphere: NaN })],
  ['cylinder: NaN is refused; allowed is a finite number of D.', () => transpose({ ...LENS, cylinder: NaN })],
  ['axis: NaN is refused; allowed is a finite number of °.', () => transpose({ ...LENS, axis: NaN })],
  ['vertex distance: 31 is refused; allowed is 0 to 30 mm.', () => atVertex(LENS, 31)],
  ['vertex distance: -1 is refused; allowed is 0 to 30 mm.', () => atVertex(LENS, -1)],
  ['power: NaN is refused; allowed is a finite number of D.', () => atVertex({ ...LENS, sphere: NaN }, 12)],
  ['cylinder: NaN is refused; allowed is a finite number of D.', () => atVertex({ ...LENS, cylinder: NaN }, 12)],
  ['power: 80 is refused; allowed is below 80 D at 12.5 mm.', () => atVertex({ ...LENS, sphere: 80 }, 12.5)],
  ['p: 1.5 is refused; allowed is 0 to 1.', () => meridianSpread(POINT, 1.5)],
  ['k: 7.8 is refused; allowed is 28 to 75 D.', () => lensPlaneRatio({ k: 7.8 })],
  ['depth: 1.9 is refused; allowed is 2 to 8 mm.', () => lensPlaneRatio({ k: 43, depth: 1.9 })],
  ['depth: 8.1 is refused; allowed is 2 to 8 mm.', () => lensPlaneRatio({ k: 43, depth: 8.1 })],
  ['lensCylinder: 13 is refused; allowed is 0 to 12 D.', () => misplacedLens({ cylinder: 13, meridian: 90, placed: 80 })],
  ['radius: 43 is refused; allowed is 3 to 20 mm.', () => dioptresFromRadius(43)],
  ['radius: 2.9 is refused; allowed is 3 to 20 mm.', () => dioptresFromRadius(2.9)],
  ['power: 7.8 is refused; allowed is 16.875 to 112.5 D.', () => radiusFromDioptres(7.8)],
  ['flatK: 7.8 is refused; allowed is 28 to 75 D.', () => fromReadings({ ...readings, flat: 7.8 })],
  ['steepK: 76 is refused; allowed is 28 to 75 D.', () => fromReadings({ ...readings, steep: 76 })],
  ['steepMeridian: 181 is refused; allowed is 0 to 180 °.', () => fromReadings({ ...readings, steepMeridian: 181 })],
  ['angle: NaN is refused; allowed is a finite number of °.', () => alongCircle(NaN, 11)],
  ['angle: 361 is refused; allowed is 0 to 360 °.', () => chordOf(361, 11)],
  ['chord: 12 is refused; allowed is 0 to 11 mm.', () => spanOf(12, 11)],
  ['chord: -1 is refused; allowed is 0 to 11 mm.', () => spanOf(-1, 11)],
  ['incisionWidth: 24 is refused; allowed is 1.8 to 3.5 mm.', () => incisionFlattening({ ...ENTRY, width: 24 })],
  ['incisionSite: 361 is refused; allowed is 0 to 360 °.', () => incisionFlattening({ ...ENTRY, site: 361 })],
  ['eye: “OD” is refused; allowed is right, left.', () => incisionFlattening({ ...ENTRY, eye: 'OD' as never })],
  ['arcLength: 5 is refused; allowed is 15 to 120 °.', () => arcFlattening({ ...ARC, length: 5 })],
  ['arcCount: 3 is refused; allowed is 0, 1, 2.', () => arcFlattening({ ...ARC, count: 3 as never })],
  ['age: 121 is refused; allowed is 1 to 120 years.', () => arcFlattening({ ...ARC, age: 121 })],
  ['rule: “steep” is refused; allowed is with, against, oblique.', () => arcFlattening({ ...ARC, rule: 'steep' as never })],
  ['arcMethod: “knife” is refused; allowed is blade, laser.', () => arcFlattening({ ...ARC, method: 'knife' as never })],
  ['limit: -0.01 is refused; allowed is 0 to 1000000 D.', () => chanceWithin(POINT, -0.01)],
  ['p: 1 is refused; allowed is 0 to 0.999999999999.', () => ellipse(POINT, 1)],
])('%s', (message, call) => {
  const thrown = refusalOf(call);
  expect(thrown.name).toBe('RangeError');
  expect(thrown.message).toBe(message);
});

describe('a measured back surface', () => {
  test.each(['0.3', '0.3@', '@90', '0.3 @ 181', '-0.3@90', '9@90', '.3@90', '0.3@90x', 'x0.3@90', '0.3@9O', '', 'none', 0.3, null, {}])('%j is refused', (kind) => {
    expect(() => backSurface(kind as never)).toThrow(/^backSurface: .* is refused; allowed is /);
  });

  test.each([['0.30@180', 0.3, 180], ['0@0', 0, 180], [' 0.25 @ 90 ° ', 0.25, 90], ['1@7.5°', 1, 7.5], ['0.05@180', 0.05, 180]] as const)('%j', (kind, magnitude, along) => {
    expect(backSurface(kind as never)).toEqual({ magnitude, meridian: along });
  });

  test('is read anew where it is another, and nobody can change what was read', () => {
    const first = backSurface('0.30@175');
    expect(first).toEqual({ magnitude: 0.3, meridian: 175 });
    first.magnitude = 9;
    expect(backSurface('0.30@175')).toEqual({ magnitude: 0.3, meridian: 175 });
    expect(() => backSurface('0.30@190' as never)).toThrow(RangeError);
    expect(() => backSurface('0.30@190' as never)).toThrow(RangeError);
    expect(backSurface('0.40@20')).toEqual({ magnitude: 0.4, meridian: 20 });
    expect(backSurface('0.30@175')).toEqual({ magnitude: 0.3, meridian: 175 });
  });
});

test('a value that is refused is quoted, a long text cut at 40 signs', () => {
  const told = (value: unknown): string => {
    try {
      site(value as never);
      return 'accepted';
    } catch (error) {
      return (error as Error).message.replace(/^site: (.*) is refused.*$/, '$1');
    }
  };
  expect(['x'.repeat(40), 'x'.repeat(41), null, undefined, {}, true, -Infinity].map(told)).toEqual([
    `“${'x'.repeat(40)}”`, `“${'x'.repeat(40)}…”`, 'none', 'none', 'object', 'boolean', '-Infinity',
  ]);
});
