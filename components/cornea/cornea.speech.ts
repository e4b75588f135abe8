import { ruleOf } from '../../core/numbers.js';
import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';
import { angleNumber, decimal, millimetreNumber, printedMeridian, spokenSite } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { sharedWords } from '../internal/words.js';
import { LEAST_DRAWN } from './cornea.parts.js';
import { corneaWords } from './cornea.words.js';
import type { Viewpoint } from '../internal/viewpoint.js';

/** Name of the drawing: which eye, and from where it is seen. */
export function nameOf({ eye }: CompletePlan, viewpoint: Viewpoint, language: Language): string {
  const say = language.say(corneaWords);
  return say('name', { eye: language.say(sharedWords)(eye), view: say(viewpoint) });
}

/** The picture in words. */
export function describe(plan: CompletePlan, { before, after }: PlanOutcome, viewpoint: Viewpoint, language: Language): string {
  const say = language.say(corneaWords);
  const values = planned(plan, language);
  const figures = ({ magnitude, meridian }: typeof before): Record<string, string> => ({
    power: decimal(magnitude, 2, language.numbers),
    meridian: spokenMeridian(meridian, language),
    rule: language.say(sharedWords)(ruleOf({ meridian })),
  });
  return [
    say('described', { name: nameOf(plan, viewpoint, language) }),
    before.magnitude < LEAST_DRAWN ? say('hardlyAny') : say('steep', figures(before)),
    plan.incisionSite !== null && say('entry', values),
    plan.arcCount > 0 && plan.arcSite !== null && say(plan.arcCount === 2 ? 'pair' : 'oneArc', values),
    plan.lensCylinder && plan.lensMeridian !== null && say('lens', values),
    after.magnitude < LEAST_DRAWN ? say('nothingRemains') : say('remains', figures(after)),
  ].filter(Boolean).join(' ');
}

/** Values of the texts on what is planned. */
export function planned({ eye, incisionSite, incisionWidth, arcSite, arcLength, lensCylinder, lensMeridian }: CompletePlan, language: Language): Record<string, string> {
  const { numbers } = language;
  return {
    width: millimetreNumber(incisionWidth, numbers),
    incision: spokenSite(incisionSite ?? 0, eye, language),
    arc: spokenSite(arcSite ?? 0, eye, language),
    length: angleNumber(arcLength, numbers),
    lensPower: decimal(lensCylinder ?? 0, 2, numbers),
    lensMeridian: spokenMeridian(lensMeridian ?? 180, language),
  };
}

function spokenMeridian(degrees: number, { numbers }: Language): string {
  return angleNumber(printedMeridian(degrees), numbers);
}
