import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { px } from './geometry.js';

/** Both ends of a line of a drawing, named as in SVG. */
export interface Ends {
  x1: number;
  y1: number;
  x2: number;
  y2: number;
}

/** A line of a drawing, with the names by which the element and the page style it. */
export function line({ x1, y1, x2, y2 }: Ends, className: string, part = ''): SVGTemplateResult {
  return svg`<line class=${className || nothing} part=${part || nothing} x1=${px(x1)} y1=${px(y1)} x2=${px(x2)} y2=${px(y2)}></line>`;
}
