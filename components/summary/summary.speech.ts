import { fromVector, ruleOf } from '../../core/numbers.js';
import type { Astigmatism, PlanOutcome, PlanStep } from '../../core/numbers.js';
import { astigmatismText, capital, dioptres, meridianText, signedDioptres } from '../internal/format.js';
import { ofHundred } from '../internal/icon-array.js';
import type { Language } from '../internal/language/language.js';
import { sharedWords, stepId } from '../internal/words.js';
import { summaryWords } from './summary.words.js';

/** `with the rule`, or that there is no direction. */
export function ruleText(a: Astigmatism, language: Language): string {
  return a.magnitude < 0.005 ? language.say(summaryWords)('none') : language.say(sharedWords)(ruleOf(a));
}

/** Name and figures of one step: what it does, and what it would do if all of the intended effect were reached. */
export function stepRow(step: PlanStep, arcCount: number, language: Language): { name: string; expected: string; intended: string } {
  const name = capital(language.say(sharedWords)(stepId(step.source, arcCount)));
  return { name, expected: effect(step, 'vector', language), intended: effect(step, 'intended', language) };
}

function effect(step: PlanStep, which: 'vector' | 'intended', language: Language): string {
  const say = language.say(summaryWords);
  const { numbers } = language;
  const added = fromVector(step[which]);
  if (step.source === 'backSurface') return say('adds', { astigmatism: astigmatismText(added, numbers) });
  if (added.magnitude < 0.005) return say('noEffect');
  return say('flattens', { meridian: meridianText(Math.round(added.meridian + 90), numbers), power: dioptres(added.magnitude, numbers) });
}

/** Limits for which the chance is told, D. */
export const LIMITS_TOLD = [0.5, 0.75, 1] as const;

/** The chance in words. Always of 100, so that two plans can be compared. */
export function chanceSentence(eyes: number, language: Language): string {
  return language.say(summaryWords)('chance', { eyes, limit: dioptres(LIMITS_TOLD[0], language.numbers) });
}

/** The same for the wider limits, as figures. */
export function widerChances({ chanceWithin }: PlanOutcome, language: Language): string {
  const [, middle, wide] = LIMITS_TOLD;
  return language.say(summaryWords)('chances', {
    middle: dioptres(middle, language.numbers),
    middleEyes: ofHundred(chanceWithin(middle)),
    wide: dioptres(wide, language.numbers),
    wideEyes: ofHundred(chanceWithin(wide)),
  });
}

export function meanShiftText(shift: number, language: Language): string {
  const say = language.say(summaryWords);
  return Math.abs(shift) < 0.005 ? say('noShift') : say('shift', { power: signedDioptres(shift, language.numbers) });
}
