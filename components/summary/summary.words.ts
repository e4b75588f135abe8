import { ruleOf } from '../../core/numbers.js';
import type { Astigmatism, CompletePlan, PlanOutcome, PlanStep } from '../../core/numbers.js';
import { astigmatismText, capital, dioptres, meridianText, signedDioptres } from '../internal/format.js';
import { RULE_NAME, stepName } from '../internal/words.js';
import { fromVector } from '../../core/numbers.js';

/** `with the rule`, or nothing where there is no direction. */
export function ruleText(a: Astigmatism): string {
  return a.magnitude < 0.005 ? 'no astigmatism' : RULE_NAME[ruleOf(a)];
}

/** Name and figures of one step: what it does, and what it would do if all of the intended effect were reached. */
export function stepRow(step: PlanStep, arcCount: number): { name: string; expected: string; intended: string } {
  const name = stepName(step.source, arcCount);
  return { name: capital(name), expected: effect(step, 'vector'), intended: effect(step, 'intended') };
}

function effect(step: PlanStep, which: 'vector' | 'intended'): string {
  const added = fromVector(step[which]);
  if (step.source === 'backSurface') return `adds ${astigmatismText(added)}`;
  const along = meridianText(Math.round(added.meridian + 90));
  return added.magnitude < 0.005 ? 'no effect' : `flattens ${along} by ${dioptres(added.magnitude)}`;
}

/** Limits for which the chance is told, D. */
export const LIMITS_TOLD = [0.5, 0.75, 1] as const;

/** A chance as whole eyes of a hundred. */
export function ofHundred(chance: number): number {
  return Math.round(100 * chance);
}

/** The chance in words. Always of 100, so that two plans can be compared. */
export function chanceSentence(eyes: number, limit: number): string {
  return `About ${eyes} of 100 eyes like this would end with ${dioptres(limit)} or less.`;
}

/** What a reader hears after a change: the result first, then what to mind. */
export function announcement({ after, cautions }: PlanOutcome): string {
  const minds = cautions.filter(({ level }) => level !== 'note').map(({ text }) => text);
  return [`Expected to remain: ${astigmatismText(after).replace('@', 'at')}.`, ...minds].join(' ');
}

export function meanShiftText(shift: number): string {
  return Math.abs(shift) < 0.005 ? 'no change expected' : `${signedDioptres(shift)} expected`;
}

export function planned(plan: CompletePlan): boolean {
  return plan.incisionSite !== null || plan.arcCount > 0 || Boolean(plan.lensCylinder);
}
