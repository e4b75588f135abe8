import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { load, message, onMessages, servedLanguage } from './catalogue.js';
import type { Say, Words } from './catalogue.js';

/** Language where the page names none. */
const DEFAULT = 'en';

/**
 * Speaks to the reader in the language of the nearest `lang` around the element, across shadow roots, and follows when
 * that changes.
 */
export class LanguageController implements ReactiveController {
  /** The language that is served, as a tag for `Intl`. Digits stay Latin, so that degrees read alike everywhere. */
  lang = DEFAULT;
  private observer: MutationObserver | null = null;
  private unsubscribe: (() => void) | null = null;

  constructor(private readonly host: ReactiveControllerHost & HTMLElement) {
    host.addController(this);
  }

  /** Tag for number formats. */
  get numbers(): string {
    return this.lang === 'en' ? 'en' : `${this.lang}-u-nu-latn`;
  }

  hostConnected(): void {
    this.unsubscribe = onMessages(() => this.follow(true));
    this.observer = new MutationObserver(() => this.follow(false));
    for (let root: Node | null = this.host.getRootNode(); root; root = root instanceof ShadowRoot ? root.host.getRootNode() : null) {
      this.observer.observe(root, { attributes: true, attributeFilter: ['lang'], subtree: true });
    }
    this.follow(false);
  }

  hostDisconnected(): void {
    this.observer?.disconnect();
    this.unsubscribe?.();
  }

  /** The texts of a part, bound to the language. */
  say<Id extends string>(words: Words<Id>): Say<Id> {
    const { lang } = this;
    return (id, values) => message(lang, words, id, values);
  }

  private follow(textsChanged: boolean): void {
    const lang = servedLanguage(nearestLanguage(this.host));
    if (lang === this.lang && !textsChanged) return;
    this.lang = lang;
    void load(lang);
    this.host.requestUpdate();
  }
}

/** Value of the nearest `lang`, going up through slots and shadow roots. */
export function nearestLanguage(element: Element): string {
  let node: Node | null = element;
  while (node) {
    if (node instanceof Element && node.getAttribute('lang')) return node.getAttribute('lang')!;
    const { assignedSlot } = node as Element;
    node = assignedSlot ?? node.parentNode ?? (node instanceof ShadowRoot ? node.host : null);
  }
  return DEFAULT;
}
