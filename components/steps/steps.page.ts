import type { ReactiveController } from 'lit';
import { isServer } from 'lit';

/** What some steps are told of the page they lie on. */
export interface PageNews {
  /** What is inside has changed. */
  look: () => void;
  address: () => void;
  print: () => void;
  printed: () => void;
}

/** Watches the page while the steps are in it. */
export class PageWatch implements ReactiveController {
  readonly #events: [string, () => void][];
  #inside: MutationObserver | null = null;

  constructor(
    private readonly host: Element,
    private readonly news: PageNews,
  ) {
    this.#events = [['hashchange', news.address], ['beforeprint', news.print], ['afterprint', news.printed]];
  }

  hostConnected(): void {
    if (isServer) return;
    const { look, address } = this.news;
    this.#inside = new MutationObserver(look);
    this.#inside.observe(this.host, { subtree: true, childList: true, attributes: true, attributeFilter: ['class', 'id', 'predict'] });
    for (const [type, tell] of this.#events) addEventListener(type, tell);
    void Promise.all(['astig-case', 'astig-step'].map((tag) => customElements.whenDefined(tag))).then(() => {
      look();
      address();
    });
  }

  hostDisconnected(): void {
    this.#inside?.disconnect();
    for (const [type, tell] of this.#events) removeEventListener(type, tell);
  }
}
