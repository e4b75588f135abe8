import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import { GOOD, ellipse } from '../../core/numbers.js';
import type { Ellipse } from '../../core/numbers.js';
import { decimal, dioptres as dioptresText, withUnit } from '../internal/format.js';
import { AstigDrawing } from '../internal/drawing.js';
import { drawingStyles } from '../internal/drawing-styles.js';
import { px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { Glide } from '../internal/glide.js';
import { labelText } from '../internal/label-text.js';
import { distance, nearestOn } from '../internal/labels.js';
import { lastOf } from '../internal/last.js';
import { TITLE } from '../internal/layout.js';
import { line } from '../internal/line.js';
import { property, state } from '../internal/property.js';
import type { Question } from '../internal/source-controller.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { sharedWords } from '../internal/words.js';
import { layoutVectors, placeVectorLabels } from './vectors.layout.js';
import type { VectorsLayout } from './vectors.layout.js';
import { SHARES, arrowShape, arrowsOf, diagramRadius, ringSteps, toPoint } from './vectors.parts.js';
import type { Arrow, VectorSource } from './vectors.parts.js';
import { vectorsStyles } from './vectors.styles.js';
import { describeVectors, told } from './vectors.speech.js';
import type { ToldArrow } from './vectors.speech.js';
import { vectorsWords } from './vectors.words.js';

/** Distance of a name from its arrow from which a line joins them, and how far below its middle that begins, px. */
const LEADER = { least: 26, beside: 9 } as const;

/**
 * Double-angle diagram: the astigmatism before, what the back surface and each step add, head to tail, and what is left.
 * Real meridians stand round the rim; hovering or focusing an arrow names it and its figures.
 *
 * @tagname astig-vectors
 * @csspart ring - a circle of equal dioptres
 * @csspart vector - an arrow; `data-source` says which
 * @csspart spread - an ellipse around what remains; `data-share` says how many eyes it holds
 * @csspart good - the circle of 0.50 D
 * @csspart residual - the arrow of what is expected to be left
 * @csspart sourced - a figure that opens its source
 * @csspart source - what opens then
 * @cssprop [--astig-size=34rem] - greatest width of the drawing
 */
export class AstigVectors extends AstigDrawing {
  static override styles = [tokens, drawingStyles, sourceStyles, vectorsStyles];

  /** Leaves out the ellipses and the circle of 0.50 D. */
  @property({ type: Boolean, attribute: 'hide-spread' }) hideSpread = false;

  /** The arrow that is pointed at or has the focus. */
  @state() private named: VectorSource | null = null;

  readonly #radius = new Glide(this);
  readonly #layoutOf = lastOf(layoutVectors);

  protected override render(): TemplateResult {
    const { model, language } = this;
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    const say = language.say(vectorsWords);
    const { plan, outcome } = model;
    const arrows = arrowsOf(outcome).map((arrow) => told(arrow, plan.arcCount, language));
    const ellipses = this.hideSpread ? [] : SHARES.map((share) => ellipse(outcome.spread, share));
    const eye = shared(plan.eye);
    const layout = this.#layout(eye);
    const { half, halfHeight } = layout;
    return html`<figure class="plate" aria-label=${say('name')}>
      <span class="probe"></span>
      <svg role="group" font-size=${layout.font.small} aria-label=${describeVectors(eye, arrows, language)} viewBox="${-half} ${-halfHeight} ${2 * half} ${2 * halfHeight}">
        ${this.#diagram(arrows, ellipses, layout)}
      </svg>
      ${this.#key(arrows)}
      <figcaption class="quiet readout">${arrows.find(({ source }) => source === this.named)?.sentence ?? say('caption')}</figcaption>
      ${this.hideSpread ? nothing : html`<p class="quiet">${say('spreadCaption', { good: dioptresText(GOOD, language.numbers) })} ${this.source.button({ figure: 'spread' }, shared('source'), shared('sourceOfSpread'))}</p>`}
      ${this.pictureRow()}
    </figure>
    ${this.source.render()}`;
  }

  #diagram(arrows: readonly ToldArrow[], ellipses: readonly Ellipse[], layout: VectorsLayout): SVGTemplateResult {
    const dioptres = this.#radius.towards(diagramRadius(arrows, ellipses, this.#radius.goal));
    const scale = layout.radius / dioptres;
    const steps = ringSteps(dioptres);
    const rings = [...steps, dioptres].map((value) => ({ id: `ring ${value}`, text: this.#ringText(value), value }));
    const names = new Map(arrows.map(({ source, name }) => [source as string, name]));
    const places = placeVectorLabels(layout, arrows, names, scale, rings);
    return svg`${grid(layout, steps, scale)} ${ellipses.length > 0 ? spreadShapes(ellipses, scale) : nothing}
      ${arrows.map((arrow) => this.#arrow(arrow, scale))}
      <circle class="origin" r="3"></circle>
      <g class="rings" aria-hidden="true">${rings.map(({ id, text }) => placed(places.get(id), text))}</g>
      <g aria-hidden="true">${arrows.map((arrow) => leader(places.get(arrow.source), arrow, scale))} ${arrows.map(({ source, name }) => placed(places.get(source), name, 'name'))}</g>`;
  }

  #arrow(arrow: ToldArrow, scale: number): SVGTemplateResult {
    const { source } = arrow;
    const from = toPoint(arrow.from, scale);
    const to = toPoint(arrow.to, scale);
    const { shaft, head } = arrowShape(from, to);
    const whole = { x1: from.x, y1: from.y, x2: to.x, y2: to.y };
    return svg`<g
      class="vector ${source}"
      part=${source === 'residual' ? 'residual' : 'vector'}
      data-source=${source}
      role="button"
      tabindex="0"
      @click=${() => this.source.ask(question(arrow))}
      @keydown=${(event: KeyboardEvent) => this.#onKeydown(event, arrow)}
      aria-label=${arrow.sentence}
      @pointerenter=${() => (this.named = source)}
      @pointerleave=${() => (this.named = null)}
      @focus=${() => (this.named = source)}
      @blur=${() => (this.named = null)}
    >
      ${line(whole, 'grab')} ${source === 'before' ? line(whole, 'band') : null} ${line(whole, 'halo')} ${line({ ...whole, ...shaft }, 'shaft')}
      <path class="head" d=${head}></path>
    </g>`;
  }

  #onKeydown(event: KeyboardEvent, arrow: Arrow): void {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    this.source.ask(question(arrow));
  }

  #key(arrows: readonly ToldArrow[]): TemplateResult {
    return html`<ul class="key" aria-hidden="true">
      ${arrows.map(
        ({ source, figures }) => html`<li>
          <svg viewBox="0 0 28 12" class="vector ${source}"><line class="shaft" x1="0" y1="6" x2="20" y2="6"></line><path class="head" d="M28 6 19 2v8z"></path></svg>
          <span>${figures}</span>
        </li>`,
      )}
    </ul>`;
  }

  /** The figure of a ring, with as many decimals as say all there is to say. */
  #ringText(value: number): string {
    const digits = String(Number(value.toFixed(2))).split('.')[1]?.length ?? 0;
    return withUnit(decimal(value, digits, this.language.numbers), 'D', this.language.numbers);
  }

  #layout(title: string): VectorsLayout {
    const { width, font, family } = this.size;
    const shared = this.language.say(sharedWords);
    return this.#layoutOf({ width, font, family, title, corners: [shared('with'), shared('against')] });
  }
}

function grid({ radius, rim, words, title, font }: VectorsLayout, steps: readonly number[], scale: number): SVGTemplateResult {
  return svg`<line class="axis" x1=${-radius} x2=${radius}></line>
    <line class="axis" y1=${-radius} y2=${radius}></line>
    ${steps.map((value) => svg`<circle part="ring" r=${px(value * scale)}></circle>`)}
    <circle part="ring" r=${px(radius)}></circle>
    <g class="rim" aria-hidden="true">${rim.map((label) => labelText(label))}</g>
    <g aria-hidden="true">${words.map((label) => labelText(label, 'side'))} <g font-size=${TITLE * font.small}>${labelText(title, 'title')}</g></g>`;
}

/** Around what remains: half of all eyes like this, and 95 of 100; around the origin: what counts as good. */
function spreadShapes(ellipses: readonly Ellipse[], scale: number): SVGTemplateResult {
  return svg`<circle part="good" r=${px(GOOD * scale)}></circle>
    ${ellipses.map(
      ({ cx, cy, a, b, angle }, index) =>
        svg`<ellipse part="spread" data-share=${SHARES[index]} rx=${px(a * scale)} ry=${px(b * scale)} transform="translate(${px(cx * scale)} ${px(-cy * scale)}) rotate(${px(-angle)})"></ellipse>`,
    )}`;
}

/** What an arrow answers when it is asked where it comes from. */
function question({ source, own }: Arrow): Question {
  return { figure: source === 'residual' ? 'after' : source, own };
}

/** Joins a name to its arrow where it had to stand further off. */
function leader(centre: Point | undefined, arrow: Arrow, scale: number): SVGTemplateResult | null {
  if (!centre) return null;
  const end = nearestOn({ from: toPoint(arrow.from, scale), to: toPoint(arrow.to, scale) }, centre);
  if (distance(end, centre) < LEADER.least) return null;
  const start = LEADER.beside / Math.max(Math.abs(end.y - centre.y), LEADER.beside);
  return line({ x1: centre.x + (end.x - centre.x) * start, y1: centre.y + (end.y - centre.y) * start, x2: end.x, y2: end.y }, 'leader');
}

function placed(centre: Point | undefined, text: string, className = ''): SVGTemplateResult | null {
  return centre ? labelText({ ...centre, text, anchor: 'middle' }, className, '0.35em') : null;
}
