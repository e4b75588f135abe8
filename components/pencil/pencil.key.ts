import { html, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import type { Language } from '../internal/language/language.js';
import type { Scene } from './pencil.scene.js';
import { keyTexts } from './pencil.speech.js';
import { pencilWords } from './pencil.words.js';

const LINE = svg`<line class="focal" x1="4" y1="6" x2="24" y2="6"></line>`;
const ROUND = (className: string): SVGTemplateResult => svg`<ellipse class=${className} cx="14" cy="6" rx="5" ry="5"></ellipse>`;

/** What is drawn, with its figures; all of it stands in the name of the drawing too. */
export function pencilKey(scene: Scene, language: Language): TemplateResult {
  const texts = keyTexts(scene, language);
  const item = (className: string, sign: SVGTemplateResult, text: string): TemplateResult => html`<li><svg viewBox="0 0 28 12" class=${className}>${sign}</svg><span>${text}</span></li>`;
  return html`<ul class="key" aria-hidden="true">
    ${scene.point
      ? item('', ROUND('point'), texts.point)
      : html`${item('front', LINE, texts.front)} ${item('', ROUND('circle'), texts.circle)} ${item('back', LINE, texts.back)}`}
    ${item('', ROUND('retina'), language.say(pencilWords)('keyRetina'))}
    ${item('', svg`<rect class="screen" x="5" y="1" width="18" height="10"></rect>`, texts.screen)}
  </ul>`;
}
