import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { REACH } from './drag-controller.js';
import { px } from './geometry.js';
import type { Point } from './geometry.js';

/** A knob with two chevrons along the way it can go, on a hit area of 44 px; `along` is that way, degrees clockwise from the right. */
export function drawKnob({ x, y }: Point, focused: boolean, along = 0): SVGTemplateResult {
  return svg`<g transform="translate(${px(x)} ${px(y)}) rotate(${px(along)})">
    <circle class="hit" r=${REACH}></circle>
    ${focused ? svg`<circle class="focus" r="15"></circle>` : nothing}
    <circle class="knob" r="10"></circle>
    <path class="grip" d="M-2.5 -3.5 -6 0 -2.5 3.5 M2.5 -3.5 6 0 2.5 3.5"></path>
  </g>`;
}
