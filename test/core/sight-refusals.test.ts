/** What the functions on sight refuse; each refusal names the field, the value and the limits. */
import { describe, expect, test } from 'vitest';
import {
  Blurrer, SIGHT_LIMITS, blur, blurEllipse, blurSteps, cutOffFrequency, expectedAcuity, gapSize, landolt, refractionOf, transfer, wavefront,
  type BlurOptions, type GapDirection, type Picture, type Wavefront,
} from '../../core/sight.js';
import type { Refraction } from '../../core/types.js';
import { RefusedValue } from '../../core/check.js';
import { SHARP, picture } from './sight-support.js';

/** Written anew: a refusal with a wrong unit would mend nothing. */
const UNITS = { pupil: 'mm', wavelength: 'nm', sphere: 'D', cylinder: 'D', degreesPerPixel: '°', astigmatism: 'D', acuity: '', viewingDistance: 'm' } as const;

const SHOT = picture(12, 10, () => 90);
const OPTIONS: BlurOptions = { refraction: { sphere: 0.5, cylinder: -1, axis: 30 }, pupilMm: 4, degreesPerPixel: 1 / 60 };

function refusal(call: () => unknown): RefusedValue {
  try {
    call();
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    expect(error).toBeInstanceOf(RefusedValue);
    return error as RefusedValue;
  }
  throw new Error('nothing was refused');
}

const spoiled = (change: object): BlurOptions => ({ ...OPTIONS, ...change }) as BlurOptions;
const lens = (change: object): Refraction => ({ ...SHARP, ...change }) as Refraction;

describe.each([
  ['pupil', 'pupil', (value: number) => [
    () => wavefront(SHARP, value), () => refractionOf({ c20: 0, c22: 0, c2m2: 0 }, value), () => transfer({ refraction: SHARP, pupilMm: value }),
    () => blur(SHOT, spoiled({ pupilMm: value })), () => blurEllipse({ refraction: SHARP, pupilMm: value }), () => cutOffFrequency(value),
  ]],
  ['wavelength', 'wavelength', (value: number) => [
    () => transfer({ refraction: SHARP, pupilMm: 3, wavelengthNm: value }), () => cutOffFrequency(3, value), () => blur(SHOT, spoiled({ wavelengthNm: value })),
  ]],
  ['sphere', 'sphere', (value: number) => [() => wavefront(lens({ sphere: value }), 3), () => blur(SHOT, spoiled({ refraction: lens({ sphere: value }) }))]],
  ['cylinder', 'cylinder', (value: number) => [() => wavefront(lens({ cylinder: value }), 3), () => transfer({ refraction: lens({ cylinder: value }), pupilMm: 3 })]],
  ['degreesPerPixel', 'degrees per pixel', (value: number) => [() => blur(SHOT, spoiled({ degreesPerPixel: value })), () => blurSteps(SHOT, spoiled({ degreesPerPixel: value }))]],
  ['astigmatism', 'cylinder', (value: number) => [() => expectedAcuity(value)]],
  ['acuity', 'acuity', (value: number) => [() => gapSize(6, value)]],
  ['viewingDistance', 'viewing distance', (value: number) => [() => gapSize(value, 1)]],
] as const)('%s', (kind, field, calls) => {
  const { min, max } = SIGHT_LIMITS[kind];

  test.each([min - 1e-6, max + 1e-6, NaN, Infinity, '3' as unknown as number])('%s is refused, with its limits', (value) => {
    for (const call of calls(value)) {
      const { field: named, message, value: given } = refusal(call);
      expect(named).toBe(field);
      expect(given).toBe(value);
      expect(message).toContain(`${min} to ${max}${UNITS[kind] && ` ${UNITS[kind]}`}.`);
    }
  });

  test('its limits themselves are accepted', () => {
    for (const value of [min, max]) {
      for (const call of calls(value).slice(0, 1)) {
        // The widest pixel and the widest error are fine by themselves; only a blur may be too wide.
        expect(call).not.toThrow();
      }
    }
  });
});

describe('else', () => {
  test.each([
    ['a model that is none', () => transfer({ refraction: SHARP, pupilMm: 3, model: 'ray' as 'wave' }), 'model'],
    ['a frame that is none', () => blur(SHOT, spoiled({ frame: 'retina' })), 'frame'],
    ['an axis that is no number', () => wavefront(lens({ axis: NaN }), 3), 'axis'],
    ['no refraction', () => blur(SHOT, spoiled({ refraction: null })), 'refraction'],
    ['a refraction left out', () => blur(SHOT, spoiled({ refraction: undefined })), 'refraction'],
    ['a number for a refraction', () => wavefront(-1 as unknown as Refraction, 3), 'refraction'],
    ['a frequency that is no number', () => transfer(OPTIONS)(NaN, 0), 'fx'],
    ['an endless frequency', () => transfer(OPTIONS)(0, Infinity), 'fy'],
    ['a coefficient that is no number', () => refractionOf({ c20: NaN, c22: 0, c2m2: 0 }, 3), 'c20'],
    ['an endless coefficient', () => refractionOf({ c20: 0, c22: Infinity, c2m2: 0 }, 3), 'c22'],
    ['a coefficient left out', () => refractionOf({ c20: 0, c22: 0 } as Wavefront, 3), 'c2m2'],
    ['a gap between the eight directions', () => landolt(30 as GapDirection), 'gap direction'],
    ['data of another length', () => new Blurrer({ ...SHOT, width: 11 }), 'length of picture data'],
    ['data of another kind', () => new Blurrer({ ...SHOT, data: Array.from(SHOT.data) as unknown as Uint8ClampedArray }), 'picture data'],
    ['a picture without pixels', () => new Blurrer({ data: new Uint8ClampedArray(0), width: 0, height: 0 }), 'picture width'],
    ['a picture that is too high', () => new Blurrer({ data: new Uint8ClampedArray(4 * 2049), width: 1, height: 2049 }), 'picture height'],
    ['half a pixel', () => new Blurrer({ ...SHOT, width: 11.5 }), 'picture width'],
    ['half a pixel in height', () => new Blurrer({ data: new Uint8ClampedArray(6), width: 1, height: 1.5 }), 'picture height'],
    ['no picture', () => new Blurrer(undefined as unknown as Picture), 'picture'],
    ['nothing for a picture', () => new Blurrer(null as unknown as Picture), 'picture'],
    ['a word for a picture', () => new Blurrer('letter' as unknown as Picture), 'picture'],
    ['a blur wider than the limit', () => blur(SHOT, spoiled({ refraction: lens({ sphere: 30 }), pupilMm: 9, degreesPerPixel: 0.005 })), 'reach of the blur'],
    ['a blur that is too high alone', () => blur(SHOT, spoiled({ refraction: lens({ cylinder: 15 }), pupilMm: 9, degreesPerPixel: 0.003 })), 'reach of the blur'],
    ['a blur that is too wide alone', () => blur(SHOT, spoiled({ refraction: lens({ cylinder: 15, axis: 90 }), pupilMm: 9, degreesPerPixel: 0.003 })), 'reach of the blur'],
  ] as const)('%s is refused', (_, call, field) => {
    const { field: named, message } = refusal(call);
    expect(named).toBe(field);
    expect(message).toContain(field);
  });

  test.each([
    [() => transfer(OPTIONS)(NaN, 0), 'a finite number of cycles/°'],
    [() => transfer(OPTIONS)(0, NaN), 'a finite number of cycles/°'],
    [() => refractionOf({ c20: NaN, c22: 0, c2m2: 0 }, 3), 'a finite number of µm'],
    [() => refractionOf({ c20: 0, c22: NaN, c2m2: 0 }, 3), 'a finite number of µm'],
    [() => refractionOf({ c20: 0, c22: 0, c2m2: NaN }, 3), 'a finite number of µm'],
    [() => wavefront(null as unknown as Refraction, 3), 'a sphere, a cylinder and an axis'],
    [() => new Blurrer(null as unknown as Picture), 'data, width and height'],
    [() => new Blurrer({ ...SHOT, width: 11.5 }), 'a whole number of px'],
    [() => new Blurrer({ ...SHOT, height: 2049 }), '1 to 2048 px'],
    [() => new Blurrer({ ...SHOT, data: [] as unknown as Uint8ClampedArray }), 'a Uint8ClampedArray'],
    [() => new Blurrer({ ...SHOT, width: 11 }), '440 (4 × 11 × 10)'],
    [() => blur(SHOT, spoiled({ refraction: lens({ sphere: 30 }), pupilMm: 9, degreesPerPixel: 0.005 })), '0 to 1024 px'],
  ] as const)('%s is told what would be accepted: %s', (call, limits) => expect(refusal(call).limits).toBe(limits));

  test('slices refuse at once, not with the first slice, and leave the picture usable', () => {
    const kept = new Blurrer(SHOT);
    expect(refusal(() => kept.steps(spoiled({ pupilMm: 0 }))).field).toBe('pupil');
    expect(kept.blur(OPTIONS).width).toBe(12);
  });
});
