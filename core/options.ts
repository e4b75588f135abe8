import { fromTemporal } from './angle.js';
import { cautionsFor } from './cautions.js';
import { judge } from './effects.js';
import { completePlan } from './fields.js';
import { GOOD } from './model.js';
import { candidates } from './options-candidates.js';
import type { PlanLimits } from './options-candidates.js';
import { englishReason, noMore, reasonFor } from './options-reasons.js';
import type { SuggestedPlan, Surgery } from './options-types.js';
import { evaluatePlan } from './plan.js';
import { chanceWithin } from './spread.js';
import type { Caution, CompletePlan, EyePlan } from './types.js';

export { DEFAULT_SITES } from './options-candidates.js';
export type { EntrySite, PlanLimits } from './options-candidates.js';
export { REASON_TEXT, reasonText } from './options-reasons.js';
export type { ReasonWording } from './options-reasons.js';
export type { PlanReason, SuggestedPlan, Surgery, Surplus } from './options-types.js';

/** How many plans are listed at most. */
const LISTED = 6;

/** How far the normal approximation of a chance may be off: 0.025 where a strong lens may turn, and a little to be sure. */
const UNSURE = 0.03;

/**
 * Plans for an eye within the surgeon's limits, ranked by the chance that 0.50 D or less remain, in whole hundredths, then
 * by least surgery. Exhaustive over sites, widths, arcs of 30–90° in steps of 5° and the lenses at hand; deterministic.
 * No plan is listed when any other of all these does as well with no more of anything, and of plans that differ in the
 * length of their arcs or the power of their lens alone the best stands for all. What a caution forbids is not offered.
 * @throws RangeError for a plan or limits that cannot be accepted.
 */
export function suggestPlans(eye: EyePlan, limits: PlanLimits = {}): SuggestedPlan[] {
  const complete = completePlan(eye);
  const judged: Judged[] = [];
  for (const rivals of gathered(candidates(complete, limits, cautionsAgainstArcs(complete).length === 0))) {
    const beaten = judged.some((other) => noMore(other.surgery, rivals.surgery) && other.chance > rivals.chance + UNSURE);
    if (!beaten) judged.push(bestOf(rivals));
  }
  const worthwhile = judged.filter((one) => !judged.some((other) => beats(other, one))).sort(byRank);
  const first = new Map(worthwhile.toReversed().map((option) => [kindOf(option.plan), option]));
  return listed(worthwhile.filter((option) => first.get(kindOf(option.plan)) === option)).map((option, _, all) => {
    const { plan, outcome, ofHundred, surgery } = option;
    const why = reasonFor(option, all);
    return { plan, outcome, ofHundred, surgery, reason: englishReason(why), why };
  });
}

/** Why no arcs are offered in this eye: what would say stop as soon as one is planned. Empty where they are. */
export function cautionsAgainstArcs(eye: CompletePlan): Caution[] {
  return cautionsFor({ ...eye, arcCount: 1, arcSite: 0, arcLength: 45 }).filter(({ level }) => level === 'stop');
}

/** Plans with the same amount of surgery, whatever the power of a lens: of them only the one with the best chance counts. */
interface Rivals {
  /** Of the first of them. */
  surgery: Surgery;
  plans: Approximated[];
  /** The best chance among them, as approximated. */
  chance: number;
}

interface Approximated {
  plan: CompletePlan;
  /** By the normal approximation. */
  chance: number;
}

function gathered(plans: Iterable<CompletePlan>): Rivals[] {
  const all = new Map<string, Rivals>();
  for (const plan of plans) {
    const chance = chanceWithin(judge(plan).spread, GOOD);
    const surgery = surgeryOf(plan);
    const key = `${surgery.width} ${surgery.arcs} ${surgery.arcDegrees} ${surgery.lens > 0}`;
    const rivals = all.get(key) ?? { surgery, plans: [], chance: 0 };
    rivals.plans.push({ plan, chance });
    rivals.chance = Math.max(rivals.chance, chance);
    all.set(key, rivals);
  }
  return [...all.values()];
}

/** The best of plans with the same surgery. Only those are judged exactly that may still be better than the best so far. */
function bestOf({ plans }: Rivals): Judged {
  let best: Judged | null = null;
  for (const { plan, chance } of plans.sort((a, b) => b.chance - a.chance)) {
    if (best && chance + UNSURE < best.chance) break;
    const judged = judgedExactly(plan);
    if (!best || byRank(judged, best) < 0) best = judged;
  }
  return best!;
}

interface Judged extends Omit<SuggestedPlan, 'reason' | 'why'> {
  chance: number;
}

function judgedExactly(plan: CompletePlan): Judged {
  const outcome = evaluatePlan(plan);
  const chance = outcome.chanceWithin(GOOD);
  return { plan, outcome, chance, ofHundred: Math.round(100 * chance), surgery: surgeryOf(plan) };
}

function surgeryOf(plan: CompletePlan): Surgery {
  return { arcs: plan.arcCount, arcDegrees: plan.arcCount * plan.arcLength, lens: plan.lensCylinder ?? 0, width: plan.incisionWidth };
}

function kindOf({ incisionSite, incisionWidth, arcCount, lensCylinder }: CompletePlan): string {
  return `${incisionSite} ${incisionWidth} ${arcCount} ${Boolean(lensCylinder)}`;
}

/** More chance first; then fewer cuts, no lens, shorter arcs, the narrower entry, and at last the last fractions of the chance. */
function byRank(a: Judged, b: Judged): number {
  return (
    b.ofHundred - a.ofHundred ||
    a.surgery.arcs - b.surgery.arcs ||
    Number(a.surgery.lens > 0) - Number(b.surgery.lens > 0) ||
    a.surgery.arcDegrees - b.surgery.arcDegrees ||
    a.surgery.width - b.surgery.width ||
    // Both ends of a meridian come out alike but for rounding.
    Math.round(1e9 * (b.chance - a.chance)) ||
    fromTemporal(a.plan.incisionSite!, a.plan.eye) - fromTemporal(b.plan.incisionSite!, b.plan.eye)
  );
}

/** Whether a plan does no more of anything and stands before the other: it does at least as well, and better or with less of something. */
function beats(a: Judged, b: Judged): boolean {
  return noMore(a.surgery, b.surgery) && byRank(a, b) < 0;
}

/**
 * The first few and the last, by which the others are measured: it is the one with the least surgery, for that beats all that
 * do no better and more.
 */
function listed(ranked: Judged[]): Judged[] {
  return ranked.length <= LISTED ? ranked : [...ranked.slice(0, LISTED - 1), ranked.at(-1)!];
}
