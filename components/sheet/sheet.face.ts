import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { EyeSide } from '../../core/numbers.js';
import { px } from '../internal/geometry.js';

/** Half the distance of the eyes, and how high they lie, user units. */
const EYES = { aside: 11, up: -7 };

/**
 * A face with the eye of this sheet filled and ringed, turned as the drawing is. Facing a patient, their right eye is at
 * the viewer's left.
 */
export function face(eye: EyeSide, turn: number): TemplateResult {
  const eyes = [['right', -EYES.aside], ['left', EYES.aside]] as const;
  return html`<svg class="face" part="face" aria-hidden="true" viewBox="-36 -36 72 72">
    <g transform="rotate(${px(-turn)})">
      <ellipse class="open" rx="25" ry="33"></ellipse>
      <path class="open" d="M0,-5L-4,9H4M-8,18Q0,24,8,18"></path>
      ${eyes.map(([side, x]) => svg`<circle class=${side === eye ? 'solid' : 'fine'} data-eye=${side} cx=${x} cy=${EYES.up} r="4"></circle>${side === eye ? svg`<circle class="open" cx=${x} cy=${EYES.up} r="8"></circle>` : nothing}`)}
    </g>
  </svg>`;
}
