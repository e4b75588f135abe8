import { fromTemporal } from './angle.js';
import { allowed, oneOf } from './check.js';
import { LIMITS } from './limits.js';
import { MODEL } from './model.js';
import type { EyeSide } from './types.js';

/**
 * Expected flattening of the entered meridian by a clear corneal incision, and its standard deviation per
 * double-angle component, both in dioptres. A teaching estimate for 1.8–3.5 mm; the mean vector, not the mean magnitude.
 * @throws RangeError for a width or site outside the limits.
 */
export function incisionFlattening(incision: { width: number; site: number; eye: EyeSide }): { flattening: number; sd: number } {
  const width = allowed(LIMITS.incisionWidth, incision.width);
  const where = allowed(LIMITS.incisionSite, incision.site);
  const eye = oneOf('eye', incision.eye, ['right', 'left']);
  return { flattening: incisionEffect(width, where, eye), sd: incisionSpread(width) };
}

/** Expected flattening, D, by an incision of which everything has been checked. */
export function incisionEffect(width: number, where: number, eye: EyeSide): number {
  const { base, perMillimetre, referenceWidth } = MODEL.incision;
  const temporal = Math.max(0, base + perMillimetre * (width - referenceWidth));
  return siteFactor(fromTemporal(where, eye)) * temporal;
}

/** Standard deviation of the induced vector per component, D. */
export function incisionSpread(width: number): number {
  const { sdNarrow, sdMiddle, sdWide } = MODEL.incision;
  if (width < 2.5) return sdNarrow;
  return width < 3 ? sdMiddle : sdWide;
}

/** Linear between the eight directions, counted from the temporal side. */
function siteFactor(degreesFromTemporal: number): number {
  const factors = MODEL.incision.siteFactor;
  const position = degreesFromTemporal / 45;
  const index = Math.floor(position);
  const here = factors[index % 8]!;
  return here + (position - index) * (factors[(index + 1) % 8]! - here);
}
