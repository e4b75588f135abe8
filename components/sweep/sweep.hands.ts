import { nothing, svg } from 'lit';
import type { SVGTemplateResult } from 'lit';
import { site } from '../../core/numbers.js';
import type { EyePlan } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import { movesOf } from '../internal/case-moves.js';
import type { Point } from '../internal/geometry.js';
import { Hands } from '../internal/hands.js';
import type { Worked } from '../internal/hands.js';
import type { Steppable } from '../internal/key-step.js';
import { drawKnob } from '../internal/knob.js';
import { pointOf } from './sweep.drawing.js';
import type { Frame } from './sweep.drawing.js';
import { inPlot, siteAt, xOf } from './sweep.layout.js';
import type { Sample } from './sweep.parts.js';
import { toldSite } from './sweep.speech.js';
import { sweepWords } from './sweep.words.js';

/** The one thing that can be moved. */
type Handle = 'marker';

const SOURCE = 'astig-sweep marker';

/** The curve that is worked on. */
export interface Curve extends Worked {
  /** What is on the screen now. */
  frame(): Frame | null;
  /** The incision as planned and what is expected to remain with it. */
  present(): Sample | null;
}

/** What moves the incision in the curve. */
export class SweepHands extends Hands<Handle, Handle, Curve> {
  /** From the pointer to the line of the marker when it was taken hold of, px. */
  #offset = 0;

  /** Puts the incision somewhere in one go. Where none was planned, its slider comes with the next rendering. */
  choose(incisionSite: number, quietly: boolean): void {
    const model = this.drawing.model();
    if (model) movesOf(model).choose({ incisionSite }, SOURCE, this.host);
    this.host.requestUpdate();
    void this.host.updateComplete.then(() => {
      if (quietly) this.controls.focusQuietly('marker');
      else this.host.shadowRoot!.querySelector<HTMLElement>('input.marker')?.focus();
    });
  }

  /** The knob of the marker, on top of the drawing. */
  handle(frame: Frame): SVGTemplateResult | typeof nothing {
    const present = this.drawing.present();
    if (!present) return nothing;
    const held = this.drag.handle !== null;
    return svg`<g class=${held ? 'handle held' : 'handle'} part="marker-handle">${drawKnob(pointOf(frame, present), this.controls.focused === 'marker')}</g>`;
  }

  pick(point: Point, reach: number): Handle | null {
    const present = this.drawing.editable() ? this.drawing.present() : null;
    const frame = this.drawing.frame();
    if (!present || !frame) return null;
    const knob = pointOf(frame, present);
    return Math.hypot(knob.x - point.x, knob.y - point.y) <= reach ? 'marker' : null;
  }

  /** Anywhere in the plot; plans an incision where there is none. */
  protected click(point: Point, { altKey }: MouseEvent): void {
    const layout = this.drawing.frame()?.layout;
    if (layout && inPlot(layout, point)) this.choose(siteAt(layout, point.x, altKey), true);
  }

  protected hold(_handle: Handle, { x }: Point): void {
    this.#offset = xOf(this.drawing.frame()!.layout, this.drawing.present()!.site) - x;
  }

  protected pull(_handle: Handle, { x }: Point, { altKey }: PointerEvent, model: CaseModel): void {
    movesOf(model).move({ incisionSite: siteAt(this.drawing.frame()!.layout, x + this.#offset, altKey) }, SOURCE, this.host);
  }

  sliderRange(): Steppable {
    return { value: this.drawing.present()?.site ?? 0, min: 0, max: 359, period: 360 };
  }

  sliderLabel(): string {
    return this.drawing.language.say(sweepWords)('control');
  }

  sliderText(): string {
    const { eye } = this.drawing.model()!.plan;
    return this.drawing.language.say(sweepWords)('incisionAt', toldSite(this.drawing.present()!, eye, this.drawing.language));
  }

  sliderPatch(_name: Handle, value: number): EyePlan {
    return { incisionSite: site(value) };
  }

  sliderSource(): string {
    return SOURCE;
  }

  protected nameOf(handle: Handle): Handle {
    return handle;
  }

  protected movable(): Handle[] {
    return this.drawing.editable() && this.drawing.present() ? ['marker'] : [];
  }
}
