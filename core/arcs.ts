import { allowed, oneOf } from './check.js';
import { LIMITS } from './limits.js';
import { MODEL } from './model.js';
import type { ArcMethod, Rule } from './types.js';

export interface ArcEffect {
  /** What the published table intends, D along the cut meridian. */
  intended: number;
  /** What is usually achieved, D. */
  expected: number;
  /** Standard deviation along the cut meridian, D. */
  sdAlong: number;
  /** Standard deviation across it (torque), D. */
  sdAcross: number;
}

/**
 * Effect of one relaxing arc or a pair of equal ones near the limbus, about 11 mm across, at 85–90 % of the local
 * thickness. Arcs beyond 90° count as 90°, where the table ends. A missing age counts as 65.
 * @throws RangeError for a value outside the limits.
 */
export function arcFlattening(arcs: {
  length: number;
  count: 0 | 1 | 2;
  age?: number | null | undefined;
  rule: Rule;
  method: ArcMethod;
}): ArcEffect {
  const length = allowed(LIMITS.arcLength, arcs.length);
  const count = oneOf('arcCount', arcs.count, [0, 1, 2]);
  const rule = oneOf('rule', arcs.rule, ['with', 'against', 'oblique']);
  const method = oneOf('arcMethod', arcs.method, ['blade', 'laser']);
  const age = arcs.age == null ? null : allowed(LIMITS.age, arcs.age);
  const effect = arcEffect(length, count, age, rule, method);
  return { ...effect, ...arcSpread(effect.expected, count) };
}

/** Intended and expected effect of arcs of which everything has been checked. */
export function arcEffect(length: number, count: number, age: number | null, rule: Rule, method: ArcMethod): Pick<ArcEffect, 'intended' | 'expected'> {
  const intended = count === 0 ? 0 : intendedEffect(length, count, age ?? MODEL.arcs.referenceAge, rule);
  return { intended, expected: intended * (method === 'blade' ? MODEL.arcs.bladeShare : MODEL.arcs.laserShare) };
}

/** Standard deviations of arcs that are expected to flatten by `expected` dioptres; none without arcs. */
export function arcSpread(expected: number, count: number): { sdAlong: number; sdAcross: number } {
  if (count === 0) return { sdAlong: 0, sdAcross: 0 };
  const { sdAlongShare, sdAlongLeast, sdAcross } = MODEL.arcs;
  return { sdAlong: Math.max(sdAlongLeast, sdAlongShare * expected), sdAcross: sdAcross };
}

/**
 * Shift of the mean corneal power when a meridian is made flatter by `dioptres` against the one across it and
 * `couplingRatio` is flattening over steepening: D·(1 − c) / (2·(1 + c)). Positive is more power.
 */
export function meanPowerShift(dioptres: number, couplingRatio: number): number {
  return (dioptres * (1 - couplingRatio)) / (2 * (1 + couplingRatio));
}

function intendedEffect(length: number, count: number, age: number, rule: Rule): number {
  const { atSixtyDegrees, countPower, perYear, referenceAge, ageLimits, againstFactor, longest } = MODEL.arcs;
  const [youngest, oldest] = ageLimits;
  const ageFactor = 1 + perYear * (Math.min(Math.max(age, youngest), oldest) - referenceAge);
  const ruleFactor = rule === 'against' ? againstFactor : 1;
  return atSixtyDegrees * (Math.min(length, longest) / 60) * count ** countPower * ageFactor * ruleFactor;
}
