import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { DEFAULTS, RISKS } from '../../core/numbers.js';
import type { EyeSide } from '../../core/numbers.js';
import { withoutPlan } from '../internal/case-model.js';
import type { CaseModel } from '../internal/case-model.js';
import { checkedAs } from '../internal/checked.js';
import { fieldWords } from '../internal/field.words.js';
import type { Language } from '../internal/language/language.js';
import { refusedBox } from '../internal/notices.js';
import { samePlan } from '../internal/proposal.js';
import { refusalText, unitText } from '../internal/refusal.js';
import { asideOf } from './entry.asides.js';
import { chosen } from './entry.choices.js';
import type { Choice } from './entry.choices.js';
import { NUMBER_FIELDS, specOf } from './entry.fields.js';
import type { NumberField } from './entry.fields.js';
import { shownText } from './entry.numbers.js';
import { OPTIONS, REFUSALS, limitsText } from './entry.speech.js';
import type { Option } from './entry.speech.js';
import type { Typing } from './entry.typing.js';
import { entryWords } from './entry.words.js';
import type { EntryId } from './entry.words.js';

/** What a button of the form does. */
export type Action = 'undo' | 'redo' | 'reset' | 'mirror' | 'dismiss';

/** What the parts of the form are drawn from. */
export interface FormState {
  model: CaseModel;
  /** What is being typed; null before anybody has. */
  typing: Typing | null;
  /** The eye for which mirroring is offered. */
  offer: EyeSide | null;
  /** Whether nothing can be changed here. */
  fixed: boolean;
  language: Language;
}

/** One or more rows of fields under a heading. */
export function group(name: EntryId, content: unknown, language: Language): TemplateResult {
  return html`<fieldset part="group">
    <legend>${language.say(entryWords)(name)}</legend>
    <div class="fields">${content}</div>
  </fieldset>`;
}

/** A number with its label, unit, limits and, when it is wrong, what is wrong. */
export function numberField(id: NumberField, { model, typing, fixed, language }: FormState): TemplateResult {
  const spec = specOf(id, model.kUnit);
  const error = typing?.error(id, language) ?? null;
  const aside = asideOf(id, model.plan, language);
  return html`<div class="field" part="field">
    <label for=${id}>${language.say(fieldWords)(id)}</label>
    <div class="box" dir="ltr">
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
        .value=${live(typing?.text(id) ?? shownText(id, model, language.numbers))}
      />
      <span class="unit" aria-hidden="true">${unitText(spec.limits.unit, language)}</span>
    </div>
    <div class="notes">
      <p id="${id}-aside" class="aside" part="aside">${aside}</p>
      <p id="${id}-note" class=${error === null ? 'limits' : 'error'} part=${error === null ? 'limits' : 'error'}>${error ?? limitsText(spec, language)}</p>
    </div>
  </div>`;
}

/** A row of switches of which one is on. */
export function choiceField(name: Choice, { model, fixed, language }: FormState): TemplateResult {
  const say = language.say(entryWords);
  const on = chosen(name, model.plan, model.kUnit);
  return html`<div class="choice ${name}" part="field" role="radiogroup" aria-labelledby="${name}-label">
    <p class="label" id="${name}-label">${language.say(fieldWords)(name)}</p>
    <div class="segments">${OPTIONS[name].map(([value, text]: Option) => segment(name, value, text === null ? value : say(text), value === on, fixed))}</div>
  </div>`;
}

function segment(name: Choice, value: string, text: string, on: boolean, fixed: boolean): TemplateResult {
  return html`<label class="segment" part="segment">
    <input type="radio" name=${name} .value=${value} ?checked=${on} ${checkedAs(on)} ?disabled=${fixed} />
    <span>${text}</span>
  </label>`;
}

/** What can be ticked of the eye and the patient. */
export function riskField({ model, fixed, language }: FormState): TemplateResult {
  const ticked = model.plan.risks.split(' ');
  return html`<div class="choice risks" part="field" role="group" aria-labelledby="risks-label">
    <p class="label" id="risks-label">${language.say(fieldWords)('risks')}</p>
    <div class="segments">
      ${RISKS.map(
        (risk) => html`<label class="segment" part="segment">
          <input type="checkbox" name="risks" .value=${risk} ?checked=${ticked.includes(risk)} ${checkedAs(ticked.includes(risk))} ?disabled=${fixed} />
          <span>${language.say(entryWords)(risk)}</span>
        </label>`,
      )}
    </div>
  </div>`;
}

/** Fields that are rarely touched. Open from the start when one of them says something unusual. */
export function more(name: 'moreIncision' | 'moreArcs', ids: readonly NumberField[], open: Map<string, boolean>, form: FormState): TemplateResult {
  const say = form.language.say(entryWords);
  const { plan } = form.model;
  const unusual = ids.some((id) => {
    const { planField } = NUMBER_FIELDS[id];
    return plan[planField] !== DEFAULTS[planField];
  });
  // Not only when the browser says that it has opened: WebKit says so many frames later, and what is typed meanwhile may be usual again.
  if (unusual && !open.has(name)) open.set(name, true);
  return html`<details
    class="more"
    ?open=${open.get(name) ?? false}
    @toggle=${(event: Event) => open.set(name, (event.target as HTMLDetailsElement).open)}
  >
    <summary part="more">${say(name)}${unusual ? html` <em>${say('unusual')}</em>` : nothing}</summary>
    <div class="fields">${ids.map((id) => numberField(id, form))}</div>
  </details>`;
}

/** What the page has set and could not be taken. */
export function refusals(model: CaseModel, language: Language): TemplateResult | typeof nothing {
  return refusedBox(language.say(entryWords)('refused'), model.refusals.map((refusal) => refusalText(refusal, language, REFUSALS)));
}

/** The offer to mirror, after the eye was switched to `eye`. */
export function offerBox(eye: EyeSide, language: Language): TemplateResult {
  const say = language.say(entryWords);
  return html`<div class="offer" part="offer">
    <p>${say(eye === 'right' ? 'nowRight' : 'nowLeft')}</p>
    <div class="buttons">${button('mirror', say(eye === 'right' ? 'mirrorRight' : 'mirrorLeft'))} ${button('dismiss', say('notNeeded'))}</div>
  </div>`;
}

export function actionButtons({ plan, moves }: CaseModel, fixed: boolean, language: Language): TemplateResult {
  const say = language.say(entryWords);
  const canReset = !fixed && !samePlan(plan, withoutPlan(plan));
  return html`<div class="buttons actions">
    ${button('undo', say('undo'), moves?.canUndo ?? false)} ${button('redo', say('redo'), moves?.canRedo ?? false)} ${button('reset', say('reset'), canReset)}
  </div>`;
}

/** A button that cannot be used now keeps the focus, so that the keyboard is not thrown out of the form. */
function button(action: Action, text: string, enabled = true): TemplateResult {
  return html`<button type="button" part="button" data-action=${action} aria-disabled=${enabled ? 'false' : 'true'}>${text}</button>`;
}
