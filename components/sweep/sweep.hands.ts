import { nothing, svg } from 'lit';
import type { ReactiveControllerHost, SVGTemplateResult, TemplateResult } from 'lit';
import { site } from '../../core/numbers.js';
import type { EyePlan } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import { movesOf } from '../internal/case-moves.js';
import { DragController, REACH } from '../internal/drag-controller.js';
import type { DragTarget } from '../internal/drag-controller.js';
import type { Point } from '../internal/geometry.js';
import { handleStyles } from '../internal/handle-styles.js';
import type { Steppable } from '../internal/key-step.js';
import { drawKnob } from '../internal/knob.js';
import type { Language } from '../internal/language/language.js';
import { addStyles } from '../internal/restyle.js';
import { SliderControls } from '../internal/slider-controls.js';
import type { SliderOwner } from '../internal/slider-controls.js';
import { pointOf } from './sweep.drawing.js';
import type { Frame } from './sweep.drawing.js';
import { inPlot, siteAt, xOf } from './sweep.layout.js';
import type { Sample } from './sweep.parts.js';
import { toldSite } from './sweep.speech.js';
import { sweepWords } from './sweep.words.js';

/** The one thing that can be moved. */
type Handle = 'marker';

const SOURCE = 'astig-sweep marker';

/** The drawing that is worked on, as it is at the moment of asking. */
export interface Worked {
  readonly language: Language;
  model(): CaseModel | null;
  editable(): boolean;
  /** The drawing, once it is there. */
  surface(): SVGSVGElement | null;
  /** What is on the screen now. */
  frame(): Frame | null;
  /** The incision as planned and what is expected to remain with it. */
  present(): Sample | null;
}

/** What moves the incision in the curve: the marker for the pointer, and a slider behind it for the keyboard. */
export class SweepHands implements DragTarget<Handle>, SliderOwner<Handle> {
  readonly #drag: DragController<Handle>;
  readonly #sliders: SliderControls<Handle>;
  #dragged = false;
  /** From the pointer to the line of the marker when it was taken hold of, px. */
  #offset = 0;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly sweep: Worked,
  ) {
    this.#drag = new DragController<Handle>(host, this);
    this.#sliders = new SliderControls<Handle>(host, this);
    addStyles(host, handleStyles);
  }

  readonly onPointerDown = (event: PointerEvent): void => {
    this.#dragged = false;
    this.#drag.onPointerDown(event);
  };

  /** A click in the plot does what dragging does, and plans an incision where there is none (WCAG 2.5.7). */
  readonly onClick = (event: MouseEvent): void => {
    const located = this.sweep.editable() && !this.#dragged ? this.#drag.locate(event) : null;
    this.#dragged = false;
    const layout = this.sweep.frame()?.layout;
    if (!located || !layout || !inPlot(layout, located.point) || this.pick(located.point, REACH * located.perPixel)) return;
    this.choose(siteAt(layout, located.point.x, event.altKey), true);
  };

  /** Puts the incision somewhere in one go. Where none was planned, its slider comes with the next rendering. */
  choose(incisionSite: number, quietly: boolean): void {
    const model = this.sweep.model();
    if (model) movesOf(model).choose({ incisionSite }, SOURCE, this.host);
    this.host.requestUpdate();
    void this.host.updateComplete.then(() => {
      if (quietly) this.#sliders.focusQuietly('marker');
      else this.host.shadowRoot!.querySelector<HTMLElement>('input.marker')?.focus();
    });
  }

  /** The knob of the marker, on top of the drawing. */
  handle(frame: Frame): SVGTemplateResult | typeof nothing {
    const present = this.sweep.present();
    if (!present) return nothing;
    const held = this.#drag.handle !== null;
    return svg`<g class=${held ? 'handle held' : 'handle'} part="marker-handle">${drawKnob(pointOf(frame, present), this.#sliders.focused === 'marker')}</g>`;
  }

  sliders(): TemplateResult {
    return this.#sliders.render(this.#movable());
  }

  /** To be called before rendering: hands the focus on when its control is about to go. */
  keepFocus(): void {
    this.#sliders.keepFocus(this.#movable(), this.surface()?.closest('figure') ?? null);
  }

  surface(): SVGSVGElement | null {
    return this.sweep.surface();
  }

  pick(point: Point, reach: number): Handle | null {
    const present = this.sweep.editable() ? this.sweep.present() : null;
    const frame = this.sweep.frame();
    if (!present || !frame) return null;
    const knob = pointOf(frame, present);
    return Math.hypot(knob.x - point.x, knob.y - point.y) <= reach ? 'marker' : null;
  }

  start(_handle: Handle, { x }: Point): void {
    this.#offset = xOf(this.sweep.frame()!.layout, this.sweep.present()!.site) - x;
    this.#sliders.focusQuietly('marker');
    this.host.requestUpdate();
  }

  move(_handle: Handle, { x }: Point, { altKey }: PointerEvent): void {
    this.#dragged = true;
    const model = this.sweep.model();
    if (model) movesOf(model).move({ incisionSite: siteAt(this.sweep.frame()!.layout, x + this.#offset, altKey) }, SOURCE, this.host);
  }

  end(): void {
    this.sweep.model()?.moves?.commit(SOURCE, this.host);
    this.host.requestUpdate();
  }

  cancel(): void {
    this.sweep.model()?.moves?.cancel();
    this.host.requestUpdate();
  }

  sliderModel(): CaseModel | null {
    return this.sweep.model();
  }

  sliderRange(): Steppable {
    return { value: this.sweep.present()?.site ?? 0, min: 0, max: 359, period: 360 };
  }

  sliderLabel(): string {
    return this.sweep.language.say(sweepWords)('control');
  }

  sliderText(): string {
    const { eye } = this.sweep.model()!.plan;
    return this.sweep.language.say(sweepWords)('incisionAt', toldSite(this.sweep.present()!, eye, this.sweep.language));
  }

  sliderPatch(_name: Handle, value: number): EyePlan {
    return { incisionSite: site(value) };
  }

  sliderSource(): string {
    return SOURCE;
  }

  sliderHeld(): boolean {
    return this.#drag.handle !== null;
  }

  #movable(): Handle[] {
    return this.sweep.editable() && this.sweep.present() ? ['marker'] : [];
  }
}
