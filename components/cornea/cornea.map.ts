import { html, nothing, render, svg } from 'lit';
import type { ReactiveController, ReactiveControllerHost, SVGTemplateResult, TemplateResult } from 'lit';
import type { CornealPoint } from '../../core/shape.js';
import { NBSP, decimal, withUnit } from '../internal/format.js';
import { direction, polar, px } from '../internal/geometry.js';
import type { Say } from '../internal/language/language.js';
import { addStyles } from '../internal/restyle.js';
import { screenMatrix } from '../internal/screen-matrix.js';
import type { Cornea } from './cornea.hands.js';
import { MAP_POWERS, MAP_STATES, powerField } from './cornea.map.field.js';
import type { FieldInput, MapPower, MapState, PowerField } from './cornea.map.field.js';
import { isPrinted, printedOf, printedStep } from './cornea.map.labels.js';
import { colour, contoursOf, levels, lowest, sample, STEP } from './cornea.map.parts.js';
import type { Contour, Range } from './cornea.map.parts.js';
import { mapStyles } from './cornea.map.styles.js';
import { mapWords } from './cornea.map.words.js';

/** The element whose cornea is mapped, with what the page has set. */
export type Mapped = ReactiveControllerHost & HTMLElement & { readonly renderRoot: HTMLElement | DocumentFragment; map?: string | null; mapPower?: string };

/** Most powers printed on the contours. */
const MOST_PRINTED = 8;

/** A map that is ready to be drawn. */
interface Ready {
  field: PowerField;
  range: Range;
  contours: readonly Contour[];
  /** The level of the colour beneath all contours. */
  ground: number;
}

/** From figures to paths. */
function readyOf(input: FieldInput & { turn: number; scale: number; range: Range | null }): Ready {
  const field = powerField(input);
  const sampled = sample(field, input.turn, input.state);
  const range: Range = input.range ? [Math.min(input.range[0], sampled.range[0]), Math.max(input.range[1], sampled.range[1])] : sampled.range;
  return { field, range, contours: contoursOf(sampled, range, input.state, field.zone, input.scale), ground: lowest(sampled, range, input.state) };
}

/** A map of the power beneath the drawing of the cornea, its scale, and the power at a point that the reader chooses. */
export class CorneaMap implements ReactiveController {
  /** Where the power is asked for; null when it is not. */
  #point: CornealPoint | null = null;
  /** Of what the scale was made, and how far it goes. Within a movement it only grows. */
  #scale: { of: string; range: Range } | null = null;
  readonly #front: SVGGElement;
  #last: { of: string; ready: Ready } | null = null;

  constructor(
    private readonly host: Mapped,
    private readonly cornea: Cornea,
  ) {
    this.#front = host.ownerDocument.createElementNS('http://www.w3.org/2000/svg', 'g');
    this.#front.setAttribute('class', 'handle');
    host.addController(this);
    addStyles(host, mapStyles);
    host.renderRoot.addEventListener('pointermove', this.#onPointerMove as EventListener);
    host.renderRoot.addEventListener('pointerout', this.#onPointerOut as EventListener);
  }

  /** Colours, contours and their figures, to lie beneath the lines of the drawing. */
  draw(): SVGTemplateResult {
    const { field, range, contours, ground } = this.#now();
    const layout = this.cornea.layout();
    const radius = field.zone * layout.scale;
    const step = printedStep(range, MOST_PRINTED);
    const steep = this.cornea.model()!.outcome.before.meridian + layout.turn;
    return svg`<clipPath id="map-zone"><circle r=${px(radius)}></circle></clipPath>
      <g part="map" clip-path="url(#map-zone)">
        <g class=${`map-colours of-${this.#state}`}>
          <circle r=${px(radius)} fill=${colour(ground, range, this.#state)}></circle>
          ${contours.map(({ value, path }) => path && svg`<path d=${path} fill=${colour(value, range, this.#state)}></path>`)}
        </g>
        ${contours.map(({ value, path }) => path && svg`<path class=${isPrinted(value, step) ? 'map-line printed' : 'map-line'} d=${path}></path>`)}
      </g>
      ${printedOf(contours, step, { room: 2.4 * layout.size, radius, steep }).map(
        ({ value, x, y }) => svg`<text class="map-figure" x=${px(x)} y=${px(y)} text-anchor="middle" dy="0.35em">${this.#figure(value, step)}</text>`,
      )}`;
  }

  /** The point is marked on top of everything else that the drawing has. */
  hostUpdated(): void {
    const surface = this.cornea.surface();
    if (surface && this.#front.parentNode !== surface) surface.append(this.#front);
    render(this.#point && this.cornea.model() && this.host.map != null ? this.#mark(this.#point) : nothing, this.#front);
  }

  /** What stands below the drawing: what the map is, its scale, and the power at a point. */
  legend(): TemplateResult {
    const say = this.#say;
    const { field } = this.#now();
    return html`<div class="map" role="group" aria-label=${say('name')}>
      <p>${say('heading', { power: say(this.#power), state: say(this.#state) })}</p>
      ${this.#bar()}
      <p class="map-ask">${say('ask')}</p>
      ${this.#slider('direction', 359, 1)} ${this.#slider('distance', Math.floor(10 * field.zone) / 10, 0.1)}
      <output aria-live="off">${this.#point ? this.#reading(this.#point) : nothing}</output>
      <p class="quiet">${say('shape')} ${field.illustrated ? say('illustration') : nothing}</p>
    </div>`;
  }

  get #say(): Say<keyof typeof mapWords.en> {
    return this.cornea.language.say(mapWords);
  }

  get #state(): MapState {
    const { map } = this.host;
    return MAP_STATES.find((state) => state === map) ?? 'after';
  }

  get #power(): MapPower {
    const { mapPower } = this.host;
    return MAP_POWERS.find((power) => power === mapPower) ?? 'axial';
  }

  #now(): Ready {
    const { plan, outcome, moving } = this.cornea.model()!;
    const { turn, scale } = this.cornea.layout();
    const [state, power] = [this.#state, this.#power];
    const of = state + power;
    const range = moving && this.#scale?.of === of ? this.#scale.range : null;
    const { before, steps, meanPowerShift } = outcome;
    const input = { plan, outcome: { before, steps, meanPowerShift }, state, power, turn, scale, range };
    const key = JSON.stringify(input);
    if (this.#last?.of !== key) this.#last = { of: key, ready: readyOf(input) };
    const { ready } = this.#last;
    this.#scale = { of, range: ready.range };
    return ready;
  }

  /** A power as it stands on the map: with its sign where it is a difference. */
  #figure(value: number, step: number): string {
    const { numbers } = this.cornea.language;
    return this.#sign(value) + decimal(Math.abs(value), step < 1 ? 1 : 0, numbers);
  }

  #sign(value: number): string {
    if (this.#state !== 'difference' || value === 0) return '';
    return value > 0 ? '+' : '−';
  }

  #value(point: CornealPoint): string {
    const { numbers } = this.cornea.language;
    const value = Math.round(100 * this.#now().field.at(point)) / 100;
    // With its sign in one piece, also in a text that runs to the left.
    return withUnit(this.#sign(value) + decimal(Math.abs(value), 2, numbers), 'D', numbers);
  }

  #reading({ distance, direction }: CornealPoint): string {
    const { numbers } = this.cornea.language;
    return this.#say('reading', { power: this.#value({ distance, direction }), direction: withUnit(String(Math.round(direction) % 360), '°', numbers), distance: withUnit(decimal(distance, 1, numbers), 'mm', numbers) });
  }

  /** The point that is asked for, with the power there. A mark of the page: what gives the drawing away leaves it out. */
  #mark(point: CornealPoint): SVGTemplateResult {
    const { scale, turn, size } = this.cornea.layout();
    const { x, y } = polar(point.direction + turn, point.distance * scale);
    const end = x > 0;
    return svg`<g part="map-point" pointer-events="none"><circle class="map-point" cx=${px(x)} cy=${px(y)} r="4"></circle>
      <text class="map-figure" x=${px(x + (end ? -1 : 1) * size)} y=${px(y - size)} text-anchor=${end ? 'end' : 'start'}>${this.#value(point)}</text></g>`;
  }

  /** The scale: as wide as the drawing, each colour from its power to the next. */
  #bar(): SVGTemplateResult | TemplateResult {
    const { half, size } = this.cornea.layout();
    const { range } = this.#now();
    const [from, to] = range;
    const inset = 2 * size;
    const width = 2 * half - 2 * inset;
    const at = (value: number): number => px(inset + (width * (value - from)) / (to - from));
    const step = printedStep(range, Math.max(2, width / (3.5 * size)));
    const state = this.#state;
    const ticks = [...levels(range, state), to].filter((value) => isPrinted(value, step));
    return html`<svg class="map-scale" aria-hidden="true" font-size=${size} viewBox="0 0 ${2 * half} ${px(2.6 * size)}">
      <rect class="map-ground" x=${inset} width=${px(width)} height=${size}></rect>
      <g class=${`map-colours of-${this.#state}`}>${levels(range, state).map((level) => svg`<rect x=${at(level)} width=${px(at(level + STEP[state]) - at(level))} height=${size} fill=${colour(level, range, state)}></rect>`)}</g>
      ${ticks.map((value) => svg`<line class="map-tick" x1=${at(value)} x2=${at(value)} y2=${px(1.25 * size)}></line><text x=${at(value)} y=${px(2.3 * size)} text-anchor="middle">${this.#figure(value, step)}${value === to ? `${NBSP}D` : nothing}</text>`)}
    </svg>`;
  }

  #slider(name: keyof CornealPoint, max: number, step: number): TemplateResult {
    const point = this.#point ?? { distance: 0, direction: 0 };
    return html`<label class="map-ask"><span>${this.#say(name)}</span>
      <input type="range" name=${name} min="0" max=${max} step=${step} .value=${String(point[name])} aria-valuetext=${this.#reading(point)}
        @focus=${() => this.#ask(point)}
        @blur=${() => this.#ask(null)}
        @change=${(event: Event) => event.stopPropagation()}
        @input=${(event: Event) => {
          event.stopPropagation();
          this.#ask({ ...point, [name]: Number((event.target as HTMLInputElement).value) });
        }} />
    </label>`;
  }

  #ask(point: CornealPoint | null): void {
    this.#point = point;
    this.host.requestUpdate();
  }

  readonly #onPointerMove = (event: PointerEvent): void => {
    const surface = this.cornea.surface();
    if (!surface?.contains(event.target as Node) || event.buttons > 0 || !this.cornea.model() || this.host.map == null) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(screenMatrix(surface).inverse());
    const { scale, turn } = this.cornea.layout();
    const distance = Math.hypot(at.x, at.y) / scale;
    const inside = distance <= this.#now().field.zone;
    if (inside || this.#point) this.#ask(inside ? { distance, direction: (((direction(at) - turn) % 360) + 360) % 360 } : null);
  };

  readonly #onPointerOut = (event: PointerEvent): void => {
    const surface = this.cornea.surface();
    if (this.#point && surface?.contains(event.target as Node) && !surface.contains(event.relatedTarget as Node)) this.#ask(null);
  };
}
