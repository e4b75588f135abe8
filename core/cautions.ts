import { RADIANS, meridianDistance, ruleOf, turn } from './angle.js';
import { completePlan } from './fields.js';
import { MODEL } from './model.js';
import { judge } from './effects.js';
import type { Effects } from './effects.js';
import type { SourceId } from './references.js';
import type { Caution, CautionLevel, CompletePlan, EyePlan } from './types.js';

/**
 * What is allowed but unwise, or worth knowing, in the order stop, think, note.
 * @throws RangeError for a plan outside the limits.
 */
export function cautionsFor(plan: EyePlan): Caution[] {
  const complete = completePlan(plan);
  return cautionsOf(complete, judge(complete));
}

/** The same for a plan that has been completed and calculated. */
export function cautionsOf(plan: CompletePlan, effects: Effects): Caution[] {
  const found = [...cautionsOnShape(plan), ...cautionsOnArcs(plan), ...cautionsOnResult(plan, effects)];
  return found.sort((a, b) => ORDER[a.level] - ORDER[b.level]);
}

const ORDER: Record<CautionLevel, number> = { stop: 0, think: 1, note: 2 };

function caution(id: string, level: CautionLevel, source: SourceId, text: string): Caution {
  return { id, level, text, source };
}

function* cautionsOnShape(plan: CompletePlan): Generator<Caution> {
  const { steepest, largestDifference } = MODEL.cautions;
  const steep = exceeds(plan.steepK, steepest.value);
  if (steep || exceeds(plan.steepK - plan.flatK, largestDifference.value)) {
    const why = steep ? `a reading of ${plan.steepK.toFixed(2)} D` : `a difference of ${(plan.steepK - plan.flatK).toFixed(2)} D`;
    yield caution(
      'irregular-cornea',
      plan.arcCount > 0 ? 'stop' : 'think',
      'commonPractice',
      `With ${why} the cornea may be irregular or thinning. No arcs without topography.`,
    );
  }
}

function* cautionsOnArcs(plan: CompletePlan): Generator<Caution> {
  if (plan.arcCount === 0) return;
  const { longest } = MODEL.arcs;
  const { shortestArc } = MODEL.cautions;
  yield* cautionsOnDepth(plan);
  if (exceeds(plan.arcLength, longest.value)) {
    yield caution('arc-too-long', 'stop', 'relaxingTable', `An arc of ${degrees(plan.arcLength)} is longer than any in the table (${longest.value}°). Its effect is counted as that of ${longest.value}°.`);
  } else if (plan.arcLength < shortestArc.value) {
    yield caution('arc-short', 'note', 'relaxingTable', `The table has no arc shorter than ${shortestArc.value}°. The effect of ${degrees(plan.arcLength)} is extrapolated.`);
  }
  if (overlapping(plan)) {
    yield caution('arc-over-incision', 'think', 'commonPractice', 'The arc and the incision overlap. Cut the arc after the entry is closed, or move one of them.');
  }
  if (plan.age === null && plan.arcFlattening === null) {
    yield caution('age-unknown', 'note', 'assumed', `No age is given; the arcs are calculated for ${MODEL.arcs.referenceAge.value} years.`);
  }
}

function* cautionsOnDepth(plan: CompletePlan): Generator<Caution> {
  const { deepestShare } = MODEL.cautions;
  if (plan.localThickness === null || plan.arcDepth === null) {
    const missing = plan.localThickness === null ? 'The thickness where the arc will lie is not known' : 'The depth of the arc is not given';
    yield caution('thickness-unknown', 'think', 'commonPractice', `${missing}. Measure at the site before any cut; the central thickness does not tell.`);
    return;
  }
  const share = plan.arcDepth / plan.localThickness;
  if (!exceeds(deepestShare.value, share)) {
    yield caution(
      'arc-too-deep',
      'stop',
      'commonPractice',
      `${plan.arcDepth.toFixed(0)} µm is ${(100 * share).toFixed(0)} % of the local thickness (${plan.localThickness.toFixed(0)} µm). From ${100 * deepestShare.value} % the cornea may be perforated.`,
    );
  }
}

function* cautionsOnResult(plan: CompletePlan, { before, total, after, afterIntended, steps }: Effects): Generator<Caution> {
  const { noticeable } = MODEL.cautions;
  const surgery = steps.some((step) => step.source !== 'backSurface');
  if (plan.backSurface === 'omitted' && exceeds(before.magnitude, noticeable.value)) {
    const rule = ruleOf(before);
    if (rule === 'with') {
      yield caution('back-surface-omitted', 'think', 'savini2015', 'The back of the cornea is not taken into account. In an eye that is steep near 90° this tends to over-correct.');
    } else if (rule === 'against') {
      yield caution('back-surface-omitted', 'note', 'savini2015', 'The back of the cornea is not taken into account. In an eye that is steep near 180° this tends to under-correct.');
    }
  }
  if (!surgery) return;
  if (overCorrected(total, after)) {
    yield caution('over-correction', 'think', 'commonPractice', `Over-correction is expected: the steep meridian turns from ${degrees(total.meridian)} to ${degrees(after.meridian)}.`);
  } else if (overCorrected(total, afterIntended)) {
    yield caution('over-correction-if-full', 'note', 'commonPractice', `If the full intended effect were reached, this eye would be over-corrected by ${afterIntended.magnitude.toFixed(2)} D.`);
  }
  if (exceeds(after.magnitude, total.magnitude + noticeable.value)) {
    yield caution('more-than-before', 'think', 'commonPractice', `The plan leaves more astigmatism (${after.magnitude.toFixed(2)} D) than there is without it (${total.magnitude.toFixed(2)} D).`);
  }
}

/** Above a limit by more than rounding: readings of 43.1 and 43 D differ by 0.1, whatever their binary forms do. */
function exceeds(value: number, limit: number): boolean {
  return value > limit + 1e-9;
}

function overCorrected(before: Effects['before'], after: Effects['after']): boolean {
  const { noticeable, turned } = MODEL.cautions;
  return (
    exceeds(before.magnitude, noticeable.value) &&
    exceeds(after.magnitude, noticeable.value) &&
    exceeds(meridianDistance(before.meridian, after.meridian), turned.value)
  );
}

/** Whether an arc and the incision share a part of the circumference. */
function overlapping(plan: CompletePlan): boolean {
  if (plan.incisionSite === null || plan.arcSite === null) return false;
  const limbus = MODEL.eye.limbusDiameter.value;
  const reach = plan.arcLength / 2 + Math.asin(plan.incisionWidth / limbus) / RADIANS;
  const apart = Math.abs(turn(plan.arcSite, plan.incisionSite));
  return apart < reach || (plan.arcCount === 2 && 180 - apart < reach);
}

function degrees(value: number): string {
  return `${Number(value.toFixed(1)) || 180}°`;
}
