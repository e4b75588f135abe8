import { ruleOf, site } from '../../core/numbers.js';
import type { CompletePlan } from '../../core/numbers.js';
import { clockText, percent, placeText } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { placeWords } from '../internal/place.words.js';
import { sharedWords } from '../internal/words.js';
import type { NumberField } from './entry.fields.js';
import { entryWords } from './entry.words.js';

/** What a number means in this eye, in words: a check against the wrong side or the wrong meridian. Empty for most fields. */
export function asideOf(id: NumberField, plan: CompletePlan, language: Language): string {
  const say = language.say(entryWords);
  const place = (degrees: number): string => placeAndClock(degrees, plan, language);
  const { incisionSite, arcSite, arcCount, arcDepth, localThickness } = plan;
  switch (id) {
    case 'steepMeridian':
      return plan.flatK === plan.steepK ? say('equal') : language.say(sharedWords)(ruleOf({ meridian: plan.steepMeridian }));
    case 'incisionSite':
      return incisionSite === null ? '' : place(incisionSite);
    case 'arcSite':
      if (arcSite === null) return '';
      return arcCount === 2 ? say('bothPlaces', { place: place(arcSite), opposite: place(site(arcSite + 180)) }) : place(arcSite);
    case 'arcDepth':
      return arcDepth === null || localThickness === null ? '' : say('ofThickness', { share: percent(arcDepth / localThickness, language.numbers) });
    default:
      return '';
  }
}

function placeAndClock(degrees: number, { eye }: CompletePlan, language: Language): string {
  return language.say(placeWords)('placed', { place: placeText(degrees, eye, language), clock: clockText(degrees, language) });
}
