import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import { MODEL } from '../../core/numbers.js';
import type { Astigmatism, CompletePlan, SuggestedPlan } from '../../core/numbers.js';
import { alongAcross, arcPath, polar, polyline, px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';

/** Units of the drawing for one mm on the eye, and half its size. One unit is one px at usual text; both grow with the text. */
const SCALE = 5;
const HALF = 36;

const LIMBUS = MODEL.eye.limbusDiameter.value / 2;

/** How far the tunnel of an incision reaches inwards, and half the axis of a lens, mm. For the picture only. */
const TUNNEL = 1.6;
const AXIS = 4.2;

/** Length of a petal for one dioptre, mm: more than in the large drawing, or nothing would be seen. The longest ends before the incision. */
const PETAL = { perDioptre: 3, longest: 4.2 } as const;

/** Below this the direction of what remains would be noise, D. */
const LEAST_DRAWN = 0.05;

/** The eye from the front with what is planned and what remains. The words beside it say the same. */
export function planPicture({ plan, outcome }: SuggestedPlan): TemplateResult {
  return html`<svg class="picture" part="picture" viewBox="${-HALF} ${-HALF} ${2 * HALF} ${2 * HALF}" aria-hidden="true">
    <circle class="limbus" r=${px(LIMBUS * SCALE)}></circle>
    ${incision(plan)} ${arcs(plan)} ${lens(plan)} ${petals(outcome.after)}
  </svg>`;
}

function incision({ incisionSite, incisionWidth }: CompletePlan): SVGTemplateResult | typeof nothing {
  if (incisionSite === null) return nothing;
  const half = incisionWidth / 2;
  const reach = (Math.asin(half / LIMBUS) * 180) / Math.PI;
  const edge = Math.sqrt(LIMBUS ** 2 - half ** 2);
  const corner = (along: number, across: number): Point => alongAcross(incisionSite, along * SCALE, across * SCALE);
  const tunnel = [corner(edge, -half), corner(LIMBUS - TUNNEL, -half), corner(LIMBUS - TUNNEL, half), corner(edge, half)];
  return svg`<path class="tunnel" d=${polyline(tunnel)}></path>
    <path class="entry" d=${arcPath(LIMBUS * SCALE, incisionSite - reach, incisionSite + reach)}></path>`;
}

function arcs({ arcSite, arcCount, arcLength, arcZone }: CompletePlan): SVGTemplateResult[] {
  if (arcSite === null) return [];
  const radius = (arcZone / 2) * SCALE;
  return [arcSite, arcSite + 180].slice(0, arcCount).map((site) => svg`<path class="arc" d=${arcPath(radius, site - arcLength / 2, site + arcLength / 2)}></path>`);
}

function lens({ lensCylinder, lensMeridian }: CompletePlan): SVGTemplateResult | typeof nothing {
  if (!lensCylinder || lensMeridian === null) return nothing;
  return svg`<path class="lens" d=${polyline([polar(lensMeridian, AXIS * SCALE), polar(lensMeridian + 180, AXIS * SCALE)])}></path>`;
}

function petals({ magnitude, meridian }: Astigmatism): SVGTemplateResult {
  if (magnitude < LEAST_DRAWN) return svg`<circle class="petals" r="1.5"></circle>`;
  const length = Math.min(PETAL.perDioptre * magnitude, PETAL.longest) * SCALE;
  return svg`<path class="petals" d=${petal(meridian, length) + petal(meridian + 180, length)}></path>`;
}

/** A leaf from the centre to its tip and back. */
function petal(tip: number, length: number): string {
  const at = (turn: number, share: number): string => {
    const { x, y } = polar(tip + turn, share * length);
    return `${px(x)} ${px(y)}`;
  };
  return `M0 0C${at(38, 0.55)} ${at(19, 1)} ${at(0, 1)}C${at(-19, 1)} ${at(-38, 0.55)} 0 0Z`;
}
