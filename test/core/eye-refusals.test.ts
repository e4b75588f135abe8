import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { eigenPairs, inverse } from '../../core/algebra.js';
import {
  atSpectacles, corneaPowers, crossSection, leastConfusion, lensToFit, lineFoci, pencilOf, pencilThrough, rayAt, residual, trace, traceToric, widthAlong,
  type EyeSystem, type Surface, type ToricSystem,
} from '../../core/eye.js';
import { RUNS } from './plans.js';
import { refusalOf } from './refusal.js';

const good: Surface = { radius: 7.8, indexAfter: 1.336, gapAfter: 4 };
const toric = { flatRadius: 7.8, steepRadius: 7.5, steepMeridian: 90, indexAfter: 1.336, gapAfter: 4 };
const lens = { lens: { sphere: 20, cylinder: -2, axis: 10 }, gapAfter: 0 };
const pencil = pencilOf({ vergence: { m: 50, j0: 1, j45: 0 }, pupil: 4 });
const side = { flatRadius: 7.8, steepRadius: 7.6, steepMeridian: 90 };
const withPart = (part: object): ToricSystem => ({ surfaces: [toric, part as Surface] });
const spherical = (part: object): EyeSystem => ({ surfaces: [good, part as Surface] });

/** Field, what its message must name besides, and the call. */
const REFUSED: [field: string, names: RegExp, call: () => unknown][] = [
  ['surfaces', /none/, () => trace({} as EyeSystem)],
  ['surfaces', /0 .*1 to 50/, () => trace({ surfaces: [] })],
  ['surfaces', /51/, () => trace({ surfaces: Array.from({ length: 51 }, () => good) })],
  ['surfaces[1]', /none/, () => trace({ surfaces: [good, null as unknown as Surface] })],
  ['indexBefore', /0\.9 .*1 to 2\.5/, () => trace({ surfaces: [good], indexBefore: 0.9 })],
  ['surfaces[1].radius', /NaN.*1 mm/, () => trace(spherical({ ...good, radius: NaN }))],
  ['surfaces[1].radius', /\b0 .*Infinity/, () => trace(spherical({ ...good, radius: 0 }))],
  ['surfaces[1].radius', /0\.5/, () => trace(spherical({ ...good, radius: -0.5 }))],
  ['surfaces[1].radius', /none/, () => trace(spherical({ ...good, radius: undefined }))],
  ['surfaces[1].indexAfter', /3 .*1 to 2\.5/, () => trace(spherical({ ...good, indexAfter: 3 }))],
  ['surfaces[0].gapAfter', /none.*0 to 1000 mm/, () => trace({ surfaces: [{ radius: 8, indexAfter: 1.3 }, good] })],
  ['surfaces[0].gapAfter', /-1/, () => trace({ surfaces: [{ ...good, gapAfter: -1 }, good] })],
  ['surfaces[1].gradient.radial', /NaN/, () => trace(spherical({ ...good, gradient: { axial: 0, axialSquare: 0, radial: NaN } }))],
  // Only at its very end does the index leave the limits.
  ['surfaces[0].gradient', /2\.50\d* .*1 to 2\.5/, () => trace({ surfaces: [{ radius: 8, indexAfter: 1.5, gapAfter: 64, gradient: { axial: 1 / 63.5, axialSquare: 0, radial: 0 } }, good] })],
  ['surfaces[1].gradient', /1 to 2\.5/, () => trace(spherical({ ...good, gradient: { axial: -0.4, axialSquare: 0, radial: 0 } }))],
  ['surfaces[1]', /traceToric/, () => trace(spherical({ ...toric, indexAfter: 1.42 }))],
  ['surfaces[1]', /traceToric/, () => trace(spherical(lens))],
  ['power', /^power: -?0 .*foci/, () => trace({ surfaces: [{ radius: Infinity, indexAfter: 1.5, gapAfter: 3 }, { radius: Infinity, indexAfter: 1 }] })],
  ['surfaces[1].flatRadius', /none/, () => traceToric(withPart({ ...toric, flatRadius: undefined }))],
  ['surfaces[1].steepRadius', /7\.9.*7\.8 mm/, () => traceToric(withPart({ ...toric, steepRadius: 7.9 }))],
  ['surfaces[1].steepRadius', /sign/, () => traceToric(withPart({ ...toric, steepRadius: -7.5 }))],
  ['surfaces[1].steepMeridian', /181 .*0 to 180/, () => traceToric(withPart({ ...toric, steepMeridian: 181 }))],
  ['surfaces[1].steepMeridian', /none/, () => traceToric(withPart({ ...toric, steepMeridian: undefined }))],
  ['surfaces[1].lens', /none/, () => traceToric(withPart({ lens: null }))],
  ['surfaces[1].lens.sphere', /999/, () => traceToric(withPart({ lens: { sphere: 999, cylinder: 0, axis: 1 } }))],
  ['surfaces[1].lens.axis', /-5 .*0 to 180/, () => traceToric(withPart({ lens: { sphere: 9, cylinder: 0, axis: -5 } }))],
  ['power', /every meridian/, () => traceToric({ surfaces: [{ lens: { sphere: 0, cylinder: 5, axis: 90 } }] })],
  // Half a billionth of a dioptre along one meridian: not singular, yet no power.
  ['power', /: (4\.9|5\.0)\d*e-10 .*every meridian/, () => traceToric({ surfaces: [{ lens: { sphere: 60, cylinder: -60 + 5e-10, axis: 180 } }] })],
  ['power', /every meridian/, () => traceToric({ surfaces: [{ lens: { sphere: 0, cylinder: 5, axis: 30 } }] })],
  ['backFocus', /last vertex/, () => traceToric({ surfaces: [{ lens: { sphere: 50, cylinder: -5, axis: 30 }, gapAfter: 20 }, { lens: { sphere: 10, cylinder: 0, axis: 0 } }] })],
  ['frontFocus', /first vertex/, () => traceToric({ surfaces: [{ lens: { sphere: 10, cylinder: 0, axis: 0 }, gapAfter: 20 }, { lens: { sphere: 50, cylinder: -5, axis: 30 } }] })],
  ['backFocus', /last vertex/, () => traceToric({ surfaces: [{ lens: { sphere: 50, cylinder: 0, axis: 0 }, gapAfter: 20 }, { lens: { sphere: 10, cylinder: 0, axis: 0 } }] })],
  ['pupil', /0 .*0\.1 to 100 mm/, () => pencilThrough(withPart(lens), { pupil: 0 })],
  ['stop', /2 .*0 to 1/, () => pencilThrough(withPart(lens), { pupil: 4, stop: 2 })],
  ['stop', /0\.5/, () => pencilThrough(withPart(lens), { pupil: 4, stop: 0.5 })],
  ['stop', /come together/, () => pencilThrough({ surfaces: [{ lens: { sphere: 50, cylinder: 0, axis: 0 }, gapAfter: 20 }, lens] }, { pupil: 4, stop: 1 })],
  ['vergence', /NaN/, () => pencilThrough(withPart(lens), { pupil: 4, vergence: NaN })],
  ['vergence.j45', /none/, () => pencilOf({ vergence: { m: 1, j0: 1 } as never, pupil: 4 })],
  ['index', /0 /, () => pencilOf({ vergence: { m: 1, j0: 1, j45: 0 }, pupil: 4, index: 0 })],
  ['z', /NaN/, () => crossSection(pencil, NaN)],
  ['z', /none/, () => rayAt(pencil, { x: 0, y: 0 }, undefined as never)],
  ['x', /NaN/, () => rayAt(pencil, { x: NaN, y: 0 }, 1)],
  ['direction', /Infinity/, () => widthAlong(pencil, 1, Infinity)],
  ['pencil', /“a line” .*width/, () => lineFoci({ from: 0, start: [0, 0, 0, 0], growth: [1, 0, 0, 1] })],
  ['axialLength', /9 .*10 to 50 mm/, () => residual({ surfaces: [good], axialLength: 9 })],
  ['axialLength', /none/, () => residual({ surfaces: [good] } as never)],
  ['axialLength', /12 .*15 mm/, () => residual({ surfaces: [{ ...good, gapAfter: 15 }, good], axialLength: 12 })],
  ['vertex', /31 .*0 to 30 mm/, () => residual({ surfaces: [good], axialLength: 24, vertex: 31 })],
  ['vertex', /20 .*below 10\.0 mm/, () => atSpectacles({ sphere: -100, cylinder: 0, axis: 180 }, 20)],
  ['sphere', /NaN/, () => atSpectacles({ sphere: NaN, cylinder: 0, axis: 180 })],
  ['axialLength', /15 .*20 mm/, () => lensToFit({ surfaces: [{ ...good, gapAfter: 20 }], axialLength: 15 })],
  ['surfaces', /in front of the lens/, () => lensToFit({ surfaces: [{ ...good, gapAfter: 40 }], axialLength: 45 })],
  // The focus of the one surface lies just where the lens would be.
  ['surfaces', /in front of the lens or in it/, () => lensToFit({ surfaces: [{ ...good, gapAfter: (1.336 * 7.8) / 0.336 }], axialLength: 45 })],
  ['thickness', /0 .*0\.1 to 2 mm/, () => corneaPowers({ front: side, back: side, thickness: 0 })],
  ['front.flatRadius', /43 .*3 to 20 mm/, () => corneaPowers({ front: { ...side, flatRadius: 43 }, back: side, thickness: 0.5 })],
  ['back.steepRadius', /7\.9 .*3 to 7\.8/, () => corneaPowers({ front: side, back: { ...side, steepRadius: 7.9 }, thickness: 0.5 })],
  ['back.steepMeridian', /none/, () => corneaPowers({ front: side, back: { ...side, steepMeridian: undefined as never }, thickness: 0.5 })],
];

describe('what is impossible is refused, with field, value and limits', () => {
  test.each(REFUSED)('%s %s', (field, names, call) => {
    const thrown = refusalOf(call);
    expect(thrown).toBeInstanceOf(RangeError);
    const { field: named, message } = thrown;
    expect(named).toBe(field);
    expect(message).toMatch(names);
    expect(message).toMatch(/refused; allowed is/);
  });

  test.each([0, 45, 90, 135, 180])('a toric surface that is steep at %d° where only spherical ones are traced', (steepMeridian) => {
    const { field, value } = refusalOf(() => trace(spherical({ ...toric, indexAfter: 1.42, steepMeridian })));
    expect([field, value]).toEqual(['surfaces[1]', 'a toric surface']);
  });

  test('a matrix without an inverse', () => {
    expect(() => inverse([[1, 2], [2, 4]])).toThrow(RangeError);
    expect(() => inverse([[NaN, 2], [2, 4]])).toThrow(RangeError);
  });
});

test('no answer holds a NaN or an infinity, whatever is asked', () => {
  const anything = fc.oneof(fc.double(), fc.constantFrom(0, 1, -1, 1.336, 90, 180, Infinity, -Infinity, NaN, 1e-300, 1e300), fc.integer({ min: -200, max: 200 }));
  const part = fc.oneof(
    fc.record({ radius: anything, indexAfter: fc.constantFrom(1, 1.336, 1.5), gapAfter: fc.constantFrom(0, 1, 5, 20) }),
    fc.record({ flatRadius: fc.constantFrom(7.8, 10, Infinity), steepRadius: fc.oneof(anything, fc.constantFrom(5, 7.8)), steepMeridian: anything, indexAfter: fc.constantFrom(1, 1.336), gapAfter: fc.constantFrom(0, 20) }),
    fc.record({ lens: fc.record({ sphere: anything, cylinder: anything, axis: anything }), gapAfter: fc.constantFrom(0, 20) }),
  );
  const finite = (value: unknown): boolean => (typeof value === 'number' ? Number.isFinite(value) : value === null || typeof value !== 'object' || Object.values(value).every(finite));
  let answered = 0;
  const ask = (call: () => unknown): void => {
    let told: unknown;
    try {
      told = call();
    } catch (error) {
      expect(error).toBeInstanceOf(RangeError);
      return;
    }
    answered += 1;
    expect(finite(told), JSON.stringify(told)).toBe(true);
  };
  fc.assert(fc.property(fc.array(part, { minLength: 1, maxLength: 3 }), anything, anything, (surfaces, first, second) => {
    const system = { surfaces } as ToricSystem;
    ask(() => trace(system as EyeSystem));
    ask(() => traceToric(system));
    ask(() => residual({ ...system, axialLength: 24 }));
    ask(() => lensToFit({ ...system, axialLength: 24 }));
    ask(() => {
      const made = pencilThrough(system, { pupil: 4 });
      return [made, lineFoci(made), leastConfusion(made), crossSection(made, first)];
    });
    ask(() => {
      const made = pencilOf({ vergence: { m: first, j0: second, j45: 1 }, pupil: 4 });
      return [lineFoci(made), leastConfusion(made), crossSection(made, 20)];
    });
  }), { ...RUNS, numRuns: 3000 });
  expect(answered).toBeGreaterThan(2000);
});

test('eigenvalues of nearly equal, tiny and huge entries keep their directions', () => {
  for (const size of [1e-9, 1, 1e9]) {
    for (const split of [1e-10, 1e-3, 1]) {
      const turn = 0.3;
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      const [low, high] = [size, size * (1 + split)];
      const [weak, strong] = eigenPairs([[high * c * c + low * s * s, (high - low) * c * s], [(high - low) * c * s, high * s * s + low * c * c]]);
      expect(Math.abs(weak!.value - low)).toBeLessThan(1e-14 * size);
      expect(Math.abs(strong!.value - high)).toBeLessThan(1e-14 * size * 2);
      expect(Math.abs(strong!.direction[0]! * s - strong!.direction[1]! * c)).toBeLessThan(1e-5);
    }
  }
  expect(eigenPairs([[3, 0, 0], [0, 3, 0], [0, 0, 3]]).map(({ value }) => value)).toEqual([3, 3, 3]);
});
