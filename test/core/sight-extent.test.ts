/** What becomes of a point: its ellipse, and how far it reaches. */
import fc from 'fast-check';
import * as math from 'mathjs';
import { describe, expect, test } from 'vitest';
import { besselJ1, blurEllipse } from '../../core/sight.js';
import type { Refraction } from '../../core/types.js';
import { blurExtent } from '../../core/sight-transfer.js';
import { RUNS, between } from './plans.js';
import { RADIANS, SHARP, rimRay } from './sight-support.js';

const refraction = fc.record({ sphere: between(-6, 6), cylinder: between(-4, 4), axis: between(0, 180) });
const pupil = between(1, 9);

describe('the blur ellipse', () => {
  test('has the axes and the direction of the singular values of the error as a matrix (mathjs)', () => {
    fc.assert(fc.property(refraction, pupil, (r, pupilMm) => {
      const ours = blurEllipse({ refraction: r, pupilMm });
      const turn = math.matrix([[Math.cos(r.axis * RADIANS), -Math.sin(r.axis * RADIANS)], [Math.sin(r.axis * RADIANS), Math.cos(r.axis * RADIANS)]]);
      const error = math.multiply(math.multiply(turn, math.diag([r.sphere, r.sphere + r.cylinder])), math.transpose(turn)) as math.Matrix;
      const scale = pupilMm / 1000 / RADIANS;
      const [one, two] = [Math.abs(r.sphere), Math.abs(r.sphere + r.cylinder)];
      expect(Math.abs(ours.longer - scale * Math.max(one, two))).toBeLessThan(1e-9);
      expect(Math.abs(ours.shorter - scale * Math.min(one, two))).toBeLessThan(1e-9);
      const direction = [Math.cos(ours.direction * RADIANS), Math.sin(ours.direction * RADIANS)];
      const stretched = math.norm(math.multiply(error, direction) as math.Matrix) as number;
      expect(Math.abs(scale * stretched - ours.longer)).toBeLessThan(1e-8);
      expect(ours.direction).toBeGreaterThan(0);
      expect(ours.direction).toBeLessThanOrEqual(180);
    }), RUNS);
  });

  test('of −1.00 × 180 is an upright line of 3.44′ a millimetre', () => {
    const { longer, shorter, direction } = blurEllipse({ refraction: { sphere: 0, cylinder: -1, axis: 180 }, pupilMm: 1 });
    expect([Math.abs(60 * longer - 3.4377) < 1e-4, shorter < 1e-12, Math.abs(direction - 90) < 1e-9]).toEqual([true, true, true]);
  });

  test('has no direction where it is a disc: it says 180', () => {
    for (const r of [SHARP, { sphere: 2, cylinder: 0, axis: 40 }, { sphere: -2, cylinder: 0, axis: 40 }, { sphere: 1, cylinder: -2, axis: 30 }, { sphere: -1, cylinder: 2, axis: 75 }]) {
      const { longer, shorter, direction } = blurEllipse({ refraction: r, pupilMm: 4 });
      expect(Math.abs(longer - shorter)).toBeLessThan(1e-12);
      expect([r, direction]).toEqual([r, 180]);
    }
  });
});

describe('how far the blur of a point reaches', () => {
  const furthest = (r: Refraction, pupilMm: number): [number, number] => {
    const rays = Array.from({ length: 7200 }, (_, i) => rimRay({ refraction: r, pupilMm, degreesPerPixel: 1 }, (i * Math.PI) / 3600));
    return [Math.max(...rays.map(([x]) => Math.abs(x))), Math.max(...rays.map(([, y]) => Math.abs(y)))];
  };

  test('by rays: as far as the furthest ray through the rim, across and up', () => {
    for (const r of [{ sphere: 1, cylinder: -3, axis: 30 }, { sphere: 0, cylinder: -1, axis: 180 }, { sphere: -2, cylinder: 0.5, axis: 115 }, { sphere: 3, cylinder: -3, axis: 90 }, SHARP]) {
      const { across, up } = blurExtent({ refraction: r, pupilMm: 5 });
      const [x, y] = furthest(r, 5);
      expect([Math.abs(across - x) < 1e-6, Math.abs(up - y) < 1e-6]).toEqual([true, true]);
    }
  });

  test('as waves: by the third dark ring of the diffraction more, which is wide where the pupil is small', () => {
    // The third zero of J1, between 10 and 10.5 (it changes its sign there once).
    let [low, high] = [10, 10.5];
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      if (besselJ1(middle) < 0 === besselJ1(low) < 0) low = middle;
      else high = middle;
    }
    for (const [pupilMm, wavelengthNm] of [[1, 555], [3, 450], [6, 650]] as const) {
      const ring = (low / Math.PI) * ((wavelengthNm * 1e-6) / pupilMm) / RADIANS;
      const r = { sphere: 0.5, cylinder: -1.5, axis: 60 };
      const [rays, waves] = [blurExtent({ refraction: r, pupilMm }), blurExtent({ refraction: r, pupilMm, wavelengthNm, model: 'wave' })];
      for (const side of ['across', 'up'] as const) expect(Math.abs((waves[side] - rays[side]) / ring - 1)).toBeLessThan(1e-4);
    }
    expect(blurExtent({ refraction: SHARP, pupilMm: 2, model: 'wave' })).toEqual(blurExtent({ refraction: SHARP, pupilMm: 2, model: 'wave', wavelengthNm: 555 }));
  });
});
