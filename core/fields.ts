import { meridian, site } from './angle.js';
import { RefusedValue, allowed, oneOf, refused } from './check.js';
import { LIMITS } from './limits.js';
import type { FieldLimits } from './limits.js';
import { backSurface } from './backSurface.js';
import { refuseSteepBelowFlat } from './keratometry.js';
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
  const complete: CompletePlan = {
    eye: oneOf('eye', plan.eye ?? DEFAULTS.eye, ['right', 'left']),
    flatK: allowed(LIMITS.flatK, plan.flatK ?? DEFAULTS.flatK),
    steepK: allowed(LIMITS.steepK, plan.steepK ?? DEFAULTS.steepK),
    steepMeridian: meridian(allowed(LIMITS.steepMeridian, plan.steepMeridian ?? DEFAULTS.steepMeridian)),
    age: optional(LIMITS.age, plan.age),
    backSurface: plan.backSurface ?? DEFAULTS.backSurface,
    incisionSite: place(optional(LIMITS.incisionSite, plan.incisionSite)),
    incisionWidth: allowed(LIMITS.incisionWidth, plan.incisionWidth ?? DEFAULTS.incisionWidth),
    incisionFlattening: optional(LIMITS.incisionFlattening, plan.incisionFlattening),
    arcSite: place(optional(LIMITS.arcSite, plan.arcSite)),
    arcLength: allowed(LIMITS.arcLength, plan.arcLength ?? DEFAULTS.arcLength),
    arcCount: oneOf('arcCount', plan.arcCount ?? DEFAULTS.arcCount, [0, 1, 2]),
    arcZone: allowed(LIMITS.arcZone, plan.arcZone ?? DEFAULTS.arcZone),
    arcDepth: optional(LIMITS.arcDepth, plan.arcDepth),
    arcMethod: oneOf('arcMethod', plan.arcMethod ?? DEFAULTS.arcMethod, ['blade', 'laser']),
    arcFlattening: optional(LIMITS.arcFlattening, plan.arcFlattening),
    localThickness: optional(LIMITS.localThickness, plan.localThickness),
    lensCylinder: optional(LIMITS.lensCylinder, plan.lensCylinder),
    lensMeridian: plan.lensMeridian == null ? null : meridian(allowed(LIMITS.lensMeridian, plan.lensMeridian)),
    risks: checkedRisks(plan.risks),
    ownFigures: checkedFigures(plan.ownFigures),
  };
  refuseContradictions(complete);
  return complete;
}

/** Values that are each possible but do not go together. */
function refuseContradictions(plan: CompletePlan): void {
  refuseSteepBelowFlat(plan.flatK, plan.steepK);
  backSurface(plan.backSurface);
  if (plan.arcCount > 0 && plan.arcSite === null) {
    throw refused('arcSite', null, plan.arcCount === 1 ? 'arcSite' : 'arcSites');
  }
  if (plan.lensCylinder && plan.lensMeridian === null) {
    throw refused('lensMeridian', null, 'lensMeridian', { cylinder: plan.lensCylinder });
  }
}

function optional(limits: FieldLimits, value: number | null | undefined): number | null {
  return value == null ? null : allowed(limits, value);
}

function place(degrees: number | null): number | null {
  return degrees === null ? null : site(degrees);
}
