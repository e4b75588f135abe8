import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { GOOD } from '../../core/numbers.js';
import { polyline, px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { labelText } from '../internal/label-text.js';
import { TITLE } from '../internal/layout.js';
import type { Language } from '../internal/language/language.js';
import { axisLabels, placeSiteLabels } from './sweep.labels.js';
import type { PlacedLabel } from './sweep.labels.js';
import type { Sample, Sweep } from './sweep.parts.js';
import { xOf, yOf } from './sweep.layout.js';
import type { SweepLayout } from './sweep.layout.js';
import type { ToldSweep } from './sweep.speech.js';

/** What the plot is drawn to: where it lies, and the dioptres at which its vertical axis ends. */
export interface Frame {
  layout: SweepLayout;
  end: number;
}

/** Marks on the horizontal axis, degrees and px. */
const TICKS = { every: 15, long: 45, short: 4, longer: 8 } as const;

/** Axes with their figures, and all text around the plot. */
export function drawAxes({ layout, end }: Frame, steps: readonly number[], language: Language): SVGTemplateResult {
  const { left, right, bottom, font, title, subtitle } = layout;
  const lines = steps.filter((value) => value > 0).map((value) => px(yOf(layout, value, end)));
  return svg`${lines.map((y) => svg`<line class="grid" x1=${px(left)} x2=${px(right)} y1=${y} y2=${y}></line>`)}
    <line class="floor" x1=${px(left)} x2=${px(right)} y1=${px(bottom)} y2=${px(bottom)}></line>
    <path class="ticks" d=${tickPath(layout)}></path>
    <g font-size=${px(TITLE * font.small)}>${labelText(title, 'title')}</g>
    ${subtitle ? labelText(subtitle, 'subtitle') : nothing}
    <g class="steps">${axisLabels(layout, steps, end, language).map((label) => labelText(label))}</g>
    <g>${layout.degrees.map((label) => labelText(label))}</g>
    <g class="names">${layout.names.map((label) => labelText(label))}</g>
    <g>${layout.hours.map((label) => labelText(label))}</g>`;
}

function tickPath(layout: SweepLayout): string {
  const { bottom } = layout;
  const marks: string[] = [];
  for (let degrees = 0; degrees <= 360; degrees += TICKS.every) {
    const length = degrees % TICKS.long === 0 ? TICKS.longer : TICKS.short;
    marks.push(`M${px(xOf(layout, degrees))} ${px(bottom)}v${length}`);
  }
  return marks.join('');
}

/** Band, good line, the sites that have a name, and the curve, from the back to the front. */
export function drawSweep(frame: Frame, sweep: Sweep): SVGTemplateResult {
  const { layout, end } = frame;
  const good = px(yOf(layout, GOOD, end));
  return svg`${sweep.band.length > 0 ? svg`<path part="band" class="band" d=${bandPath(frame, sweep)}></path>` : nothing}
    <line part="good" class="good" x1=${px(layout.left)} x2=${px(layout.right)} y1=${good} y2=${good}></line>
    ${(['temporal', 'superior'] as const).map((name) => svg`<g part=${name} class="site">${shown([sweep[name]]).map((sample) => svg`${guide(frame, sample)}${dot(pointOf(frame, sample))}`)}</g>`)}
    <g part="best" class="best">${shown(sweep.best).map((sample) => guide(frame, sample))}</g>
    <path part="curve" class="curve" d=${polyline(sweep.curve.map((sample) => rounded(pointOf(frame, sample))))}></path>
    <g class="best">${shown(sweep.best).map((sample) => diamond(pointOf(frame, sample)))}</g>`;
}

/** Names of the sites that have one. */
export function drawNames({ layout, end }: Frame, { curve }: Sweep, { labels }: ToldSweep): SVGTemplateResult {
  return svg`<g>${placeSiteLabels(layout, curve, labels, end).map(nameText)}</g>`;
}

/** The line and the point of the present incision, without what the pointer takes hold of. */
export function drawMarker(frame: Frame, sample: Sample): SVGTemplateResult {
  const { x, y } = rounded(pointOf(frame, sample));
  const { top, bottom } = frame.layout;
  return svg`<g part="marker"><line class="marker" x1=${x} x2=${x} y1=${px(top)} y2=${px(bottom)}></line><circle class="point" cx=${x} cy=${y} r="5"></circle></g>`;
}

export function pointOf({ layout, end }: Frame, { site, remaining }: Sample): Point {
  return { x: xOf(layout, site), y: yOf(layout, remaining, end) };
}

/** What lies at 0° lies at 360° too, at the other edge of the plot. */
function shown(samples: readonly Sample[]): Sample[] {
  return samples.flatMap((sample) => (sample.site === 0 ? [sample, { ...sample, site: 360 }] : [sample]));
}

function rounded({ x, y }: Point): Point {
  return { x: px(x), y: px(y) };
}

function bandPath(frame: Frame, { band }: Sweep): string {
  const upper = band.map(({ site, high }) => rounded(pointOf(frame, { site, remaining: high })));
  const lower = band.map(({ site, low }) => rounded(pointOf(frame, { site, remaining: low })));
  return polyline([...upper, ...lower.reverse()], true);
}

function guide({ layout }: Frame, { site }: Sample): SVGTemplateResult {
  const x = px(xOf(layout, site));
  return svg`<line class="guide" x1=${x} x2=${x} y1=${px(layout.top)} y2=${px(layout.bottom)}></line>`;
}

function dot({ x, y }: Point): SVGTemplateResult {
  return svg`<circle class="dot" cx=${px(x)} cy=${px(y)} r="3.5"></circle>`;
}

function diamond({ x, y }: Point): SVGTemplateResult {
  return svg`<path class="diamond" d="M${px(x)} ${px(y - 6.5)}l6.5 6.5-6.5 6.5-6.5-6.5z"></path>`;
}

function nameText({ id, text, x, y }: PlacedLabel): SVGTemplateResult {
  return svg`<text class="name ${id}" x=${px(x)} y=${px(y)} text-anchor="middle" dy="0.35em">${text}</text>`;
}
