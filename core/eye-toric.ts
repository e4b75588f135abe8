/**
 * Astigmatic systems by 4 × 4 matrices. Needs mathjs, so it is for a calculation at rest; what moves under a finger is
 * drawn from `eye-pencil.ts`, which says the same.
 */
import { eigenPairs, inverse, product, type EigenPair, type Rows } from './algebra.js';
import { RADIANS, meridian } from './angle.js';
import { RefusedValue } from './check.js';
import { isNone } from './eye-limits.js';
import { stepsOf, type Step, type Steps } from './eye-system.js';
import type { Cardinals, Principal, ToricCardinals, ToricSystem } from './eye-types.js';

/** The 2 × 2 blocks of a system matrix: y′ = A·y + B·u, u′ = C·y + D·u. */
export interface Blocks {
  a: number[][];
  b: number[][];
  c: number[][];
  d: number[][];
}

/**
 * From the first surface to behind the last: 4 × 4, for (x, y, slope in x, slope in y), mm and slopes times the index.
 * Refraction [[I, 0], [−F, I]] with the power matrix F of the surface, gap [[I, t/n·I], [0, I]] (Langenbucher et al. 2004).
 * @throws RangeError for a value out of range.
 */
export function toricMatrix(system: ToricSystem): number[][] {
  return matrixOf(stepsOf(system));
}

/** The blocks of a 4 × 4 matrix. */
export function blocksOf(matrix: Rows): Blocks {
  const block = (row: number, column: number): number[][] => [0, 1].map((i) => [0, 1].map((j) => matrix[row + i]![column + j]!));
  return { a: block(0, 0), b: block(0, 2), c: block(2, 0), d: block(2, 2) };
}

/**
 * Gaussian properties of an astigmatic system, each figure along its two principal meridians. Back foci from the vertex
 * power −C·A⁻¹, front foci from −D⁻¹·C, which are symmetric however the surfaces are crossed; power −C and the
 * principal and nodal points from its symmetric part, along its principal meridians (`asymmetry` says what that leaves out).
 * With equal radii it says what `trace` says. Rounding errors only.
 * @returns dioptres, and mm from the first vertex, positive along the light.
 * @throws RangeError for a value out of range, and for a meridian without power, which has no foci.
 */
export function traceToric(system: ToricSystem): ToricCardinals {
  const made = stepsOf(system);
  const { indexBefore, indexAfter, last } = made;
  const { a, c, d } = blocksOf(matrixOf(made));
  const power = scaled(c, -1);
  const pairs = principalPairs(power);
  // The lengths c⁻¹, a·c⁻¹ and c⁻¹·d along a principal meridian are 1/c, a/c and d/c of an ordinary system.
  const length = inverseOf(c, 'power', POWERED);
  const focus = (matrix: Rows, to: (value: number) => number): Principal => mapped(principalPairs(matrix), ({ value }) => to(powered(value)));
  const along = (matrix: Rows, to: (value: number, whole: number) => number): Principal =>
    mapped(pairs, ({ direction }) => to(quadratic(matrix, direction), quadratic(length, direction)) + 0);
  const toNodal = (whole: number): number => (indexBefore - indexAfter) * whole;
  const front = (value: number, whole: number): number => indexBefore * (value - whole);
  const back = (value: number, whole: number): number => last + indexAfter * (whole - value);
  return {
    power: mapped(pairs, ({ value }) => 1000 * powered(value)),
    frontFocus: focus(scaled(product(inverseOf(d, 'frontFocus', 'any place but the first vertex'), c), -1), (vertexPower) => -indexBefore / vertexPower),
    backFocus: focus(scaled(product(c, inverseOf(a, 'backFocus', 'any place but the last vertex')), -1), (vertexPower) => last + indexAfter / vertexPower),
    frontPrincipal: along(product(length, d), front),
    backPrincipal: along(product(a, length), back),
    frontNodal: along(product(length, d), (value, whole) => front(value, whole) + toNodal(whole)),
    backNodal: along(product(a, length), (value, whole) => back(value, whole) + toNodal(whole)),
    asymmetry: 500 * (power[0]![1]! - power[1]![0]!) + 0,
  } satisfies Record<keyof Cardinals | 'asymmetry', Principal | number>;
}

/**
 * Principal values of a power matrix [[xx, xy], [yx, yy]], by the eigenvectors of its symmetric part: of two surfaces
 * crossed at any angle, their sum.
 */
export function principalPowers(matrix: Rows): Principal {
  return mapped(principalPairs(matrix), ({ value }) => value);
}

/** The weaker first; directions of equal values are put along the axes. */
function principalPairs(matrix: Rows): [EigenPair, EigenPair] {
  const [weak, strong] = eigenPairs(matrix) as unknown as [EigenPair, EigenPair];
  if (strong.value - weak.value > 1e-12 * Math.abs(strong.value)) return [weak, strong];
  return [{ ...weak, direction: [0, 1] }, { ...strong, direction: [1, 0] }];
}

function mapped([weak, strong]: [EigenPair, EigenPair], to: (pair: EigenPair) => number): Principal {
  return { flat: to(weak), steep: to(strong), steepMeridian: meridian(Math.atan2(strong.direction[1]!, strong.direction[0]!) / RADIANS) };
}

function quadratic(matrix: Rows, [x, y]: readonly number[]): number {
  const [[xx, xy], [yx, yy]] = matrix as [[number, number], [number, number]];
  return xx * x! * x! + (xy + yx) * x! * y! + yy * y! * y!;
}

const POWERED = 'any other than 0 D in every meridian: without power there are no foci';

function powered(value: number): number {
  if (isNone(value)) throw new RefusedValue('power', 1000 * value, POWERED);
  return value;
}

/** Only light in focus on a vertex, or a meridian without power, makes a block that cannot be inverted. */
function inverseOf(block: Rows, field: string, limits: string): number[][] {
  const [[xx, xy], [yx, yy]] = block as [[number, number], [number, number]];
  const scale = Math.hypot(xx, xy, yx, yy);
  if (Math.abs(xx * yy - xy * yx) > 1e-14 * scale * scale) return inverse(block);
  throw new RefusedValue(field, 0, limits);
}

function matrixOf({ steps }: Steps): number[][] {
  const factors = steps.flatMap((step, position) => (position < steps.length - 1 ? [refraction(step), gap(step)] : [refraction(step)]));
  const [first, ...others] = factors.reverse() as [number[][], ...number[][][]];
  return product(first, ...others);
}

function refraction({ power: [xx, xy, yx, yy] }: Step): number[][] {
  return [[1, 0, 0, 0], [0, 1, 0, 0], [-xx, -xy, 1, 0], [-yx, -yy, 0, 1]];
}

function gap({ gap: { a, b, c, d } }: Step): number[][] {
  return [[a, 0, b, 0], [0, a, 0, b], [c, 0, d, 0], [0, c, 0, d]];
}

function scaled(matrix: Rows, by: number): number[][] {
  return matrix.map((row) => row.map((value) => by * value + 0));
}
