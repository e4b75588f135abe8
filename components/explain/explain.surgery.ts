import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { siteName } from '../../core/numbers.js';
import type { CompletePlan, SiteName } from '../../core/numbers.js';
import { frontEye } from './explain.eye.js';
import type { Deed } from './explain.eye.js';
import { heading, item, planOf, sentences } from './explain.page.js';
import type { Page } from './explain.page.js';
import type { ExplainId } from './explain.words.js';

/** Where the eye is entered, in words that a patient can point to. */
const PLACE: Record<SiteName, ExplainId> = {
  temporal: 'placeTemporal',
  superotemporal: 'placeSuperotemporal',
  superior: 'placeSuperior',
  superonasal: 'placeSuperonasal',
  nasal: 'placeNasal',
  inferonasal: 'placeInferonasal',
  inferior: 'placeInferior',
  inferotemporal: 'placeInferotemporal',
};

/** What the surgeon may do: as planned only what this case's plan has, the rest as a possibility. */
export function surgery(page: Page): TemplateResult {
  const { say, level } = page;
  return html`${heading(level, say('surgeryTitle'))}
    <p>${say('surgeryLens')}</p>
    <div class="three">${deed(page, 'entry')} ${deed(page, 'arcs')} ${deed(page, 'lens')}</div>
    ${planOf(page) ? html`<p>${sentences(say(hasStop(page) ? 'planOpen' : 'planMayChange'), say('asInPhoto'))}</p>` : nothing}`;
}

function deed(page: Page, which: Deed): TemplateResult {
  const { say } = page;
  const plan = planOf(page);
  const planned = plan ? plannedText(page, plan)[which] : null;
  const image = frontEye(which, planned ? plan : null, plan ? say('nose') : '');
  return item(page, image, say(`${which}Title`), html`<p>${say(`${which}What`)}</p>${standing(page, which, planned)}`);
}

/** Whether it is planned, not planned, or one of many possibilities. */
function standing(page: Page, which: Deed, planned: string | null): TemplateResult | typeof nothing {
  const { say } = page;
  if (planned) return html`<p class="planned">${planned}</p>`;
  // Each cataract surgery goes in somewhere, planned here or not.
  if (!planOf(page)) return which === 'entry' ? nothing : html`<p>${say('possible')}</p>`;
  return html`<p class="unplanned">${say(which === 'entry' ? 'entryOpen' : 'notPlanned')}</p>`;
}

function plannedText({ say }: Page, plan: CompletePlan): Record<Deed, string | null> {
  const { eye, incisionSite, arcCount, lensCylinder } = plan;
  return {
    entry: incisionSite === null ? null : say('entryPlanned', { place: say(PLACE[siteName(incisionSite, eye)]) }),
    arcs: arcCount === 0 ? null : say(arcCount === 1 ? 'arcsOne' : 'arcsTwo'),
    lens: lensCylinder ? say('lensPlanned') : null,
  };
}

/** A plan that should not be carried out as it is must not look settled. */
function hasStop({ known }: Page): boolean {
  return typeof known !== 'string' && known.outcome.cautions.some(({ level }) => level === 'stop');
}
