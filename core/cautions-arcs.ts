import { RADIANS, ruleOf, turn } from './angle.js';
import { caution, degrees, dioptres, exceeds, upToTenths, whole } from './caution.js';
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
    yield caution('arc-over-incision', 'think', 'commonPractice');
  }
  if (ruleOf({ meridian: plan.steepMeridian }) === 'oblique' && plan.steepK > plan.flatK) {
    yield caution('oblique', 'note', 'ueno2021');
  }
}

function* lengthCautions({ arcLength }: CompletePlan): Generator<Caution> {
  const { longest } = MODEL.arcs;
  const { shortestArc } = MODEL.cautions;
  if (exceeds(arcLength, longest.value)) {
    yield caution('arc-too-long', 'stop', 'relaxingTable', { length: degrees(arcLength), longest: degrees(longest.value) });
  } else if (exceeds(shortestArc.value, arcLength)) {
    yield caution('arc-short', 'note', 'relaxingTable', { length: degrees(arcLength), shortest: degrees(shortestArc.value) });
  }
}

function* depthCautions({ arcDepth, localThickness }: CompletePlan): Generator<Caution> {
  const { deepestShare, shallowShare } = MODEL.cautions;
  if (localThickness === null || arcDepth === null) {
    yield caution('thickness-unknown', 'think', 'commonPractice', {}, localThickness === null ? 'thickness-unknown' : 'thickness-unknown-depth');
    return;
  }
  const share = arcDepth / localThickness;
  const cut = { depth: whole(arcDepth, 'µm'), share: whole(100 * share, '%'), thickness: whole(localThickness, 'µm') };
  if (!exceeds(deepestShare.value, share)) {
    yield caution('arc-too-deep', 'stop', 'commonPractice', { ...cut, deepest: whole(100 * deepestShare.value, '%') });
  } else if (exceeds(shallowShare.value, share)) {
    yield caution('arc-shallow', 'note', 'commonPractice', cut);
  }
}

function* zoneCautions({ arcZone }: CompletePlan): Generator<Caution> {
  const [smallest, largest] = MODEL.cautions.usualZone.value;
  if (!exceeds(smallest, arcZone) && !exceeds(arcZone, largest)) return;
  yield caution('arc-zone', 'note', 'duffey1988', { zone: upToTenths(arcZone, 'mm') });
}

/** Where the plan leaves the table that the effect was taken from, or is hardly worth a cut. */
function* tableCautions(plan: CompletePlan, magnitude: number): Generator<Caution> {
  const { worthwhile, mostForArcs } = MODEL.cautions;
  if (exceeds(worthwhile.value, magnitude)) {
    yield caution('hardly-any', 'think', 'villegas2014', { magnitude: dioptres(magnitude), worthwhile: dioptres(worthwhile.value) });
  } else if (exceeds(magnitude, mostForArcs.value)) {
    yield caution('beyond-arcs', 'think', 'relaxingTable', { magnitude: dioptres(magnitude), most: whole(mostForArcs.value, 'D') });
  }
  if (plan.arcFlattening !== null) return;
  const [youngest, oldest] = MODEL.arcs.ageLimits.value;
  if (plan.age === null) {
    yield caution('age-unknown', 'note', 'assumed', { age: whole(MODEL.arcs.referenceAge.value, '') });
  } else if (plan.age < youngest || plan.age > oldest) {
    yield caution('age-outside', 'note', 'relaxingTable', { youngest: whole(youngest, ''), oldest: whole(oldest, ''), age: upToTenths(plan.age, '') });
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
