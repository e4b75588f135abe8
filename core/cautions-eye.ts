import { meridianDistance, ruleOf } from './angle.js';
import { fromVector, subtract, toVector } from './astigmatism.js';
import { caution, degrees, exceeds } from './caution.js';
import type { Effects } from './effects.js';
import { MODEL } from './model.js';
import { hasRisk } from './risks.js';
import type { Astigmatism, Caution, CompletePlan, Risk } from './types.js';

/** What each ticked risk means where arcs are planned, and without. */
const RISK_TEXT: Record<Risk, { arcs: string; plain: string }> = {
  collagen: {
    arcs: 'Rheumatoid or another collagen disease: a cornea that may melt or heal badly should have no arcs.',
    plain: 'Rheumatoid or another collagen disease: arcs are not offered.',
  },
  'dry-eye': {
    arcs: 'Severe dry eye: arcs cut corneal nerves and make it worse, and the readings cannot be relied on.',
    plain: 'Severe dry eye: treat it and measure again before planning; the readings cannot be relied on.',
  },
  'radial-cuts': {
    arcs: 'Earlier radial cuts: arcs that cross them can open them, and the effect cannot be foreseen.',
    plain: 'Earlier radial cuts: arcs are not offered, and an incision that crosses one can open it.',
  },
  ectasia: {
    arcs: 'Ectasia or a thinning edge of the cornea: arcs weaken it further.',
    plain: 'Ectasia or a thinning edge of the cornea: arcs are not offered, and the astigmatism may change.',
  },
};

/** What the eye itself says, whatever is planned. */
export function* eyeCautions(plan: CompletePlan): Generator<Caution> {
  const { steepest, largestDifference } = MODEL.cautions;
  const level = plan.arcCount > 0 ? 'stop' : 'think';
  const difference = plan.steepK - plan.flatK;
  const steep = exceeds(plan.steepK, steepest.value);
  if (steep || exceeds(difference, largestDifference.value)) {
    const why = steep ? `a reading of ${plan.steepK.toFixed(2)} D` : `a difference of ${difference.toFixed(2)} D`;
    yield caution('irregular-cornea', level, 'commonPractice', `With ${why} the cornea may be irregular or thinning. No arcs without topography.`);
  }
  for (const risk of Object.keys(RISK_TEXT) as Risk[]) {
    if (!hasRisk(plan.risks, risk)) continue;
    yield caution(`risk-${risk}`, level, 'commonPractice', plan.arcCount > 0 ? RISK_TEXT[risk].arcs : RISK_TEXT[risk].plain);
  }
}

/** What the result says. */
export function* resultCautions(plan: CompletePlan, effects: Effects): Generator<Caution> {
  const { before, total, after, afterIntended, steps } = effects;
  yield* backSurfaceCautions(plan, before);
  if (steps.every((step) => step.source === 'backSurface')) return;
  const { noticeable, lensOff } = MODEL.cautions;
  if (overCorrected(total, after)) {
    yield caution('over-correction', 'think', 'commonPractice', `Over-correction is expected: the steep meridian turns from ${degrees(total.meridian)} to ${degrees(after.meridian)}.`);
  } else if (overCorrected(total, afterIntended)) {
    yield caution('over-correction-if-full', 'note', 'commonPractice', `If the full intended effect were reached, this eye would be over-corrected by ${afterIntended.magnitude.toFixed(2)} D.`);
  }
  if (exceeds(after.magnitude, total.magnitude + noticeable.value)) {
    yield caution('more-than-before', 'think', 'commonPractice', `The plan leaves more astigmatism (${after.magnitude.toFixed(2)} D) than there is without it (${total.magnitude.toFixed(2)} D).`);
  }
  if (!plan.lensCylinder || plan.lensMeridian === null) return;
  const answered = beforeLens(effects);
  const off = meridianDistance(plan.lensMeridian, answered.meridian);
  if (exceeds(answered.magnitude, noticeable.value) && exceeds(off, lensOff.value)) {
    yield caution('lens-off', 'think', 'felipe2011', `The lens is ${degrees(off)} off the steep meridian that it has to answer (${degrees(answered.meridian)}). At 10° a third of its effect is lost.`);
  }
}

/** The astigmatism that the lens has to answer: all but its own step. */
function beforeLens({ after, steps }: Effects): Astigmatism {
  const lens = steps.find((step) => step.source === 'lens')!;
  return fromVector(subtract(toVector(after), lens.vector));
}

function* backSurfaceCautions(plan: CompletePlan, before: Astigmatism): Generator<Caution> {
  if (plan.backSurface !== 'omitted' || !exceeds(before.magnitude, MODEL.cautions.noticeable.value)) return;
  const rule = ruleOf(before);
  if (rule === 'oblique') return;
  const [level, upright, tends] = rule === 'with' ? (['think', 90, 'over'] as const) : (['note', 180, 'under'] as const);
  yield caution('back-surface-omitted', level, 'savini2015', `The back of the cornea is not taken into account. In an eye that is steep near ${upright}° this tends to ${tends}-correct.`);
}

/** Turn of the axis: what remains is steep across what was there. */
function overCorrected(before: Astigmatism, after: Astigmatism): boolean {
  const { noticeable, turned } = MODEL.cautions;
  return (
    exceeds(before.magnitude, noticeable.value) &&
    exceeds(after.magnitude, noticeable.value) &&
    exceeds(meridianDistance(before.meridian, after.meridian), turned.value)
  );
}
