import { meanPowerShift } from './arcs.js';
import { add, fromVector, toVector } from './astigmatism.js';
import { fromReadings } from './keratometry.js';
import { MODEL } from './model.js';
import { hasRisk } from './risks.js';
import { momentsOf } from './scatter.js';
import type { Covariance, Scatter } from './scatter.js';
import { backSurfaceStep, surgeryOf } from './steps.js';
import type { Part } from './steps.js';
import type { Astigmatism, CompletePlan, PlanStep, Spread, Vector } from './types.js';

/** What each part of a plan does, and what it comes to. */
export interface Effects {
  before: Astigmatism;
  /** Front and back surface together, before anything is done: what the plan has to answer. */
  total: Astigmatism;
  steps: PlanStep[];
  after: Astigmatism;
  afterIntended: Astigmatism;
  meanPowerShift: number;
  scatter: Scatter;
  spread: Spread;
}

const NULL_VECTOR: Vector = { x: 0, y: 0 };

/** The calculation behind `evaluatePlan`, without cautions. The plan has been completed. */
export function judge(plan: CompletePlan): Effects {
  const before = fromReadings({ flat: plan.flatK, steep: plan.steepK, steepMeridian: plan.steepMeridian });
  const back = backSurfaceStep(plan, before);
  const surgery = surgeryOf(plan, before);
  const total = add(toVector(before), back?.vector ?? NULL_VECTOR);
  const steps: PlanStep[] = surgery.map(({ source, vector, intended, basis }) => ({ source, vector, intended, basis }));
  const scatter = scatterOf(plan, total, surgery);
  return {
    before,
    total: fromVector(total),
    steps: back ? [back, ...steps] : steps,
    after: fromVector(surgery.reduce((sum, part) => add(sum, part.vector), total)),
    afterIntended: fromVector(surgery.reduce((sum, part) => add(sum, part.intended), total)),
    meanPowerShift: cutting(surgery),
    scatter,
    spread: momentsOf(scatter),
  };
}

/** Only cuts change the corneal power, and only as far as flattening and steepening differ. */
function cutting(parts: Part[]): number {
  return parts.reduce((sum, { cut }) => sum + meanPowerShift(cut, MODEL.arcs.couplingRatio), 0);
}

/** The independent errors, root-sum-square. A lens alone turns by its marks and against them, which is one turn. */
function scatterOf(plan: CompletePlan, start: Vector, surgery: Part[]): Scatter {
  const { keratometry, keratometryDryEye, backSurface, placement, lensRotation } = MODEL.uncertainty;
  const reading = hasRisk(plan.risks, 'dry-eye') ? keratometryDryEye : keratometry;
  const base = reading ** 2 + backSurface ** 2;
  const lensAlone = surgery.length === 1 && surgery[0]!.source === 'lens';
  if (lensAlone) {
    return { start, base, placed: surgery[0]!.vector, own: [0, 0, 0], turning: Math.hypot(placement, lensRotation) };
  }
  const own: Covariance = [0, 0, 0];
  for (const { covariance } of surgery) covariance.forEach((value, index) => (own[index]! += value));
  return { start, base, placed: surgery.reduce((sum, part) => add(sum, part.mean), NULL_VECTOR), own, turning: placement };
}
