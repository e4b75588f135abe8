import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { Language } from '../internal/language/language.js';
import { stepsWords } from './steps.words.js';

interface Bar {
  /** Number of the step, from 1, and how many there are. */
  at: number;
  count: number;
  /** What a screen reader is told on arriving there: the text of the step, or the question. */
  text: string;
  /** Whether that is a question. */
  asks: boolean;
  /** Whether there is something to come: a step, or the answer to a question. */
  more: boolean;
  /** What the buttons do; none in a deck, which has its own and reads out what it uncovers. */
  go: ((by: number, source: string) => void) | null;
}

/** The buttons, and where one is. */
export function stepsBar({ at, count, text, asks, more, go }: Bar, language: Language): TemplateResult {
  const say = language.say(stepsWords);
  if (!go) return html`<p class="visually-hidden" role="status" aria-live="polite">${asks ? text : ''}</p>`;
  // Not `disabled`, which would lose the focus at the last step.
  const button = (id: 'back' | 'next', by: number, ended: boolean): TemplateResult =>
    html`<button type="button" part="button" class=${id} aria-disabled=${String(ended)} @click=${() => go(by, id)}>${say(id)}</button>`;
  return html`<nav part="bar" aria-label=${say('name')}>
    ${button('back', -1, at === 1)} ${button('next', 1, !more)}
    <span role="status" aria-live="polite">${say('at', { step: String(at), count: String(count) })} <span class="visually-hidden">${text}</span></span>
  </nav>`;
}

/** The text of a step as it is read out: a picture in it by its name. */
export function spokenText(step: Element): string {
  const copy = step.cloneNode(true) as Element;
  for (const picture of copy.querySelectorAll('svg, img')) picture.replaceWith(picture.getAttribute('aria-label') ?? picture.getAttribute('alt') ?? '');
  return copy.textContent.trim();
}
