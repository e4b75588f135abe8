import { html, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { CaseModel } from '../internal/case-model.js';
import { controlStyles } from '../internal/control-styles.js';
import { SourceController } from '../internal/source-controller.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { ESTIMATE, NO_CASE } from '../internal/words.js';
import { limitsForm, sitesText } from './options.form.js';
import { cardsStyles } from './options.cards.styles.js';
import { formStyles } from './options.form.styles.js';
import { NO_LIMITS, planLimits, splitSites, takeLimits } from './options.limits.js';
import type { GivenLimits, TakenLimits, TextLimit } from './options.limits.js';
import { againstBox, presentBox, refusedBox, refusedLimits } from './options.notes.js';
import { BY_RANK, ordered, pressed } from './options.order.js';
import type { Order, SortKey } from './options.order.js';
import { patchOf, sameSurgery } from './options.plan.js';
import { PlanSearch } from './options.search.js';
import type { Found } from './options.search.js';
import { optionsStyles } from './options.styles.js';
import { planTable } from './options.table.js';
import { BEING_REFRESHED, NOTHING, WHEN_LET_GO, captionText, chosenText, countedText, refusalText, sortedText } from './options.words.js';

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
 * @fires {AstigInputEvent} astig-input - when a plan is chosen
 * @fires {AstigChangeEvent} astig-change - when a plan is chosen
 */
export class AstigOptions extends AstigView implements GivenLimits {
  static override styles = [tokens, sourceStyles, controlStyles, formStyles, optionsStyles, cardsStyles];

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
  private readonly source = new SourceController(this);
  private readonly typed = new Map<TextLimit, string>();
  private taken: TakenLimits = NO_LIMITS;
  private shown: CaseModel | null = null;
  /** The list that is known to whoever works in the form. */
  private heard: Found | null = null;

  /** Resolves when the list is that of the eye and the limits as they are; while something is moved, at once. */
  get ready(): Promise<void> {
    return this.settled();
  }

  private async settled(): Promise<void> {
    // What a page has just set on the case arrives here some microtasks later.
    await new Promise((resolve) => setTimeout(resolve));
    await this.updateComplete;
    while (this.search.waiting) {
      await this.search.waiting;
      await this.updateComplete;
    }
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    const { model } = this;
    const limited = LIMIT_PROPERTIES.some((name) => changed.has(name));
    if (limited || !this.hasUpdated) this.taken = takeLimits(this, this.taken);
    if (!model) return;
    if (model !== this.shown) this.search.forget();
    this.shown = model;
    this.search.ask(model.plan, planLimits(this, this.taken), model.moving);
    if (this.formOpen) this.hear(limited);
  }

  /** What came of a change in the form is spoken: the form stands far from the list. */
  private hear(limited: boolean): void {
    const { found } = this.search;
    if (limited) this.spoken = this.taken.refusals.map(refusalText).join(' ');
    else if (found !== this.heard && found) this.spoken = countedText(found.options.length);
    this.heard = found;
  }

  protected override render(): TemplateResult {
    const { model } = this;
    if (!model) return html`<p class="quiet">${NO_CASE}</p>`;
    const { found, refusal } = this.search;
    return html`${refusedBox(model)} ${this.editable ? this.limits(model) : nothing}
      ${this.editable && this.formOpen ? nothing : refusedLimits(this.taken)}
      <div class="list">${found ? this.list(model, found) : html`<p>${refusal ? refusalText(refusal) : WHEN_LET_GO}</p>`}</div>
      <p class="visually-hidden" role="status">${this.spoken}</p>
      <p class="quiet">${ESTIMATE}</p>
      ${this.source.render()}`;
  }

  private limits({ plan }: CaseModel): TemplateResult {
    const limits = planLimits(this, this.taken);
    return html`<details
      class="limits"
      part="limits"
      .open=${this.formOpen}
      @toggle=${this.onToggle}
      @input=${this.onInput}
      @change=${this.onChange}
      @keydown=${this.onKeydown}
      @focusout=${this.onFocusout}
    >
      ${limitsForm({ plan, given: this, taken: this.taken, limits, typed: this.typed })}
    </details>`;
  }

  private list(model: CaseModel, { options, against }: Found): TemplateResult {
    const { stale } = this.search;
    const used = stale ? -1 : options.findIndex(({ plan }) => sameSurgery(plan, model.plan));
    const inUse = used < 0 ? null : used + 1;
    const caption = stale ? (model.moving ? WHEN_LET_GO : BEING_REFRESHED) : captionText(options.length, model.plan, this.order);
    return html`${againstBox(against, model.plan)} ${presentBox(model, stale ? null : inUse)}
      ${options.length === 0 ? html`<p>${NOTHING}</p>` : html`<div class="wrap" @click=${this.onClick}>${planTable({
            rows: ordered(options, this.order),
            order: this.order,
            caption,
            inUse,
            stale,
            choosable: this.editable ? !stale && model.refusals.length === 0 : null,
            source: this.source,
          })}</div>`}`;
  }

  private onClick(event: Event): void {
    const button = (event.target as Element).closest<HTMLButtonElement>('button');
    const { sort, rank } = button?.dataset ?? {};
    if (sort) {
      this.order = pressed(this.order, sort as SortKey);
      this.spoken = sortedText(this.order);
    }
    if (rank && button!.getAttribute('aria-disabled') !== 'true') this.choose(Number(rank));
  }

  private choose(rank: number): void {
    const option = this.search.found?.options[rank - 1];
    // A movement of somebody else is not to be ended by this one.
    if (!option || !this.model || this.model.moving) return;
    this.model.choose(patchOf(option.plan), 'astig-options choose', this);
    this.spoken = chosenText(rank, option);
  }

  private onToggle(event: Event): void {
    this.formOpen = (event.currentTarget as HTMLDetailsElement).open;
    this.heard = this.search.found;
  }

  private onInput(event: Event): void {
    // A native input event is composed and would reach the host page as if the element had a value.
    event.stopPropagation();
    const input = event.target as HTMLInputElement;
    if (isText(input)) this.typed.set(input.name, input.value);
  }

  private onChange(event: Event): void {
    event.stopPropagation();
    const input = event.target as HTMLInputElement;
    if (isText(input)) this.take(input.name);
    else if (input.name === 'arcs') this.allowArcs(Number(input.value) as 0 | 1 | 2);
    else if (input.name === 'lens') this.noLens = input.value === 'no';
    else this.allowSites(splitSites(this.sites).others);
  }

  /** Not every way out of a field makes it fire `change`. */
  private onFocusout({ target }: FocusEvent): void {
    if (isText(target as HTMLInputElement)) this.take((target as HTMLInputElement & { name: TextLimit }).name);
  }

  private onKeydown(event: KeyboardEvent): void {
    const input = event.target as HTMLInputElement;
    if (!isText(input) || !this.typed.has(input.name)) return;
    if (event.key === 'Escape') {
      this.typed.delete(input.name);
      this.requestUpdate();
      event.preventDefault();
      event.stopPropagation();
    } else if ((event.ctrlKey || event.metaKey) && /^[zy]$/i.test(event.key)) {
      // While a text is unfinished, the browser's own undo works on the text, not the case's on the plan.
      event.stopPropagation();
    }
  }

  /** A field is left or Enter was pressed: what was typed becomes the limit, or is refused. */
  private take(name: TextLimit): void {
    const text = this.typed.get(name);
    if (text === undefined) return;
    this.typed.delete(name);
    if (name === 'sites') this.allowSites(text);
    else this[name] = text;
    this.requestUpdate();
  }

  private allowArcs(most: 0 | 1 | 2): void {
    this.noArcs = most === 0;
    if (most > 0) this.mostArcs = most;
  }

  private allowSites(others: string): void {
    const ticked = this.renderRoot.querySelectorAll<HTMLInputElement>('[name=site]:checked');
    this.sites = sitesText([...ticked].map(({ value }) => value), others);
  }
}

function isText(input: HTMLInputElement): input is HTMLInputElement & { name: TextLimit } {
  return input.type === 'text';
}
