import { html, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import { buttonStyles } from '../internal/button-styles.js';
import { controlStyles } from '../internal/control-styles.js';
import { Later } from '../internal/later.js';
import { noticeStyles } from '../internal/notices.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { sharedWords } from '../internal/words.js';
import type { Choice } from './entry.choices.js';
import { isPlanned } from './entry.fields.js';
import type { NumberField } from './entry.fields.js';
import type { Deed, EntryHands } from './entry.hands.js';
import { actionButtons, choiceField, group, more, numberField, offerBox, refusals, riskField } from './entry.parts.js';
import type { FormState } from './entry.parts.js';
import { entryStyles } from './entry.styles.js';
import { entryWords } from './entry.words.js';

/**
 * The form for every input of a case, each with its unit, limits and error. What is typed moves the plan at once and is
 * committed when the field is left or Enter is pressed; Escape puts the old value back. A wrong text stays in its field
 * and the last good plan stands. Decimal point and comma are both read.
 *
 * @tagname astig-entry
 * @csspart group - a group of fields with its heading
 * @csspart field - a field with its label, unit and note, or a row of switches
 * @csspart input - what is typed into
 * @csspart segment - one switch of a row
 * @csspart limits - the limits of a field
 * @csspart aside - what a number means in this eye, such as `temporal, 9 o'clock`
 * @csspart error - what is wrong with a field, in the place of its limits
 * @csspart more - what opens the fields that are rarely touched
 * @csspart offer - the offer to mirror, after the eye was switched
 * @csspart button - undo, redo, back to the measured eye, and the answers to the offer
 * @csspart refused - what the page has set and could not be taken
 * @fires {AstigInputEvent} astig-input - while something acceptable is typed, and with each switch
 * @fires {AstigChangeEvent} astig-change - when it is committed
 */
export class AstigEntry extends AstigView {
  static override styles = [tokens, buttonStyles, controlStyles, noticeStyles, entryStyles];

  /** What is done before the hands are there waits for them, with what stood in the field. */
  readonly #early: (readonly [...Deed, value: string])[] = [];
  readonly #hands = new Later(this, () => this.#fetchHands());
  private readonly opened = new Map<string, boolean>();

  async #fetchHands(): Promise<EntryHands> {
    const { EntryHands: Hands } = await import('./entry.hands.js');
    const hands = new Hands(this, { language: this.language, model: () => this.model, fixed: () => this.fixed });
    for (const [event, target, value] of this.#early.splice(0)) {
      if (event.type === 'input') target.value = value;
      hands.do([event, target]);
    }
    return hands;
  }

  override disconnectedCallback(): void {
    this.#hands.part?.leave();
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.#hands.part?.settle();
  }

  protected override render(): TemplateResult {
    const { model, language } = this;
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    const hands = this.editable ? this.#hands.need() : this.#hands.part;
    const form = { model, typing: hands?.typing ?? null, offer: hands?.offer ?? null, fixed: this.fixed, language };
    return html`${refusals(model, language)}
      <div
        class="form"
        role="group"
        aria-label=${language.say(entryWords)('form')}
        @input=${this.onEvent}
        @change=${this.onEvent}
        @keydown=${this.onEvent}
        @focusout=${this.onEvent}
        @click=${this.onEvent}
      >
        ${this.groups(form)} ${this.editable ? actionButtons(model, form.fixed, language) : nothing}
      </div>
      <p class="visually-hidden" role="status">${hands?.spoken ?? ''}</p>
      <p class="quiet">${shared('estimate')}</p>`;
  }

  private groups(form: FormState): TemplateResult {
    const { model: { plan }, language } = form;
    const number = (id: NumberField): TemplateResult => numberField(id, form);
    const choice = (name: Choice): TemplateResult => choiceField(name, form);
    return html`${group('theEye', html`${choice('eye')} ${number('age')} ${form.offer === null ? nothing : offerBox(form.offer, language)} ${riskField(form)}`, language)}
    ${group(
      'readings',
      html`${choice('kUnit')} ${number('flatK')} ${number('steepK')} ${number('steepMeridian')} ${choice('backSurface')}
      ${isPlanned('backSurface', plan) ? html`${number('backPower')} ${number('backMeridian')}` : nothing}`,
      language,
    )}
    ${group(
      'incision',
      html`${choice('incision')}
      ${isPlanned('incision', plan)
        ? html`${number('incisionSite')} ${number('incisionWidth')} ${more('moreIncision', ['incisionFlattening'], this.opened, form)}`
        : nothing}`,
      language,
    )}
    ${group('arcs', html`${choice('arcCount')} ${isPlanned('arcs', plan) ? this.arcs(form) : nothing}`, language)}
    ${group(
      'lens',
      html`${choice('lens')} ${isPlanned('lens', plan) ? html`${number('lensCylinder')} ${number('lensMeridian')}` : nothing}`,
      language,
    )}`;
  }

  private arcs(form: FormState): TemplateResult {
    const number = (id: NumberField): TemplateResult => numberField(id, form);
    return html`${choiceField('arcMethod', form)} ${number('arcSite')} ${number('arcLength')} ${number('arcDepth')}
    ${number('localThickness')} ${more('moreArcs', ['arcZone', 'arcFlattening'], this.opened, form)}`;
  }

  private onEvent(event: Event): void {
    // Native events of fields are composed and would reach the host page beside our own.
    if (event.type === 'input' || event.type === 'change') event.stopPropagation();
    const target = event.target as HTMLInputElement;
    const { part } = this.#hands;
    if (part) part.do([event, target]);
    else if (this.editable && event.type !== 'keydown') this.#early.push([event, target, target.value]);
  }

  private get fixed(): boolean {
    return !this.editable || this.model!.refusals.length > 0;
  }
}
