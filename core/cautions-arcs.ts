import { RADIANS, ruleOf, turn } from './angle.js';
import { caution, degrees, exceeds } from './caution.js';
import type { Effects } from './effects.js';
import { MODEL } from './model.js';
import type { Caution, CompletePlan } from './types.js';

/** What the planned arcs themselves say. */
export function* arcCautions(plan: CompletePlan, { total }: Effects): Generator<Caution> {
  if (plan.arcCount === 0) return;
  yield* lengthCautions(plan);
  yield* depthCautions(plan);
  yield* zoneCautions(plan);
  yield* tableCautions(plan, total.magnitude);
  if (overlapping(plan)) {
    yield caution('arc-over-incision', 'think', 'commonPractice', 'The arc and the incision overlap. Cut the arc after the entry is closed, or move one of them.');
  }
  if (ruleOf({ meridian: plan.steepMeridian }) === 'oblique' && plan.steepK > plan.flatK) {
    yield caution('oblique', 'note', 'ueno2021', 'Oblique astigmatism is irregular more often than other astigmatism. Look at the topography.');
  }
}

function* lengthCautions({ arcLength }: CompletePlan): Generator<Caution> {
  const { longest } = MODEL.arcs;
  const { shortestArc } = MODEL.cautions;
  if (exceeds(arcLength, longest.value)) {
    yield caution('arc-too-long', 'stop', 'relaxingTable', `An arc of ${degrees(arcLength)} is longer than any in the table (${longest.value}°). Its effect is counted as that of ${longest.value}°.`);
  } else if (exceeds(shortestArc.value, arcLength)) {
    yield caution('arc-short', 'note', 'relaxingTable', `The table has no arc shorter than ${shortestArc.value}°. The effect of ${degrees(arcLength)} is extrapolated.`);
  }
}

function* depthCautions({ arcDepth, localThickness }: CompletePlan): Generator<Caution> {
  const { deepestShare, shallowShare } = MODEL.cautions;
  if (localThickness === null || arcDepth === null) {
    const missing = localThickness === null ? 'The thickness where the arc will lie is not known' : 'The depth of the arc is not given';
    yield caution('thickness-unknown', 'think', 'commonPractice', `${missing}. Measure at the site before any cut; the central thickness does not tell.`);
    return;
  }
  const share = arcDepth / localThickness;
  const cut = `${arcDepth.toFixed(0)} µm is ${(100 * share).toFixed(0)} % of the local thickness (${localThickness.toFixed(0)} µm).`;
  if (!exceeds(deepestShare.value, share)) {
    yield caution('arc-too-deep', 'stop', 'commonPractice', `${cut} From ${100 * deepestShare.value} % the cornea may be perforated.`);
  } else if (exceeds(shallowShare.value, share)) {
    yield caution('arc-shallow', 'note', 'commonPractice', `${cut} The effect is that of arcs at 80–90 %; shallower ones do less.`);
  }
}

function* zoneCautions({ arcZone }: CompletePlan): Generator<Caution> {
  const [smallest, largest] = MODEL.cautions.usualZone.value;
  if (!exceeds(smallest, arcZone) && !exceeds(arcZone, largest)) return;
  yield caution('arc-zone', 'note', 'duffey1988', `The effect is that of arcs on a circle of about 11 mm. On one of ${Number(arcZone.toFixed(1))} mm it differs; a smaller circle does more.`);
}

/** Where the plan leaves the table that the effect was taken from, or is hardly worth a cut. */
function* tableCautions(plan: CompletePlan, magnitude: number): Generator<Caution> {
  const { worthwhile, mostForArcs } = MODEL.cautions;
  if (exceeds(worthwhile.value, magnitude)) {
    yield caution('hardly-any', 'think', 'villegas2014', `There are only ${magnitude.toFixed(2)} D to correct. Less than ${worthwhile.value.toFixed(2)} D does not disturb most eyes.`);
  } else if (exceeds(magnitude, mostForArcs.value)) {
    yield caution('beyond-arcs', 'think', 'relaxingTable', `${magnitude.toFixed(2)} D are more than the table of arcs covers (${mostForArcs.value} D).`);
  }
  if (plan.arcFlattening !== null) return;
  const [youngest, oldest] = MODEL.arcs.ageLimits.value;
  if (plan.age === null) {
    yield caution('age-unknown', 'note', 'assumed', `No age is given; the arcs are calculated for ${MODEL.arcs.referenceAge.value} years.`);
  } else if (plan.age < youngest || plan.age > oldest) {
    yield caution('age-outside', 'note', 'relaxingTable', `The table covers ages from ${youngest} to ${oldest}. At ${Number(plan.age.toFixed(1))} the nearer limit is used.`);
  }
}

/** Whether an arc and the incision share a part of the circumference. */
function overlapping(plan: CompletePlan): boolean {
  if (plan.incisionSite === null || plan.arcSite === null) return false;
  const limbus = MODEL.eye.limbusDiameter.value;
  const reach = plan.arcLength / 2 + Math.asin(plan.incisionWidth / limbus) / RADIANS;
  const apart = Math.abs(turn(plan.arcSite, plan.incisionSite));
  return apart < reach || (plan.arcCount === 2 && 180 - apart < reach);
}
