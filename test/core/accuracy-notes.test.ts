/** The reasons that the table of accuracy gives for errors beyond rounding, calculated. */
import { describe, expect, test } from 'vitest';
import { SCHEMATIC_EYES, trace, type EyeSystem, type Surface } from '../../core/eye.js';
import { misplacedLens } from '../../core/index.js';
import { CHECKED } from '../accuracy/tables.js';

const row = (id: string) => CHECKED.find(({ ids, beyond }) => ids.test(id) && beyond.length > 0)!;
const beyond = (id: string): string[] => row(id).beyond.map(({ id: entry, field }) => `${entry}.${field}`);
const near = (got: number, expected: number, half: number): void => expect(Math.abs(got - expected), `${got} against ${expected}`).toBeLessThanOrEqual(half);
const powerOf = (system: EyeSystem<Surface>): number => trace(system).power;

describe('Gullstrand’s eye from two powers as they are printed', () => {
  const { surfaces } = SCHEMATIC_EYES.gullstrand;
  const cornea = trace({ surfaces: surfaces.slice(0, 2) });
  const lens = trace({ surfaces: surfaces.slice(2), indexBefore: 1.336 });
  const apart = 3.6 + lens.frontPrincipal - cornea.backPrincipal;
  const [front, back] = [43.05, 19.11];
  const power = front + back - (apart / 1336) * front * back;
  const backPrincipal = 3.6 + lens.backPrincipal - (apart * front) / power;

  test('has the printed back focus and the recalled front focal length', () => {
    near(backPrincipal + 1336 / power, 24.387, 0.0005);
    near(-1000 / power, -17.055, 0.0005);
  });

  test('has not the recalled second principal and nodal point', () => {
    expect(1.602 - backPrincipal).toBeGreaterThan(0.0005);
    expect(beyond('eye-gullstrand-exact-cardinal')).toEqual(['H2', 'N2', 'f', 'Fo'].map((field) => `eye-gullstrand-exact-cardinal.${field}`));
  });

  test('from powers that are not rounded is that of the trace', () => {
    const exact = cornea.power + lens.power - (apart / 1336) * cornea.power * lens.power;
    near(exact, powerOf(SCHEMATIC_EYES.gullstrand), 1e-9);
  });
});

test('Emsley’s figures are cut off', () => {
  for (const { published, calculated } of [...row('eye-gullstrand-emsley-relaxed').beyond, ...row('eye-gullstrand-emsley-cornea').beyond]) {
    expect(Math.floor(calculated * 100) / 100).toBe(published);
  }
});

test('60.49 D follows from an index of 1.3333', () => {
  const rounded = SCHEMATIC_EYES.gullstrandEmsley.surfaces.map((surface) => ({ ...surface, indexAfter: surface.indexAfter === 4 / 3 ? 1.3333 : surface.indexAfter }));
  expect(powerOf({ surfaces: rounded }).toFixed(2)).toBe('60.49');
  expect(powerOf(SCHEMATIC_EYES.gullstrandEmsley).toFixed(2)).toBe('60.48');
});

test('half a digit of Liou and Brennan’s front radius moves the power by 0.03 D, more than is missing', () => {
  const [first, ...others] = SCHEMATIC_EYES.liouBrennan.surfaces as readonly Surface[];
  const moved = powerOf(SCHEMATIC_EYES.liouBrennan) - powerOf({ surfaces: [{ ...first!, radius: first!.radius + 0.005 }, ...others] });
  expect(moved.toFixed(2)).toBe('0.03');
  expect(row('eye-liou-brennan').worst).toBeLessThan(moved);
});

describe('the chart of lenses at 12 mm', () => {
  const chart = row('vertex12-plus-4');
  const eighths = (value: number): number => Math.round(value * 8);
  const spectacle = (id: string): number => Number(/[\d.]+$/.exec(id)![0]) * (id.includes('minus') ? -1 : 1);
  /** 3.87 stands for 3.875. */
  const onChart = (published: number): number => Math.sign(published) * Math.round((Math.abs(published) + 0.0025) * 8);

  test('goes by eighths, of which 7 in 57 are one beside the nearest', () => {
    for (const { published } of chart.values) near(Math.abs(published), Math.abs(onChart(published)) / 8, 0.0051);
    const beside = chart.values.map(({ published, calculated }) => Math.abs(onChart(published) - eighths(calculated)));
    expect(beside.filter((steps) => steps > 0)).toEqual(Array(7).fill(1));
    expect(chart.beyond).toHaveLength(7);
  });

  test('fits no one distance', () => {
    for (let distance = 8; distance <= 16; distance += 0.01) {
      const misses = chart.values.filter(({ id, published }) => {
        const lens = spectacle(id);
        return Math.abs(lens / (1 - (distance / 1000) * lens) - onChart(published) / 8) > 1 / 16;
      });
      expect(misses.length, `${distance} mm`).toBeGreaterThan(0);
    }
  });
});

test('1.05 D is 3 D times the rounded share 0.35', () => {
  const share = misplacedLens({ cylinder: 1, meridian: 90, placed: 100 }).magnitude;
  expect(share.toFixed(4)).toBe('0.3473');
  expect((3 * Number(share.toFixed(2))).toFixed(2)).toBe('1.05');
});
