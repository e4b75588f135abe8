import { ruleOf } from './angle.js';
import { arcFlattening, arcSpread, meanPowerShift } from './arcs.js';
import { add, flattening, fromVector, toVector } from './astigmatism.js';
import { backSurface } from './backSurface.js';
import { incisionFlattening } from './incision.js';
import { fromReadings } from './keratometry.js';
import { MODEL } from './model.js';
import { covarianceAlong, turnedBy } from './spread.js';
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

/** A step with what it adds to the uncertainty, in its own right and through the marks on the eye. */
interface Part extends PlanStep {
  covariance: Covariance;
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
  const vector = flattening(plan.incisionFlattening ?? model.flattening, plan.incisionSite);
  const variance = model.sd * model.sd;
  return { source: 'incision', vector, intended: vector, covariance: [variance, 0, variance] };
}

function arcsPart(plan: CompletePlan, before: Astigmatism): Part | null {
  if (plan.arcCount === 0 || plan.arcSite === null) return null;
  const { arcLength: length, arcCount: count, age, arcMethod: method, arcFlattening: own } = plan;
  const model = arcFlattening({ length, count, age, rule: ruleOf(before), method });
  const { sdAlong, sdAcross } = own === null ? model : arcSpread(own, count);
  return {
    source: 'arcs',
    vector: flattening(own ?? model.expected, plan.arcSite),
    intended: flattening(own ?? model.intended, plan.arcSite),
    covariance: covarianceAlong(sdAlong, sdAcross, 2 * RADIANS * plan.arcSite),
  };
}

function lensPart(plan: CompletePlan): Part | null {
  if (!plan.lensCylinder || plan.lensMeridian === null) return null;
  const vector = flattening(plan.lensCylinder, plan.lensMeridian);
  const { covariance } = turnedBy(vector, MODEL.uncertainty.lensRotation.value);
  return { source: 'lens', vector, intended: vector, covariance };
}

/** Only cuts change the corneal power, and only as far as flattening and steepening differ. */
function cutting(parts: Part[]): number {
  const cuts = parts.filter((part) => part.source !== 'lens');
  return cuts.reduce((sum, { vector }) => sum + meanPowerShift(Math.hypot(vector.x, vector.y), MODEL.arcs.couplingRatio.value), 0);
}

/**
 * Root-sum-square of the independent errors. The marks on the eye are common to all that is placed by them, so their
 * error turns the sum of these vectors as one.
 */
function spreadOf(start: Vector, surgery: Part[]): Spread {
  const { keratometry, backSurface: back, placement } = MODEL.uncertainty;
  const base = keratometry.value ** 2 + back.value ** 2;
  const placed = turnedBy(surgery.reduce((sum, part) => add(sum, part.vector), NULL_VECTOR), placement.value);
  let [xx, xy, yy] = placed.covariance;
  for (const { covariance } of surgery) {
    xx += covariance[0];
    xy += covariance[1];
    yy += covariance[2];
  }
  return { mean: add(start, placed.mean), covariance: [[xx + base, xy], [xy, yy + base]] };
}
