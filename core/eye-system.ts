/** From what an eye is made of to the steps that light takes through it, checked once. */
import { RefusedValue } from './check.js';
import { allowed, curvature } from './eye-limits.js';
import { UNIT, alongMeridian, mixed, powerMatrix, times, type Matrix } from './eye-matrix.js';
import { gradedGap, type Gap } from './eye-gap.js';
import type { EyeSystem, Medium, Surface, ThinLens, ToricSurface, ToricSystem } from './eye-types.js';
import { toPowerVector } from './refraction.js';
import type { Refraction } from './types.js';

/** One surface and the way to the next. */
export interface Step {
  /** 1/mm, symmetric. */
  power: Matrix;
  gap: Gap;
  /** Distance of its vertex from the first one, mm. */
  at: number;
}

export interface Steps {
  steps: readonly Step[];
  indexBefore: number;
  /** Right behind the last surface. */
  indexAfter: number;
  /** Where the last surface is, and where the gap behind it ends; mm. */
  last: number;
  end: number;
  /** Index where the gap behind the last surface ends. */
  indexAtEnd: number;
}

/**
 * A family of rays, one a column: heights in mm, and slopes times the index. Of the first order in both.
 */
export interface Rays {
  height: Matrix;
  slope: Matrix;
}

/** The surfaces as steps. @throws RangeError naming the surface and the field that is out of range. */
export function stepsOf({ surfaces, indexBefore = 1 }: ToricSystem): Steps {
  if (!Array.isArray(surfaces)) throw new RefusedValue('surfaces', surfaces, 'a list of surfaces');
  allowed('surfaces', 'surfaces', surfaces.length);
  let before = allowed('index', 'indexBefore', indexBefore);
  const made: Steps = { steps: [], indexBefore: before, indexAfter: before, last: 0, end: 0, indexAtEnd: before };
  const steps: Step[] = [];
  surfaces.forEach((part: Surface | ToricSurface | ThinLens, position) => {
    const name = `surfaces[${position}]`;
    if (typeof part !== 'object' || part === null) throw new RefusedValue(name, part, 'a surface or a thin lens');
    made.indexAfter = allowed('index', `${name}.indexAfter`, 'lens' in part ? part.indexAfter ?? before : part.indexAfter);
    const length = gapLength(part, `${name}.gapAfter`, position === surfaces.length - 1);
    const gap = gradedGap('gradient' in part ? (part as Medium).gradient : undefined, made.indexAfter, length, `${name}.gradient`);
    steps.push({ power: powerOf(part, before, made.indexAfter, name), gap, at: made.end });
    made.last = made.end;
    made.end += length;
    made.indexAtEnd = before = gap.indexAtEnd;
  });
  return { ...made, steps };
}

/** The same for what has no astigmatism. @throws RangeError for a surface or lens that has. */
export function sphericalSteps(system: EyeSystem): Steps {
  const made = stepsOf(system);
  made.steps.forEach(({ power: [xx, xy, , yy] }, position) => {
    if (xx === yy && xy === 0) return;
    throw new RefusedValue(`surfaces[${position}]`, 'a toric surface', 'a spherical one here; traceToric takes both');
  });
  return made;
}

/** Through the first `count` surfaces and the gaps between them; with `gapToo` also through the one behind. */
export function through({ steps }: Steps, rays: Rays, count = steps.length, gapToo = false): Rays {
  let { height, slope } = rays;
  for (let position = 0; position < count; position += 1) {
    const { power, gap } = steps[position]!;
    slope = mixed(1, slope, -1, times(power, height));
    if (position === count - 1 && !gapToo) break;
    [height, slope] = [mixed(gap.a, height, gap.b, slope), mixed(gap.c, height, gap.d, slope)];
  }
  return { height, slope };
}

/** Rays of light that arrives with the vergence `perMm` (symmetric, 1/mm, positive converging), at unit heights. */
export function arriving(perMm: Matrix): Rays {
  return { height: UNIT, slope: mixed(-1, perMm, 0, UNIT) };
}

function gapLength(part: { gapAfter?: number }, field: string, isLast: boolean): number {
  return allowed('gap', field, isLast ? part.gapAfter ?? 0 : part.gapAfter);
}

function powerOf(part: Surface | ToricSurface | ThinLens, before: number, after: number, name: string): Matrix {
  const step = after - before;
  if ('lens' in part) return lensPower(part.lens, `${name}.lens`);
  if ('radius' in part) return mixed(step * curvature(`${name}.radius`, part.radius), UNIT, 0, UNIT);
  const flat = curvature(`${name}.flatRadius`, part.flatRadius);
  const steep = curvature(`${name}.steepRadius`, part.steepRadius);
  if (flat * steep < 0 || Math.abs(flat) > Math.abs(steep)) {
    throw new RefusedValue(`${name}.steepRadius`, part.steepRadius, `of the sign of flatRadius (${part.flatRadius} mm) and not larger in size`);
  }
  const along = allowed('meridian', `${name}.steepMeridian`, part.steepMeridian);
  return alongMeridian(step * flat, step * steep, along);
}

/** Power matrix of a thin lens, 1/mm. */
function lensPower(lens: Refraction, name: string): Matrix {
  if (typeof lens !== 'object' || lens === null) throw new RefusedValue(name, lens, 'a sphere, a cylinder and an axis');
  allowed('lensPower', `${name}.sphere`, lens.sphere);
  allowed('lensPower', `${name}.cylinder`, lens.cylinder);
  allowed('meridian', `${name}.axis`, lens.axis);
  return powerMatrix(toPowerVector(lens), 1 / 1000);
}
