import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { ENGLISH, languageOf, onMessages } from './language.js';
import type { Language, Say, Words } from './language.js';
import type { RefusedValue } from '../../../core/numbers.js';
import { nearestLanguage, watchLanguage } from './nearest.js';

/**
 * Speaks to the reader in the language of the nearest `lang` around the element, across shadow roots, and follows when
 * that changes. What is drawn says of itself in which language it is, which may be another one than that of the page.
 */
export class LanguageController implements ReactiveController, Language {
  #current = ENGLISH;
  #nearest = '';
  #ends: (() => void)[] = [];

  constructor(private readonly host: ReactiveControllerHost & HTMLElement) {
    host.addController(this);
  }

  get lang(): string {
    return this.#current.lang;
  }

  get tag(): string {
    return this.#current.tag;
  }

  get numbers(): string {
    return this.#current.numbers;
  }

  say<Id extends string>(words: Words<Id>): Say<Id> {
    return this.#current.say(words);
  }

  refusal(refused: RefusedValue): string {
    return this.#current.refusal(refused);
  }

  hostConnected(): void {
    this.#ends = [onMessages(() => this.#follow(true)), watchLanguage(this.host, () => this.#follow(false))];
    this.#follow(false);
  }

  hostDisconnected(): void {
    for (const end of this.#ends) end();
    this.#ends = [];
  }

  hostUpdated(): void {
    const { tag } = this;
    for (const part of (this.host.shadowRoot?.children ?? []) as HTMLCollectionOf<HTMLElement>) {
      if (part.lang === tag) continue;
      part.lang = tag;
      // A language that runs to the left does so on a page that has not said it too; others run as the page does.
      if (this.#current.rightToLeft) part.dir = 'rtl';
      else if (part.dir === 'rtl') part.removeAttribute('dir');
    }
  }

  #follow(textsChanged: boolean): void {
    const nearest = nearestLanguage(this.host);
    if (nearest === this.#nearest && !textsChanged) return;
    this.#nearest = nearest;
    this.#current = languageOf(nearest);
    this.host.requestUpdate();
  }
}
