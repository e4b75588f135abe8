import type { CompletePlan } from '../../core/numbers.js';
import type { KUnit } from '../internal/case-model.js';
import { isMeasured } from './entry.fields.js';

/** Rows of switches that set the plan; the unit of the readings is not part of it. */
export type Choice = 'eye' | 'kUnit' | 'backSurface' | 'incision' | 'arcCount' | 'arcMethod' | 'lens';

/** Which switch of a row is on. */
export function chosen(choice: Choice, plan: CompletePlan, unit: KUnit): string {
  switch (choice) {
    case 'eye':
    case 'arcMethod':
      return plan[choice];
    case 'kUnit':
      return unit;
    case 'backSurface':
      return isMeasured(plan.backSurface) ? 'measured' : plan.backSurface;
    case 'incision':
      return plan.incisionSite === null ? 'no' : 'yes';
    case 'arcCount':
      return String(plan.arcCount);
    case 'lens':
      return plan.lensCylinder === null ? 'no' : 'yes';
  }
}
