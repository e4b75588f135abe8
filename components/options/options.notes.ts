import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Caution, CompletePlan } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import type { Language } from '../internal/language/language.js';
import type { TakenLimits } from './options.limits.js';
import { againstText, limitRefusal, ownText, presentText } from './options.speech.js';
import { optionsWords } from './options.words.js';

type Box = TemplateResult | typeof nothing;

/** What the page has set on the case and could not be taken. */
export function refusedBox({ refusals }: CaseModel, language: Language): Box {
  return listBox('refusedCase', refusals.map((refusal) => language.refusal(refusal)), language);
}

/** Limits that could not be taken, where no form says it next to the field. */
export function refusedLimits({ refusals }: TakenLimits, language: Language): Box {
  return listBox('refusedLimits', refusals.map((refusal) => limitRefusal(refusal, language)), language);
}

function listBox(heading: 'refusedCase' | 'refusedLimits', texts: readonly string[], language: Language): Box {
  if (texts.length === 0) return nothing;
  return html`<div class="refused" part="refused" role="alert">
    <p>${language.say(optionsWords)(heading)}</p>
    <ul>
      ${texts.map((text) => html`<li>${text}</li>`)}
    </ul>
  </div>`;
}

/** Why no arcs are in the list, and what of the plan counts in every row. */
export function againstBox(against: readonly Caution[], plan: CompletePlan, language: Language): Box {
  const own = ownText(plan, language);
  return html`${against.length === 0 ? nothing : html`<p class="against">${againstText(against, language)}</p>`}${own === '' ? nothing : html`<p class="own">${own}</p>`}`;
}

/** The plan as it is, also while it is being moved. */
export function presentBox({ plan, outcome }: CaseModel, rank: number | null, language: Language): Box {
  return html`<p class="present" part="present"><strong>${language.say(optionsWords)('now')}</strong> ${presentText(plan, outcome, rank, language)}</p>`;
}
