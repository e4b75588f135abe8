import { html, nothing } from 'lit';
import type { ReactiveControllerHost, TemplateResult } from 'lit';
import { focused } from './focused.js';
import type { Language } from './language/language.js';
import { addStyles } from './restyle.js';
import type { Question } from './source-controller.js';
import { sourceNote } from './source-note.js';
import { popoverStyles } from './source-popover.styles.js';
import { sharedWords } from './words.js';

/** The answer to where a figure comes from, over the page. */
export class SourcePopover {
  #question: Question | null = null;
  /** What had the focus when the question was asked. */
  #asker: Element | null = null;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly language: Language,
  ) {
    addStyles(host, popoverStyles);
  }

  /** Not where the reader has gone on to something else while the answer was loaded: it would take the focus from there. */
  async show(question: Question, asker: Element | null): Promise<void> {
    this.#question = question;
    this.#asker = asker;
    this.host.requestUpdate();
    await this.host.updateComplete;
    const popover = this.#popover();
    const { ownerDocument } = this.host;
    const now = focused(ownerDocument);
    const goneOn = now !== asker && now !== ownerDocument.body && !popover?.contains(now);
    if (this.#question !== question || !popover?.isConnected || goneOn) return;
    if (!popover.matches(':popover-open')) popover.showPopover();
    popover.focus();
  }

  /** Ends what has been asked, as when the element goes. */
  forget(): void {
    this.#question = null;
  }

  render(): TemplateResult {
    const { language } = this;
    const say = language.say(sharedWords);
    return html`<div class="source" part="source" popover tabindex="-1" role="dialog" aria-label=${say('whereFrom')} @beforetoggle=${this.#onToggle}>
      ${this.#question ? sourceNote(this.#question, language) : nothing}
      <button type="button" class="close" @click=${() => this.#popover()?.hidePopover()}>${say('close')}</button>
    </div>`;
  }

  /** Browsers give the focus back only when they took it themselves, which they do not inside a shadow root. */
  readonly #onToggle = (event: ToggleEvent): void => {
    if (event.newState !== 'closed' || !this.#popover()?.contains(this.host.shadowRoot?.activeElement ?? null)) return;
    (this.#asker as HTMLElement | null)?.focus({ preventScroll: true });
  };

  #popover(): HTMLElement | null {
    return this.host.shadowRoot?.querySelector<HTMLElement>('.source') ?? null;
  }
}
