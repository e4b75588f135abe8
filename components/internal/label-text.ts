import { svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { px } from './geometry.js';
import type { Label } from './layout.js';

/** A label of a drawing. Without a class it is a figure, centred on its point; with one it stands on its base line, unless it is told. */
export function labelText({ x, y, text, anchor }: Label, className = '', dy = className ? '0' : '0.35em'): SVGTemplateResult {
  return svg`<text class=${className} x=${px(x)} y=${px(y)} text-anchor=${anchor} dy=${dy}>${text}</text>`;
}
