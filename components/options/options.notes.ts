import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { GOOD } from '../../core/numbers.js';
import type { Caution, CompletePlan } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import type { TakenLimits } from './options.limits.js';
import { REFUSED_CASE, REFUSED_LIMITS, againstText, ownText, presentText, refusalText } from './options.words.js';

type Box = TemplateResult | typeof nothing;

/** What the page has set on the case and could not be taken. */
export function refusedBox({ refusals }: CaseModel): Box {
  return listBox(REFUSED_CASE, refusals.map(({ message }) => message));
}

/** Limits that could not be taken, where no form says it next to the field. */
export function refusedLimits({ refusals }: TakenLimits): Box {
  return listBox(REFUSED_LIMITS, refusals.map(refusalText));
}

function listBox(heading: string, texts: readonly string[]): Box {
  if (texts.length === 0) return nothing;
  return html`<div class="refused" part="refused" role="alert">
    <p>${heading}</p>
    <ul>
      ${texts.map((text) => html`<li>${text}</li>`)}
    </ul>
  </div>`;
}

/** Why no arcs are in the list, and what of the plan counts in every row. */
export function againstBox(against: readonly Caution[], plan: CompletePlan): Box {
  const own = ownText(plan);
  return html`${against.length === 0 ? nothing : html`<p class="against">${againstText(against)}</p>`}${own === '' ? nothing : html`<p class="own">${own}</p>`}`;
}

/** The plan as it is, also while it is being moved. */
export function presentBox({ plan, outcome }: CaseModel, rank: number | null): Box {
  const ofHundred = Math.round(100 * outcome.chanceWithin(GOOD));
  return html`<p class="present" part="present"><strong>Now:</strong> ${presentText(plan, outcome.after, ofHundred, rank)}</p>`;
}
