import { RADIANS, ruleOf } from './angle.js';
import { arcEffect, arcSpread } from './arcs.js';
import { add, flattening, toVector } from './astigmatism.js';
import { backSurface } from './backSurface.js';
import { incisionEffect, incisionSpread } from './incision.js';
import { MODEL } from './model.js';
import { covarianceAlong, turnedBy } from './spread.js';
import type { Covariance } from './scatter.js';
import type { Astigmatism, CompletePlan, PlanStep, Vector } from './types.js';

/** A step with its own uncertainty, apart from that of the marks on the eye. */
export interface Part {
  step: PlanStep;
  /** Mean of what it adds, D; short of `vector` where it may be turned against its marks. */
  mean: Vector;
  covariance: Covariance;
  /** How much the cut meridian is expected to flatten, D; 0 for what cuts nothing. */
  cut: number;
}

/** What the back surface adds, unless it is left out of account. */
export function backSurfaceStep(plan: CompletePlan, before: Astigmatism): PlanStep | null {
  if (plan.backSurface === 'omitted') return null;
  const vector = toVector(backSurface(plan.backSurface, before));
  return { source: 'backSurface', vector, intended: vector, basis: plan.backSurface === 'typical' ? 'model' : 'measured' };
}

/** All that is done to the eye, in the order of the operation. */
export function surgeryOf(plan: CompletePlan, before: Astigmatism): Part[] {
  const parts: Part[] = [];
  for (const part of [incisionPart(plan), arcsPart(plan, before), lensPart(plan)]) if (part) parts.push(part);
  return parts;
}

function incisionPart(plan: CompletePlan): Part | null {
  if (plan.incisionSite === null) return null;
  const own = plan.ownFigures?.incision;
  const cut = plan.incisionFlattening ?? own?.flattening ?? incisionEffect(plan.incisionWidth, plan.incisionSite, plan.eye);
  const along = flattening(cut, plan.incisionSite);
  // Torque is what the incision adds at 45° to its own meridian: a quarter turn further in the doubled plane.
  const vector = own?.torque ? add(along, flattening(own.torque, plan.incisionSite + 135)) : along;
  const variance = (own?.sd ?? incisionSpread(plan.incisionWidth)) ** 2;
  const basis = own || plan.incisionFlattening !== null ? 'own' : 'model';
  return { step: { source: 'incision', vector, intended: vector, basis }, mean: vector, covariance: [variance, 0, variance], cut };
}

function arcsPart(plan: CompletePlan, before: Astigmatism): Part | null {
  if (plan.arcCount === 0 || plan.arcSite === null) return null;
  const model = arcEffect(plan.arcLength, plan.arcCount, plan.age, ruleOf(before), plan.arcMethod);
  const own = plan.ownFigures?.arcs;
  const cut = plan.arcFlattening ?? (own ? own.share * model.intended : model.expected);
  const { sdAlong, sdAcross } = own ?? arcSpread(cut, plan.arcCount);
  const vector = flattening(cut, plan.arcSite);
  const intended = flattening(plan.arcFlattening ?? model.intended, plan.arcSite);
  const basis = own || plan.arcFlattening !== null ? 'own' : 'model';
  const covariance = covarianceAlong(sdAlong, sdAcross, 2 * RADIANS * plan.arcSite);
  return { step: { source: 'arcs', vector, intended, basis }, mean: vector, covariance, cut };
}

function lensPart(plan: CompletePlan): Part | null {
  if (!plan.lensCylinder || plan.lensMeridian === null) return null;
  const vector = flattening(plan.lensCylinder, plan.lensMeridian);
  const { mean, covariance } = turnedBy(vector, MODEL.uncertainty.lensRotation);
  return { step: { source: 'lens', vector, intended: vector, basis: 'measured' }, mean, covariance, cut: 0 };
}
