import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { RefusedValue, dioptresFromRadius, evaluatePlan, sum, type EyePlan } from '../../core/index.js';
import { SHAPE_CONSTANTS, cornealPower, cornealSurface, localFlatteningAt, reachOf, shapeAfter, shapeBefore, shapeFactors, type CornealShape, type LocalFlattening } from '../../core/shape.js';
import { eyeReferences } from '../../core/eye.js';
import { references } from '../../core/references.js';
import { depthOf } from './eye-rays.js';
import { RUNS, anyPlan, between } from './plans.js';
import { conicoid, cut, firstDerivative, profile, round, secondDerivative, shape } from './shape-support.js';
import { refusalOf } from './refusal.js';

const worst: Record<string, number> = {};
function near(what: string, got: number, expected: number, allowed = 1e-9): void {
  const error = Math.abs(got - expected);
  worst[what] = Math.max(worst[what] ?? 0, error);
  expect(error, `${what}: ${got} against ${expected}`).toBeLessThanOrEqual(allowed);
}

afterAll(() => {
  for (const [what, error] of Object.entries(worst)) console.log(`${what.padEnd(52)} worst ${error.toExponential(1)}`);
});

const direction = between(0, 360);
/** Where differences can be formed on both sides. */
const inside = (given: CornealShape, share: number): number => Math.min(5.8, reachOf(given) - 0.3) * share;

describe('a toric conicoid', () => {
  test('has the sagitta of the surface through which the real rays go', () =>
    fc.assert(fc.property(conicoid, between(0, 1), direction, (given, share, along) => {
      const distance = inside(given, share);
      const [x, y] = [distance * Math.cos((along * Math.PI) / 180), distance * Math.sin((along * Math.PI) / 180)];
      const built = { vertex: 0, indexBefore: 1, indexAfter: 1, flatConic: 0, steepConic: 0, ...given };
      const { z, zx, zy } = depthOf(built as typeof built & { flatConic: number; steepConic: number }, x, y);
      const ours = cornealSurface(given)({ distance, direction: along });
      near('sagitta, mm', ours.sagitta, z, 1e-12);
      if (distance > 1e-6) near('slope', ours.slope, (zx * x + zy * y) / distance, 1e-11);
    }), { ...RUNS, numRuns: 1000 }));

  test('on a sphere has one power everywhere', () =>
    fc.assert(fc.property(between(5, 11), between(0, 0.9), direction, (radius, share, along) => {
      const { axial, tangential, sagitta } = cornealSurface(round(radius))({ distance: share * radius, direction: along });
      near('powers of a sphere, D', axial, dioptresFromRadius(radius), 1e-9);
      near('powers of a sphere, D', tangential, dioptresFromRadius(radius), 1e-9);
      near('sagitta, mm', sagitta, radius - Math.sqrt(radius ** 2 - (share * radius) ** 2), 1e-12);
    }), RUNS));

  test('of revolution has the radii of the conic: √(R² + (1 − p)·ρ²), and its cube over R²', () =>
    fc.assert(fc.property(between(6.5, 9), between(-1.5, 0.3), between(0, 5), (radius, q, distance) => {
      const axialRadius = Math.sqrt(radius ** 2 - q * distance ** 2);
      const { axial, tangential } = cornealSurface(round(radius, q))({ distance, direction: 30 });
      near('powers of a conic, D', axial, 337.5 / axialRadius, 1e-9);
      near('powers of a conic, D', tangential, (337.5 * radius ** 2) / axialRadius ** 3, 1e-9);
    }), RUNS));

  test('in its principal meridians is the conic of that meridian, and between them Euler’s theorem holds at the apex', () =>
    fc.assert(fc.property(conicoid, between(0, 1), direction, (given, share, along) => {
      const at = cornealSurface(given);
      const distance = inside(given, share);
      for (const [turn, radius, conic] of [[0, given.steepRadius, given.steepConic!], [90, given.flatRadius, given.flatConic!]] as const) {
        const principal = at({ distance, direction: given.steepMeridian + turn });
        const alone = cornealSurface(round(radius, conic))({ distance, direction: 0 });
        near('principal meridians, D', principal.axial, alone.axial, 1e-8);
        near('principal meridians, D', principal.tangential, alone.tangential, 1e-7);
      }
      const cosine = Math.cos(((along - given.steepMeridian) * Math.PI) / 180) ** 2;
      near('Euler at the apex, D', at({ distance: 0, direction: along }).axial, 337.5 * (cosine / given.steepRadius + (1 - cosine) / given.flatRadius), 1e-9);
    }), RUNS));

  test('turned turns', () =>
    fc.assert(fc.property(conicoid, between(0, 180), direction, between(0, 1), (given, degrees, along, share) => {
      const distance = inside(given, share);
      const turned = { ...given, steepMeridian: (given.steepMeridian + degrees) % 180 };
      const [here, there] = [cornealSurface(given)({ distance, direction: along }), cornealSurface(turned)({ distance, direction: along + degrees })];
      near('turned, D', there.axial, here.axial, 1e-8);
      near('turned, D', there.tangential, here.tangential, 1e-6);
    }), RUNS));
});

describe('curvature of any shape, cuts included, by differences of its sagitta', () => {
  test('axial and tangential power', () =>
    fc.assert(fc.property(shape, between(0.01, 1), direction, (given, share, along) => {
      const at = cornealSurface(given);
      const distance = inside(given, share);
      const f = profile(at, along);
      // Cuts are smooth to the third derivative only, so that differences reach no further than h² there.
      const smooth = (given.local ?? []).every((one) => Math.abs(Math.abs(distance - one.distance) - SHAPE_CONSTANTS.localReach.value) > 0.03);
      fc.pre(smooth);
      const h = 2e-3;
      const [z1, z2] = [firstDerivative(f, distance, h), secondDerivative(f, distance, h)];
      near('axial power by differences, D', at({ distance, direction: along }).axial, (337.5 * z1) / (distance * Math.hypot(1, z1)), 1e-7);
      near('tangential power by differences, D', at({ distance, direction: along }).tangential, (337.5 * z2) / Math.hypot(1, z1) ** 3, 2e-6);
    }), { ...RUNS, numRuns: 1000 }));

  test('axial power is the mean of the tangential power from the apex', () =>
    fc.assert(fc.property(shape, between(0.05, 1), direction, (given, share, along) => {
      const at = cornealSurface(given);
      const distance = inside(given, share);
      const steps = 1200;
      let total = 0;
      for (let i = 0; i <= steps; i += 1) total += at({ distance: (distance * i) / steps, direction: along }).tangential * (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2);
      near('axial against the mean of tangential, D', at({ distance, direction: along }).axial, total / (3 * steps), 1e-6);
    }), { ...RUNS, numRuns: 200 }));
});

test('a power asked for alone is that of the surface, and there is none where that has none', () => {
  const powers = ['axial', 'tangential'] as const;
  const asked = <Value>(ask: () => Value): Value | string => {
    try {
      return ask();
    } catch (error) {
      return (error as Error).message;
    }
  };
  let refused = 0;
  fc.assert(fc.property(shape, between(0, 11), direction, fc.constantFrom(...powers), (given, distance, along, power) => {
    const alone = asked(() => cornealPower(given, power)({ distance, direction: along }));
    const whole = asked(() => cornealSurface(given)({ distance, direction: along })[power]);
    if (typeof whole === 'string') expect(alone).toBe(whole);
    else near('a power alone, D', alone as number, whole, 1e-10);
    if (typeof whole === 'string') refused += 1;
  }), RUNS);
  expect(refused).toBeGreaterThan(0);
});

describe('local flattening near a cut', () => {
  test('is there, and nowhere else', () =>
    fc.assert(fc.property(cut, (given) => {
      const there = (distance: number, along: number): number => localFlatteningAt(given, { distance, direction: along });
      near('local flattening, D', there(given.distance, given.site), given.amount, 1e-12);
      near('local flattening, D', there(given.distance, given.site + given.length / 2), given.amount, 1e-12);
      for (const [distance, along] of [[0, given.site], [given.distance, given.site + 180], [given.distance - 1.5, given.site], [given.distance + 1.5, given.site]] as const) {
        expect(Math.abs(there(distance, along))).toBeLessThan(1e-12);
      }
      // The taper of 25°: half of it half way, 53/512 gone after a quarter, nothing left at its end.
      const beyond = (share: number): number => there(given.distance, given.site + given.length / 2 + 25 * share);
      near('local flattening, D', beyond(0.5), given.amount / 2, 1e-9);
      near('local flattening, D', beyond(0.25), (given.amount * (512 - 53)) / 512, 1e-9);
      near('local flattening, D', beyond(1), 0, 1e-9);
    }), RUNS));

  test('that steepens instead brings the end of the surface nearer, and the reach follows exactly', () => {
    const local: LocalFlattening[] = [{ site: 0, length: 60, distance: 4, amount: -15, basis: 'assumed' }];
    // Beyond the cut of a sphere the sine is ρ/R plus all that the cut adds: 15/337.5 · 1.5 mm · 32/35.
    near('reach, mm', reachOf({ ...round(7.8), local }), 7.8 * (1 - 1e-5 - (15 / 337.5) * 1.5 * (32 / 35)), 1e-9);
    for (const base of [round(7.8), round(6, -0.3), round(7.8, 0.3)]) {
      const { slope } = cornealSurface({ ...base, local })({ distance: reachOf({ ...base, local }), direction: 0 });
      near('sine at the reach', slope / Math.hypot(1, slope), 1 - 1e-5, 1e-9);
      near('reach, mm', reachOf(base), base.flatRadius / Math.sqrt(1 + base.flatConic!), 1e-3);
    }
  });

  test('is 0 without a sign where there is none, for what steepens too', () => {
    for (const amount of [1, -1]) expect(localFlatteningAt({ site: 0, length: 20, distance: 5, amount, basis: 'assumed' }, { distance: 1, direction: 0 })).toBe(0);
  });

  test('adds up in whatever order the cuts are given', () => {
    const base = { flatRadius: 7.8, steepRadius: 7.6, steepMeridian: 90 };
    const cuts = [5.5, 2.2, 3.7].map((distance, index): LocalFlattening => ({ site: 100, length: 60, distance, amount: 2 + index, basis: 'assumed' }));
    const point = { distance: 5.8, direction: 95 };
    const told = [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]].map((order) => cornealSurface({ ...base, local: order.map((index) => cuts[index]!) })(point));
    for (const { sagitta, axial, tangential } of told) {
      near('order of cuts: sagitta, mm', sagitta, told[0]!.sagitta, 1e-10);
      near('order of cuts: power, D', axial, told[0]!.axial, 1e-10);
      near('order of cuts: power, D', tangential, told[0]!.tangential, 1e-10);
    }
  });

  test('is what the tangential power lacks, and its mean from the apex what the axial power lacks', () => {
    const base: CornealShape = { flatRadius: 7.8, steepRadius: 7.6, steepMeridian: 90 };
    const local: LocalFlattening[] = [{ site: 180, length: 20, distance: 5, amount: 1, basis: 'assumed' }];
    const point = { distance: 5, direction: 180 };
    const [before, after] = [cornealSurface(base)(point), cornealSurface({ ...base, local })(point)];
    near('lack of tangential power, D', before.tangential - after.tangential, 1, 1e-12);
    // Half the area of (1 − t²)³, 16/35, over a reach of 1.5 mm and a distance of 5 mm.
    near('lack of axial power, D', before.axial - after.axial, (16 / 35) * (1.5 / 5), 1e-12);
    expect(after.sagitta).toBeLessThan(before.sagitta);
    const across = { distance: 5, direction: 0 };
    expect(cornealSurface({ ...base, local })(across)).toEqual(cornealSurface(base)(across));
  });
});

test('the three ways to write an asphericity are one', () => {
  for (const given of [{ q: -0.25 }, { p: 0.75 }, { e: 0.25 }]) expect(shapeFactors(given)).toEqual({ q: -0.25, p: 0.75, e: 0.25 });
});

describe('the cornea before and after a plan', () => {
  const FLAT: EyePlan = { flatK: 42, steepK: 44, steepMeridian: 90 };

  test('has the readings at its apex before', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      const before = cornealSurface(shapeBefore(plan));
      const meridian = plan.steepMeridian!;
      near('readings, D', before({ distance: 0, direction: meridian }).axial, plan.steepK!, 1e-9);
      near('readings, D', before({ distance: 0, direction: meridian + 90 }).axial, plan.flatK!, 1e-9);
    }), RUNS));

  test('has at its apex what front and cuts make together after', () =>
    fc.assert(fc.property(anyPlan, (plan) => {
      const outcome = evaluatePlan(plan);
      const cuts = outcome.steps.filter(({ source }) => source === 'incision' || source === 'arcs');
      let made: CornealShape;
      try {
        made = shapeAfter(plan, outcome);
      } catch (error) {
        expect(error).toBeInstanceOf(RefusedValue);
        return;
      }
      const expected = sum(outcome.before, ...cuts.map(({ vector }) => ({ magnitude: Math.hypot(vector.x, vector.y), meridian: (Math.atan2(vector.y, vector.x) * 90) / Math.PI })));
      near('after, D', dioptresFromRadius(made.steepRadius) - dioptresFromRadius(made.flatRadius), expected.magnitude, 1e-9);
      near('after, D', (dioptresFromRadius(made.steepRadius) + dioptresFromRadius(made.flatRadius)) / 2, (plan.flatK! + plan.steepK!) / 2 + outcome.meanPowerShift, 1e-9);
      expect(made.local).toHaveLength(cuts.reduce((count, { source }) => count + (source === 'incision' ? 1 : plan.arcCount!), 0));
    }), RUNS));

  test('is flatter at the incision than before, and the same where nothing is done', () => {
    const plan: EyePlan = { ...FLAT, incisionSite: 90, incisionWidth: 3 };
    const [before, after] = [cornealSurface(shapeBefore(plan)), cornealSurface(shapeAfter(plan, evaluatePlan(plan)))];
    const at = { distance: 5, direction: 90 };
    expect(after(at).tangential).toBeLessThan(before(at).tangential);
    const nothing = shapeAfter(FLAT, evaluatePlan(FLAT));
    expect(nothing.local).toEqual([]);
    expect({ ...nothing, local: undefined }).toEqual({ ...shapeBefore(FLAT), local: undefined });
  });

  test('marks each cut as assumed, at its own place, with its share of the effect', () => {
    const plan: EyePlan = { ...FLAT, arcSite: 80, arcCount: 2, arcLength: 40, arcZone: 10, incisionSite: 180, incisionFlattening: -0.2 };
    const outcome = evaluatePlan(plan);
    const arcs = outcome.steps.find(({ source }) => source === 'arcs')!;
    const { local } = shapeAfter(plan, outcome);
    expect(local!.map(({ basis }) => basis)).toEqual(['assumed', 'assumed', 'assumed']);
    expect(local!.map(({ site }) => site)).toEqual([180, 80, 260]);
    // An entry that steepens is shown steepening.
    expect(local![0]!.amount).toBeCloseTo(-0.2 * 2.5, 12);
    expect(local![1]!.amount).toBeCloseTo((2.5 * Math.hypot(arcs.vector.x, arcs.vector.y)) / 2, 12);
    expect(local![1]).toMatchObject({ length: 40, distance: 5 });
  });

  test('shifts with the mean power', () => {
    const { before } = evaluatePlan(FLAT);
    const shifted = shapeAfter(FLAT, { before, steps: [], meanPowerShift: 0.3 });
    near('after, D', dioptresFromRadius(shifted.steepRadius), 44.3);
    near('after, D', dioptresFromRadius(shifted.flatRadius), 42.3);
  });

  test('leaves back surface and lens out', () => {
    const plan: EyePlan = { ...FLAT, backSurface: 'typical', lensCylinder: 2, lensMeridian: 90 };
    expect(shapeAfter(plan, evaluatePlan(plan))).toEqual({ ...shapeBefore(FLAT), local: [] });
  });

  test('constants have sources', () => {
    for (const { source, note } of Object.values(SHAPE_CONSTANTS)) {
      expect(note).not.toBe('');
      expect(source.length).toBeGreaterThan(0);
      for (const id of source) expect([...Object.keys(references), ...Object.keys(eyeReferences)]).toContain(id);
    }
  });
});

describe('what is impossible is refused, with field, value and limits', () => {
  const base = round(7.8);
  const point = { distance: 1, direction: 0 };
  const one: LocalFlattening = { site: 0, length: 20, distance: 5, amount: 1, basis: 'assumed' };
  test.each<[string, RegExp, () => unknown]>([
    ['flatRadius', /43 .*3 to 20 mm/, () => cornealSurface({ ...base, flatRadius: 43 })],
    ['steepRadius', /7\.9 .*3 to 7\.8 mm/, () => cornealSurface({ ...base, steepRadius: 7.9 })],
    ['steepRadius', /NaN/, () => cornealSurface({ ...base, steepRadius: NaN })],
    ['steepMeridian', /-1 .*0 to 180 °/, () => cornealSurface({ ...base, steepMeridian: -1 })],
    ['flatConic', /1\.5 .*-2 to 1/, () => cornealSurface({ ...base, flatConic: 1.5 })],
    ['distance', /NaN .*0 to 10 mm/, () => cornealSurface(base)({ ...point, distance: NaN })],
    ['distance', /8 .*0 to 7\.79 mm/, () => cornealSurface(base)({ ...point, distance: 8 })],
    // Still on the sphere, but where it runs along the light its slope is nothing to go by.
    ['distance', /7\.799\d* .*0 to 7\.79 mm/, () => cornealSurface(base)({ ...point, distance: 7.8 * Math.sqrt(1 - 1e-6) })],
    ['distance', /7\.799\d* .*0 to 7\.79 mm/, () => cornealPower(base, 'axial')({ ...point, distance: 7.8 * Math.sqrt(1 - 1e-6) })],
    ['direction', /NaN is refused; allowed is a finite number of °\.$/, () => cornealPower(base, 'tangential')({ ...point, direction: NaN })],
    ['direction', /Infinity/, () => cornealSurface(base)({ ...point, direction: Infinity })],
    ['local.site', /361 .*0 to 360 °/, () => cornealSurface({ ...base, local: [{ ...one, site: 361 }] })],
    ['local.amount', /99 .*-15 to 15 D/, () => cornealSurface({ ...base, local: [{ ...one, amount: 99 }] })],
    ['local.distance', /1 .*2 to 7 mm/, () => localFlatteningAt({ ...one, distance: 1 }, point)],
    ['shape factor', /none.*just one/, () => shapeFactors({})],
    ['shape factor', /q, p/, () => shapeFactors({ q: 0, p: 1 })],
    ['q', /-3 .*-2 to 1/, () => shapeFactors({ e: 3 })],
    ['flatK', /7\.8/, () => shapeBefore({ flatK: 7.8 })],
    // 337.5/122 mm.
    ['radius', /2\.766\d* .*3 to 20 mm/, () => shapeAfter({ flatK: 42, steepK: 45 }, { before: { magnitude: 3, meridian: 90 }, steps: [], meanPowerShift: 80 })],
  ])('%s %s', (field, names, call) => {
    const { field: named, message } = refusalOf(call);
    expect(named).toBe(field);
    expect(message).toMatch(names);
  });

  test('up to its reach every point has finite figures', () =>
    fc.assert(fc.property(shape, between(0, 1), direction, (given, share, along) => {
      const told = cornealSurface(given)({ distance: reachOf(given) * share, direction: along });
      expect(Object.values(told).every(Number.isFinite), JSON.stringify(told)).toBe(true);
    }), RUNS));

  test.each(['axial', 'tangential'] as const)('at its very reach a sphere still has its %s power', (power) => {
    near('power at the reach, D', cornealPower(base, power)({ distance: reachOf(base), direction: 20 }), dioptresFromRadius(7.8), 1e-6);
  });
});
