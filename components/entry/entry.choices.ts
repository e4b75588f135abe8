import { backSurface, meridian, meridianDistance, mirrorMeridian, mirrorSite, site, temporalSite, turn } from '../../core/numbers.js';
import type { ArcMethod, BackSurface, CompletePlan, EyePlan, EyeSide, PlanOutcome } from '../../core/numbers.js';
import type { KUnit } from '../internal/case-model.js';
import { TYPICAL_BACK_SURFACE, isMeasured } from './entry.fields.js';

/** Rows of switches that set the plan; the unit of the readings is not part of it. */
export type Choice = 'eye' | 'kUnit' | 'backSurface' | 'incision' | 'arcCount' | 'arcMethod' | 'lens';

/** An incision this close to the steep meridian, in degrees, takes up that side of it. */
const NEAR = 30;

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

/** What a switch does to the plan. What is switched on starts from a suggestion, which the user can edit. */
export function chosenPatch(choice: Exclude<Choice, 'kUnit'>, value: string, plan: CompletePlan, outcome: PlanOutcome): EyePlan {
  switch (choice) {
    case 'eye':
      return { eye: value as EyeSide };
    case 'arcMethod':
      return { arcMethod: value as ArcMethod };
    case 'backSurface':
      return { backSurface: value === 'measured' ? TYPICAL_BACK_SURFACE : (value as BackSurface) };
    case 'incision':
      return { incisionSite: value === 'yes' ? temporalSite(plan.eye) : null };
    case 'arcCount': {
      const arcCount = Number(value) as 0 | 1 | 2;
      return { arcCount, arcSite: arcCount === 0 ? null : (plan.arcSite ?? suggestedArcSite(plan)) };
    }
    case 'lens': {
      if (value !== 'yes') return { lensCylinder: null, lensMeridian: null };
      return { lensCylinder: 1, lensMeridian: plan.lensMeridian ?? meridian(Math.round(outcome.after.meridian)) };
    }
  }
}

/** The field of the plan that a switch stands for. */
export function choiceField(choice: Choice): keyof CompletePlan | 'kUnit' {
  if (choice === 'incision') return 'incisionSite';
  return choice === 'lens' ? 'lensCylinder' : choice;
}

/** The end of the steep meridian that is free of the incision; when both are, the more nasal one, or the upper. Degrees. */
export function suggestedArcSite({ eye, steepMeridian, incisionSite }: CompletePlan): number {
  const one = site(steepMeridian);
  const other = site(steepMeridian + 180);
  const taken = incisionSite !== null && meridianDistance(incisionSite, steepMeridian) <= NEAR;
  const wanted = (taken ? incisionSite : temporalSite(eye)) + 180;
  return Math.abs(turn(wanted, one)) <= Math.abs(turn(wanted, other)) ? one : other;
}

/** Every site and meridian as it would lie in the fellow eye. Which eye it is stays as it is. */
export function mirrored(plan: CompletePlan): EyePlan {
  const { incisionSite, arcSite, lensMeridian, backSurface: kind } = plan;
  const patch: EyePlan = { steepMeridian: mirrorMeridian(plan.steepMeridian) };
  if (incisionSite !== null) patch.incisionSite = mirrorSite(incisionSite);
  if (arcSite !== null) patch.arcSite = mirrorSite(arcSite);
  if (lensMeridian !== null) patch.lensMeridian = mirrorMeridian(lensMeridian);
  if (isMeasured(kind)) {
    const measured = backSurface(kind);
    patch.backSurface = `${measured.magnitude}@${mirrorMeridian(measured.meridian)}`;
  }
  return patch;
}
