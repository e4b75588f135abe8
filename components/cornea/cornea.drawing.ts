import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { meridianSpread, turn } from '../../core/numbers.js';
import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';
import { px } from '../internal/geometry.js';
import { TITLE } from '../internal/layout.js';
import { RADII } from '../internal/dial-layout.js';
import type { CorneaLayout } from '../internal/dial-layout.js';
import { labelText as text } from '../internal/label-text.js';
import { line } from '../internal/line.js';
import { LEAST_DRAWN, REMAINING_REACH, arcShapes, bowTie, incisionShape, meridianLine, sectorPair } from './cornea.parts.js';

/** Share of eyes whose remaining steep meridian lies in the sector that is drawn. */
const HALF = 0.5;

/** The handle of the incision hides a clock hour that is nearer than this, degrees. */
const HIDES_CLOCK = 11;

/** Everything but the handles, from the back to the front. */
export function drawCornea(plan: CompletePlan, outcome: PlanOutcome, layout: CorneaLayout, hideSpread: boolean, map?: SVGTemplateResult): SVGTemplateResult {
  return svg`${background(layout)} ${map} ${dial(layout, plan)} ${hideSpread ? nothing : svg`<path part="steep-spread" d=${sectorPair(meridianSpread(outcome.spread, HALF), layout)}></path>`}
    ${before(outcome, layout)}
    ${surgery(plan, layout)}
    ${remaining(outcome, layout)}`;
}

function background({ scale, irisPath }: CorneaLayout): SVGTemplateResult {
  return svg`<circle class="sclera" r=${px(RADII.ring * scale)}></circle>
    <circle part="limbus" r=${px(RADII.limbus * scale)}></circle>
    <path class="iris" d=${irisPath}></path>
    <circle class="pupil" r=${px(RADII.pupil * scale)}></circle>`;
}

function dial(layout: CorneaLayout, { incisionSite }: CompletePlan): SVGTemplateResult {
  const shown = layout.clock.filter(({ site }) => incisionSite === null || Math.abs(turn(site, incisionSite)) > HIDES_CLOCK);
  return svg`<g part="ring">
      <path class="tick" d=${layout.tickPath}></path>
      <path class="long-tick" d=${layout.longTickPath}></path>
      ${layout.degrees.map((label) => text(label))}
    </g>
    <g class="clock">${shown.map((label) => text(label))}</g>
    ${layout.words.map((label) => text(label, 'side'))} <g font-size=${TITLE * layout.size}>${text(layout.title, 'title')}</g>`;
}

function before({ before: astigmatism }: PlanOutcome, layout: CorneaLayout): SVGTemplateResult | typeof nothing {
  if (astigmatism.magnitude < LEAST_DRAWN) return nothing;
  return svg`${line(meridianLine(astigmatism.meridian + 90, layout), '', 'flat-before')}
    ${line(meridianLine(astigmatism.meridian, layout), 'before', 'steep-before')}
    <path class="before petals" d=${bowTie(astigmatism, layout)}></path>`;
}

function surgery(plan: CompletePlan, layout: CorneaLayout): SVGTemplateResult {
  const incision = plan.incisionSite === null ? null : incisionShape(plan.incisionSite, plan.incisionWidth, layout);
  const axis = plan.lensCylinder && plan.lensMeridian !== null ? meridianLine(plan.lensMeridian, layout, RADII.iris * 0.78) : null;
  return svg`${incision && svg`<g part="incision"><path class="tunnel" d=${incision.tunnel}></path><path class="entry" d=${incision.entry}></path></g>`}
    ${arcShapes(plan, layout).map((shape) => svg`<path part="arc" d=${shape}></path>`)}
    ${axis && line(axis, '', 'lens-axis')}`;
}

function remaining({ after }: PlanOutcome, layout: CorneaLayout): SVGTemplateResult {
  if (after.magnitude < LEAST_DRAWN) return svg`<circle class="remaining-petals" r="3"></circle>`;
  return svg`${line(meridianLine(after.meridian, layout, REMAINING_REACH), '', 'steep-after')}
    <path class="remaining-petals" d=${bowTie(after, layout)}></path>`;
}
