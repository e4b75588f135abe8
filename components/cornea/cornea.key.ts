import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { siteName } from '../../core/numbers.js';
import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';
import { angle, astigmatismText, dioptres, meridianText, millimetres, siteText } from '../internal/format.js';

/** What each line in the drawing is, with its figures. Repeats the text alternative, so it is not read out again. */
export function corneaKey(plan: CompletePlan, { before, after }: PlanOutcome): TemplateResult {
  const entries: [TemplateResult, string][] = [[sample('before'), `Before ${astigmatismText(before)}`]];
  if (plan.incisionSite !== null) {
    const where = `${siteText(plan.incisionSite)} ${siteName(plan.incisionSite, plan.eye)}`;
    entries.push([sample('entry'), `Incision ${millimetres(plan.incisionWidth)} at ${where}`]);
  }
  if (plan.arcCount > 0 && plan.arcSite !== null) {
    const name = plan.arcCount === 2 ? 'Pair of arcs' : 'Arc';
    entries.push([sample('arc-line'), `${name} ${angle(plan.arcLength)} at ${siteText(plan.arcSite)} ${siteName(plan.arcSite, plan.eye)}`]);
  }
  if (plan.lensCylinder && plan.lensMeridian !== null) {
    entries.push([sample('lens-line'), `Lens ${dioptres(plan.lensCylinder)} on ${meridianText(plan.lensMeridian)}`]);
  }
  entries.push([sample('after-line'), `Remaining, as expected, ${astigmatismText(after)}`]);
  return html`<ul class="key" aria-hidden="true">${entries.map(([line, label]) => html`<li>${line}<span>${label}</span></li>`)}</ul>`;
}

/** A line in the same style as the one in the drawing. */
function sample(className: string): TemplateResult {
  return html`<svg viewBox="0 0 28 12" aria-hidden="true"><line class=${className} x1="0" y1="6" x2="28" y2="6"></line></svg>`;
}
