import { ruleOf, site, siteName } from '../../core/numbers.js';
import type { CompletePlan } from '../../core/numbers.js';
import { clockText } from '../internal/format.js';
import { RULE_NAME } from '../internal/words.js';
import type { NumberField } from './entry.fields.js';

/** What a number means in this eye, in words: a check against the wrong side or the wrong meridian. Empty for most fields. */
export function asideOf(id: NumberField, plan: CompletePlan): string {
  const { incisionSite, arcSite, arcCount, arcDepth, localThickness } = plan;
  switch (id) {
    case 'steepMeridian':
      return plan.flatK === plan.steepK ? 'both readings are equal' : RULE_NAME[ruleOf({ meridian: plan.steepMeridian })];
    case 'incisionSite':
      return incisionSite === null ? '' : placeText(incisionSite, plan);
    case 'arcSite':
      if (arcSite === null) return '';
      return arcCount === 2 ? `${placeText(arcSite, plan)}; and ${placeText(site(arcSite + 180), plan)}` : placeText(arcSite, plan);
    case 'arcDepth':
      return arcDepth === null || localThickness === null ? '' : `${Math.round((100 * arcDepth) / localThickness)} % of the thickness`;
    default:
      return '';
  }
}

function placeText(degrees: number, { eye }: CompletePlan): string {
  return `${siteName(degrees, eye)}, ${clockText(degrees)}`;
}
