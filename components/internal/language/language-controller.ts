import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { ENGLISH, languageOf, onMessages } from './language.js';
import type { Language, Say, Words } from './language.js';
import type { RefusedValue } from '../../../core/numbers.js';
import { directionOf } from './direction.js';
import { nearestLanguage, watchLanguage } from './nearest.js';

/**
 * Speaks to the reader in the language of the nearest `lang` around the element, across shadow roots, and follows when
 * that changes. What is drawn says of itself in which language it is, which may be another one than that of the page.
 */
export class LanguageController implements ReactiveController, Language {
  private current = ENGLISH;
  private nearest = '';
  private ends: (() => void)[] = [];

  constructor(private readonly host: ReactiveControllerHost & HTMLElement) {
    host.addController(this);
  }

  get lang(): string {
    return this.current.lang;
  }

  get tag(): string {
    return this.current.tag;
  }

  get numbers(): string {
    return this.current.numbers;
  }

  say<Id extends string>(words: Words<Id>): Say<Id> {
    return this.current.say(words);
  }

  refusal(refused: RefusedValue): string {
    return this.current.refusal(refused);
  }

  hostConnected(): void {
    this.ends = [onMessages(() => this.follow(true)), watchLanguage(this.host, () => this.follow(false))];
    this.follow(false);
  }

  hostDisconnected(): void {
    for (const end of this.ends) end();
    this.ends = [];
  }

  hostUpdated(): void {
    const { tag } = this;
    const root = this.host.shadowRoot;
    // What is new comes first, or instead of all.
    if (!root || (root.firstElementChild as HTMLElement | null)?.lang === tag) return;
    for (const part of root.children as HTMLCollectionOf<HTMLElement>) {
      part.lang = tag;
      // A language that runs to the left does so on a page that has not said it too; others run as the page does.
      if (directionOf(tag) === 'rtl') part.dir = 'rtl';
      else if (part.dir === 'rtl') part.removeAttribute('dir');
    }
  }

  private follow(textsChanged: boolean): void {
    const nearest = nearestLanguage(this.host);
    if (nearest === this.nearest && !textsChanged) return;
    this.nearest = nearest;
    this.current = languageOf(nearest);
    this.host.requestUpdate();
  }
}
