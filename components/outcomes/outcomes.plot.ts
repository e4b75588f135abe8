import { svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import type { Ellipse } from '../../core/numbers.js';
import { outside, px } from '../internal/geometry.js';
import { labelText } from '../internal/label-text.js';
import { GAP, figureSize } from '../internal/layout.js';
import { textSize } from '../internal/measure.js';
import { DRAWN } from './outcomes.messages.js';
import type { Drawn, Findings } from './outcomes.messages.js';
import { BINS, PAINTED_FROM, extentOf, reachOf, ringStep, shares, signsPath } from './outcomes.parts.js';

/** Meridians on the rim, degrees on the eye; they stand at twice the angle. */
const RIM = [180, 15, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165];

/** Signs of the centroids, as those of single eyes but larger. */
export const CENTROIDS: Record<Drawn, string> = { before: 'M-6-6h12v12h-12z', after: 'M-7 0a7 7 0 1 0 14 0a7 7 0 1 0-14 0z', induced: 'M0-9 3-3 9 0 3 3 0 9-3 3-9 0-3-3z' };

export interface Frame {
  half: number;
  radius: number;
  /** px a dioptre. */
  scale: number;
  dioptres: number;
  small: number;
  family: string;
}

/** Going through 100 000 eyes takes a while, and they do not change. */
function onceFor<Made>(make: (points: Float64Array) => Made): (points: Float64Array) => Made {
  const known = new WeakMap<Float64Array, Made>();
  return (points) => {
    if (!known.has(points)) known.set(points, make(points));
    return known.get(points)!;
  };
}

const reachOfSeries = onceFor(reachOf);
const sharesOfSeries = onceFor(shares);

/** Room for the series that are shown: who looks at one alone sees it larger. */
export function frameOf({ points }: Findings, shown: ReadonlySet<Drawn>, size: { width: number; font: number; family: string }): Frame {
  const half = size.width / 2;
  const small = figureSize(size.font, size.width);
  const radius = Math.max(20, half - 2 * GAP - textSize('165°', small, size.family).width);
  const seen = DRAWN.filter((name) => shown.has(name) || shown.size === 0).map((name) => points[name]);
  const dioptres = extentOf(seen.map(reachOfSeries));
  return { half, radius, scale: radius / dioptres, dioptres, small, family: size.family };
}

/** Rings, rim, the signs of few eyes, ellipses and centroids, and the eye that is chosen. */
export function plot(findings: Findings, frame: Frame, shown: ReadonlySet<Drawn>, chosen: number | null, all: boolean, text: (dioptres: number) => string): SVGTemplateResult {
  const { radius, scale, dioptres, small, family } = frame;
  const step = ringStep(dioptres);
  const rings = Array.from({ length: Math.round(dioptres / step) }, (_, index) => (index + 1) * step);
  const layers = DRAWN.filter((name) => shown.has(name));
  const drawn = all || findings.counted < PAINTED_FROM;
  return svg`<line class="axis" x1=${-radius} x2=${radius}></line><line class="axis" y1=${-radius} y2=${radius}></line>
    ${rings.map((value) => svg`<circle part="ring" r=${px(value * scale)}></circle>`)}
    <g aria-hidden="true">${RIM.map((meridian) => {
      const { width, height } = textSize(`${meridian}°`, small, family);
      return labelText({ ...outside((2 * meridian) % 360, radius + GAP, width, height * 0.8), text: `${meridian}°`, anchor: 'middle' });
    })}</g>
    ${layers.map((name) => svg`<path class="points ${name}" d=${drawn ? signsPath(findings.points[name], name, scale) : ''}></path>`)}
    ${layers.map((name) => centre(findings, name, scale))}
    ${chosen === null ? null : layers.map((name) => svg`<circle class="chosen" r="7" cx=${px(findings.points[name][2 * chosen]! * scale)} cy=${px(-findings.points[name][2 * chosen + 1]! * scale)}></circle>`)}
    <g aria-hidden="true">${rings.map((value) => labelText({ x: 0, y: value * scale - small * 0.7, text: text(value), anchor: 'middle' }))}</g>`;
}

function centre({ summaries }: Findings, name: Drawn, scale: number): SVGTemplateResult | null {
  const { centroid, ellipseOfMean, ellipseOfEyes } = summaries[name];
  if (!centroid) return null;
  // The ellipse of the mean is drawn last: in a long series it is hardly larger than the sign.
  return svg`<g class=${name}>${around(ellipseOfEyes, 'eyes-ellipse', scale)}
    <path part="centroid" data-series=${name} transform="translate(${px(centroid.x * scale)} ${px(-centroid.y * scale)}) scale(0.65)" d=${CENTROIDS[name]}></path>${around(ellipseOfMean, 'mean-ellipse', scale)}</g>`;
}

function around(ellipse: Ellipse | null, part: string, scale: number): SVGTemplateResult | null {
  if (!ellipse) return null;
  const { cx, cy, a, b, angle } = ellipse;
  return svg`<ellipse part=${part} rx=${px(a * scale)} ry=${px(b * scale)} transform="translate(${px(cx * scale)} ${px(-cy * scale)}) rotate(${px(-angle)})"></ellipse>`;
}

/** Bars of the magnitude before and after, side by side. */
export function bars({ points }: Findings, width: number, font: number, text: (dioptres: number) => string): { height: number; drawing: SVGTemplateResult } {
  const height = width * 0.45;
  const foot = height - 1.6 * font;
  const series = (['before', 'after'] as const).map((name) => ({ name, values: sharesOfSeries(points[name]) }));
  const most = Math.max(0.01, ...series.flatMap(({ values }) => values));
  const wide = width / BINS.count;
  const drawing = svg`<line class="axis" x1="0" x2=${px(width)} y1=${px(foot)} y2=${px(foot)}></line>
    ${series.map(({ name, values }, place) => values.map((value, bin) => svg`<rect class="bar ${name}" x=${px(bin * wide + 2 + (place * (wide - 4)) / 2)} width=${px((wide - 4) / 2)} y=${px(foot - (value / most) * (foot - 4))} height=${px((value / most) * (foot - 4))}></rect>`))}
    ${[0, 4, 8, 12].map((bin) => labelText({ x: bin * wide, y: height - 0.6 * font, text: text(bin * BINS.step), anchor: bin === 0 ? 'start' : 'middle' }))}`;
  return { height, drawing };
}
