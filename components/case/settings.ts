import { KERATOMETRIC_CONSTANT, LIMITS, refused } from '../../core/numbers.js';
import type { EyePlan, RefusedValue } from '../../core/numbers.js';
import type { KUnit } from '../internal/case-model.js';

type Reading = 'flatK' | 'steepK';

/** A reading as it was set, and whether it is in dioptres whatever the unit says. */
export interface GivenReading {
  value: number | null;
  exact: boolean;
}

/** Shortest and longest radius that a plan accepts, mm. */
export const RADIUS_LIMITS = {
  min: KERATOMETRIC_CONSTANT / LIMITS.steepK.max,
  max: KERATOMETRIC_CONSTANT / LIMITS.flatK.min,
};

/** Both readings in dioptres, and what of them is refused in the unit in which it was given. */
export function readingsInDioptres(
  unit: KUnit,
  given: Record<Reading, GivenReading>,
): { readings: Pick<EyePlan, Reading>; refusals: RefusedValue[] } {
  const refusals: RefusedValue[] = [];
  if (unit !== 'D' && unit !== 'mm') refusals.push(refused('kUnit', unit, 'choice', { choices: 'D, mm' }));
  const convert = (field: Reading): number | null => {
    const { value, exact } = given[field];
    if (unit !== 'mm' || exact || value === null || value === undefined) return value;
    const { min, max } = RADIUS_LIMITS;
    if (typeof value === 'number' && value >= min && value <= max) return KERATOMETRIC_CONSTANT / value;
    refusals.push(refused(field, value, 'range', { min: min.toFixed(2), max: max.toFixed(2), unit: 'mm' }));
    return null;
  };
  const readings = { flatK: convert('flatK'), steepK: convert('steepK') };
  if (unit === 'mm' && refusals.length === 0 && longer(given)) {
    refusals.push(refused('steepK', given.steepK.value, 'steepRadius', { max: given.flatK.value! }));
  }
  return { readings, refusals };
}

function longer({ flatK, steepK }: Record<Reading, GivenReading>): boolean {
  return !flatK.exact && !steepK.exact && (steepK.value ?? 0) > (flatK.value ?? Infinity);
}
