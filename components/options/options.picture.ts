import { html, svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { SuggestedPlan } from '../../core/options.js';
import { LIMBUS, arcShapes, bowTie, incisionShape, meridianLine } from '../internal/eye-shapes.js';
import { px } from '../internal/geometry.js';

/** One unit of the drawing is one px at usual text; both grow with the text. */
const FRAME = { scale: 5, turn: 0 } as const;

/** Half the size of the drawing, units. */
const HALF = 36;

/** Half the axis of a lens, mm. */
const AXIS = 4.2;

/** Length of a petal, mm: more than in the large drawing, or nothing would be seen. The longest ends before the incision. */
const PETAL = { perDioptre: 3, longest: 4.2 } as const;

/** The eye from the front with what is planned and what remains. The words beside it say the same. */
export function planPicture({ plan, outcome }: SuggestedPlan): TemplateResult {
  const { incisionSite, incisionWidth, lensCylinder, lensMeridian } = plan;
  const incision = incisionSite === null ? null : incisionShape(incisionSite, incisionWidth, FRAME);
  const axis = lensCylinder && lensMeridian !== null ? meridianLine(lensMeridian, FRAME, AXIS) : null;
  const petals = bowTie(outcome.after, FRAME, PETAL);
  return html`<svg class="picture" part="picture" viewBox="${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}" aria-hidden="true">
    <circle class="limbus" r=${px(LIMBUS * FRAME.scale)}></circle>
    ${incision && svg`<path class="tunnel" d=${incision.tunnel}></path><path class="entry" d=${incision.entry}></path>`}
    ${arcShapes(plan, FRAME).map((shape) => svg`<path class="arc" d=${shape}></path>`)}
    ${axis && svg`<line class="lens" x1=${px(axis.x1)} y1=${px(axis.y1)} x2=${px(axis.x2)} y2=${px(axis.y2)}></line>`}
    ${petals ? svg`<path class="petals" d=${petals}></path>` : svg`<circle class="petals" r="1.5"></circle>`}
  </svg>`;
}
