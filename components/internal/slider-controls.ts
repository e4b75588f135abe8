import { html } from 'lit';
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';
import type { EyePlan } from '../../core/numbers.js';
import type { CaseModel } from './case-model.js';
import { movesOf } from './case-moves.js';
import { keyStep, movesNativeSlider } from './key-step.js';
import type { Steppable } from './key-step.js';

/** What a drawing tells of its handles, so that each can be worked on without a pointer. */
export interface SliderOwner<Name extends string> {
  sliderModel(): CaseModel | null;
  /** Value and limits. */
  sliderRange(name: Name): Steppable;
  /** Name of the control. */
  sliderLabel(name: Name): string;
  /** The value as it is spoken, with its unit. */
  sliderText(name: Name): string;
  /** The change of the plan that sets the value. */
  sliderPatch(name: Name, value: number): EyePlan;
  /** Tag and part that events name. */
  sliderSource(name: Name): string;
  /** Whether a pointer is moving something, which then ends the movement itself. */
  sliderHeld(): boolean;
}

/**
 * One visually hidden native slider for each degree of freedom of a drawing: what the keyboard and assistive technology
 * work on, since touch screen readers cannot drive a drawn one. Each key fires an input, its release one change.
 */
export class SliderControls<Name extends string> implements ReactiveController {
  /** The control that has the keyboard's visible focus, for the drawing to show. */
  focused: Name | null = null;
  /** Whether the focus is being set by the pointer: browsers take that for a keyboard's at times. */
  #quietly = false;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly owner: SliderOwner<Name>,
  ) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.focused = null;
  }

  render(names: readonly Name[]): TemplateResult {
    return html`<div class="visually-hidden" @focusin=${this.#onFocus} @focusout=${this.#onBlur}>${names.map((name) => this.#slider(name))}</div>`;
  }

  /** Gives a control the focus without a ring: the pointer shows well enough where it is. */
  focusQuietly(name: Name): void {
    this.#quietly = true;
    this.host.shadowRoot?.querySelector<HTMLElement>(`input.${name}`)?.focus({ preventScroll: true });
    this.#quietly = false;
  }

  /** The control that has the focus, seen or not. */
  active(): Name | null {
    const active = this.host.shadowRoot?.activeElement;
    return active?.matches('.visually-hidden > input[type=range]') ? (active.className as Name) : null;
  }

  /** To be called before rendering: hands the focus on when its control is about to go, as when its step is taken back. */
  keepFocus(names: readonly Name[], next: HTMLElement | null): void {
    const active = this.active();
    if (active === null || names.includes(active)) return;
    this.focused = null;
    next?.focus({ preventScroll: true });
  }

  #slider(name: Name): TemplateResult {
    const { owner } = this;
    const { value, min, max } = owner.sliderRange(name);
    return html`<input
      type="range"
      class=${name}
      aria-label=${owner.sliderLabel(name)}
      aria-valuetext=${owner.sliderText(name)}
      min=${min}
      max=${max}
      step="any"
      .value=${String(value)}
      @keydown=${(event: KeyboardEvent) => this.#onKeydown(event, name)}
      @keyup=${() => this.#commit(name)}
      @blur=${() => this.#commit(name)}
      @input=${(event: Event) => this.#onInput(event, name)}
      @change=${() => this.#commit(name)}
    />`;
  }

  #onKeydown(event: KeyboardEvent, name: Name): void {
    const model = this.owner.sliderModel();
    if (!model) return;
    if (event.key === 'Escape' && model.moving) {
      movesOf(model).abandon(this.host);
    } else {
      const value = keyStep(event, this.owner.sliderRange(name));
      if (value === null) {
        // A shortcut of the page or the browser shall reach it, but not turn the eye on its way.
        if (movesNativeSlider(event.key)) event.preventDefault();
        return;
      }
      this.#show(name);
      movesOf(model).move(this.owner.sliderPatch(name, value), this.owner.sliderSource(name), this.host);
    }
    // Neither the native slider nor a slide deck around it shall act on the same key.
    event.preventDefault();
    event.stopPropagation();
  }

  /** Assistive technology that sets the slider itself. The native event would leak out of the shadow root. */
  #onInput(event: Event, name: Name): void {
    event.stopPropagation();
    const model = this.owner.sliderModel();
    const value = Math.round(Number((event.target as HTMLInputElement).value));
    if (model) movesOf(model).move(this.owner.sliderPatch(name, value), this.owner.sliderSource(name), this.host);
  }

  #commit(name: Name): void {
    if (!this.owner.sliderHeld()) this.owner.sliderModel()?.moves?.commit(this.owner.sliderSource(name), this.host);
  }

  readonly #onFocus = (event: FocusEvent): void => {
    const target = event.target as HTMLElement;
    this.#show(!this.#quietly && target.matches(':focus-visible') ? (target.className as Name) : null);
  };

  readonly #onBlur = (): void => this.#show(null);

  #show(name: Name | null): void {
    if (this.focused === name) return;
    this.focused = name;
    this.host.requestUpdate();
  }
}
