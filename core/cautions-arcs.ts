import { RADIANS, ruleOf, turn } from './angle.js';
import { caution, degrees, dioptres, exceeds, upToTenths, whole } from './caution.js';
import type { Effects } from './effects.js';
import { MODEL } from './model.js';
import type { Caution, CompletePlan } from './types.js';

/** What the planned arcs themselves say. */
export function arcCautions(found: Caution[], plan: CompletePlan, { total }: Effects): void {
  if (plan.arcCount === 0) return;
  lengthCautions(found, plan);
  depthCautions(found, plan);
  zoneCautions(found, plan);
  tableCautions(found, plan, total.magnitude);
  if (overlapping(plan)) {
    found.push(caution('arc-over-incision', 'think', 'commonPractice'));
  }
  if (ruleOf({ meridian: plan.steepMeridian }) === 'oblique' && plan.steepK > plan.flatK) {
    found.push(caution('oblique', 'note', 'ueno2021'));
  }
}

function lengthCautions(found: Caution[], { arcLength }: CompletePlan): void {
  const { longest } = MODEL.arcs;
  const { shortestArc } = MODEL.cautions;
  if (exceeds(arcLength, longest)) {
    found.push(caution('arc-too-long', 'stop', 'relaxingTable', { length: degrees(arcLength), longest: degrees(longest) }));
  } else if (exceeds(shortestArc, arcLength)) {
    found.push(caution('arc-short', 'note', 'relaxingTable', { length: degrees(arcLength), shortest: degrees(shortestArc) }));
  }
}

function depthCautions(found: Caution[], { arcDepth, localThickness }: CompletePlan): void {
  const { deepestShare, shallowShare } = MODEL.cautions;
  if (localThickness === null || arcDepth === null) {
    found.push(caution('thickness-unknown', 'think', 'commonPractice', {}, localThickness === null ? 'thickness-unknown' : 'thickness-unknown-depth'));
    return;
  }
  const share = arcDepth / localThickness;
  const cut = { depth: whole(arcDepth, 'µm'), share: whole(100 * share, '%'), thickness: whole(localThickness, 'µm') };
  if (!exceeds(deepestShare, share)) {
    found.push(caution('arc-too-deep', 'stop', 'commonPractice', { ...cut, deepest: whole(100 * deepestShare, '%') }));
  } else if (exceeds(shallowShare, share)) {
    found.push(caution('arc-shallow', 'note', 'commonPractice', cut));
  }
}

function zoneCautions(found: Caution[], { arcZone }: CompletePlan): void {
  const [smallest, largest] = MODEL.cautions.usualZone;
  if (!exceeds(smallest, arcZone) && !exceeds(arcZone, largest)) return;
  found.push(caution('arc-zone', 'note', 'duffey1988', { zone: upToTenths(arcZone, 'mm') }));
}

/** Where the plan leaves the table that the effect was taken from, or is hardly worth a cut. */
function tableCautions(found: Caution[], plan: CompletePlan, magnitude: number): void {
  const { worthwhile, mostForArcs } = MODEL.cautions;
  if (exceeds(worthwhile, magnitude)) {
    found.push(caution('hardly-any', 'think', 'villegas2014', { magnitude: dioptres(magnitude), worthwhile: dioptres(worthwhile) }));
  } else if (exceeds(magnitude, mostForArcs)) {
    found.push(caution('beyond-arcs', 'think', 'relaxingTable', { magnitude: dioptres(magnitude), most: whole(mostForArcs, 'D') }));
  }
  if (plan.arcFlattening !== null) return;
  const [youngest, oldest] = MODEL.arcs.ageLimits;
  if (plan.age === null) {
    found.push(caution('age-unknown', 'note', 'assumed', { age: whole(MODEL.arcs.referenceAge, '') }));
  } else if (plan.age < youngest || plan.age > oldest) {
    found.push(caution('age-outside', 'note', 'relaxingTable', { youngest: whole(youngest, ''), oldest: whole(oldest, ''), age: upToTenths(plan.age, '') }));
  }
}

/** Whether an arc and the incision share a part of the circumference. */
function overlapping(plan: CompletePlan): boolean {
  if (plan.incisionSite === null || plan.arcSite === null) return false;
  const limbus = MODEL.eye.limbusDiameter;
  const reach = plan.arcLength / 2 + Math.asin(plan.incisionWidth / limbus) / RADIANS;
  const apart = Math.abs(turn(plan.arcSite, plan.incisionSite));
  return apart < reach || (plan.arcCount === 2 && 180 - apart < reach);
}
