import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { CompletePlan } from '../../core/numbers.js';
import type { Language, Values } from '../internal/language/language.js';
import type { SourceController } from '../internal/source-controller.js';
import { sweepWords } from './sweep.words.js';

export interface CaptionInput {
  plan: CompletePlan;
  source: SourceController;
  language: Language;
  editable: boolean;
  hideSpread: boolean;
}

/** What the plot shows and where its figures come from. The second sentence says why the band can lie above the curve. */
export function sweepCaption({ plan, source, language, editable, hideSpread }: CaptionInput): TemplateResult {
  const say = language.say(sweepWords);
  const own = plan.incisionFlattening !== null || Boolean(plan.ownFigures?.incision);
  const remaining = source.button({ figure: 'after' }, say('captionRemaining'));
  const incision = source.button({ figure: 'incision', own }, say('captionIncision'));
  const band = source.button({ figure: 'spread' }, say('captionBand'));
  return html`<figcaption class="quiet">
    ${pieced((values) => say('caption', values), { remaining, incision })}
    ${hideSpread ? nothing : pieced((values) => say('bandCaption', values), { band })}
    ${editable ? html`<span class="hint">${say(plan.incisionSite === null ? 'hintWithout' : 'hint')}</span>` : nothing}
  </figcaption>`;
}

/** Stands around the name of a piece: a character that no text has. */
const MARK = '\ue000';

/** A text whose values are pieces of the page. */
function pieced(say: (values: Values) => string, pieces: Record<string, TemplateResult>): unknown[] {
  const text = say(Object.fromEntries(Object.keys(pieces).map((name) => [name, MARK + name + MARK])));
  return text.split(MARK).map((part, index) => (index % 2 === 0 ? part : pieces[part]));
}
