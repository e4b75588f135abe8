import { MODEL, backSurface, meridian, meridianDistance, mirrorMeridian, mirrorSite, site, temporalSite, turn } from '../../core/numbers.js';
import type { ArcMethod, BackSurface, CompletePlan, EyePlan, EyeSide, PlanOutcome } from '../../core/numbers.js';
import type { Choice } from './entry.choices.js';
import { isHalf, isMeasured } from './entry.fields.js';
import type { NumberField } from './entry.fields.js';

/** What `typical` adds, as a first guess for a measured back surface. */
export const TYPICAL_BACK_SURFACE: BackSurface = `${MODEL.backSurface.typical}@180`;

/** An incision this close to the steep meridian, in degrees, takes up that side of it. */
const NEAR = 30;

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

/** Adds to `patch` what makes a field of `plan` `value`, which is in the plan's own unit. `before` is the plan before the typing. */
export function put(patch: EyePlan, id: NumberField, value: number | null, plan: CompletePlan, before: CompletePlan): void {
  if (!isHalf(id)) {
    patch[id] = value;
    return;
  }
  // Each half keeps the other one, be it of the plan or of the same patch.
  const { magnitude, meridian: along } = backSurface(patch.backSurface ?? plan.backSurface);
  const written = id === 'backPower' ? measured(value ?? 0, along) : measured(magnitude, value ?? 0);
  // The page may have written 0.30 where we write 0.3: the same value is no change.
  patch.backSurface = [plan, before].map((one) => one.backSurface).find((kind) => isMeasured(kind) && rewritten(kind) === written) ?? written;
}

function rewritten(kind: BackSurface): BackSurface {
  const { magnitude, meridian: along } = backSurface(kind);
  return measured(magnitude, along);
}

function measured(magnitude: number, along: number): BackSurface {
  return `${magnitude}@${meridian(along)}`;
}

/** Tag and field, for events: `astig-entry flat-k`. */
export function sourceOf(planField: string): string {
  return `astig-entry ${planField.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;
}
