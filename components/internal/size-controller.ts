import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Language } from './language/language.js';

/**
 * Size that is assumed until the element has been measured, CSS px; on a server that is never. No family: texts are
 * estimated then, alike on a server and in the page that takes over what the server has drawn.
 */
const ASSUMED = { width: 360, font: 16, family: '' };

/** Changes below this, in CSS px, are rounding. */
const LEAST_CHANGE = 0.5;

/**
 * Width of a drawing and size of its text in CSS px, so that one user unit of the drawing is one CSS px whatever the
 * host page does. Watches the element with the class `probe` inside the one with the class `plate`. The plate itself grows
 * with what is drawn: to watch it would make the browser complain of a loop.
 */
export class SizeController implements ReactiveController {
  width = ASSUMED.width;
  font = ASSUMED.font;
  #family = ASSUMED.family;
  #observer: ResizeObserver | null = null;
  #watched: Element | null = null;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly language: Language,
  ) {
    host.addController(this);
  }

  /** The language of the text and the families of its type, as `textSize` takes them; empty until the element has been measured. */
  get family(): string {
    return this.#family && `${this.language.tag} ${this.#family}`;
  }

  hostUpdated(): void {
    const plate = this.host.shadowRoot?.querySelector('.plate') ?? null;
    if (plate === this.#watched) return;
    this.hostDisconnected();
    if (!plate) return;
    this.#watched = plate;
    this.#observer = new ResizeObserver(() => this.#measure());
    const probe = plate.querySelector('.probe');
    // The observer reports at once, after layout and before the next paint: nobody sees the assumed size.
    if (probe) this.#observer.observe(probe);
  }

  hostConnected(): void {
    if (this.host.shadowRoot) this.host.requestUpdate();
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    this.#observer = null;
    this.#watched = null;
  }

  #measure(): void {
    const drawing = this.#watched?.querySelector('svg');
    if (!drawing) return;
    const width = drawing.clientWidth;
    // A hidden drawing keeps the size that it had.
    if (width < 1) return;
    const style = getComputedStyle(this.host);
    const font = Number.parseFloat(style.fontSize) || ASSUMED.font;
    const unchanged = Math.abs(width - this.width) < LEAST_CHANGE && Math.abs(font - this.font) < LEAST_CHANGE;
    if (unchanged && style.fontFamily === this.#family) return;
    this.width = width;
    this.font = font;
    this.#family = style.fontFamily;
    this.host.requestUpdate();
  }
}
