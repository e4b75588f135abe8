import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Caution, CompletePlan } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import type { Language } from '../internal/language/language.js';
import { refusedBox } from '../internal/notices.js';
import type { TakenLimits } from './options.limits.js';
import { againstText, limitRefusal, ownText, presentText } from './options.speech.js';
import { optionsWords } from './options.words.js';

type Box = TemplateResult | typeof nothing;

/** What the page has set on the case and could not be taken. */
export function refusedCase({ refusals }: CaseModel, language: Language): Box {
  return refusedBox(language.say(optionsWords)('refusedCase'), refusals.map((refusal) => language.refusal(refusal)));
}

/** Limits that could not be taken, where no form says it next to the field. */
export function refusedLimits({ refusals }: TakenLimits, language: Language): Box {
  return refusedBox(language.say(optionsWords)('refusedLimits'), refusals.map((refusal) => limitRefusal(refusal, language)));
}

/** Why no arcs are in the list, and what of the plan counts in every row. */
export function againstBox(against: readonly Caution[], plan: CompletePlan, language: Language): Box {
  const own = ownText(plan, language);
  return html`${against.length === 0 ? nothing : html`<p class="against stop">${againstText(against, language)}</p>`}${own === '' ? nothing : html`<p class="own note">${own}</p>`}`;
}

/** The plan as it is, also while it is being moved. */
export function presentBox({ plan, outcome }: CaseModel, rank: number | null, language: Language): Box {
  return html`<p class="present" part="present"><strong>${language.say(optionsWords)('now')}</strong> ${presentText(plan, outcome, rank, language)}</p>`;
}
