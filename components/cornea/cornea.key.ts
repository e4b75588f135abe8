import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';
import { angle, astigmatismText, dioptres, meridianText, millimetres, placeText, siteText } from '../internal/format.js';
import type { Language, Values } from '../internal/language/language.js';
import { corneaWords } from './cornea.words.js';

/** What each line in the drawing is, with its figures. Repeats the text alternative, so it is not read out again. */
export function corneaKey(plan: CompletePlan, { before, after }: PlanOutcome, language: Language): TemplateResult {
  const say = language.say(corneaWords);
  const { numbers } = language;
  const { eye, incisionSite, incisionWidth, arcCount, arcSite, arcLength, lensCylinder, lensMeridian } = plan;
  const at = (site: number): { site: string; place: string } => ({ site: siteText(site, numbers), place: placeText(site, eye, language) });
  const entry = (line: string, label: keyof typeof corneaWords.en, values: Values): TemplateResult =>
    html`<li><svg viewBox="0 0 28 12" aria-hidden="true"><line class=${line} x1="0" y1="6" x2="28" y2="6"></line></svg><span>${say(label, values)}</span></li>`;
  return html`<ul class="key" aria-hidden="true">${[
    entry('before', 'keyBefore', { astigmatism: astigmatismText(before, numbers) }),
    incisionSite !== null ? entry('entry', 'keyIncision', { width: millimetres(incisionWidth, numbers), ...at(incisionSite) }) : null,
    arcCount > 0 && arcSite !== null ? entry('arc-line', arcCount === 2 ? 'keyPair' : 'keyArc', { length: angle(arcLength, numbers), ...at(arcSite) }) : null,
    lensCylinder && lensMeridian !== null ? entry('lens-line', 'keyLens', { power: dioptres(lensCylinder, numbers), meridian: meridianText(lensMeridian, numbers) }) : null,
    entry('after-line', 'keyAfter', { astigmatism: astigmatismText(after, numbers) }),
  ]}</ul>`;
}
