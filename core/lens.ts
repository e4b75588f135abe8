import { flattening, fromVector, toVector, add } from './astigmatism.js';
import { allowed, within } from './check.js';
import { LIMITS } from './limits.js';
import { MODEL } from './model.js';
import type { Astigmatism } from './types.js';

/**
 * Cylinder at the plane of the lens for one dioptre at the cornea, 1 / (1 − K·d/n)², for small cylinders and thin
 * optics. The real ratio changes with the eye: no fixed factor serves all.
 * @param k mean corneal power, D.
 * @param depth from the corneal vertex to the lens, mm (2–8).
 * @throws RangeError outside the limits.
 */
export function lensPlaneRatio({ k, depth = MODEL.eye.lensDepth }: { k: number; depth?: number }): number {
  const power = within('k', k, LIMITS.flatK.min, LIMITS.steepK.max, 'D');
  const metres = within('depth', depth, 2, 8, 'mm') / 1000;
  return 1 / (1 - (power * metres) / MODEL.eye.aqueousIndex) ** 2;
}

/**
 * What is left when a toric lens of just the right `cylinder` for a cornea steep at `meridian` is placed on another
 * meridian: 2·C·sin β in size. All at the corneal plane, D and degrees.
 */
export function misplacedLens({ cylinder, meridian, placed }: { cylinder: number; meridian: number; placed: number }): Astigmatism {
  const power = allowed(LIMITS.lensCylinder, cylinder);
  return fromVector(add(toVector({ magnitude: power, meridian }), flattening(power, placed)));
}
