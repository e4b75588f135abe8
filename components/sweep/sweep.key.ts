import { html, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import type { Language } from '../internal/language/language.js';
import { goodText } from './sweep.speech.js';
import type { ToldSite, ToldSweep } from './sweep.speech.js';
import { sweepWords } from './sweep.words.js';

export interface KeyInput {
  told: ToldSweep;
  /** The present incision, if there is one. */
  present: ToldSite | null;
  hideSpread: boolean;
  language: Language;
}

/** What each line in the plot is, with its figures. Repeats the text alternative, so it is not read out again. */
export function sweepKey({ told, present, hideSpread, language }: KeyInput): TemplateResult {
  const say = language.say(sweepWords);
  const entries: [SVGTemplateResult, string][] = [[line('curve'), say('keyCurve')]];
  if (!hideSpread) entries.push([svg`<rect class="band" x="0.5" y="1.5" width="27" height="9"></rect>`, say('keyBand')]);
  entries.push([line('good'), goodText(language)]);
  if (told.best) entries.push([svg`<path class="diamond best" d="M14 0.5 19.5 6 14 11.5 8.5 6z"></path>`, told.best]);
  entries.push([svg`<circle class="dot site" cx="14" cy="6" r="3.5"></circle>`, told.named]);
  if (present) {
    entries.push([svg`<line class="marker" x1="14" x2="14" y1="0" y2="12"></line><circle class="point" cx="14" cy="6" r="4"></circle>`, say('keyIncision', present)]);
  }
  return html`<ul class="key" aria-hidden="true">${entries.map(([sample, label]) => html`<li><svg viewBox="0 0 28 12">${sample}</svg><span>${label}</span></li>`)}</ul>`;
}

function line(className: string): SVGTemplateResult {
  return svg`<line class=${className} x1="0" x2="28" y1="6" y2="6"></line>`;
}
