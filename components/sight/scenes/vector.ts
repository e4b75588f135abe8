import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import { SIDE } from '../sight.scenes.js';
import type { Drawing, Gradient, Paint, Shape, TextLine } from './shapes.js';

/** Height of a small x in a typeface that is not measured, as a share of its size. */
const USUAL_X = 0.5;

/** A scene as SVG, for small pictures and where nothing can be blurred. `name` keeps its gradients apart from those of others. */
export function vectorScene({ shapes, lines = [] }: Drawing, name: string, rightToLeft: boolean, label?: string): TemplateResult {
  return html`<svg viewBox="0 0 ${SIDE} ${SIDE}" role=${label ? 'img' : nothing} aria-label=${label ?? nothing} aria-hidden=${label ? nothing : 'true'}>
    ${shapes.map((shape, i) => shapeOf(shape, `${name}-${i}`))} ${lines.map((line) => lineOf(line, rightToLeft))}
  </svg>`;
}

function shapeOf({ path, paint, width, at }: Shape, id: string): SVGTemplateResult {
  const colour = typeof paint === 'string' ? paint : `url(#${id})`;
  const transform = at ? `translate(${at[0]} ${at[1]}) scale(${at[2]})` : nothing;
  return svg`${gradientOf(paint, id)}<path d=${path} transform=${transform} fill=${width === undefined ? colour : 'none'}
    stroke=${width === undefined ? nothing : colour} stroke-width=${width ?? nothing} stroke-linecap="round" stroke-linejoin="round"></path>`;
}

function gradientOf(paint: Paint, id: string): SVGTemplateResult | typeof nothing {
  if (typeof paint === 'string') return nothing;
  const [x, y, a, b] = paint.at;
  return paint.kind === 'linear'
    ? svg`<linearGradient id=${id} gradientUnits="userSpaceOnUse" x1=${x} y1=${y} x2=${a} y2=${b}>${stopsOf(paint)}</linearGradient>`
    : svg`<radialGradient id=${id} gradientUnits="userSpaceOnUse" cx=${x} cy=${y} r=${a}>${stopsOf(paint)}</radialGradient>`;
}

function stopsOf({ stops }: Gradient): SVGTemplateResult[] {
  return stops.map(([offset, colour]) => svg`<stop offset=${offset} stop-color=${colour}></stop>`);
}

function lineOf({ text, x, y, xHeight }: TextLine, rightToLeft: boolean): SVGTemplateResult {
  return svg`<text x=${rightToLeft ? SIDE - x : x} y=${y} font-size=${xHeight / USUAL_X} fill="#111" direction=${rightToLeft ? 'rtl' : 'ltr'}>${text}</text>`;
}
