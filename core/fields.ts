import { meridian, site } from './angle.js';
import { RefusedValue, allowed, oneOf, refused } from './check.js';
import type { LIMITS } from './limits.js';
import { backSurface } from './backSurface.js';
import { fromReadings } from './keratometry.js';
import { checkedFigures } from './own-figures.js';
import { checkedRisks } from './risks.js';
import type { CompletePlan, EyePlan } from './types.js';

/** What a field is when nothing is said of it; `null` stands for "none". */
export const DEFAULTS: CompletePlan = {
  eye: 'right',
  flatK: 43,
  steepK: 43,
  steepMeridian: 90,
  age: null,
  backSurface: 'omitted',
  incisionSite: null,
  incisionWidth: 2.4,
  incisionFlattening: null,
  arcSite: null,
  arcLength: 45,
  arcCount: 0,
  arcZone: 11,
  arcDepth: null,
  arcMethod: 'blade',
  arcFlattening: null,
  localThickness: null,
  lensCylinder: null,
  lensMeridian: null,
  risks: '',
  ownFigures: null,
};

/** Names of all fields, in the order in which they are usually asked for. */
export const FIELDS = Object.keys(DEFAULTS) as (keyof CompletePlan)[];

/**
 * The plan with every field present, degrees in their printed range, and every value checked.
 * @throws RangeError that names the field, the value and the limits of the first value that cannot be accepted.
 */
export function completePlan(plan: EyePlan): CompletePlan {
  if (typeof plan !== 'object' || plan === null || Array.isArray(plan)) {
    throw new RefusedValue('plan', plan, 'an object with the fields of an eye and its plan, such as eye and steepK');
  }
  const given = <Field extends keyof CompletePlan>(field: Field): CompletePlan[Field] =>
    (plan[field] ?? DEFAULTS[field]) as CompletePlan[Field];
  const required = (field: keyof typeof LIMITS & keyof CompletePlan): number => allowed(field, given(field));
  const optional = (field: keyof typeof LIMITS & keyof CompletePlan): number | null =>
    plan[field] == null ? null : allowed(field, plan[field]);

  const complete: CompletePlan = {
    eye: oneOf('eye', given('eye'), ['right', 'left']),
    flatK: required('flatK'),
    steepK: required('steepK'),
    steepMeridian: meridian(required('steepMeridian')),
    age: optional('age'),
    backSurface: given('backSurface'),
    incisionSite: place(optional('incisionSite')),
    incisionWidth: required('incisionWidth'),
    incisionFlattening: optional('incisionFlattening'),
    arcSite: place(optional('arcSite')),
    arcLength: required('arcLength'),
    arcCount: oneOf('arcCount', given('arcCount'), [0, 1, 2]),
    arcZone: required('arcZone'),
    arcDepth: optional('arcDepth'),
    arcMethod: oneOf('arcMethod', given('arcMethod'), ['blade', 'laser']),
    arcFlattening: optional('arcFlattening'),
    localThickness: optional('localThickness'),
    lensCylinder: optional('lensCylinder'),
    lensMeridian: plan.lensMeridian == null ? null : meridian(required('lensMeridian')),
    risks: checkedRisks(plan.risks),
    ownFigures: checkedFigures(plan.ownFigures),
  };
  refuseContradictions(complete);
  return complete;
}

/** Values that are each possible but do not go together. */
function refuseContradictions(plan: CompletePlan): void {
  const { flatK, steepK, steepMeridian } = plan;
  fromReadings({ flat: flatK, steep: steepK, steepMeridian });
  backSurface(plan.backSurface);
  if (plan.arcCount > 0 && plan.arcSite === null) {
    throw refused('arcSite', null, plan.arcCount === 1 ? 'arcSite' : 'arcSites');
  }
  if (plan.lensCylinder && plan.lensMeridian === null) {
    throw refused('lensMeridian', null, 'lensMeridian', { cylinder: plan.lensCylinder });
  }
}

function place(degrees: number | null): number | null {
  return degrees === null ? null : site(degrees);
}
