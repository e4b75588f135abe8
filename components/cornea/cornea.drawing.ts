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

/** Share of eyes in the sector of the remaining steep meridian. */
const HALF = 0.5;

/** The handle of the incision hides a clock hour that is nearer than this, degrees. */
const HIDES_CLOCK = 11;

/** Everything but the handles, from the back to the front. */
export function drawCornea(plan: CompletePlan, outcome: PlanOutcome, layout: CorneaLayout, hideSpread: boolean, map?: SVGTemplateResult): SVGTemplateResult {
  return svg`${background(layout)} ${map} ${dial(layout, hiddenHour(plan))} ${hideSpread ? nothing : steepSpread(outcome, layout)}
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

/** Clock hour, as a site, that the handle of the incision hides; null when it hides none. */
function hiddenHour({ incisionSite }: CompletePlan): number | null {
  if (incisionSite === null) return null;
  const nearest = (Math.round(incisionSite / 30) * 30) % 360;
  return Math.abs(turn(nearest, incisionSite)) > HIDES_CLOCK ? null : nearest;
}

function dial(layout: CorneaLayout, hidden: number | null): SVGTemplateResult {
  const shown = layout.clock.filter(({ site }) => site !== hidden);
  return svg`<g part="ring">
      <path class="tick" d=${layout.tickPath}></path>
      <path class="long-tick" d=${layout.longTickPath}></path>
      ${layout.degrees.map((label) => text(label))}
    </g>
    <g class="clock">${shown.map((label) => text(label))}</g>
    ${layout.words.map((label) => text(label, 'side'))} <g font-size=${TITLE * layout.size}>${text(layout.title, 'title')}</g>`;
}

/** Where the remaining steep meridian lies in half of all eyes like this. */
function steepSpread({ spread }: PlanOutcome, layout: CorneaLayout): SVGTemplateResult {
  return svg`<path part="steep-spread" d=${sectorPair(meridianSpread(spread, HALF), layout)}></path>`;
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
