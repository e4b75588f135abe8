import type { MeridianSpread } from '../../core/numbers.js';
import type { Frame } from '../internal/eye-shapes.js';
import { arcOf } from '../internal/geometry.js';

export { LEAST_DRAWN, PETAL, TUNNEL, arcShapes, bowTie, incisionShape, meridianLine } from '../internal/eye-shapes.js';
export type { Frame } from '../internal/eye-shapes.js';

/** Half the line of the remaining steep meridian, mm: shorter than the one before, so that both show when they coincide. */
export const REMAINING_REACH = 4.3;

/** Two opposite sectors of the cornea around a meridian; at 90° each side the whole disc. */
export function sectorPair({ meridian, halfWidth }: MeridianSpread, { scale, turn }: Frame): string {
  const middles = [meridian + turn, meridian + turn + 180];
  return middles.map((middle) => `M0,0L${arcOf(REMAINING_REACH * scale, middle - halfWidth, middle + halfWidth)}Z`).join('');
}
