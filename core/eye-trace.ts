import { RefusedValue } from './check.js';
import { isNone } from './eye-limits.js';
import { NULL, UNIT } from './eye-matrix.js';
import { sphericalSteps, through } from './eye-system.js';
import type { Cardinals, EyeSystem } from './eye-types.js';

/**
 * Gaussian trace of centred spherical surfaces: for each a refraction u′ = u − F·y with F = (n′ − n)/r, for each gap a
 * transfer y′ = y + (t/n)·u. F = −c; front principal point n·(d − 1)/c, back principal point z + n′·(1 − a)/c, foci
 * n/F and n′/F from them, nodal points (n′ − n)/F from them (reduced matrices, any text of visual optics).
 * Rounding errors only: below 1e-9 mm for an eye. What lies behind the last surface has no part in it.
 * @returns dioptres, and mm from the first vertex, positive along the light.
 * @throws RangeError for a value out of range, for a toric surface, and for a system without power, which has no foci.
 */
export function trace(system: EyeSystem): Cardinals {
  const made = sphericalSteps(system);
  const { indexBefore, indexAfter, last } = made;
  // y′ = a·y + b·u, u′ = c·y + d·u; u is the slope times the index.
  const high = through(made, { height: UNIT, slope: NULL });
  const [a, c, d] = [high.height[0], high.slope[0], through(made, { height: NULL, slope: UNIT }).slope[0]];
  if (isNone(c)) throw new RefusedValue('power', -1000 * c, 'any other than 0 D: without power there are no foci');
  const frontPrincipal = (indexBefore * (d - 1)) / c + 0;
  const backPrincipal = last + (indexAfter * (1 - a)) / c;
  const toNodal = (indexBefore - indexAfter) / c;
  return {
    power: -1000 * c,
    frontFocus: (indexBefore * d) / c,
    backFocus: last - (indexAfter * a) / c,
    frontPrincipal,
    backPrincipal,
    frontNodal: frontPrincipal + toNodal,
    backNodal: backPrincipal + toNodal,
  };
}
