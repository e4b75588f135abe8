import { html, nothing } from 'lit';
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';
import type { FigureId } from '../../core/figures.js';
import type { SourceId } from '../../core/references.js';
import { ENGLISH } from './language/language.js';
import type { Language } from './language/language.js';
import type { sourceNote } from './source-note.js';
import { sharedWords } from './words.js';

/** What is asked about: a figure, or the source of a caution. */
export type Question = { figure: FigureId; own?: boolean } | { source: SourceId };

type Note = typeof sourceNote;

/**
 * Lets every figure on screen be asked where it comes from. The answer opens in a popover; its texts and references are
 * loaded when somebody asks for the first time.
 */
export class SourceController implements ReactiveController {
  private question: Question | null = null;
  private note: Note | null = null;
  /** What had the focus when the question was asked. */
  private asker: HTMLElement | null = null;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly language: Language = ENGLISH,
  ) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.question = null;
  }

  /** A figure as a button that opens its source. */
  button(question: Question, content: unknown, label?: string): TemplateResult {
    return html`<button type="button" class="sourced" part="sourced" aria-label=${label ?? nothing} aria-haspopup="dialog" @click=${() => this.ask(question)}>${content}</button>`;
  }

  /** Opens the source of a figure. */
  ask(question: Question): void {
    this.asker = this.host.shadowRoot?.activeElement as HTMLElement | null;
    void this.show(question);
  }

  private async show(question: Question): Promise<void> {
    this.question = question;
    this.note ??= (await import('./source-note.js')).sourceNote;
    if (this.question !== question) return;
    this.host.requestUpdate();
    await this.host.updateComplete;
    const popover = this.popover();
    if (popover?.isConnected && !popover.matches(':popover-open')) popover.showPopover();
    popover?.focus();
  }

  /** To be put at the end of the host's template. */
  render(): TemplateResult {
    const { note, question, language } = this;
    const say = language.say(sharedWords);
    return html`<div class="source" part="source" popover tabindex="-1" role="dialog" aria-label=${say('whereFrom')} @beforetoggle=${this.onToggle}>
      ${note && question ? note(question, language) : nothing}
      <button type="button" class="close" @click=${() => this.popover()?.hidePopover()}>${say('close')}</button>
    </div>`;
  }

  /** Browsers give the focus back only when they took it themselves, which they do not inside a shadow root. */
  private readonly onToggle = (event: ToggleEvent): void => {
    if (event.newState !== 'closed' || !this.popover()?.contains(this.host.shadowRoot?.activeElement ?? null)) return;
    this.asker?.focus({ preventScroll: true });
  };

  private popover(): HTMLElement | null {
    return this.host.shadowRoot?.querySelector<HTMLElement>('.source') ?? null;
  }
}
