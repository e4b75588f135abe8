import { html, nothing } from 'lit';
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';
import type { FigureId } from '../../core/figures.js';
import type { SourceId } from '../../core/references.js';
import { focused } from './focused.js';
import { ENGLISH } from './language/language.js';
import type { Language } from './language/language.js';
import type { SourcePopover } from './source-popover.js';

/** What is asked about: a figure, or the source of a caution. */
export type Question = { figure: FigureId; own?: boolean } | { source: SourceId };

/**
 * Lets every figure on screen be asked where it comes from. All that answers is loaded when somebody asks for the first
 * time.
 */
export class SourceController implements ReactiveController {
  #popover: SourcePopover | null = null;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly language: Language = ENGLISH,
  ) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#popover?.forget();
  }

  /** A figure as a button that opens its source. */
  button(question: Question, content: unknown, label?: string): TemplateResult {
    return html`<button type="button" class="sourced" part="sourced" aria-label=${label ?? nothing} aria-haspopup="dialog" @click=${() => this.ask(question)}>${content}</button>`;
  }

  /** Opens the source of a figure. */
  ask(question: Question): void {
    void this.#answer(question, focused(this.host.ownerDocument));
  }

  /** To be put at the end of the host's template. */
  render(): TemplateResult | typeof nothing {
    return this.#popover?.render() ?? nothing;
  }

  async #answer(question: Question, asker: Element | null): Promise<void> {
    const { SourcePopover } = await import('./source-popover.js');
    this.#popover ??= new SourcePopover(this.host, this.language);
    await this.#popover.show(question, asker);
  }
}
