import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import type { CompletePlan } from '../../core/numbers.js';
import { arcPath, px } from '../internal/geometry.js';
import { picture } from './explain.pictures.js';

/** Radius of the limbus in the drawing, user units, and in the eye, mm (white-to-white 11.7 mm). */
const LIMBUS = 40;
const LIMBUS_MM = 5.85;
const UNITS = LIMBUS / LIMBUS_MM;

/** Shown where nothing is planned: places that suit no eye in particular. */
const EXAMPLE = { incisionSite: 135, incisionWidth: 2.4, arcSite: 70, arcLength: 50, arcZone: 10, arcCount: 2, lensMeridian: 60 } as const;

/** What is drawn on the eye. */
export type Deed = 'entry' | 'arcs' | 'lens';

type Places = Pick<CompletePlan, 'incisionSite' | 'incisionWidth' | 'arcSite' | 'arcLength' | 'arcZone' | 'arcCount' | 'lensMeridian'>;

/** Radius of the pupil: wide where a lens is seen behind it, as during surgery. */
const PUPIL: Record<Deed, number> = { entry: 15, arcs: 15, lens: 29 };

/**
 * The eye from the front with one deed on it: where the plan has it, or, without a plan, as an example. `nose` is the
 * word for the side of the nose; it is written only where the drawing is of this eye, and has its room beside those.
 */
export function frontEye(deed: Deed, plan: CompletePlan | null, nose: string): TemplateResult {
  const places: Places = plan ?? EXAMPLE;
  const image = picture(
    120,
    110,
    svg`<g transform="translate(60 55)">
      <circle class="window" r=${LIMBUS}></circle>
      <circle class="pupil" r=${PUPIL[deed]}></circle>
      ${DEEDS[deed](places)}
    </g>`,
  );
  return html`<div class="front">${image}${nose ? noseSide(plan, nose) : nothing}</div>`;
}

const DEEDS = {
  entry: ({ incisionSite, incisionWidth }: Places): SVGTemplateResult => {
    const half = ((incisionWidth / 2 / LIMBUS_MM) * 180) / Math.PI;
    return svg`<path class="cut" d=${arcPath(LIMBUS - 1, incisionSite! - half, incisionSite! + half)}></path>`;
  },

  arcs: ({ arcSite, arcLength, arcZone, arcCount }: Places): SVGTemplateResult[] => {
    const radius = Math.min((arcZone / 2) * UNITS, LIMBUS - 4);
    const sites = arcCount === 2 ? [arcSite!, arcSite! + 180] : [arcSite!];
    return sites.map((site) => svg`<path class="arc" d=${arcPath(radius, site - arcLength / 2, site + arcLength / 2)}></path>`);
  },

  /** A lens: its rim, two loops that hold it, and marks at the ends of its axis. */
  lens: ({ lensMeridian }: Places): SVGTemplateResult => svg`<g transform="rotate(${px(-lensMeridian!)})">
    <path class="thin" d="M-9 17Q-2 28 12 25M9-17Q2-28-12-25"></path>
    <circle class="lens" r="19"></circle>
    <path class="heavy" d="M-16 0h7M9 0h7"></path>
  </g>`,
} as const;

/** Nasal is at the viewer's right in a right eye. */
function noseSide(plan: CompletePlan | null, nose: string): TemplateResult {
  const text = { right: `${nose} →`, left: `← ${nose}`, none: '\u00a0' }[plan?.eye ?? 'none'];
  return html`<span class="nose ${plan?.eye ?? ''}">${text}</span>`;
}
