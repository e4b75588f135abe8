import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { DEFAULTS, RISKS } from '../../core/numbers.js';
import type { EyeSide } from '../../core/numbers.js';
import { withoutPlan } from '../internal/case-model.js';
import type { CaseModel } from '../internal/case-model.js';
import { samePlan } from '../internal/proposal.js';
import { asideOf } from './entry.asides.js';
import { chosen } from './entry.choices.js';
import type { Choice } from './entry.choices.js';
import { NUMBER_FIELDS, specOf } from './entry.fields.js';
import type { NumberField } from './entry.fields.js';
import type { Typing } from './entry.typing.js';
import { GROUP, LABEL, MORE, NOT_DEFAULT, NOT_NEEDED, OPTIONS, REDO, REFUSED, RESET, RISK_NAME, UNDO, limitsText, mirrorText, offerText, refusalText } from './entry.words.js';
import type { Option } from './entry.words.js';

/** What a button of the form does. */
export type Action = 'undo' | 'redo' | 'reset' | 'mirror' | 'dismiss';

/** What the parts of the form are drawn from. */
export interface FormState {
  model: CaseModel;
  typing: Typing;
  /** Whether nothing can be changed here. */
  fixed: boolean;
}

/** One or more rows of fields under a heading. */
export function group(name: keyof typeof GROUP, content: unknown): TemplateResult {
  return html`<fieldset part="group">
    <legend>${GROUP[name]}</legend>
    <div class="fields">${content}</div>
  </fieldset>`;
}

/** A number with its label, unit, limits and, when it is wrong, what is wrong. */
export function numberField(id: NumberField, { model, typing, fixed }: FormState): TemplateResult {
  const spec = specOf(id, model.kUnit);
  const error = typing.error(id);
  const aside = asideOf(id, model.plan);
  return html`<div class="field" part="field">
    <label for=${id}>${LABEL[id]}</label>
    <div class="box">
      <input
        id=${id}
        name=${id}
        part="input"
        type="text"
        inputmode="decimal"
        autocomplete="off"
        spellcheck="false"
        aria-describedby="${id}-aside ${id}-note"
        aria-invalid=${error === null ? 'false' : 'true'}
        ?readonly=${fixed}
        .value=${live(typing.text(id, model))}
      />
      <span class="unit" aria-hidden="true">${spec.limits.unit}</span>
    </div>
    <div class="notes">
      <p id="${id}-aside" class="aside" part="aside">${aside}</p>
      <p id="${id}-note" class=${error === null ? 'limits' : 'error'} part=${error === null ? 'limits' : 'error'}>${error ?? limitsText(spec)}</p>
    </div>
  </div>`;
}

/** A row of switches of which one is on. */
export function choiceField(name: Choice, { model, fixed }: FormState): TemplateResult {
  const on = chosen(name, model.plan, model.kUnit);
  return html`<div class="choice ${name}" part="field" role="radiogroup" aria-labelledby="${name}-label">
    <p class="label" id="${name}-label">${LABEL[name]}</p>
    <div class="segments">${OPTIONS[name].map(([value, text]: Option) => segment(name, value, text, value === on, fixed))}</div>
  </div>`;
}

function segment(name: Choice, value: string, text: string, on: boolean, fixed: boolean): TemplateResult {
  return html`<label class="segment" part="segment">
    <input type="radio" name=${name} .value=${value} .checked=${live(on)} ?disabled=${fixed} />
    <span>${text}</span>
  </label>`;
}

/** What can be ticked of the eye and the patient. */
export function riskField({ model, fixed }: FormState): TemplateResult {
  const ticked = model.plan.risks.split(' ');
  return html`<div class="choice risks" part="field" role="group" aria-labelledby="risks-label">
    <p class="label" id="risks-label">${LABEL.risks}</p>
    <div class="segments">
      ${RISKS.map(
        (risk) => html`<label class="segment" part="segment">
          <input type="checkbox" name="risks" .value=${risk} .checked=${live(ticked.includes(risk))} ?disabled=${fixed} />
          <span>${RISK_NAME[risk]}</span>
        </label>`,
      )}
    </div>
  </div>`;
}

/** Fields that are rarely touched. Open from the start when one of them says something unusual. */
export function more(name: string, ids: readonly NumberField[], open: Map<string, boolean>, form: FormState): TemplateResult {
  const { plan } = form.model;
  const unusual = ids.some((id) => {
    const { planField } = NUMBER_FIELDS[id];
    return plan[planField] !== DEFAULTS[planField];
  });
  return html`<details
    class="more"
    ?open=${open.get(name) ?? unusual}
    @toggle=${(event: Event) => open.set(name, (event.target as HTMLDetailsElement).open)}
  >
    <summary part="more">${MORE}: ${ids.map((id) => LABEL[id].toLowerCase()).join(', ')}${unusual ? html` <em>(${NOT_DEFAULT})</em>` : nothing}</summary>
    <div class="fields">${ids.map((id) => numberField(id, form))}</div>
  </details>`;
}

/** What the page has set and could not be taken. */
export function refusedBox({ refusals }: CaseModel): TemplateResult | typeof nothing {
  if (refusals.length === 0) return nothing;
  return html`<div class="refused" part="refused" role="alert">
    <p>${REFUSED}</p>
    <ul>
      ${refusals.map((refusal) => html`<li>${refusalText(refusal)}</li>`)}
    </ul>
  </div>`;
}

/** The offer to mirror, after the eye was switched to `eye`. */
export function offerBox(eye: EyeSide): TemplateResult {
  return html`<div class="offer" part="offer">
    <p>${offerText(eye)}</p>
    <div class="buttons">${button('mirror', mirrorText(eye))} ${button('dismiss', NOT_NEEDED)}</div>
  </div>`;
}

export function actionButtons({ plan, canUndo, canRedo }: CaseModel, fixed: boolean): TemplateResult {
  const canReset = !fixed && !samePlan(plan, withoutPlan(plan));
  return html`<div class="buttons actions">
    ${button('undo', UNDO, canUndo)} ${button('redo', REDO, canRedo)} ${button('reset', RESET, canReset)}
  </div>`;
}

/** A button that cannot be used now keeps the focus, so that the keyboard is not thrown out of the form. */
function button(action: Action, text: string, enabled = true): TemplateResult {
  return html`<button type="button" part="button" data-action=${action} aria-disabled=${enabled ? 'false' : 'true'}>${text}</button>`;
}
