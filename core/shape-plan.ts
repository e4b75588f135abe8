import { add, flatteningAndTorque, fromVector, toVector } from './astigmatism.js';
import { within } from './check.js';
import { completePlan } from './fields.js';
import { KERATOMETRIC_CONSTANT } from './keratometry.js';
import { MODEL } from './model.js';
import { SHAPE_CONSTANTS } from './shape-constants.js';
import { LOCAL_LIMITS, cutLength, type LocalFlattening } from './shape-local.js';
import { SHAPE_LIMITS, type CornealShape } from './shape-surface.js';
import type { Astigmatism, CompletePlan, EyePlan, PlanOutcome, StepSource } from './types.js';

/**
 * Front of the cornea before the plan, its readings taken for the radii at the apex. (A keratometer reads on a ring of some
 * 3 mm; with Q = −0.26 the axial radius there is about 0.2 % longer than at the apex, which is left out.)
 * @param conic Q along both meridians; −0.26 when left out.
 * @throws RangeError for a plan out of range.
 */
export function shapeBefore(plan: EyePlan, conic: number = SHAPE_CONSTANTS.conic.value): CornealShape {
  const { flatK, steepK, steepMeridian } = completePlan(plan);
  return shapeOf((flatK + steepK) / 2, { magnitude: steepK - flatK, meridian: steepMeridian }, conic);
}

/**
 * Front of the cornea as the plan is expected to leave it. Incision and arcs change it; the back surface and a lens do not.
 * Its radii follow from the expected effect; the local flattening at each cut is an illustration.
 * @param outcome that of `evaluatePlan` for the same plan.
 * @throws RangeError for a plan out of range.
 */
export function shapeAfter(plan: EyePlan, outcome: Pick<PlanOutcome, 'before' | 'steps' | 'meanPowerShift'>, conic: number = SHAPE_CONSTANTS.conic.value): CornealShape {
  const complete = completePlan(plan);
  const cut = outcome.steps.filter(({ source }) => source === 'incision' || source === 'arcs');
  const after = cut.reduce((sum, { vector }) => add(sum, vector), toVector(outcome.before));
  const mean = (complete.flatK + complete.steepK) / 2 + outcome.meanPowerShift;
  const effect = (source: StepSource, site: number | null): number => {
    const step = cut.find((candidate) => candidate.source === source);
    return step && site !== null ? flatteningAndTorque(fromVector(step.vector), site).flattening : 0;
  };
  return { ...shapeOf(mean, fromVector(after), conic), local: cutsOf(complete, effect('incision', complete.incisionSite), effect('arcs', complete.arcSite)) };
}

function shapeOf(mean: number, { magnitude, meridian }: Astigmatism, conic: number): CornealShape {
  const { radius } = SHAPE_LIMITS;
  const radiusOf = (power: number): number => within('radius', KERATOMETRIC_CONSTANT / power, radius.min, radius.max, radius.unit);
  return {
    flatRadius: radiusOf(mean - magnitude / 2),
    steepRadius: radiusOf(mean + magnitude / 2),
    steepMeridian: meridian,
    flatConic: conic,
    steepConic: conic,
  };
}

/** Each cut with its share of the effect. */
function cutsOf(plan: CompletePlan, incision: number, arcs: number): LocalFlattening[] {
  const cuts: LocalFlattening[] = [];
  const cut = (site: number, length: number, distance: number, effect: number): void => {
    const { min, max } = LOCAL_LIMITS.amount;
    const amount = Math.min(max, Math.max(min, SHAPE_CONSTANTS.localFactor.value * effect));
    cuts.push({ site, length, distance, amount, basis: 'assumed' });
  };
  const limbus = MODEL.eye.limbusDiameter.value / 2;
  if (plan.incisionSite !== null) cut(plan.incisionSite, cutLength(plan.incisionWidth, limbus), limbus, incision);
  if (plan.arcSite === null) return cuts;
  for (let arc = 0; arc < plan.arcCount; arc += 1) cut((plan.arcSite + 180 * arc) % 360, plan.arcLength, plan.arcZone / 2, arcs / plan.arcCount);
  return cuts;
}
