import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import { NBSP } from '../internal/format.js';
import { px } from '../internal/geometry.js';
import type { MapState } from './cornea.map.field.js';
import { isPrinted, printedStep } from './cornea.map.labels.js';
import { LEAST_SIGNED, STEP, colour, levels, signPath } from './cornea.map.parts.js';
import type { Range } from './cornea.map.parts.js';

/** A scale: as wide as the drawing, each colour from its power to the next. CSS px. */
export interface Scale {
  range: Range;
  state: MapState;
  width: number;
  /** Size of its figures. */
  size: number;
  /** A power as it stands on the map. */
  figure(value: number, step: number): string;
}

/** What a file says above and below the scale, in lines that fit. */
export interface FileTexts {
  above: readonly string[];
  below: readonly string[];
}

/** Size of a sign of a difference over that of the figures. */
export const SIGN = 0.4;

/** Heights over the size of the figures: of the colours with their figures, of a line of text, and of the room above all. */
const HEIGHT = { scale: 2.6, line: 1.35, gap: 0.75 } as const;

/** The scale as it stands in the page. */
export function pageScale(scale: Scale): TemplateResult {
  return html`<svg class="map-scale" aria-hidden="true" font-size=${scale.size} viewBox="0 0 ${scale.width} ${px(HEIGHT.scale * scale.size)}">${bar(scale, 0)}</svg>`;
}

/** The same with its texts, for the file of the drawing. The page does not show it. */
export function fileScale(scale: Scale, { above, below }: FileTexts): TemplateResult {
  const { size, width } = scale;
  const line = HEIGHT.line * size;
  const gap = HEIGHT.gap * size;
  const top = gap + above.length * line;
  const height = top + HEIGHT.scale * size + below.length * line;
  const text = (words: string, y: number, className: string): SVGTemplateResult =>
    svg`<text class=${className} x=${px(width / 2)} y=${px(y)} text-anchor="middle" direction=${/[\u0590-\u08ff]/.test(words) ? 'rtl' : nothing}>${words}</text>`;
  return html`<svg class="map-scale below" aria-hidden="true" font-size=${size} viewBox="0 0 ${width} ${px(height + 0.5 * size)}">
    ${above.map((words, index) => text(words, gap + index * line + size, 'side'))} ${bar(scale, top)} ${below.map((words, index) => text(words, height + (index + 1 - below.length) * line - 0.2 * size, ''))}
  </svg>`;
}

/** A text in lines of at most a width. Chinese breaks between any two characters but before a mark. */
export function wrapped(text: string, width: number, widthOf: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const piece of text.split(/(?<= )|(?<=[\u3000-\u9fff\uff00-\uffef])(?![\u3001\u3002\uff08-\uff1b])/u)) {
    if (line && widthOf((line + piece).trim()) > width) {
      lines.push(line.trim());
      line = '';
    }
    line += piece;
  }
  return line.trim() ? [...lines, line.trim()] : lines;
}

function bar({ range, state, width, size, figure }: Scale, top: number): SVGTemplateResult {
  const [from, to] = range;
  const inset = 2 * size;
  const long = width - 2 * inset;
  const at = (value: number): number => px(inset + (long * (value - from)) / (to - from));
  const step = printedStep(range, Math.max(2, long / (3.5 * size)), 0.5);
  const shown = levels(range, state);
  const signed = state === 'difference' ? shown.map((level) => level + STEP[state] / 2).filter((middle) => Math.abs(middle) >= LEAST_SIGNED) : [];
  const ticks = [...shown, to].filter((value) => isPrinted(value, step));
  const y = px(top);
  return svg`<rect class="map-ground" x=${inset} y=${y} width=${px(long)} height=${size}></rect>
    <g class="map-colours of-${state}">${shown.map((level) => svg`<rect x=${at(level)} y=${y} width=${px(at(level + STEP[state]) - at(level))} height=${size} fill=${colour(level, range, state)}></rect>`)}</g>
    <path class="map-sign" d=${signed.map((middle) => signPath({ x: at(middle), y: px(top + size / 2), plus: middle > 0 }, SIGN * size)).join('')}></path>
    ${ticks.map((value) => svg`<line class="map-tick" x1=${at(value)} x2=${at(value)} y1=${y} y2=${px(top + 1.25 * size)}></line><text x=${at(value)} y=${px(top + 2.3 * size)} text-anchor="middle">${figure(value, step)}${value === ticks.at(-1) ? `${NBSP}D` : nothing}</text>`)}`;
}
