import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { polyline, px } from '../internal/geometry.js';
import { labelText } from '../internal/label-text.js';
import { EDGE } from '../internal/layout.js';
import { line } from '../internal/line.js';
import { textSize } from '../internal/measure.js';
import type { PencilLayout } from './pencil.layout.js';
import type { Place, Scene } from './pencil.scene.js';

/** Heights over the size of the figures: of the marks, and of the figures above and below. */
const TALL = 0.9;
const FIGURE = [-2.4, 1.75] as const;

/**
 * The depth alone, along the light: the lines with their distances from the retina, in mm above and in dioptres below,
 * and the place of the screen.
 */
export function drawRuler({ front, back, circle, retina, screen, point }: Scene, { ruler, dial, font: { small, family } }: PencilLayout, depth: number, figures: (place: Place) => [string, string]): SVGTemplateResult {
  const { left, right } = ruler;
  const y = dial.y;
  const tall = TALL * small;
  const xOf = ({ position }: Place): number => (left + right) / 2 + ((position - circle.position) / depth) * ((right - left) / 2);
  const mark = (place: Place, part: string, className: string): SVGTemplateResult => svg`<g class=${part}>${line({ x1: xOf(place), x2: xOf(place), y1: y - tall, y2: y + tall }, className)}</g>`;
  const told = (place: Place, anchor: 'start' | 'end'): SVGTemplateResult[] =>
    figures(place).map((text, row) => {
      const { width } = textSize(text, small, family);
      const x = anchor === 'end' ? Math.max(xOf(place) - EDGE, left + width) : Math.min(xOf(place) + EDGE, right - width);
      return 2 * width + small > right - left ? svg`` : labelText({ x, y: y + FIGURE[row]! * small, text, anchor });
    });
  const x = xOf(screen);
  return svg`<g part="ruler">${line({ x1: left, x2: right, y1: y, y2: y }, 'axis')} ${mark(retina, 'retina', '')}
    ${point ? nothing : svg`${mark(front, 'front', 'focal')} ${mark(back, 'back', 'focal')} ${told(front, 'end')} ${told(back, 'start')}`}
    <circle class=${point ? 'point' : 'circle'} r="4" cx=${px(xOf(circle))} cy=${px(y)}></circle>
    <path class="pointer" d=${polyline([{ x, y: y - tall }, { x: x - 4, y: y - tall - 7 }, { x: x + 4, y: y - tall - 7 }], true)}></path></g>`;
}
