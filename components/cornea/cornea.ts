import { html, nothing, svg } from 'lit';
import type { PropertyValues, SVGTemplateResult, TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { ref, createRef } from 'lit/directives/ref.js';
import { classMap } from 'lit/directives/class-map.js';
import { drawingStyles } from '../internal/drawing-styles.js';
import { DragController } from '../internal/drag-controller.js';
import type { DragTarget } from '../internal/drag-controller.js';
import { direction } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { keyStep, movesNativeSlider } from '../internal/key-step.js';
import { SizeController } from '../internal/size-controller.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { EYE_NAME, NO_CASE } from '../internal/words.js';
import { SLOW, dragPatch, patchOf, steppable } from './cornea.edits.js';
import { corneaKey } from './cornea.key.js';
import { layoutCornea } from './cornea.layout.js';
import type { CorneaLayout } from './cornea.layout.js';
import { handlesOf, nearestHandle } from './cornea.parts.js';
import type { Handle, HandleName } from './cornea.parts.js';
import { drawCornea, drawHandle } from './cornea.drawing.js';
import { clickedHandle } from './cornea.click.js';
import { corneaStyles } from './cornea.styles.js';
import { HANDLE_LABEL, HINT, describe, spokenHandle } from './cornea.words.js';
import { VIEWPOINTS, VIEWPOINT_NAME, viewpointTurn } from './viewpoint.js';
import type { Viewpoint } from './viewpoint.js';

const TAG = 'astig-cornea';

/** In the order of the operation, whatever lies in front in the drawing. */
const TAB_ORDER: readonly HandleName[] = ['incision', 'arc', 'arc-end', 'lens'];

/** What is being dragged: how far the pointer took hold from the handle's own direction, and where it last was, when. */
interface Grip {
  offset: number;
  direction: number;
  time: number;
}

/**
 * The eye from the front: limbus, degree ring, clock hours, steep and flat meridian before, incision, relaxing arcs, lens
 * axis, and the steep meridian of what is left. Everything planned can be moved by pointer and keyboard.
 *
 * @tagname astig-cornea
 * @csspart limbus - the edge of the cornea
 * @csspart ring - ticks and figures of the dial
 * @csspart steep-before - steep meridian as measured
 * @csspart flat-before - flat meridian as measured
 * @csspart steep-after - steep meridian of what is expected to be left
 * @csspart incision - the incision, to scale
 * @csspart arc - a relaxing arc, to scale
 * @csspart lens-axis - the meridian on which the toric lens is placed
 * @csspart incision-handle - moves the incision
 * @csspart arc-handle - moves the arcs
 * @csspart arc-end-handle - sets the length of the arcs
 * @csspart lens-handle - turns the lens
 * @cssprop [--astig-size=34rem] - greatest width of the drawing
 * @fires {AstigInputEvent} astig-input - while the user moves something
 * @fires {AstigChangeEvent} astig-change - once when the user lets it go
 */
export class AstigCornea extends AstigView implements DragTarget<Handle> {
  static override styles = [tokens, drawingStyles, corneaStyles];

  /** From where the eye is seen: `facing`, `above` (surgeon at the head) or `temporal` (surgeon at the side). */
  @property() viewpoint: Viewpoint = 'facing';

  /** The control that has the keyboard's visible focus. */
  @state() private focused: HandleName | null = null;

  private readonly size = new SizeController(this);
  private readonly drag = new DragController<Handle>(this, this);
  private readonly drawing = createRef<SVGSVGElement>();
  private grip: Grip | null = null;
  private dragged = false;
  /** Whether the focus is being set by the pointer: browsers take that for a keyboard's at times. */
  private quietly = false;
  private known: { key: string; layout: CorneaLayout } | null = null;

  surface(): SVGSVGElement | null {
    return this.drawing.value ?? null;
  }

  pick(point: Point, reach: number): Handle | null {
    return this.editable ? nearestHandle(this.handles(), point, reach) : null;
  }

  start(handle: Handle, point: Point): void {
    const at = direction(point);
    this.grip = { offset: at - handle.facing, direction: at, time: performance.now() };
    this.dragged = false;
    this.focusQuietly(handle.name);
    this.requestUpdate();
  }

  move(handle: Handle, point: Point, event: PointerEvent): void {
    const { model, grip } = this;
    if (!model || !grip) return;
    const at = direction(point);
    const time = performance.now();
    const moved = Math.abs(((at - grip.direction + 540) % 360) - 180);
    const slow = moved / Math.max(1, time - grip.time) < SLOW;
    this.grip = { ...grip, direction: at, time };
    this.dragged = true;
    const degrees = at - grip.offset - this.turn;
    model.move(dragPatch(handle, degrees, model.plan, { fine: event.altKey, snap: !event.altKey && !slow }), this.source(handle.name), this);
  }

  end(handle: Handle): void {
    this.grip = null;
    this.model?.commit(this.source(handle.name), this);
    this.requestUpdate();
  }

  cancel(): void {
    this.grip = null;
    this.model?.cancel();
    this.requestUpdate();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.focused = null;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    const control = this.focusedControl();
    if (!control || (this.editable && this.handles().some(({ name }) => name === control))) return;
    // The control that has the focus is about to go, for instance because its step is taken back.
    this.focused = null;
    this.surface()?.parentElement?.focus({ preventScroll: true });
  }

  protected override render(): TemplateResult {
    const { model } = this;
    if (!model) return html`<p class="quiet">${NO_CASE}</p>`;
    const { plan, outcome } = model;
    const layout = this.layout();
    const viewpoint = this.knownViewpoint;
    const handles = this.editable ? this.handles() : [];
    const { half, halfHeight } = layout;
    return html`<figure class="plate" tabindex="-1" aria-label=${`${EYE_NAME[plan.eye]}, ${VIEWPOINT_NAME[viewpoint]}`}>
      <span class="probe"></span>
      <svg
        ${ref(this.drawing)}
        role="img"
        aria-label=${describe(plan, outcome, viewpoint)}
        font-size=${layout.size}
        viewBox="${-half} ${-halfHeight} ${2 * half} ${2 * halfHeight}"
        @pointerdown=${this.drag.onPointerDown}
        @click=${this.onClick}
      >
        ${drawCornea(plan, outcome, layout)} ${handles.map((handle) => this.handle(handle))}
      </svg>
      <div class="visually-hidden" @focusin=${this.onFocus} @focusout=${this.onBlur}>${this.controls(handles)}</div>
      ${corneaKey(plan, outcome)}
      <figcaption class="quiet">${capital(VIEWPOINT_NAME[viewpoint])}. <span class="hint">${handles.length > 0 ? HINT : nothing}</span></figcaption>
    </figure>`;
  }

  private handle(handle: Handle): SVGTemplateResult {
    const held = this.drag.handle;
    const isHeld = held?.name === handle.name && held.side === handle.side;
    return svg`<g class=${classMap({ handle: true, held: isHeld })} part="${handle.name}-handle">${drawHandle(handle, this.layout().scale, this.focused === handle.name)}</g>`;
  }

  /** One slider for each degree of freedom: what the keyboard and assistive technology work on. */
  private controls(handles: readonly Handle[]): TemplateResult[] {
    const { plan } = this.model!;
    return TAB_ORDER.filter((name) => handles.some((handle) => handle.name === name)).map((name) => {
      const { value, min, max } = steppable(name, plan);
      return html`<input
        type="range"
        class=${name}
        aria-label=${HANDLE_LABEL[name]}
        aria-valuetext=${spokenHandle(name, plan)}
        min=${min}
        max=${max}
        step="any"
        .value=${String(value)}
        @keydown=${(event: KeyboardEvent) => this.onKeydown(event, name)}
        @keyup=${() => this.commit(name)}
        @blur=${() => this.commit(name)}
        @input=${(event: Event) => this.onInput(event, name)}
        @change=${() => this.commit(name)}
      />`;
    });
  }

  private onKeydown(event: KeyboardEvent, name: HandleName): void {
    const { model } = this;
    if (!model) return;
    if (event.key === 'Escape' && model.moving) {
      model.cancel();
    } else {
      const value = keyStep(event, steppable(name, model.plan));
      if (value === null) {
        // A shortcut of the page or the browser shall reach it, but not turn the eye on its way.
        if (movesNativeSlider(event.key)) event.preventDefault();
        return;
      }
      this.focused = name;
      model.move(patchOf(name, value), this.source(name), this);
    }
    // Neither the native slider nor a slide deck around it shall act on the same key.
    event.preventDefault();
    event.stopPropagation();
  }

  /** Assistive technology that sets the slider itself. The native event would leak out of the shadow root. */
  private onInput(event: Event, name: HandleName): void {
    event.stopPropagation();
    this.model?.move(patchOf(name, Math.round(Number((event.target as HTMLInputElement).value))), this.source(name), this);
  }

  private commit(name: HandleName): void {
    if (this.drag.handle === null) this.model?.commit(this.source(name), this);
  }

  /** A click on the ring, on the circle of the arcs or on the axis does what dragging does (WCAG 2.5.7). */
  private onClick(event: MouseEvent): void {
    const { model } = this;
    const located = this.editable && !this.dragged && model ? this.drag.locate(event) : null;
    this.dragged = false;
    if (!located || !model) return;
    const reach = 22 * located.perPixel;
    if (nearestHandle(this.handles(), located.point, reach)) return;
    const handle = clickedHandle(located.point, model.plan, this.layout(), this.focusedControl());
    if (!handle) return;
    const degrees = direction(located.point) - this.turn;
    this.focusQuietly(handle.name);
    model.choose(dragPatch(handle, degrees, model.plan, { fine: event.altKey, snap: !event.altKey }), this.source(handle.name), this);
  }

  private onFocus(event: FocusEvent): void {
    const target = event.target as HTMLElement;
    this.focused = !this.quietly && target.matches(':focus-visible') ? (target.className as HandleName) : null;
  }

  /** Gives a control the focus without a ring: the pointer shows well enough where it is. */
  private focusQuietly(name: HandleName): void {
    this.quietly = true;
    this.input(name)?.focus({ preventScroll: true });
    this.quietly = false;
  }

  private onBlur(): void {
    this.focused = null;
  }

  private focusedControl(): HandleName | null {
    const active = this.shadowRoot?.activeElement;
    return active instanceof HTMLInputElement ? (active.className as HandleName) : null;
  }

  private input(name: HandleName): HTMLInputElement | null {
    return this.renderRoot.querySelector(`input.${name}`);
  }

  private handles(): Handle[] {
    return handlesOf(this.model!.plan, this.layout());
  }

  private get knownViewpoint(): Viewpoint {
    return VIEWPOINTS.includes(this.viewpoint) ? this.viewpoint : 'facing';
  }

  private get turn(): number {
    return viewpointTurn(this.knownViewpoint, this.model!.plan.eye);
  }

  private layout(): CorneaLayout {
    const { width, font, family } = this.size;
    const { eye } = this.model!.plan;
    const key = `${width} ${font} ${family} ${this.turn} ${eye}`;
    if (this.known?.key !== key) this.known = { key, layout: layoutCornea({ width, font, family, turn: this.turn, eye, title: EYE_NAME[eye] }) };
    return this.known.layout;
  }

  private source(name: HandleName): string {
    return `${TAG} ${name}-handle`;
  }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
