import { html, nothing, render, svg } from 'lit';
import type { ReactiveController, ReactiveControllerHost, SVGTemplateResult, TemplateResult } from 'lit';
import type { CornealPoint } from '../../core/shape.js';
import { decimal, withUnit } from '../internal/format.js';
import { direction, polar, px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import type { Say } from '../internal/language/language.js';
import { lastOf } from '../internal/last.js';
import { textSize } from '../internal/measure.js';
import { addStyles } from '../internal/restyle.js';
import { screenMatrix } from '../internal/screen-matrix.js';
import type { Cornea } from './cornea.hands.js';
import { MAP_POWERS, MAP_STATES } from './cornea.map.field.js';
import type { MapPower, MapState } from './cornea.map.field.js';
import { isPrinted, printedOf, printedStep } from './cornea.map.labels.js';
import type { Printed } from './cornea.map.labels.js';
import { obstaclesOf } from './cornea.map.obstacles.js';
import { GRID, STEP, colour, signPath } from './cornea.map.parts.js';
import type { Contour, Range } from './cornea.map.parts.js';
import { readyOf } from './cornea.map.ready.js';
import type { Ready } from './cornea.map.ready.js';
import { SIGN, fileScale, pageScale, wrapped } from './cornea.map.scale.js';
import type { Scale } from './cornea.map.scale.js';
import { mapStyles } from './cornea.map.styles.js';
import { mapWords } from './cornea.map.words.js';

/** The element whose cornea is mapped, with what the page has set. */
export type Mapped = ReactiveControllerHost & HTMLElement & { readonly renderRoot: HTMLElement | DocumentFragment; map?: string | null; mapPower?: string };

/** Most powers printed on the contours. */
const MOST_PRINTED = 8;

/** A map of the power beneath the drawing of the cornea, its scale, and the power at a point that the reader chooses. */
export class CorneaMap implements ReactiveController {
  /** Where the power is asked for; null when it is not. */
  #point: CornealPoint | null = null;
  /** Where it was asked for last: from there the sliders go on, also from the one to the other. */
  #last: CornealPoint = { distance: 0, direction: 0 };
  /** Of what the scale was made, and how far it goes. Within a movement it only grows. */
  #scale: { of: string; range: Range } | null = null;
  #figures: readonly Printed[] = [];
  readonly #front: SVGGElement;
  #made: { given: readonly unknown[]; ready: Ready } | null = null;

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

  /** Colours, contours and signs, to lie beneath the lines of the drawing. */
  draw(): SVGTemplateResult {
    const { field, range, contours, ground, signs } = this.#now();
    const state = this.#state;
    const { scale, size } = this.cornea.layout();
    const radius = px(field.zone * scale);
    this.#figures = this.#placed();
    // A sign beside a figure would be read as its own.
    const apart = signs.filter(({ x, y }) => this.#figures.every((figure) => Math.abs(x - figure.x) > 2.5 * size || Math.abs(y - figure.y) > size));
    const lines = (className: string, which: (contour: Contour) => boolean): SVGTemplateResult => svg`<path class="map-line ${className}" d=${contours.filter(which).map(({ path }) => path).join('')}></path>`;
    const step = this.#step();
    const printed = ({ value }: Contour): boolean => isPrinted(value, step);
    return svg`<clipPath id="map-zone"><circle r=${radius}></circle></clipPath>
      <g part="map" clip-path="url(#map-zone)">
        <g class="map-colours of-${state}">
          <circle r=${radius} fill=${colour(ground, range, state)}></circle>
          ${contours.map(({ value, path }) => path && svg`<path d=${path} fill=${colour(value, range, state)}></path>`)}
        </g>
        ${lines('', (contour) => contour.value >= 0 && !printed(contour))} ${lines('printed', (contour) => contour.value >= 0 && printed(contour))}
        ${state === 'difference' ? svg`${lines('less', ({ value }) => value < 0)}<path class="map-sign" d=${apart.map((sign) => signPath(sign, SIGN * size)).join('')}></path>` : nothing}
      </g>`;
  }

  /** The powers of contours, to stand on top of the lines of the drawing. */
  figures(): SVGTemplateResult {
    return svg`${this.#figures.map(({ x, y, text }) => svg`<text class="map-figure" x=${px(x)} y=${px(y)} text-anchor="middle" dy="0.35em" pointer-events="none">${text}</text>`)}`;
  }

  /** Where there is room for powers of contours. The power that is asked for comes first. */
  #placed(): Printed[] {
    const { contours, field } = this.#now();
    const { plan, outcome } = this.cornea.model()!;
    const layout = this.cornea.layout();
    const { size } = layout;
    const step = this.#step();
    const asked = this.#point && this.#marked(this.#point).text;
    return printedOf({
      contours: contours.filter(({ value }) => isPrinted(value, step)),
      textOf: (value) => this.#figure(value, step),
      size,
      radius: field.zone * layout.scale,
      steep: outcome.before.meridian + layout.turn,
      obstacles: obstaclesOf(plan, outcome, layout),
    }).filter(({ x, y }) => !asked || Math.abs(x - asked.x) > 5 * size || Math.abs(y - asked.y) > 2 * size);
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
      ${pageScale(this.#scaled())} ${this.#fileScale()}
      <p class="map-ask">${say('ask')}</p>
      ${this.#slider('direction', 359, 1)} ${this.#slider('distance', Math.floor(10 * field.zone) / 10, 0.1)}
      <output aria-live="off">${this.#point ? this.#reading(this.#point) : nothing}</output>
      <p class="quiet">${say('shape')} ${field.illustrated ? say('illustration') : nothing}</p>
    </div>`;
  }

  #scaled(): Scale {
    const { half, size } = this.cornea.layout();
    return { range: this.#now().range, state: this.#state, width: 2 * half, size, figure: (value, step) => this.#figure(value, step) };
  }

  /** The scale with what the legend says of it, for who gets the drawing without the page. */
  #fileScale(): TemplateResult {
    const say = this.#say;
    const scale = this.#scaled();
    const { width, size } = scale;
    const heading = say('heading', { power: say(this.#power), state: say(this.#state) });
    const note = this.#now().field.illustrated ? say('illustration') : '';
    return fileScale(scale, this.#linesOf({ width, size, heading, note, tag: this.cornea.language.tag }));
  }

  readonly #linesOf = lastOf(({ width, size, heading, note, tag }: { width: number; size: number; heading: string; note: string; tag: string }) => {
    const family = `${tag} ${getComputedStyle(this.host).fontFamily}`;
    const [above, below] = [heading, note].map((text) => wrapped(text, width - 2 * size, (line) => textSize(line, size, family).width));
    return { above: above!, below: below! };
  });

  /** From one printed power to the next, D. */
  #step(): number {
    return printedStep(this.#now().range, MOST_PRINTED, this.#state === 'difference' ? STEP.difference : 1);
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

  /** Asked for many times a drawing, and made anew only for another plan, setting or size. */
  #now(): Ready {
    const { plan, outcome, moving } = this.cornea.model()!;
    const { turn, scale } = this.cornea.layout();
    const [state, power] = [this.#state, this.#power];
    const given = [plan, outcome, moving, turn, scale, state, power];
    if (this.#made && given.every((value, index) => value === this.#made!.given[index])) return this.#made.ready;
    const of = state + power;
    const range = moving && this.#scale?.of === of ? this.#scale.range : null;
    const ready = readyOf({ plan, outcome, state, power, turn, scale, grid: moving ? GRID.moving : GRID.resting, range });
    this.#made = { given, ready };
    this.#scale = { of, range: ready.range };
    return ready;
  }

  /** A power as it stands on the map: with its sign where it is a difference. */
  #figure(value: number, step: number): string {
    const { numbers } = this.cornea.language;
    return this.#sign(value) + decimal(Math.abs(value), value === 0 || step >= 1 ? 0 : step < 0.5 ? 2 : 1, numbers);
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

  /** The point that is asked for, and where the power there is written: above it, within the drawing. */
  #marked({ direction: towards, distance }: CornealPoint): { point: Point; text: Point } {
    const { scale, turn, size, half } = this.cornea.layout();
    const point = polar(towards + turn, distance * scale);
    const most = half - 2.5 * size;
    return { point, text: { x: Math.min(most, Math.max(-most, point.x)), y: point.y - 0.9 * size } };
  }

  /** A mark of the page: what gives the drawing away leaves it out. */
  #mark(asked: CornealPoint): SVGTemplateResult {
    const { point, text } = this.#marked(asked);
    return svg`<g part="map-point" pointer-events="none"><circle class="map-point" cx=${px(point.x)} cy=${px(point.y)} r="4"></circle>
      <text class="map-figure" x=${px(text.x)} y=${px(text.y)} text-anchor="middle">${this.#value(asked)}</text></g>`;
  }

  #slider(name: keyof CornealPoint, max: number, step: number): TemplateResult {
    const point = this.#last;
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
    if (point) this.#last = point;
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
