/** Random eyes for the tests of the tracing, and the same eyes as built for real rays. */
import fc from 'fast-check';
import type { Surface, ToricSurface, ToricSystem } from '../../core/eye.js';
import type { Built } from './eye-rays.js';
import { between } from './plans.js';

export const meridianOf = between(0, 180);

const radius = fc.oneof(
  { weight: 6, arbitrary: between(5, 60) },
  { weight: 3, arbitrary: between(-60, -5) },
  { weight: 1, arbitrary: fc.constant(Infinity) },
);

export const surface: fc.Arbitrary<Surface> = fc.record({ radius, indexAfter: between(1, 1.6), gapAfter: between(0, 6) });

/** A centred system; its last gap is as random as the others and must not matter. */
export const system = fc.record({ surfaces: fc.array(surface, { minLength: 1, maxLength: 5 }), indexBefore: between(1, 1.4) });

/** An astigmatic eye without glasses: cornea with two sides, and a lens with two, all at any angle. */
export interface RandomEye {
  surfaces: (ToricSurface & { gapAfter: number })[];
  axialLength: number;
}

const side = (min: number, max: number, indexAfter: number, gap: [number, number], sign = 1): fc.Arbitrary<ToricSurface & { gapAfter: number }> =>
  fc.record({ flat: between(min, max), share: between(0.85, 1), steepMeridian: meridianOf, gapAfter: between(...gap) }).map(({ flat, share, steepMeridian, gapAfter }) => ({
    flatRadius: sign * flat,
    steepRadius: sign * flat * share,
    steepMeridian,
    indexAfter,
    gapAfter,
  }));

export const toricEye: fc.Arbitrary<RandomEye> = fc.record({
  surfaces: fc.tuple(
    side(6.8, 8.6, 1.376, [0.4, 0.7]),
    side(5.8, 7.2, 1.336, [2, 5]),
    side(9, 14, 1.42, [2.5, 4.5]),
    side(5.5, 8, 1.336, [10, 18], -1),
  ),
  axialLength: between(21, 27),
});

export const turnedBy = (degrees: number) => <Part extends { steepMeridian: number }>(part: Part): Part => ({ ...part, steepMeridian: (part.steepMeridian + degrees) % 180 });

/** The eye with real surfaces; the conic constants are not in it, for a trace of the first order does not know them. */
export function built({ surfaces, indexBefore = 1 }: ToricSystem, conics: readonly number[] = []): Built[] {
  let [vertex, before] = [0, indexBefore];
  return surfaces.map((part, i) => {
    if ('lens' in part) throw new Error('a thin lens has no surface');
    const [flatRadius, steepRadius, steepMeridian] = 'radius' in part ? [part.radius, part.radius, 0] : [part.flatRadius, part.steepRadius, part.steepMeridian];
    const made = { vertex, flatRadius, steepRadius, steepMeridian, flatConic: conics[2 * i] ?? 0, steepConic: conics[2 * i + 1] ?? 0, indexBefore: before, indexAfter: part.indexAfter };
    vertex += part.gapAfter ?? 0;
    before = part.indexAfter;
    return made;
  });
}

/** Distance between two directions of a line, degrees. */
export function apart(a: number, b: number): number {
  const difference = Math.abs(a - b) % 180;
  return Math.min(difference, 180 - difference);
}
