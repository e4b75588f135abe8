import { fromTemporal } from './angle.js';
import { cautionsFor } from './cautions.js';
import { judge } from './effects.js';
import { completePlan } from './fields.js';
import { GOOD } from './model.js';
import { candidates } from './options-candidates.js';
import type { Candidate, PlanLimits } from './options-candidates.js';
import { reasonFor } from './options-reasons.js';
import type { SuggestedPlan, Surgery } from './options-types.js';
import { evaluatePlan } from './plan.js';
import { chanceWithin } from './spread.js';
import type { Caution, CompletePlan, EyePlan } from './types.js';

export { DEFAULT_SITES } from './options-candidates.js';
export type { EntrySite, PlanLimits } from './options-candidates.js';
export type { SuggestedPlan, Surgery } from './options-types.js';

/** How many plans are listed at most. */
const LISTED = 6;

/** Plans of a kind that are judged exactly are those which come so near to its best by the normal approximation. */
const NEAR_BEST = 0.015;

/**
 * Plans for an eye within the surgeon's limits, ranked by the chance that 0.50 D or less remain, in whole hundredths, then
 * by least surgery. Exhaustive over sites, widths, arcs of 30–90° in steps of 5° and the lenses at hand; deterministic.
 * Each kind (site, width, number of arcs, with or without a lens) sends its best plan; one is left out when another of these
 * does as well with no more of anything. What a caution forbids is not offered.
 * @throws RangeError for a plan or limits that cannot be accepted.
 */
export function suggestPlans(eye: EyePlan, limits: PlanLimits = {}): SuggestedPlan[] {
  const complete = completePlan(eye);
  const kinds = new Map<string, Approximated[]>();
  for (const candidate of candidates(complete, limits, cautionsAgainstArcs(complete).length === 0)) gather(kinds, candidate);
  const judged = [...kinds.values()].map(bestOfKind);
  const worthwhile = judged.filter((one) => !judged.some((other) => other !== one && beats(other, one))).sort(byRank);
  return listed(worthwhile).map((option, _, all) => ({ ...option, reason: reasonFor(option, all) }));
}

/** Why no arcs are offered in this eye: what would say stop as soon as one is planned. Empty where they are. */
export function cautionsAgainstArcs(eye: CompletePlan): Caution[] {
  return cautionsFor({ ...eye, arcCount: 1, arcSite: 0, arcLength: 45 }).filter(({ level }) => level === 'stop');
}

/** Gathers the plans of each kind with their chance by the normal approximation. */
function gather(kinds: Map<string, Approximated[]>, { plan, kind }: Candidate): void {
  const approximated = { plan, chance: chanceWithin(judge(plan).spread, GOOD) };
  const others = kinds.get(kind);
  if (others) others.push(approximated);
  else kinds.set(kind, [approximated]);
}

/** The best plan of a kind by its exact chance, and at equal hundredths the one with the least surgery. */
function bestOfKind(plans: readonly Approximated[]): Judged {
  const best = Math.max(...plans.map(({ chance }) => chance));
  const near = plans.filter(({ chance }) => chance >= best - NEAR_BEST);
  return near.map(({ plan }) => judgedExactly(plan)).sort(byRank)[0]!;
}

interface Approximated {
  plan: CompletePlan;
  chance: number;
}

type Judged = Omit<SuggestedPlan, 'reason'>;

function judgedExactly(plan: CompletePlan): Judged {
  const outcome = evaluatePlan(plan);
  return { plan, outcome, ofHundred: Math.round(100 * outcome.chanceWithin(GOOD)), surgery: surgeryOf(plan) };
}

function surgeryOf(plan: CompletePlan): Surgery {
  return { arcs: plan.arcCount, arcDegrees: plan.arcCount * plan.arcLength, lens: plan.lensCylinder ?? 0, width: plan.incisionWidth };
}

/** More chance first; then fewer cuts, no lens, shorter arcs, the narrower entry, and at last the smaller remainder. */
function byRank(a: Judged, b: Judged): number {
  return (
    b.ofHundred - a.ofHundred ||
    a.surgery.arcs - b.surgery.arcs ||
    Number(a.surgery.lens > 0) - Number(b.surgery.lens > 0) ||
    a.surgery.arcDegrees - b.surgery.arcDegrees ||
    a.surgery.width - b.surgery.width ||
    a.outcome.after.magnitude - b.outcome.after.magnitude ||
    fromTemporal(a.plan.incisionSite!, a.plan.eye) - fromTemporal(b.plan.incisionSite!, b.plan.eye)
  );
}

/** Whether a plan does at least as well with no more of anything, and better or with less of something. */
function beats(a: Judged, b: Judged): boolean {
  const [x, y] = [a.surgery, b.surgery];
  const noMore = x.arcs <= y.arcs && x.arcDegrees <= y.arcDegrees && !(x.lens > 0 && y.lens === 0) && x.width <= y.width;
  return a.ofHundred >= b.ofHundred && noMore && byRank(a, b) < 0;
}

/** The first few, of which the plan with the least surgery is always one: it is what the others are measured by. */
function listed(ranked: Judged[]): Judged[] {
  if (ranked.length <= LISTED) return ranked;
  const least = ranked.reduce((a, b) => (amount(b) < amount(a) ? b : a));
  const first = ranked.slice(0, LISTED);
  return first.includes(least) ? first : [...first.slice(0, LISTED - 1), least];
}

/** Something to order plans by how much is done; the weights only break ties. */
function amount({ surgery }: Judged): number {
  return 1000 * surgery.arcs + 500 * Number(surgery.lens > 0) + surgery.arcDegrees + surgery.width;
}
