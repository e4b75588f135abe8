import { adoptStyles, html, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import { buttonStyles } from '../internal/button-styles.js';
import type { CaseModel } from '../internal/case-model.js';
import type { Say } from '../internal/language/language.js';
import { Later } from '../internal/later.js';
import { noticeStyles } from '../internal/notices.js';
import { property, state } from '../internal/property.js';
import { SourceController } from '../internal/source-controller.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tableStyles } from '../internal/table-styles.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { sharedWords } from '../internal/words.js';
import { cardsStyles } from './options.cards.styles.js';
import type { LimitsForm } from './options.form.js';
import { NO_LIMITS, planLimits, takeLimits } from './options.limits.js';
import type { GivenLimits, TakenLimits } from './options.limits.js';
import { againstBox, presentBox, refusedCase, refusedLimits } from './options.notes.js';
import { BY_RANK, ranked } from './options.order.js';
import type { Order, SortKey } from './options.order.js';
import { sameSurgery } from './options.plan.js';
import { PlanSearch } from './options.search.js';
import type { Found } from './options.search.js';
import { captionText, limitRefusal, offeredText } from './options.speech.js';
import { optionsStyles } from './options.styles.js';
import { planTable } from './options.table.js';
import { optionsWords } from './options.words.js';

const LIMIT_PROPERTIES = ['widths', 'lenses', 'sites', 'mostArcs', 'noArcs', 'noLens'] as const satisfies readonly (keyof GivenLimits)[];

/** A number that is none is kept as it is written, to be refused with its own text. */
const mostArcsConverter = {
  fromAttribute: (text: string | null): unknown => (text === null ? null : /^\s*\d+\s*$/.test(text) ? Number(text) : text),
};

/**
 * Up to six plans for the eye side by side, ranked by the chance that 0.50 D or less remain. Choosing one puts it into
 * the case, as one step that can be taken back; what was measured stays as it is. What the surgeon has and allows is set
 * by attributes or in the form above the list; setting it fires no event, and what cannot be taken is refused in words
 * while its last good value stands.
 *
 * @tagname astig-options
 * @csspart limits - the form of what may be offered
 * @csspart present - the plan as it is, to hold the others against
 * @csspart table - the table of plans
 * @csspart option - the row of a plan; `data-rank` says which, from 1
 * @csspart in-use - the row that is the present plan
 * @csspart picture - the small picture of a plan
 * @csspart chance - the chance of a plan, in words and as a bar
 * @csspart choose - what puts a plan into the case
 * @csspart refused - what the page has set and could not be taken
 * @csspart sourced - a figure that opens its source
 * @csspart source - what opens then
 * @fires {AstigInputEvent} astig-input - when a plan is chosen
 * @fires {AstigChangeEvent} astig-change - when a plan is chosen
 */
export class AstigOptions extends AstigView implements GivenLimits {
  static override styles = [tokens, sourceStyles, noticeStyles, tableStyles, buttonStyles, optionsStyles, cardsStyles];

  /** Widths of the blades at hand, mm, separated by spaces: `2.2 2.75`. Without: the width in the plan. */
  @property() widths = '';
  /** Cylinders of the toric lenses at hand, D at the corneal plane, separated by spaces. Without: 1 to 4 D in half dioptres. */
  @property() lenses = '';
  /** Where the eye may be entered: `temporal`, `superior`, `steep` or degrees, separated by spaces. Without: all three names. */
  @property() sites = '';
  /** Most relaxing arcs. Without: 2. */
  @property({ attribute: 'most-arcs', converter: mostArcsConverter }) mostArcs: 0 | 1 | 2 | null = null;
  /** Offers no arcs. */
  @property({ type: Boolean, attribute: 'no-arcs' }) noArcs = false;
  /** Offers no toric lens. */
  @property({ type: Boolean, attribute: 'no-lens' }) noLens = false;

  @state() private order: Order = BY_RANK;
  /** Whether the form is open. */
  @state() private formOpen = false;
  /** What a screen reader is to hear of the last action. */
  @state() private spoken = '';

  private readonly search = new PlanSearch(this);
  readonly #source = new SourceController(this, this.language);
  readonly #hands = new Later(this, () => import('./options.hands.js'));
  #taken: TakenLimits = NO_LIMITS;
  #shown: CaseModel | null = null;
  /** The list that is known to whoever works in the form. */
  #heard: Found | null = null;
  /** The texts in which that was. */
  #said: Say<keyof typeof optionsWords.en> | null = null;
  /** The form, once somebody has come near it, and what waits for it. */
  #form: LimitsForm | null = null;
  #coming: Promise<void> | null = null;

  get #say(): Say<keyof typeof optionsWords.en> {
    return this.language.say(optionsWords);
  }

  /** Resolves when the list is that of the eye and the limits as they are; while something is moved, at once. */
  get ready(): Promise<void> {
    return this.#settled();
  }

  async #settled(): Promise<void> {
    // What a page has just set on the case arrives here some microtasks later.
    await new Promise((resolve) => setTimeout(resolve));
    await this.updateComplete;
    await this.#coming;
    while (this.search.waiting) {
      await this.search.waiting;
      await this.updateComplete;
    }
    await this.updateComplete;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    const { model } = this;
    const limited = LIMIT_PROPERTIES.some((name) => changed.has(name));
    if (limited || !this.hasUpdated) this.#taken = takeLimits(this, this.#taken);
    if (!model) return;
    if (model !== this.#shown) this.search.forget();
    this.#shown = model;
    this.search.ask(model.plan, planLimits(this, this.#taken), model.moving);
    // The same in another language is no news.
    if (this.#say !== this.#said) this.spoken = '';
    this.#said = this.#say;
    if (this.formOpen) this.#hear(limited);
  }

  /** What came of a change in the form is spoken: the form stands far from the list. */
  #hear(limited: boolean): void {
    const { found } = this.search;
    if (limited) this.spoken = this.#taken.refusals.map((refusal) => limitRefusal(refusal, this.language)).join(' ');
    else if (found !== this.#heard && found) this.spoken = this.#hands.part?.countedText(found.options.length, this.language) ?? '';
    this.#heard = found;
  }

  protected override render(): TemplateResult {
    const { model, language } = this;
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    if (model.moves?.asking) return html`<p class="quiet">…</p>`;
    const { found } = this.search;
    return html`${refusedCase(model, language)} ${this.editable ? this.#limits(model) : nothing}
      ${this.editable && this.formOpen && this.#form ? nothing : refusedLimits(this.#taken, language)}
      <div class="list">${found ? this.#list(model, found) : html`<p>${this.#say('moving')}</p>`}</div>
      <p class="visually-hidden" role="status">${this.spoken}</p>
      <p class="quiet">${shared('estimate')}</p>
      ${this.#source.render()}`;
  }

  /** The surgeon's limits, closed to one line that says what they are. */
  #limits({ plan }: CaseModel): TemplateResult {
    const { language } = this;
    const taken = this.#taken;
    const offered = offeredText(planLimits(this, taken), plan, language);
    return html`<details class="limits" part="limits" ?open=${this.formOpen} @toggle=${this.#onToggle} @pointerenter=${this.#fetchForm} @focusin=${this.#fetchForm}>
      <summary><span class="title">${this.#say('offered')}</span> <span class="offered">${offered}</span></summary>
      ${this.#form?.render({ plan, taken, language })}
    </details>`;
  }

  #list(model: CaseModel, { options, against }: Found): TemplateResult {
    const { language } = this;
    const say = this.#say;
    const { order } = this;
    const hands = this.#hands.need();
    const { stale } = this.search;
    const used = stale ? -1 : options.findIndex(({ plan }) => sameSurgery(plan, model.plan));
    const inUse = used < 0 ? null : used + 1;
    const caption = stale ? say(model.moving ? 'moving' : 'refreshing') : captionText(options.length, model.plan, hands?.orderText(order, language), language);
    return html`${againstBox(against, model.plan, language)} ${presentBox(model, stale ? null : inUse, language)}
      ${options.length === 0 ? html`<p>${say('nothing')}</p>` : html`<div class="wrap" @click=${this.#onClick}>${planTable({
            rows: hands ? hands.ordered(options, order) : ranked(options),
            order,
            caption,
            inUse,
            stale,
            choosable: this.editable ? !stale && model.refusals.length === 0 : null,
            source: this.#source,
            language,
          })}</div>`}`;
  }

  #onClick(event: Event): void {
    const button = (event.target as Element).closest<HTMLButtonElement>('button');
    if (button && button.getAttribute('aria-disabled') !== 'true') void this.#press(button.dataset);
  }

  async #press({ sort, rank }: DOMStringMap): Promise<void> {
    // The list may be pressed before what acts on it is there.
    if (!this.#hands.part) await this.updateComplete;
    const { part: hands } = this.#hands;
    const { model, language } = this;
    if (hands && sort) {
      this.order = hands.pressed(this.order, sort as SortKey);
      this.spoken = hands.sortedText(this.order, language);
    }
    const option = this.search.found?.options[Number(rank) - 1];
    // A movement of somebody else is not to be ended by this one.
    if (hands && option && model && !model.moving) this.spoken = hands.choosePlan({ rank: Number(rank), option }, model, this, language);
  }

  #onToggle(event: Event): void {
    this.formOpen = (event.currentTarget as HTMLDetailsElement).open;
    this.#heard = this.search.found;
    if (this.formOpen) this.#fetchForm();
  }

  /** Most readers never open the form, so it is loaded when somebody comes near. */
  #fetchForm(): void {
    this.#coming ??= this.#loadForm().catch((error) => {
      // Whoever comes next tries again.
      this.#coming = null;
      reportError(error);
    });
  }

  async #loadForm(): Promise<void> {
    const { LimitsForm: Form } = await import('./options.form.js');
    adoptStyles(this.renderRoot as ShadowRoot, [...AstigOptions.elementStyles, ...Form.styles]);
    this.#form = new Form(this);
    this.requestUpdate();
  }
}
