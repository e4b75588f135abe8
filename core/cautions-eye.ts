import { meridianDistance, ruleOf } from './angle.js';
import { fromVector, subtract } from './astigmatism.js';
import { caution, degrees, dioptres, exceeds } from './caution.js';
import type { Effects } from './effects.js';
import { MODEL } from './model.js';
import { RISKS, hasRisk } from './risks.js';
import type { Astigmatism, Caution, CompletePlan } from './types.js';

/** What the eye itself says, whatever is planned. Put into a list, which is several times as fast as to be asked for it one by one. */
export function eyeCautions(found: Caution[], plan: CompletePlan): void {
  const { steepest, largestDifference } = MODEL.cautions;
  const level = plan.arcCount > 0 ? 'stop' : 'think';
  const difference = plan.steepK - plan.flatK;
  if (exceeds(plan.steepK, steepest)) {
    found.push(caution('irregular-cornea', level, 'commonPractice', { reading: dioptres(plan.steepK) }));
  } else if (exceeds(difference, largestDifference)) {
    found.push(caution('irregular-cornea', level, 'commonPractice', { difference: dioptres(difference) }, 'irregular-cornea-difference'));
  }
  for (const risk of RISKS) {
    if (!hasRisk(plan.risks, risk)) continue;
    found.push(caution(`risk-${risk}`, level, 'commonPractice', {}, plan.arcCount > 0 ? `risk-${risk}-arcs` : `risk-${risk}`));
  }
}

/** What the result says. */
export function resultCautions(found: Caution[], plan: CompletePlan, effects: Effects): void {
  const { before, total, after, afterIntended } = effects;
  backSurfaceCautions(found, plan, before);
  const { noticeable, lensOff } = MODEL.cautions;
  if (overCorrected(total, after)) {
    found.push(caution('over-correction', 'think', 'commonPractice', { before: degrees(total.meridian), after: degrees(after.meridian) }));
  } else if (overCorrected(total, afterIntended)) {
    found.push(caution('over-correction-if-full', 'note', 'commonPractice', { magnitude: dioptres(afterIntended.magnitude) }));
  }
  if (exceeds(after.magnitude, total.magnitude + noticeable)) {
    found.push(caution('more-than-before', 'think', 'commonPractice', { after: dioptres(after.magnitude), before: dioptres(total.magnitude) }));
  }
  if (!plan.lensCylinder || plan.lensMeridian === null) return;
  const answered = beforeLens(effects);
  const off = meridianDistance(plan.lensMeridian, answered.meridian);
  if (exceeds(answered.magnitude, noticeable) && exceeds(off, lensOff)) {
    found.push(caution('lens-off', 'think', 'felipe2011', { off: degrees(off), answered: degrees(answered.meridian) }));
  }
}

/** The astigmatism that the lens has to answer: all but its own step, which is the last. */
function beforeLens({ result, steps }: Effects): Astigmatism {
  return fromVector(subtract(result, steps.at(-1)!.vector));
}

function backSurfaceCautions(found: Caution[], plan: CompletePlan, before: Astigmatism): void {
  if (plan.backSurface !== 'omitted' || !exceeds(before.magnitude, MODEL.cautions.noticeable)) return;
  const rule = ruleOf(before);
  if (rule === 'oblique') return;
  if (rule === 'with') found.push(caution('back-surface-omitted', 'think', 'savini2015'));
  else found.push(caution('back-surface-omitted', 'note', 'savini2015', {}, 'back-surface-omitted-against'));
}

/** Turn of the axis: what remains is steep across what was there. */
function overCorrected(before: Astigmatism, after: Astigmatism): boolean {
  const { noticeable, turned } = MODEL.cautions;
  return (
    exceeds(before.magnitude, noticeable) &&
    exceeds(after.magnitude, noticeable) &&
    exceeds(meridianDistance(before.meridian, after.meridian), turned)
  );
}
