import { LitElement, html, isServer, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import type { Astigmatism, RefusedValue } from '../../core/numbers.js';
import { buttonStyles } from '../internal/button-styles.js';
import { controlStyles } from '../internal/control-styles.js';
import { LanguageController } from '../internal/language/language-controller.js';
import { Later } from '../internal/later.js';
import { noticeStyles, refusedBox } from '../internal/notices.js';
import { keepOwnKeys } from '../internal/own-keys.js';
import { property, state } from '../internal/property.js';
import { restyle } from '../internal/restyle.js';
import { tokens } from '../internal/tokens.js';
import type { AstigStep } from './step.js';
import { stepAt, writeAddress } from './steps.address.js';
import { spokenText, stepsBar } from './steps.bar.js';
import { caseOf } from './steps.case.js';
import type { CaseElement } from './steps.case.js';
import { answered, byDeck, deckStep } from './steps.deck.js';
import { AstigStepEvent } from './steps.event.js';
import { stepsByKey } from './steps.keys.js';
import { PageWatch } from './steps.page.js';
import { Questions } from './steps.questions.js';
import { stepsStyles } from './steps.styles.js';
import { Walk } from './steps.walk.js';
import { stepsWords } from './steps.words.js';

export type { AstigStepEvent } from './steps.event.js';

/**
 * Walks a case through states that are declared as `<astig-step>` children, forward and back, by buttons and keys, by the
 * address (`#id-of-the-step`, or `#id-of-the-steps-3`), or by a slide deck whose fragments the steps are (class `fragment`).
 * The case lies inside the steps, around them, or is named by `for`. A step changes what it and the steps before it name;
 * all else is as the case was before the first step, so that going back shows exactly what was there.
 *
 * @tagname astig-steps
 * @slot - `<astig-step>` elements, and whatever shows the case
 * @csspart bar - the buttons and where one is
 * @csspart button - a button
 * @csspart predict - where the reader says what to expect
 * @csspart guess - the marker of it
 * @csspart sequence - every step below the other, on paper
 * @csspart refused - what a step asks for and could not be taken
 * @fires {AstigStepEvent} astig-step - when the user has gone to another step
 */
export class AstigSteps extends LitElement {
  static override styles = [tokens, buttonStyles, controlStyles, noticeStyles, stepsStyles];

  /** Id of the `<astig-case>` to walk through, in the same tree. Without it the one inside, else the nearest one around. */
  @property() for = '';
  /** Number of the step that is shown, from 1. */
  @property({ type: Number }) step = 1;
  /** Writes the step into the address of the page, in place of the entry that is there. Reading it needs no permission. */
  @property({ type: Boolean, attribute: 'write-address' }) writeAddress = false;

  @state() private refusals: readonly RefusedValue[] = [];
  /** The step that is shown in the case: behind `step` while the reader predicts. */
  @state() private reached = 0;
  @state() private steps: readonly AstigStep[] = [];

  /** Every step for paper, while the page is printed. */
  @state() private sequence: readonly Element[] = [];

  readonly #language = new LanguageController(this);
  readonly #questions = new Questions(this, () => this.#show());
  readonly #print = new Later(this, () => import('./steps.print.js'));
  #walk: Walk | null = null;
  #coming: Promise<unknown> | null = null;

  constructor() {
    super();
    this.addController(new PageWatch(this, { look: () => this.#look(), address: () => this.#readAddress(), print: () => this.#onPrint(), printed: () => this.#onPrinted() }));
    this.addEventListener('keydown', (event) => this.#onKeydown(event));
    this.addEventListener('keydown', keepOwnKeys);
  }

  /** Shows the next step, if there is one, or the answer while the reader is asked. Fires no event. */
  next(): void {
    if (this.#questions.open) this.#reveal();
    else this.step = this.#within(this.step + 1);
  }

  /** Shows the step before, if there is one. Fires no event. */
  previous(): void {
    this.step = this.#within(this.step - 1);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#walk?.finish();
    this.#questions.drop();
  }

  adoptedCallback(): void {
    restyle(this);
  }

  /** @internal */
  waitFor(coming: Promise<unknown>): void {
    this.#coming = Promise.all([this.#coming, coming]);
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const done = await super.getUpdateComplete();
    const coming = this.#coming;
    if (!coming) return done;
    this.#coming = null;
    await coming;
    return this.getUpdateComplete();
  }

  /** Looks at what the page has put inside, after it has changed. */
  #look(): void {
    const steps = [...this.querySelectorAll('astig-step')].filter((step) => step.closest('astig-steps') === this);
    if (steps.length !== this.steps.length || steps.some((step, index) => step !== this.steps[index])) this.steps = steps;
    if (byDeck(steps)) this.step = deckStep(steps);
    const { open } = this.#questions;
    if (open && answered(steps[open.step - 1]!)) this.#reveal();
    this.requestUpdate();
  }

  #readAddress(): void {
    const step = stepAt(location.hash, this.id, this.steps);
    if (step) this.step = step;
  }

  /** The browser waits for nothing here, so what makes the sequence must be there already. */
  #onPrint(): void {
    if (!this.#print.part || !this.#walk) return;
    this.#walk.finish();
    this.sequence = this.#print.part.sequenceOf(this, this.steps, this.#walk.base);
    this.performUpdate();
  }

  #onPrinted(): void {
    this.sequence = [];
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (isServer || this.steps.length === 0) return;
    const found = caseOf(this);
    if (found !== (this.#walk?.eye ?? null) || changed.has('for')) this.#begin(found);
    if (!this.#walk) return;
    if (this.#walk.takeReplaced()) this.#startAnew();
    const at = this.#within(this.step);
    const { open } = this.#questions;
    const verdict = open && open.step !== at ? this.#questions.leave(at, this.#walk, this.steps) : null;
    if (this.#asks(at)) this.#questions.ask(at, this.#walk, this.#upTo(this.reached));
    else if (at !== this.reached) this.#arrive(at);
    this.#questions.verdict = verdict ?? this.#questions.verdict;
    for (const [index, step] of this.steps.entries()) step.active = index + 1 === this.reached;
  }

  /** Takes the case as it is now as what the steps start from. */
  #begin(found: CaseElement | null): void {
    this.#questions.drop();
    this.#walk?.end();
    this.#walk = found && new Walk(found, () => this.requestUpdate());
    this.reached = 0;
  }

  /** Shows the same step of the eye that the host page has set. */
  #startAnew(): void {
    this.#questions.drop();
    this.#questions.verdict = null;
    if (this.reached > 0) this.refusals = this.#walk!.set(this.#upTo(this.reached));
  }

  #upTo(at: number): readonly AstigStep[] {
    return this.steps.slice(0, at);
  }

  /** Whether the reader has to predict before this step is shown: only when coming from the one before. */
  #asks(at: number): boolean {
    const step = this.steps[at - 1]!;
    return step.predict !== null && this.reached === at - 1 && at > 1 && !answered(step);
  }

  #show(): void {
    this.#reveal();
    this.#tell('show');
    this.updateComplete.then(() => this.shadowRoot!.querySelector<HTMLElement>('.next:not([aria-disabled=true]), .back')?.focus(), reportError);
  }

  #reveal(): void {
    const made = this.#questions.drop()!;
    const result = this.#arrive(made.step);
    if (this.refusals.length === 0) this.#questions.verdict = { made, result };
  }

  /** Brings the case to a step; returns what will remain there, whatever has yet to move. */
  #arrive(at: number): Astigmatism {
    const walk = this.#walk!;
    walk.finish();
    const first = this.reached === 0;
    this.reached = at;
    this.#questions.verdict = null;
    if (!this.steps.some((step) => step.hasAttribute('k-unit'))) walk.keepUnit();
    const { refusals, result } = walk.go(() => this.#upTo(at), !first);
    this.refusals = refusals;
    return result;
  }

  protected override updated(): void {
    // What the page has put inside is in the language of the page, and not in the one of the buttons.
    for (const name of ['lang', 'dir']) this.shadowRoot!.querySelector('slot')!.parentElement!.removeAttribute(name);
    if (this.writeAddress && this.reached > 0) writeAddress(this.reached, this.id, this.steps);
  }

  #onKeydown(event: KeyboardEvent): void {
    const by = byDeck(this.steps) ? 0 : stepsByKey(event, this);
    // At either end the key is the page's, which may be a slide deck.
    if (!by || (this.#within(this.step + by) === this.step && !(by > 0 && this.#questions.open))) return;
    event.preventDefault();
    event.stopPropagation();
    this.#go(by, 'keyboard');
  }

  readonly #go = (by: number, source: string): void => {
    if (by > 0 && this.#questions.open) return this.#show();
    const step = this.#within(this.step + by);
    if (step === this.step) return;
    this.step = step;
    this.#tell(source);
  };

  readonly #tell = (source: string): void => {
    this.dispatchEvent(new AstigStepEvent(this.step, this.steps.length, `astig-steps ${source}`));
  };

  #within(step: number): number {
    return Math.max(1, Math.min(this.steps.length, Math.round(step) || 1));
  }

  protected override render(): TemplateResult {
    const say = this.#language.say(stepsWords);
    const { steps } = this;
    const ready = steps.length > 0 && this.#walk;
    const at = this.#within(this.step);
    const { sequence } = this;
    if (ready) this.#print.need();
    const { open } = this.#questions;
    const question = steps[at - 1]?.predict || say('predict');
    return html`<div class=${sequence.length > 0 ? 'live' : ''}><slot></slot></div>
      ${sequence.length > 0 ? html`<div class="sequence" part="sequence">${sequence}</div>` : nothing}
      ${steps.length > 0 && !this.#walk ? html`<p class="quiet">${say('noCase')}</p>` : nothing}
      ${refusedBox(say('refused'), this.refusals.map((refusal) => this.#language.refusal(refusal)))}
      ${open?.render(question, this.#language) ?? nothing}
      <p class="verdict" role="status" aria-live="polite">${this.#questions.said(this.#language)}</p>
      ${ready ? stepsBar({ at, count: steps.length, text: at === this.reached ? spokenText(steps[at - 1]!) : question, asks: at !== this.reached, more: at < steps.length || open !== null, go: byDeck(steps) ? null : this.#go }, this.#language) : nothing}`;
  }
}
