import { svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { outside, polyline, px, ticks } from '../internal/geometry.js';
import { labelText } from '../internal/label-text.js';
import { GAP } from '../internal/layout.js';
import { line } from '../internal/line.js';
import { textSize } from '../internal/measure.js';
import type { PencilLayout } from './pencil.layout.js';
import type { Scene } from './pencil.scene.js';

const RIM = [180, 45, 90, 135] as const;

/** Thinner patches, px, are drawn that thick, so that a line can be seen. */
const THIN = 1.5;

/** Lengths of the bar of the scale, µm. */
const BARS = [2, 5, 10, 20, 50, 100, 200, 500, 1000] as const;

/** The patch on the screen as on the dial, seen from in front of the eye, with a bar of its scale. */
export function drawPatch({ screen: { section } }: Scene, { dial, font, ruler: { left: start } }: PencilLayout, scale: number, micrometres: (value: number) => string): SVGTemplateResult {
  const { x, y, radius } = dial;
  const bar = [...BARS].reverse().find((length) => (length / 1000) * scale <= 0.9 * radius) ?? BARS[0];
  const length = (bar / 1000) * scale;
  return svg`<g transform="translate(${px(x)} ${px(y)})">
      <circle part="dial" r=${px(radius)}></circle>
      <path class="tick" d=${ticks([0, 45, 90, 135, 180, 225, 270, 315], 0.92 * radius, radius)}></path>
      <ellipse part="patch" rx=${px(Math.max(THIN, (section.longer / 2) * scale))} ry=${px(Math.max(THIN, (section.shorter / 2) * scale))} transform="rotate(${px(-section.direction)})"></ellipse>
      ${RIM.map((degrees) => labelText(rimLabel(degrees, radius, font)))}
    </g>
    <g class="bar">${line({ x1: start, x2: start + length, y1: y + radius, y2: y + radius }, '')}
      <path d=${polyline([{ x: start, y: y + radius - 4 }, { x: start, y: y + radius + 4 }]) + polyline([{ x: start + length, y: y + radius - 4 }, { x: start + length, y: y + radius + 4 }])}></path>
      ${labelText({ x: start, y: y + radius - font.small, text: micrometres(bar), anchor: 'start' })}</g>`;
}

function rimLabel(degrees: number, radius: number, { small, family }: PencilLayout['font']): Parameters<typeof labelText>[0] {
  const text = `${degrees}°`;
  const { width, height } = textSize(text, small, family);
  return { ...outside(degrees, radius + GAP, width, height * 0.8), text, anchor: 'middle' };
}

