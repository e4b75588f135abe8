/** Single steps of the sums on which a plan stands, by formulae that are written down here. */
import { describe, expect, test } from 'vitest';
import { chanceWithin, completePlan, cyclotorsion, evaluatePlan, flattening, flatteningAndTorque, fromPowerVector, meridian, meridianLying, meridianSpread, siteLying, transpose, type EyePlan, type Spread } from '../../core/index.js';
import { eigenPairs, inverse } from '../../core/algebra.js';
import { finite } from '../../core/check.js';
import { checkedRisks } from '../../core/risks.js';
import { spreadOf } from './random.js';

const RAD = Math.PI / 180;

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));

describe('a lens alone turns by the error of its marks and against them', () => {
  // Doubled, the angle has the standard deviation s: E cos = exp(−s²/2), var cos = (1 − e^(−s²))²/2, var sin = (1 − e^(−2s²))/2.
  const s = 2 * RAD * Math.hypot(5, 3);
  const base = 0.15 ** 2 + 0.15 ** 2;

  test.each([1, 2.5, 6])('%d D', (lensCylinder) => {
    const { spread } = evaluatePlan({ flatK: 43, steepK: 43, lensCylinder, lensMeridian: 90 });
    expect(spread.mean.x).toBeCloseTo(lensCylinder * Math.exp((-s * s) / 2), 12);
    expect(spread.mean.y).toBeCloseTo(0, 12);
    expect(spread.covariance[0][0]).toBeCloseTo(base + (lensCylinder ** 2 * (1 - Math.exp(-s * s)) ** 2) / 2, 12);
    expect(spread.covariance[1][1]).toBeCloseTo(base + (lensCylinder ** 2 * (1 - Math.exp(-2 * s * s))) / 2, 12);
    expect(spread.covariance[0][1]).toBeCloseTo(0, 12);
  });
});

describe('a spread along a line', () => {
  // Φ(1) − Φ(0), Φ(2) − Φ(1) of the tables of the normal distribution.
  const [INNER, OUTER] = [0.3413447460685429, 0.1359051219832779];
  const line = (along: number, across: number, degrees: number, sd: number): Spread => {
    const [c, s] = [Math.cos(degrees * RAD), Math.sin(degrees * RAD)];
    return { mean: { x: along * c - across * s, y: along * s + across * c }, covariance: [[sd * sd * c * c, sd * sd * c * s], [sd * sd * c * s, sd * sd * s * s]] };
  };

  // At 0.4 D from the centre a disc of 0.5 D is 0.6 D wide.
  test.each([0, 90, 180])('lying at %d° in the doubled angle', (degrees) => {
    for (const sign of [1, -1]) {
      expect(chanceWithin(line(0.3 * sign, 0.4, degrees, 0.6), 0.5)).toBeCloseTo(INNER, 12);
      expect(chanceWithin(line(0.3 * sign, -0.4, degrees, 0.3), 0.5)).toBeCloseTo(INNER + OUTER, 12);
      expect(chanceWithin(line(0.9 * sign, 0.4, degrees, 0.6), 0.5)).toBeCloseTo(OUTER, 12);
      expect(chanceWithin(line(0, 0.4 * sign, degrees, 0.3), 0.5)).toBeCloseTo(2 * INNER, 12);
      expect(chanceWithin(line(0, 0.51 * sign, degrees, 0.3), 0.5)).toBe(0);
    }
  });

  test('of no length is a point, inside, outside, and on the rim', () => {
    const at = (x: number, y: number): number => chanceWithin({ mean: { x, y }, covariance: [[0, 0], [0, 0]] }, 0.5);
    expect([at(0.3, 0.39), at(-0.3, 0.39), at(0.3, 0.41), at(-0.3, -0.41), at(0.5, 0), at(0, 0.6)]).toEqual([1, 1, 0, 0, 1, 0]);
    // What is as large as the limit is within it, wherever on the rim it lies.
    expect([at(-0.5, 0), at(0, 0.5), at(0, -0.5), at(0, 0.5 + 1e-12)]).toEqual([1, 1, 1, 0]);
  });

  test('a limit of 0 holds nothing, even of a point at 0', () => expect(chanceWithin({ mean: { x: 0, y: 0 }, covariance: [[0, 0], [0, 0]] }, 0)).toBe(0));
});

describe('the sector of the remaining steep meridian', () => {
  // Round, the mean 0.5 standard deviations away: f ∝ 1 + k·√(2π)·Φ(k)·e^(k²/2), k = 0.5·cos θ (Mardia & Jupp, section 3.5.6, from memory).
  const fine = ((): number[] => {
    const phi = (z: number): number => 0.5 + z * (1 / Math.sqrt(2 * Math.PI)) * Array.from({ length: 30 }, (_, n) => (-z * z / 2) ** n / (factorial(n) * (2 * n + 1))).reduce((a, b) => a + b);
    const density = (degrees: number): number => {
      const k = 0.5 * Math.cos(degrees * RAD);
      return 1 + k * Math.sqrt(2 * Math.PI) * phi(k) * Math.exp((k * k) / 2);
    };
    return Array.from({ length: 3600 }, (_, i) => density((i + 0.5) / 20));
  })();

  test.each([0.05, 0.3, 0.5, 0.8, 0.99])('is that of the projected normal, summed in twenty steps a degree: %d', (share) => {
    const all = fine.reduce((a, b) => a + b);
    let [held, reach] = [0, 0];
    while (held < share * all) held += fine[reach++]!;
    for (const [mean, along] of [[{ x: 0.15, y: 0 }, 180], [{ x: 0, y: 0.15 }, 45], [{ x: -0.15, y: 0 }, 90]] as const) {
      const { meridian: centre, halfWidth } = meridianSpread(spreadOf(mean, 0.3, 0.3, 0), share);
      expect(centre).toBeCloseTo(along, 9);
      // Half of a step on the eye is 0.0125°.
      expect(Math.abs(halfWidth - (reach - 0.5) / 40)).toBeLessThan(0.015);
    }
  });

  test('is around the mean for all eyes too', () => {
    for (const mean of [{ x: 0.4, y: 0.7 }, { x: -0.2, y: -0.9 }, { x: 1, y: 0.1 }, { x: 0, y: 0.35 }]) {
      const expected = meridian(Math.atan2(mean.y, mean.x) / RAD / 2);
      for (let i = 0; i < 40; i += 1) expect(meridianSpread(spreadOf(mean, 0.2 + i / 100, 0.2, 7 * i), 1).meridian).toBeCloseTo(expected, 9);
    }
  });
});

test('nothing is never −0, which would be printed as −0.00', () => {
  expect(flatteningAndTorque({ magnitude: 0, meridian: 180 }, 180).flattening).toBe(0);
  expect(flatteningAndTorque({ magnitude: 1, meridian: 45 }, 180).flattening).toBe(0);
  expect(flattening(0, 90)).toEqual({ x: 0, y: 0 });
  expect(flattening(0, 180)).toEqual({ x: 0, y: 0 });
  expect(flattening(1, 45).x).toBe(0);
  expect(flattening(1, 90).y).toBe(0);
  expect(fromPowerVector({ m: 1, j0: 0, j45: 0 })).toEqual({ sphere: 1, cylinder: 0, axis: 180 });
  expect(transpose({ sphere: 1, cylinder: 0, axis: 90 }).cylinder).toBe(0);
  expect(siteLying(0, { turn: -0.04 })).toBe(0);
  expect(cyclotorsion({ seated: 90, lying: 89.98 }, 'right').turn).toBe(0);
  const complete = completePlan({ incisionSite: 90, incisionFlattening: -0, arcSite: -0, arcCount: 1, arcFlattening: -0, lensCylinder: -0 });
  expect([complete.incisionFlattening, complete.arcSite, complete.arcFlattening, complete.lensCylinder]).toEqual([0, 0, 0, 0]);
});

test('the axis of a sphere is 180 in either form, whatever rounding has left of a cylinder', () => {
  for (const sign of ['minus', 'plus'] as const) {
    expect(fromPowerVector({ m: 2, j0: 0, j45: 0 }, sign).axis).toBe(180);
    expect(fromPowerVector({ m: 2, j0: -1e-16, j45: 1e-16 }, sign).axis).toBe(180);
    expect(fromPowerVector({ m: 2, j0: 0, j45: 1e-6 }, sign).axis).toBeCloseTo(sign === 'minus' ? 45 : 135, 9);
  }
});

test('eigenvalues of what is large but hardly differs, and of what is nothing', () => {
  for (const [a, b] of [[1e6, 1e-3], [3, 2], [-5, 1e-8], [0, 0]] as const) {
    // Half way between the axes: [[a, b], [b, a]] has a − b along (1, −1) and a + b along (1, 1).
    const pairs = eigenPairs([[a, b], [b, a]]);
    expect(pairs[0]!.value - a).toBeCloseTo(-b, 9);
    expect(pairs[1]!.value - a).toBeCloseTo(b, 9);
    if (b > 0) expect(pairs[1]!.direction[0]! / pairs[1]!.direction[1]!).toBeCloseTo(1, 9);
  }
});

test('eigenvectors of what differs by a ten-thousandth of a billionth of its size are still those of the difference', () => {
  // The sum of a sphere and [[0, b], [b, 0]], which lies half way between the axes whatever the sphere.
  for (const size of [0, 1, 40, -40, 1e6]) {
    const b = 1e-13 * (Math.abs(size) || 1);
    const [weak, strong] = eigenPairs([[size, b], [b, size]]).map(({ direction }) => direction[0]! / direction[1]!);
    expect(weak).toBeCloseTo(-1, 9);
    expect(strong).toBeCloseTo(1, 9);
  }
});

test('the inverse of a matrix in which some of the numbers would be infinite is refused', () => {
  expect(() => inverse([[1, 2], [2, 4]])).toThrow('matrix: [[1,2],[2,4]] is refused; allowed is a square matrix whose determinant is not 0.');
  expect(() => inverse([[1e-320, 0], [0, 1]])).toThrow(RangeError);
});

describe('risks as text', () => {
  test.each<[unknown, string]>([[undefined, ''], [null, ''], ['', ''], ['  ', ''], ['ectasia   collagen', 'collagen ectasia'], ['\tdry-eye\n', 'dry-eye']])('%j is %j', (text, kept) => expect(checkedRisks(text)).toBe(kept));
  test('an unknown one is refused with those that are known', () => expect(() => checkedRisks('dry-eye glaucoma')).toThrow(/“dry-eye glaucoma” is refused; allowed is .*collagen, dry-eye, radial-cuts, ectasia/));
});

test('arcs without a place are refused, one and a pair each in its own words', () => {
  const told = (plan: EyePlan): string => {
    try {
      evaluatePlan(plan);
      return 'accepted';
    } catch (error) {
      return (error as Error).message;
    }
  };
  expect(told({ arcCount: 1 })).toBe('arcSite: none is refused; allowed is 0 to 360 °, for an arc is planned.');
  expect(told({ arcCount: 2 })).toBe('arcSite: none is refused; allowed is 0 to 360 °, for arcs are planned.');
  expect(told({ lensCylinder: 2.25 })).toBe('lensMeridian: none is refused; allowed is 0 to 180 °, for a lens of 2.25 D is planned.');
});

describe('the chance', () => {
  test.each([1, 3, 6])('of a lens of %d D alone is that of its turning marks, not of a normal with the same spread', (size) => {
    const plan: EyePlan = { flatK: 40, steepK: 40 + size, steepMeridian: 90, lensCylinder: size, lensMeridian: 90 };
    const variance = 2 * 0.15 ** 2;
    const sd = 2 * RAD * Math.hypot(5, 3);
    // Round about each place to which the lens turns: ∫ φ(z)·P(|normal about 2·size·sin(sd·z/2)| ≤ 0.5) dz.
    let [chance, whole] = [0, 0];
    for (let z = -6; z <= 6; z += 0.05) {
      const off = 2 * size * Math.sin((sd * z) / 2);
      chance += Math.exp((-z * z) / 2) * round(off, Math.sqrt(variance), 0.5);
      whole += Math.exp((-z * z) / 2);
    }
    expect(evaluatePlan(plan).chanceWithin(0.5)).toBeCloseTo(chance / whole, 5);
  });

  /** Of a round normal about a point `off` from the centre of a disc, in rings: the density of Rice, its Bessel function as a mean of cosines. */
  function round(off: number, sd: number, radius: number): number {
    const steps = 600;
    let sum = 0;
    for (let ring = 0.5; ring < steps; ring += 1) {
      const r = (radius * ring) / steps;
      for (let i = 0; i < 24; i += 1) {
        const square = r * r + off * off - 2 * r * off * Math.cos((2 * Math.PI * i) / 24);
        sum += (r * Math.exp(-square / (2 * sd * sd))) / 24;
      }
    }
    return (sum * radius) / steps / (sd * sd);
  }

  test('of a slanting spread away from the centre is its density, summed over the disc', () => {
    const [long, short] = [0.5, 0.2];
    for (const [x, y, degrees] of [[0.3, 0.2, 30], [-0.3, 0.25, 30], [0.1, -0.4, 100], [0.35, 0.35, 135]] as const) {
      const [c, s] = [Math.cos(degrees * RAD), Math.sin(degrees * RAD)];
      let held = 0;
      for (let ring = 0.5; ring < 100; ring += 1) {
        for (let i = 0; i < 90; i += 1) {
          const [r, t] = [(0.5 * ring) / 100, (2 * Math.PI * i) / 90];
          const [dx, dy] = [r * Math.cos(t) - x, r * Math.sin(t) - y];
          held += r * Math.exp(-(((c * dx + s * dy) / long) ** 2 + ((c * dy - s * dx) / short) ** 2) / 2);
        }
      }
      expect(chanceWithin(spreadOf({ x, y }, long, short, degrees), 0.5)).toBeCloseTo((held * 0.5) / 100 / 90 / (long * short), 4);
    }
  });

  test.each([0, 22.5, 45, 90])('of arcs at %d° that do nothing but scatter is that of arcs that do next to nothing', (arcSite) => {
    const of = (arcFlattening: number): number => evaluatePlan({
      flatK: 43, steepK: 43.6, steepMeridian: 70, arcSite, arcCount: 1, arcFlattening, ownFigures: { arcs: { share: 1, sdAlong: 0.9, sdAcross: 0.05 } },
    }).chanceWithin(0.5);
    expect(Math.abs(of(0) - of(1e-7))).toBeLessThan(1e-6);
  });
});

test('arcs, incision and lens that are not planned are no steps, whatever else is said of them', () => {
  const sources = (plan: EyePlan): string[] => evaluatePlan({ flatK: 43, steepK: 44, ...plan }).steps.map(({ source }) => source);
  expect(sources({ arcCount: 0, arcSite: 90, arcLength: 60, arcFlattening: 1, arcDepth: 500 })).toEqual([]);
  expect(sources({ incisionWidth: 3, incisionFlattening: 0.5 })).toEqual([]);
  expect(sources({ lensMeridian: 90 })).toEqual([]);
  expect(sources({ lensCylinder: 0, lensMeridian: 90 })).toEqual([]);
  expect(sources({ arcCount: 1, arcSite: 90, incisionSite: 180, lensCylinder: 1, lensMeridian: 90, backSurface: 'typical' })).toEqual(['backSurface', 'incision', 'arcs', 'lens']);
});

test('own figures that are no object are refused, each half by its name', () => {
  const given = (ownFigures: unknown) => () => evaluatePlan({ ownFigures } as EyePlan);
  expect(given({ incision: 3 })).toThrow('ownFigures.incision: 3 is refused; allowed is an object with the figures, or nothing.');
  expect(given({ arcs: [] })).toThrow('ownFigures.arcs: object is refused; allowed is an object with the figures, or nothing.');
  expect(given({ incision: null, arcs: undefined })).not.toThrow();
});

test('a refusal has its parts for other languages', () => {
  let thrown: unknown;
  try {
    evaluatePlan({ flatK: 7.8 });
  } catch (error) {
    thrown = error;
  }
  expect(thrown).toMatchObject({ field: 'flatK', value: 7.8, limits: '28 to 75 D', reason: { id: 'range', values: { min: 28, max: 75, unit: 'D' } } });
});

test('a turn of the eye that is no number is refused', () => {
  expect(() => siteLying(90, { turn: NaN })).toThrow('turn: NaN is refused; allowed is a finite number of °.');
  expect(() => meridianLying(90, { turn: Infinity })).toThrow('turn: Infinity is refused; allowed is a finite number of °.');
  expect(() => finite('q', NaN, '')).toThrow('q: NaN is refused; allowed is a finite number.');
});
