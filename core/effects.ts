import { meanPowerShift } from './arcs.js';
import { add, fromVector, toVector } from './astigmatism.js';
import { MODEL } from './model.js';
import { hasRisk } from './risks.js';
import { momentsOf } from './scatter.js';
import type { Scatter } from './scatter.js';
import { backSurfaceStep, surgeryOf } from './steps.js';
import type { Part } from './steps.js';
import type { Astigmatism, CompletePlan, PlanStep, Spread, Vector } from './types.js';

/** What each part of a plan does, and what it comes to. */
export interface Effects {
  before: Astigmatism;
  /** Front and back surface together, before anything is done: what the plan has to answer. */
  total: Astigmatism;
  steps: PlanStep[];
  /** `after` as a vector, D. */
  result: Vector;
  after: Astigmatism;
  afterIntended: Astigmatism;
  /** Only cuts change the corneal power, and only as far as flattening and steepening differ. */
  meanPowerShift: number;
  scatter: Scatter;
  spread: Spread;
}

/** The calculation behind `evaluatePlan`, without cautions. The plan has been completed, so that nothing is checked again. */
export function judge(plan: CompletePlan): Effects {
  const before: Astigmatism = { magnitude: plan.steepK - plan.flatK, meridian: plan.steepMeridian };
  const back = backSurfaceStep(plan, before);
  const surgery = surgeryOf(plan, before);
  const total = back ? add(toVector(before), back.vector) : toVector(before);
  // Summed as numbers: a vector for each step, with every movement of a drag, is what takes the time here and below.
  let { x, y } = total;
  let { x: intendedX, y: intendedY } = total;
  let shift = 0;
  const steps = back ? [back] : [];
  for (const { step, cut } of surgery) {
    steps.push(step);
    x += step.vector.x;
    y += step.vector.y;
    intendedX += step.intended.x;
    intendedY += step.intended.y;
    shift += meanPowerShift(cut, MODEL.arcs.couplingRatio);
  }
  const result = { x, y };
  const scatter = scatterOf(plan, total, surgery);
  return {
    before,
    total: fromVector(total),
    steps,
    result,
    after: fromVector(result),
    afterIntended: fromVector({ x: intendedX, y: intendedY }),
    meanPowerShift: shift,
    scatter,
    spread: momentsOf(scatter),
  };
}

/** The independent errors, root-sum-square. A lens alone turns by its marks and against them, which is one turn. */
function scatterOf(plan: CompletePlan, start: Vector, surgery: Part[]): Scatter {
  const { keratometry, keratometryDryEye, backSurface, placement, lensRotation } = MODEL.uncertainty;
  const reading = hasRisk(plan.risks, 'dry-eye') ? keratometryDryEye : keratometry;
  const base = reading ** 2 + backSurface ** 2;
  const [first, second] = surgery;
  if (first?.step.source === 'lens' && !second) {
    return { start, base, placed: first.step.vector, own: [0, 0, 0], turning: Math.hypot(placement, lensRotation) };
  }
  let x = 0;
  let y = 0;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (const { mean, covariance } of surgery) {
    x += mean.x;
    y += mean.y;
    xx += covariance[0];
    xy += covariance[1];
    yy += covariance[2];
  }
  return { start, base, placed: { x, y }, own: [xx, xy, yy], turning: placement };
}
