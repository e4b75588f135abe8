import { svg } from 'lit';
import type { ReactiveController, ReactiveControllerHost, SVGTemplateResult, TemplateResult } from 'lit';
import type { EyePlan } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import { movesOf } from '../internal/case-moves.js';
import { DragController, REACH } from '../internal/drag-controller.js';
import type { DragTarget } from '../internal/drag-controller.js';
import { direction } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { handleStyles } from '../internal/handle-styles.js';
import type { Steppable } from '../internal/key-step.js';
import type { Language } from '../internal/language/language.js';
import { addStyles } from '../internal/restyle.js';
import { SliderControls } from '../internal/slider-controls.js';
import type { SliderOwner } from '../internal/slider-controls.js';
import { clickedHandle } from './cornea.click.js';
import { controlName, spokenHandle } from './cornea.controls.js';
import { SLOW, dragPatch, patchOf, steppable } from './cornea.edits.js';
import { drawHandle, handlesOf, nearestHandle } from './cornea.handles.js';
import type { Handle, HandleName } from './cornea.handles.js';
import { corneaHandsStyles } from './cornea.hands.styles.js';
import type { CorneaLayout } from '../internal/dial-layout.js';

/** In the order of the operation, whatever lies in front in the drawing. */
const TAB_ORDER: readonly HandleName[] = ['incision', 'arc', 'arc-end', 'lens'];

/** The drawing that is worked on, as it is at the moment of asking. */
export interface Cornea {
  readonly language: Language;
  model(): CaseModel | null;
  editable(): boolean;
  /** The drawing, once it is there. */
  surface(): SVGSVGElement | null;
  layout(): CorneaLayout;
}

/** What is being dragged: how far the pointer took hold from the handle's own direction, and where it last was, when. */
interface Grip {
  offset: number;
  direction: number;
  time: number;
}

/** What moves the plan in the drawing of the cornea: handles for the pointer, and a slider behind each for the keyboard. */
export class CorneaHands implements ReactiveController, DragTarget<Handle>, SliderOwner<HandleName> {
  readonly #drag: DragController<Handle>;
  readonly #sliders: SliderControls<HandleName>;
  #grip: Grip | null = null;
  #dragged = false;
  /** The drawing whose pointer is listened to. */
  #heard: SVGSVGElement | null = null;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly cornea: Cornea,
  ) {
    this.#drag = new DragController<Handle>(host, this);
    this.#sliders = new SliderControls<HandleName>(host, this);
    host.addController(this);
    addStyles(host, handleStyles);
    addStyles(host, corneaHandsStyles);
  }

  /** The handles, on top of the drawing. */
  handles(): SVGTemplateResult {
    return svg`${this.#handles().map((handle) => this.#handle(handle))}`;
  }

  sliders(): TemplateResult {
    return this.#sliders.render(this.#movable());
  }

  /** Hands the focus on when its control is about to go. */
  hostUpdate(): void {
    this.#sliders.keepFocus(this.#movable(), this.surface()?.closest('figure') ?? null);
  }

  hostUpdated(): void {
    const surface = this.surface();
    if (surface === this.#heard) return;
    this.#heard = surface;
    surface?.addEventListener('pointerdown', this.#drag.onPointerDown);
    surface?.addEventListener('click', this.#onClick);
  }

  /** A click on the ring, on the circle of the arcs or on the axis does what dragging does (WCAG 2.5.7). */
  readonly #onClick = (event: MouseEvent): void => {
    const model = this.cornea.model();
    const located = this.cornea.editable() && !this.#dragged && model ? this.#drag.locate(event) : null;
    this.#dragged = false;
    if (!located || !model) return;
    if (nearestHandle(this.#handles(), located.point, REACH * located.perPixel)) return;
    const layout = this.cornea.layout();
    const handle = clickedHandle(located.point, model.plan, layout, this.#sliders.active());
    if (!handle) return;
    const degrees = direction(located.point) - layout.turn;
    this.#sliders.focusQuietly(handle.name);
    movesOf(model).choose(dragPatch(handle, degrees, model.plan, { fine: event.altKey, snap: !event.altKey }), this.sliderSource(handle.name), this.host);
  };

  surface(): SVGSVGElement | null {
    return this.cornea.surface();
  }

  pick(point: Point, reach: number): Handle | null {
    // After a touch drag no click follows that would reset this.
    this.#dragged = false;
    return nearestHandle(this.#handles(), point, reach);
  }

  start(handle: Handle, point: Point): void {
    const at = direction(point);
    this.#grip = { offset: at - handle.facing, direction: at, time: performance.now() };
    this.#dragged = false;
    this.#sliders.focusQuietly(handle.name);
    this.host.requestUpdate();
  }

  move(handle: Handle, point: Point, event: PointerEvent): void {
    const model = this.cornea.model();
    const grip = this.#grip;
    if (!model || !grip) return;
    const at = direction(point);
    const time = performance.now();
    const moved = Math.abs(((at - grip.direction + 540) % 360) - 180);
    const slow = moved / Math.max(1, time - grip.time) < SLOW;
    this.#grip = { ...grip, direction: at, time };
    this.#dragged = true;
    const degrees = at - grip.offset - this.cornea.layout().turn;
    movesOf(model).move(dragPatch(handle, degrees, model.plan, { fine: event.altKey, snap: !event.altKey && !slow }), this.sliderSource(handle.name), this.host);
  }

  end(handle: Handle): void {
    this.#grip = null;
    this.cornea.model()?.moves?.commit(this.sliderSource(handle.name), this.host);
    this.host.requestUpdate();
  }

  cancel(): void {
    this.#grip = null;
    this.cornea.model()?.moves?.cancel();
    this.host.requestUpdate();
  }

  sliderModel(): CaseModel | null {
    return this.cornea.model();
  }

  sliderRange(name: HandleName): Steppable {
    return steppable(name, this.cornea.model()!.plan);
  }

  sliderLabel(name: HandleName): string {
    return controlName(name, this.cornea.language);
  }

  sliderText(name: HandleName): string {
    return spokenHandle(name, this.cornea.model()!.plan, this.cornea.language);
  }

  sliderPatch(name: HandleName, value: number): EyePlan {
    return patchOf(name, value);
  }

  sliderSource(name: HandleName): string {
    return `astig-cornea ${name}-handle`;
  }

  sliderHeld(): boolean {
    return this.#drag.handle !== null;
  }

  #handle(handle: Handle): SVGTemplateResult {
    const held = this.#drag.handle;
    const isHeld = held?.name === handle.name && held.side === handle.side;
    return svg`<g class=${isHeld ? 'handle held' : 'handle'} part="${handle.name}-handle">${drawHandle(handle, this.cornea.layout().scale, this.#sliders.focused === handle.name)}</g>`;
  }

  /** Names of what can be moved now, in the order of the keyboard. */
  #movable(): HandleName[] {
    const handles = this.#handles();
    return TAB_ORDER.filter((name) => handles.some((handle) => handle.name === name));
  }

  #handles(): Handle[] {
    return this.cornea.editable() ? handlesOf(this.cornea.model()!.plan, this.cornea.layout()) : [];
  }
}
