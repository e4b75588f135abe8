import { meridianDistance, ruleOf } from './angle.js';
import { fromVector, subtract, toVector } from './astigmatism.js';
import { caution, degrees, dioptres, exceeds } from './caution.js';
import type { Effects } from './effects.js';
import { MODEL } from './model.js';
import { RISKS, hasRisk } from './risks.js';
import type { Astigmatism, Caution, CompletePlan } from './types.js';

/** What the eye itself says, whatever is planned. */
export function* eyeCautions(plan: CompletePlan): Generator<Caution> {
  const { steepest, largestDifference } = MODEL.cautions;
  const level = plan.arcCount > 0 ? 'stop' : 'think';
  const difference = plan.steepK - plan.flatK;
  if (exceeds(plan.steepK, steepest)) {
    yield caution('irregular-cornea', level, 'commonPractice', { reading: dioptres(plan.steepK) });
  } else if (exceeds(difference, largestDifference)) {
    yield caution('irregular-cornea', level, 'commonPractice', { difference: dioptres(difference) }, 'irregular-cornea-difference');
  }
  for (const risk of RISKS) {
    if (!hasRisk(plan.risks, risk)) continue;
    yield caution(`risk-${risk}`, level, 'commonPractice', {}, plan.arcCount > 0 ? `risk-${risk}-arcs` : `risk-${risk}`);
  }
}

/** What the result says. */
export function* resultCautions(plan: CompletePlan, effects: Effects): Generator<Caution> {
  const { before, total, after, afterIntended } = effects;
  yield* backSurfaceCautions(plan, before);
  const { noticeable, lensOff } = MODEL.cautions;
  if (overCorrected(total, after)) {
    yield caution('over-correction', 'think', 'commonPractice', { before: degrees(total.meridian), after: degrees(after.meridian) });
  } else if (overCorrected(total, afterIntended)) {
    yield caution('over-correction-if-full', 'note', 'commonPractice', { magnitude: dioptres(afterIntended.magnitude) });
  }
  if (exceeds(after.magnitude, total.magnitude + noticeable)) {
    yield caution('more-than-before', 'think', 'commonPractice', { after: dioptres(after.magnitude), before: dioptres(total.magnitude) });
  }
  if (!plan.lensCylinder || plan.lensMeridian === null) return;
  const answered = beforeLens(effects);
  const off = meridianDistance(plan.lensMeridian, answered.meridian);
  if (exceeds(answered.magnitude, noticeable) && exceeds(off, lensOff)) {
    yield caution('lens-off', 'think', 'felipe2011', { off: degrees(off), answered: degrees(answered.meridian) });
  }
}

/** The astigmatism that the lens has to answer: all but its own step. */
function beforeLens({ after, steps }: Effects): Astigmatism {
  const lens = steps.find((step) => step.source === 'lens')!;
  return fromVector(subtract(toVector(after), lens.vector));
}

function* backSurfaceCautions(plan: CompletePlan, before: Astigmatism): Generator<Caution> {
  if (plan.backSurface !== 'omitted' || !exceeds(before.magnitude, MODEL.cautions.noticeable)) return;
  const rule = ruleOf(before);
  if (rule === 'oblique') return;
  if (rule === 'with') yield caution('back-surface-omitted', 'think', 'savini2015');
  else yield caution('back-surface-omitted', 'note', 'savini2015', {}, 'back-surface-omitted-against');
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
