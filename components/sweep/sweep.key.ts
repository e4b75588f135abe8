import { html, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import { siteName } from '../../core/numbers.js';
import type { CompletePlan, EyeSide, PlanOutcome } from '../../core/numbers.js';
import { dioptres, siteText } from '../internal/format.js';
import type { Sample, Sweep } from './sweep.parts.js';
import { GOOD_TEXT } from './sweep.words.js';

/** What each line in the plot is, with its figures. Repeats the text alternative, so it is not read out again. */
export function sweepKey(plan: CompletePlan, { after }: PlanOutcome, { best, band, temporal, superior }: Sweep): TemplateResult {
  const entries: [SVGTemplateResult, string][] = [[line('curve'), 'Expected to remain']];
  if (band.length > 0) entries.push([svg`<rect class="band" x="0.5" y="1.5" width="27" height="9"></rect>`, 'Half of all eyes like this']);
  entries.push([line('good'), GOOD_TEXT]);
  const first = best[0];
  if (first) {
    const where = best.map(({ site }) => placeText(site, plan.eye)).join(' or ');
    entries.push([svg`<path class="diamond best" d="M14 0.5 19.5 6 14 11.5 8.5 6z"></path>`, `Best site ${where}: ${dioptres(first.remaining)}`]);
  }
  entries.push([svg`<circle class="dot site" cx="14" cy="6" r="3.5"></circle>`, `${named('Temporal', temporal)}, ${named('superior', superior)}`]);
  if (plan.incisionSite !== null) {
    const at = `${placeText(plan.incisionSite, plan.eye)}: ${dioptres(after.magnitude)}`;
    entries.push([svg`<line class="marker" x1="14" x2="14" y1="0" y2="12"></line><circle class="point" cx="14" cy="6" r="4"></circle>`, `Incision ${at}`]);
  }
  return html`<ul class="key" aria-hidden="true">${entries.map(([sample, label]) => html`<li><svg viewBox="0 0 28 12">${sample}</svg><span>${label}</span></li>`)}</ul>`;
}

function line(className: string): SVGTemplateResult {
  return svg`<line class=${className} x1="0" x2="28" y1="6" y2="6"></line>`;
}

function placeText(degrees: number, eye: EyeSide): string {
  return `${siteText(degrees)} ${siteName(degrees, eye)}`;
}

function named(name: string, { remaining }: Sample): string {
  return `${name} ${dioptres(remaining)}`;
}
