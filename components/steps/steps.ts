import { LitElement, html, isServer, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import type { Astigmatism, CompletePlan, RefusedValue } from '../../core/numbers.js';
import { movesOf } from '../internal/case-moves.js';
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
import { addressOf, stepAt } from './steps.address.js';
import { caseOf, setSteps, withChanges } from './steps.case.js';
import type { Base, CaseElement } from './steps.case.js';
import { answered, byDeck, deckStep } from './steps.deck.js';
import { AstigStepEvent } from './steps.event.js';
import { Glide, wantsMotion } from './steps.glide.js';
import type { Prediction } from './steps.predict.js';
import { stepsStyles } from './steps.styles.js';
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
  readonly #predict = new Later(this, () => import('./steps.predict.js'));
  readonly #print = new Later(this, () => import('./steps.print.js'));
  readonly #glide = new Glide();
  #case: CaseElement | null = null;
  #base: Base | null = null;
  /** The plan that was shown when the host page set another one. */
  #replaced: CompletePlan | null = null;
  /** Whether the steps themselves set the case. */
  #setting = false;
  #prediction: { step: number; made: Prediction; locked: boolean } | null = null;
  #verdict: { made: Prediction; result: Astigmatism } | null = null;
  #watcher: MutationObserver | null = null;
  #coming: Promise<unknown> | null = null;

  constructor() {
    super();
    this.addEventListener('keydown', (event) => this.#onKeydown(event));
    this.addEventListener('keydown', keepOwnKeys);
  }

  /** Shows the next step, if there is one, or the answer while the reader is asked. Fires no event. */
  next(): void {
    if (this.#prediction) this.#reveal();
    else this.step = this.#within(this.step + 1);
  }

  /** Shows the step before, if there is one. Fires no event. */
  previous(): void {
    this.step = this.#within(this.step - 1);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (isServer) return;
    this.#watcher = new MutationObserver(() => this.#look());
    this.#watcher.observe(this, { subtree: true, childList: true, attributes: true, attributeFilter: ['class', 'id', 'predict'] });
    addEventListener('hashchange', this.#onAddress);
    addEventListener('beforeprint', this.#onPrint);
    addEventListener('afterprint', this.#onPrinted);
    void Promise.all(['astig-case', 'astig-step'].map((tag) => customElements.whenDefined(tag))).then(() => {
      this.#look();
      this.#onAddress();
    });
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#glide.finish();
    this.#dropPrediction();
    this.#watcher?.disconnect();
    removeEventListener('hashchange', this.#onAddress);
    removeEventListener('beforeprint', this.#onPrint);
    removeEventListener('afterprint', this.#onPrinted);
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
    if (this.#prediction && answered(steps[this.#prediction.step - 1]!)) this.#reveal();
    this.requestUpdate();
  }

  readonly #onAddress = (): void => {
    const step = stepAt(location.hash, this.id, this.steps);
    if (step) this.step = step;
  };

  /** The browser waits for nothing here, so what makes the sequence must be there already. */
  readonly #onPrint = (): void => {
    if (!this.#print.part || !this.#base) return;
    this.#glide.finish();
    this.sequence = this.#print.part.sequenceOf(this, this.steps, this.#base);
    this.performUpdate();
  };

  readonly #onPrinted = (): void => {
    this.sequence = [];
  };

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (isServer || this.steps.length === 0) return;
    const found = caseOf(this);
    if (found !== this.#case || changed.has('for')) this.#begin(found);
    if (!this.#case) return;
    if (this.#takeReplaced()) this.#startAnew();
    const at = this.#within(this.step);
    const { verdict } = this.#prediction && this.#prediction.step !== at ? this.#leaveQuestion(at) : { verdict: null };
    if (this.#asks(at)) this.#ask(at);
    else if (at !== this.reached) this.#arrive(at);
    this.#verdict = verdict ?? this.#verdict;
    for (const [index, step] of this.steps.entries()) step.active = index + 1 === this.reached;
  }

  /** Takes the case as it is now as what the steps start from. */
  #begin(found: CaseElement | null): void {
    this.#glide.finish();
    this.#dropPrediction();
    if (this.#case) movesOf(this.#case.model).onForget = null;
    this.#case = found;
    this.#base = found && { plan: found.plan, kUnit: found.kUnit };
    this.reached = 0;
    if (found) movesOf(found.model).onForget = () => this.#onReplaced(found.model.plan);
  }

  #onReplaced(before: CompletePlan): void {
    if (this.#setting) return;
    this.#glide.stop();
    this.#replaced ??= before;
    this.requestUpdate();
  }

  /** Takes what the host page has set since as part of what the steps start from; whether there was anything. */
  #takeReplaced(): boolean {
    // Asking for the plan has the case take in what was set.
    void this.#case!.plan;
    const before = this.#replaced;
    this.#replaced = null;
    if (before) this.#base = withChanges(this.#base!, before, this.#case!);
    return before !== null;
  }

  /** Shows the same step of the eye that the host page has set. */
  #startAnew(): void {
    this.#dropPrediction();
    this.#verdict = null;
    if (this.reached > 0) this.refusals = this.#set(this.reached);
  }

  /** Sets the case as it is at a step. */
  #set(at: number): readonly RefusedValue[] {
    this.#takeReplaced();
    return this.#quietly(() => setSteps(this.#case!, this.#base!, this.steps.slice(0, at)));
  }

  /** Does what is not the host page's doing. */
  #quietly<T>(act: () => T): T {
    this.#setting = true;
    try {
      return act();
    } finally {
      this.#setting = false;
    }
  }

  /** Whether the reader has to predict before this step is shown: only when coming from the one before. */
  #asks(at: number): boolean {
    const step = this.steps[at - 1]!;
    return step.predict !== null && this.reached === at - 1 && at > 1 && !answered(step);
  }

  /** Meanwhile nobody moves the plan, which would give the answer away. */
  #ask(at: number): void {
    const part = this.#predict.need();
    if (!part || this.#prediction) return;
    const eye = this.#case!;
    this.#glide.finish();
    this.#set(this.reached);
    this.#verdict = null;
    this.#prediction = { step: at, made: new part.Prediction(this, eye.outcome.after, () => this.#show()), locked: eye.readOnly };
    eye.readOnly = true;
  }

  #show(): void {
    this.#reveal();
    this.#tell('show');
    this.updateComplete.then(() => this.shadowRoot!.querySelector<HTMLElement>('.next:not([aria-disabled=true]), .back')?.focus(), reportError);
  }

  #reveal(): void {
    const { made, step } = this.#prediction!;
    this.#dropPrediction();
    const result = this.#arrive(step);
    if (this.refusals.length === 0) this.#verdict = { made, result };
  }

  /** The page has moved on from an open question: the answer is said all the same. None is said to who went back. */
  #leaveQuestion(at: number): { verdict: { made: Prediction; result: Astigmatism } | null } {
    const { made, step } = this.#prediction!;
    this.#dropPrediction();
    if (at < step || this.#set(step).length > 0) return { verdict: null };
    return { verdict: { made, result: this.#case!.outcome.after } };
  }

  #dropPrediction(): void {
    if (!this.#prediction) return;
    this.#prediction.made.end();
    if (this.#case) this.#case.readOnly = this.#prediction.locked;
    this.#prediction = null;
  }

  /** Brings the case to a step; returns what will remain there, whatever has yet to move. */
  #arrive(at: number): Astigmatism {
    const eye = this.#case!;
    this.#glide.finish();
    const from = { plan: eye.plan, outcome: eye.outcome };
    const first = this.reached === 0;
    this.reached = at;
    this.#verdict = null;
    // The unit is the reader's choice, unless the steps are about it.
    if (!this.steps.some((step) => step.hasAttribute('k-unit'))) this.#base!.kUnit = eye.kUnit;
    const settle = (): readonly RefusedValue[] => this.#set(at);
    this.refusals = settle();
    const to = { plan: eye.plan, outcome: eye.outcome };
    if (this.refusals.length === 0 && !first && wantsMotion()) this.#glide.run(eye, from, to, { settle, quietly: (act) => this.#quietly(act) });
    return to.outcome.after;
  }

  protected override updated(): void {
    // What the page has put inside is in the language of the page, and not in the one of the buttons.
    for (const name of ['lang', 'dir']) this.shadowRoot!.querySelector('slot')!.parentElement!.removeAttribute(name);
    if (!this.writeAddress || this.reached === 0) return;
    const address = addressOf(this.reached, this.id, this.steps);
    if (address && address !== location.hash && (this.reached > 1 || stepAt(location.hash, this.id, this.steps))) history.replaceState(history.state, '', address);
  }

  #onKeydown(event: KeyboardEvent): void {
    if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey || byDeck(this.steps)) return;
    const own = event.composedPath()[0] as Element;
    if (own.matches?.('input, textarea, select, [contenteditable]')) return;
    const forward = getComputedStyle(this).direction === 'rtl' ? 'ArrowLeft' : 'ArrowRight';
    const by = { [forward]: 1, PageDown: 1, [forward === 'ArrowLeft' ? 'ArrowRight' : 'ArrowLeft']: -1, PageUp: -1 }[event.key];
    // At either end the key is the page's, which may be a slide deck.
    if (!by || (this.#within(this.step + by) === this.step && !(by > 0 && this.#prediction))) return;
    event.preventDefault();
    event.stopPropagation();
    this.#go(by, 'keyboard');
  }

  #go(by: number, source: string): void {
    if (by > 0 && this.#prediction) return this.#show();
    const step = this.#within(this.step + by);
    if (step === this.step) return;
    this.step = step;
    this.#tell(source);
  }

  readonly #tell = (source: string): void => {
    this.dispatchEvent(new AstigStepEvent(this.step, this.steps.length, `astig-steps ${source}`));
  };

  #within(step: number): number {
    return Math.max(1, Math.min(this.steps.length, Math.round(step) || 1));
  }

  protected override render(): TemplateResult {
    const say = this.#language.say(stepsWords);
    const { steps } = this;
    const ready = steps.length > 0 && this.#case;
    const at = this.#within(this.step);
    const { sequence } = this;
    if (ready) this.#print.need();
    return html`<div class=${sequence.length > 0 ? 'live' : ''}><slot></slot></div>
      ${sequence.length > 0 ? html`<div class="sequence" part="sequence">${sequence}</div>` : nothing}
      ${steps.length > 0 && !this.#case ? html`<p class="quiet">${say('noCase')}</p>` : nothing}
      ${refusedBox(say('refused'), this.refusals.map((refusal) => this.#language.refusal(refusal)))}
      ${this.#prediction ? this.#prediction.made.render(steps[at - 1]!.predict ?? '', this.#language) : nothing}
      <p class="verdict" role="status" aria-live="polite">${this.#verdict?.made.verdict(this.#verdict.result, this.#language) ?? ''}</p>
      ${ready && !byDeck(steps) ? this.#bar(at) : nothing}`;
  }

  #bar(at: number): TemplateResult {
    const say = this.#language.say(stepsWords);
    const count = this.steps.length;
    return html`<nav part="bar" aria-label=${say('name')}>
      ${this.#button('back', -1, at === 1)} ${this.#button('next', 1, at === count && !this.#prediction)}
      <span role="status" aria-live="polite">${say('at', { step: String(at), count: String(count) })}</span>
    </nav>`;
  }

  /** Not `disabled`, which would lose the focus at the last step. */
  #button(id: 'back' | 'next', by: number, ended: boolean): TemplateResult {
    return html`<button type="button" part="button" class=${id} aria-disabled=${String(ended)} @click=${() => this.#go(by, id)}>${this.#language.say(stepsWords)(id)}</button>`;
  }
}
