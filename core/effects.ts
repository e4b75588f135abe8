import { ruleOf } from './angle.js';
import { arcFlattening, arcSpread, meanPowerShift } from './arcs.js';
import { add, flattening, fromVector, toVector } from './astigmatism.js';
import { backSurface } from './backSurface.js';
import { incisionFlattening } from './incision.js';
import { fromReadings } from './keratometry.js';
import { MODEL } from './model.js';
import { covarianceAlong, smearedBy, turnedBy } from './spread.js';
import { RADIANS } from './angle.js';
import type { Astigmatism, CompletePlan, PlanStep, Spread, Vector } from './types.js';

type Covariance = [xx: number, xy: number, yy: number];

/** What each part of a plan does, and what it comes to. */
export interface Effects {
  before: Astigmatism;
  /** Front and back surface together, before anything is done: what the plan has to answer. */
  total: Astigmatism;
  steps: PlanStep[];
  after: Astigmatism;
  afterIntended: Astigmatism;
  meanPowerShift: number;
  spread: Spread;
}

/** A step with its own uncertainty, apart from that of the marks on the eye. */
interface Part extends PlanStep {
  /** Mean of what it adds, D; short of `vector` where it may be turned against its marks. */
  mean: Vector;
  covariance: Covariance;
  /** How much the cut meridian is expected to flatten, D; 0 for what cuts nothing. */
  cut: number;
}

const NULL_VECTOR: Vector = { x: 0, y: 0 };

/** The calculation behind `evaluatePlan`, without cautions. The plan has been completed. */
export function judge(plan: CompletePlan): Effects {
  const before = fromReadings({ flat: plan.flatK, steep: plan.steepK, steepMeridian: plan.steepMeridian });
  const start = toVector(before);
  const back = plan.backSurface === 'omitted' ? NULL_VECTOR : toVector(backSurface(plan.backSurface, before));
  const surgery = [incisionPart(plan), arcsPart(plan, before), lensPart(plan)].filter((part) => part !== null);
  const total = add(start, back);
  const expected = surgery.reduce((sum, part) => add(sum, part.vector), total);
  const intended = surgery.reduce((sum, part) => add(sum, part.intended), total);
  const steps: PlanStep[] = surgery.map(({ source, vector, intended: full }) => ({ source, vector, intended: full }));
  if (plan.backSurface !== 'omitted') steps.unshift({ source: 'backSurface', vector: back, intended: back });
  return {
    before,
    total: fromVector(total),
    steps,
    after: fromVector(expected),
    afterIntended: fromVector(intended),
    meanPowerShift: cutting(surgery),
    spread: spreadOf(total, surgery),
  };
}

function incisionPart(plan: CompletePlan): Part | null {
  if (plan.incisionSite === null) return null;
  const model = incisionFlattening({ width: plan.incisionWidth, site: plan.incisionSite, eye: plan.eye });
  const cut = plan.incisionFlattening ?? model.flattening;
  const vector = flattening(cut, plan.incisionSite);
  const variance = model.sd * model.sd;
  return { source: 'incision', vector, intended: vector, mean: vector, covariance: [variance, 0, variance], cut };
}

function arcsPart(plan: CompletePlan, before: Astigmatism): Part | null {
  if (plan.arcCount === 0 || plan.arcSite === null) return null;
  const { arcLength: length, arcCount: count, age, arcMethod: method, arcFlattening: own } = plan;
  const model = arcFlattening({ length, count, age, rule: ruleOf(before), method });
  const { sdAlong, sdAcross } = own === null ? model : arcSpread(own, count);
  const cut = own ?? model.expected;
  const vector = flattening(cut, plan.arcSite);
  const intended = flattening(own ?? model.intended, plan.arcSite);
  return { source: 'arcs', vector, intended, mean: vector, covariance: covarianceAlong(sdAlong, sdAcross, 2 * RADIANS * plan.arcSite), cut };
}

function lensPart(plan: CompletePlan): Part | null {
  if (!plan.lensCylinder || plan.lensMeridian === null) return null;
  const vector = flattening(plan.lensCylinder, plan.lensMeridian);
  const { mean, covariance } = turnedBy(vector, MODEL.uncertainty.lensRotation.value);
  return { source: 'lens', vector, intended: vector, mean, covariance, cut: 0 };
}

/** Only cuts change the corneal power, and only as far as flattening and steepening differ. */
function cutting(parts: Part[]): number {
  return parts.reduce((sum, { cut }) => sum + meanPowerShift(cut, MODEL.arcs.couplingRatio.value), 0);
}

/**
 * Mean and covariance of all errors together, exactly; that the distribution is normal is an approximation. The marks on
 * the eye are common to all that is placed by them: their error turns the sum of what is done, scatter and all, as one.
 */
function spreadOf(start: Vector, surgery: Part[]): Spread {
  const { keratometry, backSurface: back, placement } = MODEL.uncertainty;
  const base = keratometry.value ** 2 + back.value ** 2;
  const own: Covariance = [0, 0, 0];
  for (const { covariance } of surgery) covariance.forEach((value, index) => (own[index]! += value));
  const scatter = smearedBy(own, placement.value);
  const placed = turnedBy(surgery.reduce((sum, part) => add(sum, part.mean), NULL_VECTOR), placement.value);
  const [xx, xy, yy] = placed.covariance;
  const across = xy + scatter[1];
  return { mean: add(start, placed.mean), covariance: [[xx + scatter[0] + base, across], [across, yy + scatter[2] + base]] };
}
