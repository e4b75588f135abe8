import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { CompletePlan } from '../../core/numbers.js';
import type { SourceController } from '../internal/source-controller.js';
import { HINT, HINT_WITHOUT } from './sweep.words.js';

export interface CaptionInput {
  plan: CompletePlan;
  source: SourceController;
  editable: boolean;
  hideSpread: boolean;
}

/** What the plot shows and where its figures come from. The second sentence says why the band can lie above the curve. */
export function sweepCaption({ plan, source, editable, hideSpread }: CaptionInput): TemplateResult {
  const own = plan.incisionFlattening !== null || Boolean(plan.ownFigures?.incision);
  return html`<figcaption class="quiet">
    What is ${source.button({ figure: 'after' }, 'expected to remain')} when only the ${source.button({ figure: 'incision', own }, 'incision')} moves round the limbus.
    ${hideSpread ? nothing : html`Half of all eyes like this end in the ${source.button({ figure: 'spread' }, 'shaded band')}: errors add to a small remainder more often than they take from it.`}
    ${editable ? html`<span class="hint">${plan.incisionSite === null ? HINT_WITHOUT : HINT}</span>` : nothing}
  </figcaption>`;
}
