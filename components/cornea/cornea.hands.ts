import { svg } from 'lit';
import type { ReactiveControllerHost, SVGTemplateResult } from 'lit';
import type { EyePlan } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import { movesOf } from '../internal/case-moves.js';
import type { CorneaLayout } from '../internal/dial-layout.js';
import { direction } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { Hands } from '../internal/hands.js';
import type { Worked } from '../internal/hands.js';
import type { Steppable } from '../internal/key-step.js';
import { addStyles } from '../internal/restyle.js';
import { clickedHandle } from './cornea.click.js';
import { controlName, spokenHandle } from './cornea.controls.js';
import { SLOW, dragPatch, patchOf, steppable } from './cornea.edits.js';
import { drawHandle, handlesOf, nearestHandle } from './cornea.handles.js';
import type { Handle, HandleName } from './cornea.handles.js';
import { corneaHandsStyles } from './cornea.hands.styles.js';

/** In the order of the operation, whatever lies in front in the drawing. */
const TAB_ORDER: readonly HandleName[] = ['incision', 'arc', 'arc-end', 'lens'];

/** The drawing of the cornea with its measures. */
export interface Cornea extends Worked {
  layout(): CorneaLayout;
}

/** What is being dragged: how far the pointer took hold from the handle's own direction, and where it last was, when. */
interface Grip {
  offset: number;
  direction: number;
  time: number;
}

/** What moves the plan in the drawing of the cornea. */
export class CorneaHands extends Hands<Handle, HandleName, Cornea> {
  #grip: Grip | null = null;

  constructor(host: ReactiveControllerHost & HTMLElement, cornea: Cornea) {
    super(host, cornea);
    addStyles(host, corneaHandsStyles);
  }

  /** The handles, on top of the drawing. */
  handles(): SVGTemplateResult {
    return svg`${this.#handles().map((handle) => this.#handle(handle))}`;
  }

  pick(point: Point, reach: number): Handle | null {
    return nearestHandle(this.#handles(), point, reach);
  }

  /** On the ring, on the circle of the arcs, or on the axis. */
  protected click(point: Point, { altKey }: MouseEvent, model: CaseModel): void {
    const layout = this.drawing.layout();
    const handle = clickedHandle(point, model.plan, layout, this.controls.active());
    if (!handle) return;
    const degrees = direction(point) - layout.turn;
    this.controls.focusQuietly(handle.name);
    movesOf(model).choose(dragPatch(handle, degrees, model.plan, { fine: altKey, snap: !altKey }), this.sliderSource(handle.name), this.host);
  }

  protected hold({ facing }: Handle, point: Point): void {
    const at = direction(point);
    this.#grip = { offset: at - facing, direction: at, time: performance.now() };
  }

  protected pull(handle: Handle, point: Point, { altKey }: PointerEvent, model: CaseModel): void {
    const grip = this.#grip!;
    const at = direction(point);
    const time = performance.now();
    const moved = Math.abs(((at - grip.direction + 540) % 360) - 180);
    const slow = moved / Math.max(1, time - grip.time) < SLOW;
    this.#grip = { ...grip, direction: at, time };
    const degrees = at - grip.offset - this.drawing.layout().turn;
    movesOf(model).move(dragPatch(handle, degrees, model.plan, { fine: altKey, snap: !altKey && !slow }), this.sliderSource(handle.name), this.host);
  }

  sliderRange(name: HandleName): Steppable {
    return steppable(name, this.drawing.model()!.plan);
  }

  sliderLabel(name: HandleName): string {
    return controlName(name, this.drawing.language);
  }

  sliderText(name: HandleName): string {
    return spokenHandle(name, this.drawing.model()!.plan, this.drawing.language);
  }

  sliderPatch(name: HandleName, value: number): EyePlan {
    return patchOf(name, value);
  }

  sliderSource(name: HandleName): string {
    return `astig-cornea ${name}-handle`;
  }

  protected nameOf({ name }: Handle): HandleName {
    return name;
  }

  protected movable(): HandleName[] {
    const handles = this.#handles();
    return TAB_ORDER.filter((name) => handles.some((handle) => handle.name === name));
  }

  #handle(handle: Handle): SVGTemplateResult {
    const held = this.drag.handle;
    const isHeld = held?.name === handle.name && held.side === handle.side;
    return svg`<g class=${isHeld ? 'handle held' : 'handle'} part="${handle.name}-handle">${drawHandle(handle, this.drawing.layout().scale, this.controls.focused === handle.name)}</g>`;
  }

  #handles(): Handle[] {
    return this.drawing.editable() ? handlesOf(this.drawing.model()!.plan, this.drawing.layout()) : [];
  }
}
