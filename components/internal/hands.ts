import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';
import type { EyePlan } from '../../core/numbers.js';
import type { CaseModel } from './case-model.js';
import { DragController, REACH } from './drag-controller.js';
import type { DragTarget } from './drag-controller.js';
import type { Point } from './geometry.js';
import { handleStyles } from './handle-styles.js';
import type { Steppable } from './key-step.js';
import type { Language } from './language/language.js';
import { addStyles } from './restyle.js';
import { SliderControls } from './slider-controls.js';
import type { SliderOwner } from './slider-controls.js';

/** A drawing that is worked on: what it is when the hands look, not what it was when they came. */
export interface Worked {
  readonly language: Language;
  model(): CaseModel | null;
  editable(): boolean;
  /** The drawing, once it is there. */
  surface(): SVGSVGElement | null;
}

/**
 * What moves the plan in a drawing: handles for the pointer, and a slider behind each for the keyboard. Listens to the
 * drawing by itself, so that a page on which nobody changes anything has nothing of it.
 */
export abstract class Hands<Handle, Name extends string, Drawing extends Worked> implements ReactiveController, DragTarget<Handle>, SliderOwner<Name> {
  protected readonly drag: DragController<Handle>;
  protected readonly controls: SliderControls<Name>;
  /** Whether the pointer has moved something since it was pressed: the click that follows is then no wish of its own. */
  #dragged = false;
  /** The drawing whose pointer is listened to. */
  #heard: SVGSVGElement | null = null;

  constructor(
    protected readonly host: ReactiveControllerHost & HTMLElement,
    protected readonly drawing: Drawing,
  ) {
    this.drag = new DragController<Handle>(host, this);
    this.controls = new SliderControls<Name>(host, this);
    host.addController(this);
    addStyles(host, handleStyles);
  }

  /** Names of what can be moved now, in the order of the keyboard. */
  protected abstract movable(): Name[];
  protected abstract nameOf(handle: Handle): Name;
  /** The handle has been taken hold of. */
  protected abstract hold(handle: Handle, point: Point): void;
  /** The handle has been moved on. */
  protected abstract pull(handle: Handle, point: Point, event: PointerEvent, model: CaseModel): void;
  /** A click beside all handles, which does what dragging does (WCAG 2.5.7). */
  protected abstract click(point: Point, event: MouseEvent, model: CaseModel): void;

  abstract pick(point: Point, reach: number): Handle | null;
  abstract sliderRange(name: Name): Steppable;
  abstract sliderLabel(name: Name): string;
  abstract sliderText(name: Name): string;
  abstract sliderPatch(name: Name, value: number): EyePlan;
  abstract sliderSource(name: Name): string;

  sliders(): TemplateResult {
    return this.controls.render(this.movable());
  }

  /** Hands the focus on when its control is about to go. */
  hostUpdate(): void {
    this.controls.keepFocus(this.movable(), this.surface()?.closest('figure') ?? null);
  }

  hostUpdated(): void {
    const surface = this.surface();
    if (surface === this.#heard) return;
    this.#heard = surface;
    surface?.addEventListener('pointerdown', this.#onPointerDown);
    surface?.addEventListener('click', this.#onClick);
  }

  readonly #onPointerDown = (event: PointerEvent): void => {
    // After a touch drag no click follows that would reset this.
    this.#dragged = false;
    this.drag.onPointerDown(event);
  };

  readonly #onClick = (event: MouseEvent): void => {
    const model = this.drawing.model();
    const located = this.drawing.editable() && !this.#dragged ? this.drag.locate(event) : null;
    this.#dragged = false;
    if (!located || !model || this.pick(located.point, REACH * located.perPixel) !== null) return;
    this.click(located.point, event, model);
  };

  surface(): SVGSVGElement | null {
    return this.drawing.surface();
  }

  start(handle: Handle, point: Point): void {
    this.hold(handle, point);
    this.controls.focusQuietly(this.nameOf(handle));
    this.host.requestUpdate();
  }

  move(handle: Handle, point: Point, event: PointerEvent): void {
    this.#dragged = true;
    const model = this.drawing.model();
    if (model) this.pull(handle, point, event, model);
  }

  end(handle: Handle): void {
    this.drawing.model()?.moves?.commit(this.sliderSource(this.nameOf(handle)), this.host);
    this.host.requestUpdate();
  }

  cancel(): void {
    this.drawing.model()?.moves?.abandon(this.host);
    this.host.requestUpdate();
  }

  sliderModel(): CaseModel | null {
    return this.drawing.model();
  }

  sliderHeld(): boolean {
    return this.drag.handle !== null;
  }
}
