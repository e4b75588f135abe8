import { FIELDS, RefusedValue, completePlan, refused } from '../../core/numbers.js';
import type { CompletePlan, EyePlan } from '../../core/numbers.js';

/** Fields of which each can be what is wrong with the other. */
const PARTNER: Partial<Record<string, keyof CompletePlan>> = {
  flatK: 'steepK',
  steepK: 'flatK',
  arcSite: 'arcCount',
  lensMeridian: 'lensCylinder',
};

export interface Proposal {
  /** The plan with all of `patch` that could be accepted. */
  plan: CompletePlan;
  /** What could not, in the order in which it was found. */
  refusals: RefusedValue[];
}

/** As much of `patch` as can be accepted on top of a good plan; each field that cannot is reported, under its own name. */
export function propose(good: CompletePlan, patch: EyePlan): Proposal {
  const remaining: EyePlan = { ...patch };
  const refusals: RefusedValue[] = [];
  for (let attempt = 0; attempt <= FIELDS.length; attempt += 1) {
    try {
      return { plan: completePlan({ ...good, ...remaining }), refusals };
    } catch (error) {
      if (!(error instanceof RefusedValue)) throw error;
      const field = error.field as keyof CompletePlan;
      const culprit = field in remaining ? field : PARTNER[field];
      if (!culprit || !(culprit in remaining)) break;
      refusals.push(culprit === field ? error : reversed(culprit, remaining[culprit], error));
      delete remaining[culprit];
    }
  }
  return { plan: good, refusals };
}

/** Whether two plans say the same. */
export function samePlan(a: CompletePlan, b: CompletePlan): boolean {
  return FIELDS.every((field) => Object.is(a[field], b[field]) || sameFigures(a[field], b[field]));
}

/** Checked figures have a fixed order of fields, so equal ones are equal as text. */
function sameFigures(a: unknown, b: unknown): boolean {
  return typeof a === 'object' && typeof b === 'object' && JSON.stringify(a) === JSON.stringify(b);
}

/** The refusal of a field as one of the other field, when that is the one that was set. */
function reversed(culprit: keyof CompletePlan, value: unknown, { field, value: other, limits, reason }: RefusedValue): RefusedValue {
  if (culprit === 'flatK') return refused(culprit, value, 'flatAboveSteep', { max: other as number });
  return refused(culprit, value, 'together', { field, limits }, reason);
}
