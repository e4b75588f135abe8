import { html, svg } from 'lit';
import type { ReactiveControllerHost, TemplateResult } from 'lit';
import { fromVector, toVector } from '../../core/numbers.js';
import type { Astigmatism } from '../../core/numbers.js';
import { movesOf } from '../internal/case-moves.js';
import { DragController } from '../internal/drag-controller.js';
import { astigmatismText, dioptres, meridianText } from '../internal/format.js';
import { px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import type { Language } from '../internal/language/language.js';
import type { CaseElement } from './steps.case.js';
import { stepsWords } from './steps.words.js';

export type Host = ReactiveControllerHost & HTMLElement;

const RADIUS = 140;
/** Nearest steps to which a guess is rounded: D, degrees. */
const GRAIN = { dioptres: 0.05, degrees: 1 } as const;

/** Lets the reader say what they expect, by pointer on the double-angle plane or by two sliders. */
export class Prediction {
  /** What is expected; starts at what is there before the step. */
  guess: Astigmatism;
  /** Greatest magnitude on the plane, D. */
  readonly most: number;
  readonly #drag: DragController<'marker'>;
  #before: Astigmatism;
  readonly #locked: boolean;

  constructor(
    private readonly host: Host,
    /** Number of the step that asks. */
    readonly step: number,
    private readonly eye: CaseElement,
    private readonly show: () => void,
  ) {
    // Meanwhile nobody moves the plan and nothing shows other plans, which would give the answer away.
    this.#locked = eye.readOnly;
    this.#lock(true, true);
    const start = eye.outcome.after;
    this.guess = this.#before = rounded(start, Infinity);
    // Nothing of this may depend on the result, which it would give away.
    this.most = Math.max(2, Math.ceil(start.magnitude * 1.5));
    this.#drag = new DragController(host, {
      surface: () => host.shadowRoot!.querySelector<SVGSVGElement>('.plane'),
      pick: ({ x, y }) => (Math.hypot(x, y) <= RADIUS + 20 ? 'marker' : null),
      start: (_, point) => {
        this.#before = this.guess;
        this.#take(point);
      },
      move: (_, point) => this.#take(point),
      end: () => undefined,
      cancel: () => this.#set(this.#before),
    });
  }

  /** Difference of two states as vectors, D. */
  errorOf(result: Astigmatism): number {
    const [a, b] = [toVector(this.guess), toVector(result)];
    return Math.hypot(a.x - b.x, a.y - b.y);
  }

  verdict(result: Astigmatism, language: Language): string {
    const { numbers } = language;
    return language.say(stepsWords)('verdict', { guess: astigmatismText(this.guess, numbers), result: astigmatismText(result, numbers), error: dioptres(this.errorOf(result), numbers) });
  }

  end(): void {
    this.#lock(false, this.#locked);
    this.#drag.hostDisconnected();
    this.host.removeController(this.#drag);
  }

  render(question: string, language: Language): TemplateResult {
    const say = language.say(stepsWords);
    const { magnitude, meridian } = this.guess;
    return html`<section class="predict" part="predict" aria-label=${question}>
      <p dir="auto">${question}</p>
      <svg class="plane" viewBox="-170 -170 340 340" role="img" aria-label="${say('plane')}: ${astigmatismText(this.guess, language.numbers)}" @pointerdown=${this.#drag.onPointerDown}>${this.#plane(language)}</svg>
      <div class="sliders">
        <label>${say('magnitude')} <output>${dioptres(magnitude, language.numbers)}</output>
          <input type="range" class="magnitude" min="0" max=${this.most} step=${GRAIN.dioptres} .value=${String(magnitude)} aria-valuetext=${dioptres(magnitude, language.numbers)} @input=${(event: Event) => this.#slide(event, 'magnitude')} @change=${stop} />
        </label>
        <label>${say('meridian')} <output>${meridianText(meridian, language.numbers)}</output>
          <input type="range" class="meridian" min="1" max="180" step=${GRAIN.degrees} .value=${String(meridian)} aria-valuetext=${meridianText(meridian, language.numbers)} @input=${(event: Event) => this.#slide(event, 'meridian')} @change=${stop} />
        </label>
      </div>
      <button type="button" part="button" class="show" @click=${this.show}>${say('show')}</button>
    </section>`;
  }

  #plane(language: Language): TemplateResult[] {
    const scale = RADIUS / this.most;
    const { x, y } = toVector(this.guess);
    const rings = Array.from({ length: this.most }, (_, index) => index + 1);
    const rim = [180, 45, 90, 135].map((degrees) => ({ degrees, ...toVector({ magnitude: 156, meridian: degrees }) }));
    return [svg`<line x1=${-RADIUS} x2=${RADIUS}></line><line y1=${-RADIUS} y2=${RADIUS}></line>
      ${rings.map((value) => svg`<circle r=${px(value * scale)}></circle>`)}
      ${rings.map((value) => svg`<text class="value" x=${px(value * scale * 0.5)} y=${px(value * scale * 0.866)} text-anchor="middle" dy="0.35em">${dioptres(value, language.numbers)}</text>`)}
      ${rim.map((label) => svg`<text x=${px(label.x)} y=${px(-label.y)} text-anchor="middle" dy="0.35em">${meridianText(label.degrees, language.numbers)}</text>`)}
      <line class="guess" x2=${px(x * scale)} y2=${px(-y * scale)}></line>
      <circle class="reach" cx=${px(x * scale)} cy=${px(-y * scale)} r="22"></circle>
      <circle class="marker" part="guess" cx=${px(x * scale)} cy=${px(-y * scale)} r="9"></circle>`];
  }

  #lock(asking: boolean, readOnly: boolean): void {
    movesOf(this.eye.model).asking = asking;
    this.eye.readOnly = readOnly;
    // Also where it was read-only already.
    this.eye.requestUpdate();
  }

  #take({ x, y }: Point): void {
    const scale = this.most / RADIUS;
    this.#set(rounded(fromVector({ x: x * scale, y: -y * scale }), this.most));
  }

  #slide(event: Event, field: keyof Astigmatism): void {
    stop(event);
    this.#set({ ...this.guess, [field]: Number((event.target as HTMLInputElement).value) });
  }

  #set(guess: Astigmatism): void {
    this.guess = guess;
    this.host.requestUpdate();
  }
}

function rounded({ magnitude, meridian }: Astigmatism, most: number): Astigmatism {
  const size = Math.min(most, Math.round(magnitude / GRAIN.dioptres) * GRAIN.dioptres);
  return { magnitude: Number(size.toFixed(2)), meridian: Math.round(meridian) || 180 };
}

/** The page hears of steps, not of the sliders in them. */
function stop(event: Event): void {
  event.stopPropagation();
}
