import { describe, expect, test } from 'vitest';
import {
  MODEL, RADIANS, arcFlattening, backSurface, evaluatePlan, incisionFlattening, incisionSpread, lensPlaneRatio, meanPowerShift,
  misplacedLens, sum, type Astigmatism,
} from '../../core/index.js';
import { clinicalFigures, compute, target } from './clinical-readers.js';

/** Rounded to two decimals, as the figures are printed. */
const printed = (value: number): number => Number(value.toFixed(2));

const temporal = (width: number) => incisionFlattening({ width, site: 180, eye: 'right' });

describe('a lens beside its meridian (law of cosines; 10° leaves a third: Felipe et al. 2011)', () => {
  test.each([[1, 0.0349], [3, 0.1047], [5, 0.1743], [10, 0.3473], [15, 0.5176], [20, 0.684], [30, 1]])(
    '1 D, %d° off leaves %d D',
    (turned, left) => {
      const residual = misplacedLens({ cylinder: 1, meridian: 70, placed: 70 + turned }).magnitude;
      expect(Math.abs(residual - left)).toBeLessThanOrEqual(0.00005);
    },
  );
});

describe('half a dioptre of flattening (Kim & Weikert 2018, Fig. 2.2: directions read, sizes chosen)', () => {
  const after = (before: Astigmatism, incisionSite: number) =>
    evaluatePlan({ flatK: 43, steepK: 43 + before.magnitude, steepMeridian: before.meridian, incisionSite, incisionFlattening: 0.5 }).after;

  test.each([
    ['a sphere, entered at 180', { magnitude: 0, meridian: 180 }, 180, 0.5, 90],
    ['a sphere, entered at 90', { magnitude: 0, meridian: 180 }, 90, 0.5, 180],
    ['1 D at 180, entered at 180', { magnitude: 1, meridian: 180 }, 180, 0.5, 180],
    ['1 D at 45, entered at 180', { magnitude: 1, meridian: 45 }, 180, Math.sqrt(1.25), 58.3],
  ] as const)('%s', (_, before, site, magnitude, meridian) => {
    const left = after(before, site);
    expect(left.magnitude).toBeCloseTo(magnitude, 9);
    expect(Math.abs(left.meridian - meridian)).toBeLessThanOrEqual(0.05);
  });
});

describe('coupling (Faktorovich, Maloney & Price 1999: ratios 0.84 and 0.95 read; 1.47 in cadavers, Arch Ophthalmol 1988)', () => {
  test.each([[0.84, 0.0435], [0.95, 0.0128], [1, 0], [1.47, -0.0951]])('a ratio of %d shifts the mean power by %d D a dioptre', (ratio, shift) => {
    expect(Math.abs(meanPowerShift(1, ratio) - shift)).toBeLessThanOrEqual(0.00005);
  });
});

test('averages are taken in the double-angle plane (Holladay, Cravy & Koch 1992): 1 D at 45 and 1 D at 135 cancel', () => {
  expect(sum({ magnitude: 1, meridian: 45 }, { magnitude: 1, meridian: 135 }).magnitude).toBeLessThan(1e-12);
});

describe('cylinder at the lens for one at the cornea (thin-lens vergence, derived)', () => {
  test.each([[43, 5, 1.42], [43.5, 5, 1.43], [43.5, 5.5, 1.484], [40, 4.5, 1.34], [46, 5.5, 1.52]])('%d D, %d mm: %d', (k, depth, ratio) => {
    const digits = String(ratio).split('.')[1]!.length;
    expect(Number(lensPlaneRatio({ k, depth }).toFixed(digits))).toBe(ratio);
  });
});

test('6 mm on a radius of 5.5 mm are 62.5° (plane geometry)', () => {
  expect(Number((6 / 5.5 / RADIANS).toFixed(1))).toBe(62.5);
});

describe('the default model, worked by hand (teaching estimates)', () => {
  test.each([[1.8, 0.01], [2.2, 0.1], [2.4, 0.14], [2.75, 0.22], [3, 0.28], [3.2, 0.32]])('a temporal entry of %d mm flattens by %d D', (width, flattening) => {
    expect(printed(temporal(width).flattening)).toBe(flattening);
    expect(printed(incisionFlattening({ width, site: 0, eye: 'left' }).flattening)).toBe(flattening);
  });

  test.each([[1.8, 0.3], [2.49, 0.3], [2.5, 0.35], [2.9, 0.35], [3, 0.45], [3.5, 0.45]])('%d mm scatters by %d D', (width, sd) => {
    expect(incisionSpread(width)).toBe(sd);
    expect(temporal(width).sd).toBe(sd);
  });

  // Temporal, superotemporal, superior, superonasal and nasal from the series in MODEL; the last three are assumed.
  test.each([[0, 1], [45, 1.7], [90, 2], [135, 2.1], [180, 2.2], [225, 1.8], [270, 1.5], [315, 1.2], [22.5, 1.35], [60, 1.8], [337.5, 1.1]])(
    'an entry %d° from the temporal side does %d times as much, in either eye',
    (degrees, times) => {
      const left = incisionFlattening({ width: 2.2, site: degrees, eye: 'left' }).flattening;
      const right = incisionFlattening({ width: 2.2, site: (540 - degrees) % 360, eye: 'right' }).flattening;
      expect(left).toBeCloseTo(0.1 * times, 12);
      expect(right).toBeCloseTo(0.1 * times, 12);
    },
  );

  // Fit to the published table (relaxingTable), times the achieved share 0.50 of Roberts 2018 and Naguib 2022.
  test.each([[60, 1, 65, 0.85], [60, 2, 65, 1.29], [80, 2, 70, 1.77], [45, 1, 65, 0.6375], [40, 1, 75, 0.6]] as const)(
    'arcs of %d°, %d of them, at %d years: %d D by blade, with the rule',
    (length, count, age, expected) => {
      const digits = String(expected).split('.')[1]!.length;
      const got = arcFlattening({ length, count, age, rule: 'with', method: 'blade' }).expected;
      expect(Number(got.toFixed(digits))).toBe(expected);
    },
  );

  test('arcs scatter by 0.45 of what they do along their meridian, at least by 0.25 D, and by 0.35 D across', () => {
    const spread = (length: number, count: 0 | 1 | 2) => arcFlattening({ length, count, age: 65, rule: 'with', method: 'blade' });
    expect(spread(60, 1).sdAlong).toBeCloseTo(0.45 * 0.85, 12);
    expect(spread(30, 1)).toMatchObject({ sdAlong: 0.25, sdAcross: 0.35 });
    expect(spread(60, 0)).toEqual({ intended: 0, expected: 0, sdAlong: 0, sdAcross: 0 });
  });

  test('by laser two thirds of the intended effect are expected (0.65), by blade half of it', () => {
    const share = (method: 'blade' | 'laser') => {
      const { intended, expected } = arcFlattening({ length: 60, count: 1, age: 65, rule: 'with', method });
      return expected / intended;
    };
    expect(share('laser')).toBeCloseTo(0.65, 12);
    expect(share('blade')).toBeCloseTo(0.5, 12);
  });

  test('the surgeon’s own figures take the place of the model, and their arcs scatter by what they do', () => {
    const plan = { steepK: 45, backSurface: 'typical', age: 65, arcSite: 90, arcCount: 1, arcLength: 60 } as const;
    // The trace, for that is what the marks on the eye turn without changing it; they add their own share of the whole.
    const trace = ({ spread: { covariance: [[xx], [, yy]] } }: ReturnType<typeof evaluatePlan>) => xx + yy!;
    const added = (arcFlattening?: number) => trace(evaluatePlan({ ...plan, arcFlattening })) - trace(evaluatePlan({ steepK: 45 }));
    const byMarks = (dioptres: number) => dioptres ** 2 * (1 - Math.exp(-4 * (5 * RADIANS) ** 2));
    expect(added()).toBeCloseTo((0.45 * 0.85) ** 2 + 0.35 ** 2 + byMarks(0.85), 12);
    expect(added(1.5)).toBeCloseTo((0.45 * 1.5) ** 2 + 0.35 ** 2 + byMarks(1.5), 12);
    expect(added(0.2)).toBeCloseTo(0.25 ** 2 + 0.35 ** 2 + byMarks(0.2), 12);
    const { steps } = evaluatePlan({ ...plan, arcFlattening: 1.5, incisionSite: 180, incisionFlattening: 0.4 });
    expect(steps.slice(1).map(({ vector, intended }) => [vector.x, intended.x])).toEqual([[-0.4, -0.4], [1.5, 1.5]]);
  });

  // Between the 1.04 of the published table and the 1.8 of Wang et al. 2003; chosen, not measured.
  test('arcs count 1.15 times against the rule, and as with the rule in oblique eyes', () => {
    const at = (rule: 'with' | 'against' | 'oblique') => arcFlattening({ length: 60, count: 1, age: 65, rule, method: 'blade' }).intended;
    expect(at('against') / at('with')).toBeCloseTo(1.15, 12);
    expect(at('oblique')).toBe(at('with'));
  });

  // Power of the centre unchanged three years after arcs (Clin Ophthalmol 2015), not different from Gauss’s law.
  test('cuts leave the mean power as it was', () => {
    expect(evaluatePlan({ steepK: 45, incisionSite: 0, arcSite: 90, arcCount: 2 }).meanPowerShift).toBe(0);
  });

  test('the limbus is 11.7 mm wide (Rüfer et al. 2005: 11.71 ± 0.42), and a lens lies 5 mm deep unless said', () => {
    const [[, published]] = clinicalFigures(/^limbus$/) as [ReturnType<typeof clinicalFigures>[number]];
    expect(MODEL.eye.limbusDiameter).toBe(Number(target(published).toFixed(1)));
    expect(Number(lensPlaneRatio({ k: 43 }).toFixed(2))).toBe(1.42);
  });

  // Keratometry 0.14 to 0.25 D within an eye (Gjerdrum et al. 2020); the back surface is assumed.
  test('an eye without surgery is uncertain by 0.15 D of keratometry and 0.15 D of back surface', () => {
    const { covariance: [[xx, xy], [, yy]] } = evaluatePlan({ steepK: 45, steepMeridian: 30 }).spread;
    for (const variance of [xx, yy]) expect(variance).toBeCloseTo(2 * 0.15 ** 2, 12);
    expect(Math.abs(xy)).toBeLessThan(1e-12);
  });

  // Marks 5° off (Khatib et al. 2020) turn what is placed by them by 10° in the double-angle plane, a lens by 6° more.
  test('a lens of 2 D is uncertain across its meridian by 2·2·sin of 5° and of 3°', () => {
    const { covariance: [, [, yy]] } = evaluatePlan({ steepK: 45, lensCylinder: 2, lensMeridian: 90 }).spread;
    const bySmallAngles = 2 * 0.15 ** 2 + (4 * Math.sin(5 * RADIANS)) ** 2 + (4 * Math.sin(3 * RADIANS)) ** 2;
    expect(Math.abs(yy / bySmallAngles - 1)).toBeLessThan(0.05);
  });

  test('the age counts between 40 and 90 only, a missing one as 65, arcs beyond 90° as 90°', () => {
    const at = (age: number | null, length = 60) => arcFlattening({ length, count: 1, age, rule: 'with', method: 'blade' }).intended;
    expect(at(20)).toBe(at(40));
    expect(at(39.9)).toBe(at(40));
    expect(at(40.1)).toBeGreaterThan(at(40));
    expect(at(100)).toBe(at(90));
    expect(at(null)).toBe(at(65));
    expect(at(65, 120)).toBe(at(65, 90));
    expect(at(65, 89)).toBeLessThan(at(65, 90));
  });

  test('a cornea steep at 180° by 1 D totals 1.27 D with the typical back surface (Eom et al. 2014)', () => {
    expect(printed(sum({ magnitude: 1, meridian: 180 }, backSurface('typical')).magnitude)).toBe(1.27);
  });
});

// The model was chosen on these papers, so agreement says that nothing was mistyped, no more. The bounds are
// ours: 0.10 D is half of the smallest scatter that these series report (0.21 D), and 15 % is far less than the step from
// one arc to a pair (79 %).
describe('consistent with, not validation', () => {
  test.each(clinicalFigures(/^induced-/))('%s: mean induced magnitude', (_, entry) => {
    expect(Math.abs(compute(entry) - target(entry))).toBeLessThan(0.1);
  });

  test.each(clinicalFigures(/^flattening-/))('%s, 2.4 mm by blade: mean flattening', (_, entry) => {
    expect(Math.abs(compute(entry) - target(entry))).toBeLessThan(0.1);
  });

  // Net of 0.25 D for the temporal entry, which works against the arcs in these eyes.
  test.each(clinicalFigures(/^arcs-/))('%s of 6 mm at 69 years, with the rule', (_, entry) => {
    expect(Math.abs(compute(entry) - target(entry)) / target(entry)).toBeLessThan(0.15);
  });

  test('every figure by which the model was set is there to be compared', () => {
    expect(['induced', 'flattening', 'arcs'].map((kind) => clinicalFigures(new RegExp(`^${kind}-`)).length)).toEqual([3, 2, 2]);
  });
});
