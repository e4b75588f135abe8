import { ruleOf } from '../../core/numbers.js';
import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';
import { meridianText, spokenSite } from '../internal/format.js';
import { EYE_NAME, RULE_NAME } from '../internal/words.js';
import { LEAST_DRAWN } from './cornea.parts.js';
import type { HandleName } from './cornea.parts.js';
import { VIEWPOINT_NAME } from './viewpoint.js';
import type { Viewpoint } from './viewpoint.js';

/** Names of the controls behind the handles. */
export const HANDLE_LABEL: Record<HandleName, string> = {
  incision: 'Site of the incision',
  arc: 'Site of the relaxing arc',
  'arc-end': 'Length of the relaxing arc',
  lens: 'Meridian of the toric lens',
};

export const SPREAD_HINT = 'The shaded sector holds the remaining steep meridian of half of all eyes like this.';

export const HINT = 'Drag a handle, click the ring, or use the arrow keys.';

/** What a control says of its value. */
export function spokenHandle(name: HandleName, plan: CompletePlan): string {
  switch (name) {
    case 'incision':
      return `incision at ${spokenSite(plan.incisionSite ?? 0, plan.eye)}`;
    case 'arc':
      return `arc at ${spokenSite(plan.arcSite ?? 0, plan.eye)}`;
    case 'arc-end':
      return `arc ${plan.arcLength} degrees long`;
    case 'lens':
      return `lens on the meridian ${spokenMeridian(plan.lensMeridian ?? 180)}`;
  }
}

/** The picture in words. */
export function describe(plan: CompletePlan, outcome: PlanOutcome, viewpoint: Viewpoint): string {
  const { before, after } = outcome;
  const parts = [`${EYE_NAME[plan.eye]}, ${VIEWPOINT_NAME[viewpoint]}.`];
  parts.push(
    before.magnitude < LEAST_DRAWN
      ? 'The cornea has hardly any astigmatism.'
      : `The cornea is steep along ${spokenMeridian(before.meridian)} by ${before.magnitude.toFixed(2)} dioptres, ${RULE_NAME[ruleOf(before)]}.`,
  );
  if (plan.incisionSite !== null) {
    parts.push(`Incision ${plan.incisionWidth} mm wide at ${spokenSite(plan.incisionSite, plan.eye)}.`);
  }
  if (plan.arcCount > 0 && plan.arcSite !== null) {
    const which = plan.arcCount === 2 ? 'A pair of relaxing arcs, each' : 'One relaxing arc';
    const opposite = plan.arcCount === 2 ? ', and opposite' : '';
    parts.push(`${which} ${plan.arcLength} degrees long, at ${spokenSite(plan.arcSite, plan.eye)}${opposite}.`);
  }
  if (plan.lensCylinder && plan.lensMeridian !== null) {
    parts.push(`Toric lens of ${plan.lensCylinder.toFixed(2)} dioptres on the meridian ${spokenMeridian(plan.lensMeridian)}.`);
  }
  parts.push(
    after.magnitude < LEAST_DRAWN
      ? 'Hardly anything is expected to remain.'
      : `Expected to remain: ${after.magnitude.toFixed(2)} dioptres, steep along ${spokenMeridian(after.meridian)}.`,
  );
  return parts.join(' ');
}

function spokenMeridian(degrees: number): string {
  return meridianText(degrees).replace('°', ' degrees');
}
