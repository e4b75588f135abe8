import { describe, expect, test } from 'vitest';
import { GAP_DIRECTIONS, expectedAcuity, gapSize, landolt } from '../../core/sight.js';
import { SIGHT_MODEL } from '../../core/sight-model.js';
import { clinicalFigures, compute, target } from './clinical-readers.js';

describe('expected acuity (Hoshikawa et al. 2021)', () => {
  // The loss against no cylinder, printed to two decimals.
  test.each(clinicalFigures(/^acuity-/))('%s D cost what the curve of the study says', (_, entry) => {
    expect(Math.abs(compute(entry) - target(entry))).toBeLessThanOrEqual(0.0051);
  });

  test('all six losses are compared', () => expect(clinicalFigures(/^acuity-/)).toHaveLength(6));

  test.each([[0, -0.116, '6/4.6', '20/15'], [1, 0.026, '6/6.4', '20/21'], [2, 0.202, '6/9.6', '20/32'], [3, 0.412, '6/15', '20/52']])(
    '%d D: logMAR %d, %s, %s',
    (cylinder, logMAR, metres, feet) => {
      const acuity = expectedAcuity(cylinder);
      expect(Math.abs(acuity.logMAR - logMAR)).toBeLessThan(1e-12);
      expect([acuity.snellenMetres, acuity.snellenFeet, acuity.beyondData]).toEqual([metres, feet, false]);
      expect(Math.abs(Math.log10(acuity.decimal) + logMAR)).toBeLessThan(1e-12);
    },
  );

  test('beyond 3 D stays at that of 3 D and says so', () => {
    expect(expectedAcuity(3.01)).toEqual({ ...expectedAcuity(3), beyondData: true });
  });

  // Variance of the fit over cylinders spread evenly from 0 to 3 D, and what R² then leaves.
  test('the spread is what R² leaves under the assumption that is stated', () => {
    const n = 30_000;
    const values = Array.from({ length: n }, (_, i) => expectedAcuity((3 * (i + 0.5)) / n).logMAR);
    const mean = values.reduce((a, b) => a + b) / n;
    const variance = values.reduce((a, b) => a + (b - mean) ** 2, 0) / n;
    expect(Number(Math.sqrt((variance * (1 - 0.544)) / 0.544).toFixed(2))).toBe(SIGHT_MODEL.acuitySd);
    const { low, high, logMAR } = expectedAcuity(1.25);
    expect([Math.abs(logMAR - low - 0.14) < 1e-12, Math.abs(high - logMAR - 0.14) < 1e-12]).toEqual([true, true]);
  });
});

describe('the Landolt ring (ISO 8596)', () => {
  test.each(GAP_DIRECTIONS)('open at %d° has a gap of one stroke with parallel sides, as wide as its rims allow', (direction) => {
    const { corners: { outerStart, outerEnd, innerStart, innerEnd }, outerDiameter, innerDiameter, stroke, gap } = landolt(direction);
    expect((outerDiameter - innerDiameter) / 2).toBe(stroke);
    for (const [point, diameter] of [[outerStart, outerDiameter], [outerEnd, outerDiameter], [innerStart, innerDiameter], [innerEnd, innerDiameter]] as const) {
      expect(Math.abs(Math.hypot(point.x, point.y) - diameter / 2)).toBeLessThan(1e-12);
    }
    for (const [a, b] of [[outerStart, outerEnd], [innerStart, innerEnd]] as const) expect(Math.abs(Math.hypot(a.x - b.x, a.y - b.y) - gap)).toBeLessThan(1e-12);
    // The middle of the gap lies in its direction; the dark part starts counter-clockwise of it.
    const [x, y] = [outerStart.x + outerEnd.x, outerStart.y + outerEnd.y];
    const at = (Math.atan2(y, x) * 180) / Math.PI;
    expect(Math.abs(((at - direction + 540) % 360) - 180)).toBeLessThan(1e-9);
    expect(outerEnd.x * outerStart.y - outerEnd.y * outerStart.x).toBeGreaterThan(0);
  });

  test('is twice as large at twice the distance, and for half the acuity but for the tangent', () => {
    expect(Math.abs(gapSize(10, 1) - 2 * gapSize(5, 1))).toBeLessThan(1e-12);
    expect(Math.abs(gapSize(5, 0.5) - 2 * gapSize(5, 1))).toBeLessThan(1e-6);
  });
});
