import type { CompletePlan } from '../../core/numbers.js';
import type { Language } from '../internal/language/language.js';
import type { HandleName } from './cornea.handles.js';
import { corneaHandsWords } from './cornea.hands.words.js';
import { planned } from './cornea.speech.js';

/** Names of the controls behind the handles, and what these say of their value. */
const CONTROL = { incision: 'incisionControl', arc: 'arcControl', 'arc-end': 'arcEndControl', lens: 'lensControl' } as const;
const SPOKEN = { incision: 'incisionAt', arc: 'arcAt', 'arc-end': 'arcLong', lens: 'lensOn' } as const;

export function controlName(name: HandleName, language: Language): string {
  return language.say(corneaHandsWords)(CONTROL[name]);
}

/** What a control says of its value. */
export function spokenHandle(name: HandleName, plan: CompletePlan, language: Language): string {
  return language.say(corneaHandsWords)(SPOKEN[name], planned(plan, language));
}
