import { html, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import { state } from 'lit/decorators.js';
import type { CompletePlan, EyeSide } from '../../core/numbers.js';
import { withoutPlan } from '../internal/case-model.js';
import type { CaseModel, KUnit } from '../internal/case-model.js';
import { propose, samePlan } from '../internal/proposal.js';
import { controlStyles } from '../internal/control-styles.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { sharedWords } from '../internal/words.js';
import { choiceField as planFieldOf, chosenPatch, mirrored } from './entry.choices.js';
import type { Choice } from './entry.choices.js';
import { isNumberField, isPlanned, sourceOf } from './entry.fields.js';
import type { NumberField } from './entry.fields.js';
import { actionButtons, choiceField, group, more, numberField, offerBox, refusedBox, riskField } from './entry.parts.js';
import type { Action, FormState } from './entry.parts.js';
import { entryStyles } from './entry.styles.js';
import { Typing } from './entry.typing.js';
import { entryWords } from './entry.words.js';

const TAG = 'astig-entry';

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
  static override styles = [tokens, controlStyles, entryStyles];

  /** The eye for which mirroring is offered. */
  @state() private offer: EyeSide | null = null;
  /** What a screen reader is to hear of the last action. */
  @state() private spoken = '';

  private readonly typing = new Typing(this);
  private readonly opened = new Map<string, boolean>();
  /** What was shown last, to tell whether someone else has put another plan in its place. */
  private seen: { model: CaseModel; plan: CompletePlan; moving: boolean } | null = null;

  override disconnectedCallback(): void {
    // Not every browser lets a field that is taken away lose the focus first.
    if (this.model) this.typing.leave(this.model);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.settle();
  }

  /** Takes note of what has happened to the case. Views are drawn once a frame, and a key may come before that. */
  private settle(): void {
    const { model, seen, typing } = this;
    if (seen && seen.model !== model) typing.leave(seen.model);
    // What was typed and offered was meant for the plan that is gone: it may have been another eye.
    if (!model || seen?.model !== model || this.fixed || this.isReplaced(model)) {
      typing.forget();
      this.offer = null;
    }
    if (model) typing.yieldTo(model.plan);
    if (this.offer !== model?.plan.eye) this.offer = null;
    this.look();
  }

  /** Whether the page has put another plan in the place of the one that was shown. Then nothing can be taken back. */
  private isReplaced({ plan, moving, canUndo, canRedo }: CaseModel): boolean {
    const { seen, typing } = this;
    if (seen?.plan === plan || canUndo || canRedo) return false;
    return typing.moving || !(seen?.moving || moving);
  }

  protected override render(): TemplateResult {
    const { model, language } = this;
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    const form = { model, typing: this.typing, fixed: this.fixed, language };
    return html`${refusedBox(model, language)}
      <div
        class="form"
        role="group"
        aria-label=${language.say(entryWords)('form')}
        @input=${this.onInput}
        @change=${this.onChange}
        @keydown=${this.onKeydown}
        @focusout=${this.onFocusout}
        @click=${this.onClick}
      >
        ${this.groups(form)} ${this.editable ? actionButtons(model, form.fixed, language) : nothing}
      </div>
      <p class="visually-hidden" role="status">${this.spoken}</p>
      <p class="quiet">${shared('estimate')}</p>`;
  }

  private groups(form: FormState): TemplateResult {
    const { model: { plan }, language } = form;
    const number = (id: NumberField): TemplateResult => numberField(id, form);
    const choice = (name: Choice): TemplateResult => choiceField(name, form);
    return html`${group('theEye', html`${choice('eye')} ${number('age')} ${this.offer === null ? nothing : offerBox(this.offer, language)} ${riskField(form)}`, language)}
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

  private onInput(event: Event): void {
    // A native input event is composed and would reach the host page beside our own.
    event.stopPropagation();
    const input = event.target as HTMLInputElement;
    if (!this.model || !isNumberField(input)) return;
    this.spoken = '';
    this.settle();
    this.typing.type(input.name, input.value, this.model);
    this.look();
    this.requestUpdate();
  }

  private onChange(event: Event): void {
    event.stopPropagation();
    const input = event.target as HTMLInputElement;
    if (isNumberField(input)) this.finish(input.name);
    else if (input.name === 'risks') this.tick();
    else this.choose(input.name as Choice, input.value);
  }

  /** A field does not fire `change` when it is left as it was entered, but a movement may be under way all the same. */
  private onFocusout(event: FocusEvent): void {
    if (isNumberField(event.target as HTMLInputElement)) this.finish((event.target as HTMLInputElement & { name: NumberField }).name);
  }

  private onKeydown(event: KeyboardEvent): void {
    const input = event.target as HTMLInputElement;
    if (!this.model || !isNumberField(input)) return;
    const { name } = input;
    if (!this.typing.has(name)) return;
    if (event.key === 'Escape') {
      this.typing.cancel(name, this.model);
      this.look();
      this.requestUpdate();
      event.preventDefault();
      event.stopPropagation();
    } else if ((event.ctrlKey || event.metaKey) && /^[zy]$/i.test(event.key)) {
      // While a text is unfinished, the browser's own undo works on the text, not the case's on the plan.
      event.stopPropagation();
    }
  }

  private finish(name: NumberField): void {
    if (!this.model) return;
    this.typing.finish(name, this.model);
    this.spoken = this.typing.error(name, this.language) ?? this.spoken;
    this.look();
    this.requestUpdate();
  }

  private choose(choice: Choice, value: string): void {
    const { model } = this;
    if (!model) return;
    if (choice === 'kUnit') {
      this.typing.forget(['flatK', 'steepK']);
      model.chooseUnit(value as KUnit);
    } else {
      model.choose(chosenPatch(choice, value, model.plan, model.outcome), sourceOf(planFieldOf(choice)), this);
      if (choice === 'eye') this.offerMirroring(model.plan);
    }
    this.look();
    // A switch that was not accepted goes back.
    this.requestUpdate();
  }

  private tick(): void {
    const ticked = this.renderRoot.querySelectorAll<HTMLInputElement>('[name=risks]:checked');
    this.model?.choose({ risks: [...ticked].map(({ value }) => value).join(' ') }, sourceOf('risks'), this);
    this.look();
    this.requestUpdate();
  }

  private offerMirroring(plan: CompletePlan): void {
    const worthwhile = !samePlan(plan, propose(plan, mirrored(plan)).plan);
    this.offer = worthwhile ? plan.eye : null;
    this.spoken = worthwhile ? this.language.say(entryWords)(plan.eye === 'right' ? 'nowRight' : 'nowLeft') : '';
  }

  private onClick(event: Event): void {
    const pressed = (event.target as Element).closest<HTMLButtonElement>('button[data-action]');
    if (!this.model || !pressed || pressed.getAttribute('aria-disabled') === 'true') return;
    this.act(pressed.dataset['action'] as Action, this.model);
  }

  private act(action: Action, model: CaseModel): void {
    if (action === 'undo') model.undo(`${TAG} undo`);
    if (action === 'redo') model.redo(`${TAG} redo`);
    if (action === 'reset') {
      this.typing.forget();
      model.choose(withoutPlan(model.plan), `${TAG} reset`, this);
    }
    if (action === 'mirror') model.choose(mirrored(model.plan), `${TAG} mirror`, this);
    if (action === 'mirror' || action === 'dismiss') {
      this.offer = null;
      // The offer's buttons go with it; the keyboard stays where the offer came from.
      this.renderRoot.querySelector<HTMLElement>('[name=eye]:checked')?.focus();
    }
    this.look();
    this.requestUpdate();
  }

  /** Remembers the plan as one that this form knows of. */
  private look(): void {
    const { model } = this;
    this.seen = model && { model, plan: model.plan, moving: model.moving };
  }

  private get fixed(): boolean {
    return !this.editable || this.model!.refusals.length > 0;
  }
}
