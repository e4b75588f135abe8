import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { outside, polyline, px, ticks } from '../internal/geometry.js';
import { labelText } from '../internal/label-text.js';
import { GAP } from '../internal/layout.js';
import { textSize } from '../internal/measure.js';
import type { PencilLayout } from './pencil.layout.js';
import type { Scene } from './pencil.scene.js';

const RIM = [180, 45, 90, 135] as const;

/** Thinner patches, px, are drawn that thick, so that a line can be seen. */
const THIN = 1.5;

/** Lengths of the bar of the scale, µm. */
const BARS = [2, 5, 10, 20, 50, 100, 200, 500, 1000] as const;

/** The patch on the screen as on the dial, seen from in front of the eye, with a bar of its scale. */
export function drawPatch({ screen: { section } }: Scene, { dial, font, ruler: { left: start }, half: right }: PencilLayout, scale: number, micrometres: (value: number) => string): SVGTemplateResult {
  const { x, y, radius } = dial;
  const room = (length: number): number => (length / 1000) * scale + GAP + textSize(micrometres(length), font.small, font.family).width;
  const bar = [...BARS].reverse().find((length) => (length / 1000) * scale <= 0.9 * radius && start + room(length) < right);
  return svg`<g transform="translate(${px(x)} ${px(y)})">
      <circle part="dial" r=${px(radius)}></circle>
      <path class="tick" d=${ticks([0, 45, 90, 135, 180, 225, 270, 315], 0.92 * radius, radius)}></path>
      <ellipse part="patch" rx=${px(Math.max(THIN, (section.longer / 2) * scale))} ry=${px(Math.max(THIN, (section.shorter / 2) * scale))} transform="rotate(${px(-section.direction)})"></ellipse>
      ${RIM.map((degrees) => labelText(rimLabel(degrees, radius, font)))}
    </g>
    ${bar ? drawBar(start, y + radius, (bar / 1000) * scale, micrometres(bar)) : nothing}`;
}

function drawBar(x: number, y: number, length: number, text: string): SVGTemplateResult {
  const end = (at: number): string => polyline([{ x: at, y: y - 4 }, { x: at, y: y + 4 }]);
  return svg`<g class="bar"><path d=${polyline([{ x, y }, { x: x + length, y }]) + end(x) + end(x + length)}></path>${labelText({ x: x + length + GAP, y, text, anchor: 'start' })}</g>`;
}

function rimLabel(degrees: number, radius: number, { small, family }: PencilLayout['font']): Parameters<typeof labelText>[0] {
  const text = `${degrees}°`;
  const { width, height } = textSize(text, small, family);
  return { ...outside(degrees, radius + GAP, width, height * 0.8), text, anchor: 'middle' };
}

