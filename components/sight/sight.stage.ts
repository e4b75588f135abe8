import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { Astigmatism } from '../../core/numbers.js';
import { astigmatismText, percent } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import type { SourceController } from '../internal/source-controller.js';
import { SIDES } from './sight.optics.js';
import type { Side } from './sight.optics.js';
import type { Settings } from './sight.settings.js';
import { acuityWords, pictureWords } from './sight.speech.js';
import { sightWords } from './sight.words.js';

export interface StageState {
  settings: Settings;
  /** The astigmatism of the cornea on either side. */
  cornea: Record<Side, Astigmatism>;
  /** Whether the back surface is in it. */
  backSurface: boolean;
  /** What the page says of its own picture. */
  name: string;
  /** Where the divider stands, per cent of the width from where reading begins. */
  divider: number;
  source: SourceController;
  language: Language;
}

/** Both pictures and what is said of them. Both views have the same elements, so that no picture has to be drawn anew. */
export function stage(state: StageState): TemplateResult {
  const { view } = state.settings;
  return html`<div class="pictures ${view}" part="pictures">
    ${SIDES.map((side) => figure(side, state))} ${view === 'divider' ? slider(state) : nothing}
  </div>`;
}

function figure(side: Side, { settings, cornea, backSurface, name, source, language }: StageState): TemplateResult {
  const say = language.say(sightWords);
  const amount = astigmatismText(cornea[side], language.numbers);
  const estimate = acuityWords(cornea[side], settings, language);
  const question = { figure: side === 'before' && backSurface ? 'backSurface' : side } as const;
  return html`<figure class=${side} part=${side}>
    <canvas part="picture" role="img" width="512" height="512" aria-label=${pictureWords(say(side), cornea[side], settings, name, language)}></canvas>
    <figcaption>
      <p><strong>${say(side)}</strong></p>
      <p>${say('astigmatism')} ${source.button(question, amount)}</p>
      ${estimate ? html`<p>${source.button({ source: 'hoshikawa2021' }, estimate, say('acuitySource', { estimate }))}</p>` : nothing}
    </figcaption>
  </figure>`;
}

/** A native slider over both pictures, on which pointer, touch, keys and assistive technology work, and what is seen of it. */
function slider({ divider, language }: StageState): TemplateResult {
  const say = language.say(sightWords);
  return html`<input
      class="cut"
      part="divider"
      type="range"
      min="0"
      max="100"
      step="1"
      aria-label=${say('dividerName')}
      aria-valuetext=${say('dividerAt', { share: percent(divider / 100, language.numbers) })}
      .value=${String(divider)}
    />
    <div class="grip" aria-hidden="true">
      <svg viewBox="-22 -22 44 44">${svg`<circle r="18"></circle><path d="M-5 -7L-12 0L-5 7M5 -7L12 0L5 7"></path>`}</svg>
    </div>`;
}
