import { html, nothing, svg } from 'lit';
import type { PropertyValues, SVGTemplateResult, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { ref, createRef } from 'lit/directives/ref.js';
import { classMap } from 'lit/directives/class-map.js';
import type { EyePlan } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import { drawingStyles } from '../internal/drawing-styles.js';
import { DragController, REACH } from '../internal/drag-controller.js';
import type { DragTarget } from '../internal/drag-controller.js';
import { direction } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import type { Steppable } from '../internal/key-step.js';
import { SliderControls } from '../internal/slider-controls.js';
import type { SliderOwner } from '../internal/slider-controls.js';
import { handleStyles } from '../internal/handle-styles.js';
import { PictureController } from '../internal/picture/picture-controller.js';
import type { PictureSize } from '../internal/picture/raster.js';
import { SizeController } from '../internal/size-controller.js';
import { SourceController } from '../internal/source-controller.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { placeWords } from '../internal/place.words.js';
import { AstigView } from '../internal/view.js';
import { sharedWords } from '../internal/words.js';
import { SLOW, dragPatch, patchOf, steppable } from './cornea.edits.js';
import { corneaKey } from './cornea.key.js';
import { layoutCornea } from './cornea.layout.js';
import type { CorneaLayout } from './cornea.layout.js';
import { handlesOf, nearestHandle } from './cornea.parts.js';
import type { Handle, HandleName } from './cornea.parts.js';
import { drawCornea, drawHandle } from './cornea.drawing.js';
import { clickedHandle } from './cornea.click.js';
import { corneaStyles } from './cornea.styles.js';
import { controlName, describe, nameOf, spokenHandle } from './cornea.speech.js';
import { corneaWords } from './cornea.words.js';
import { VIEWPOINTS, viewpointTurn } from './viewpoint.js';
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
 * @csspart steep-spread - sector that holds half of the remaining steep meridians of eyes like this
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
export class AstigCornea extends AstigView implements DragTarget<Handle>, SliderOwner<HandleName> {
  static override styles = [tokens, drawingStyles, sourceStyles, handleStyles, corneaStyles];

  /** From where the eye is seen: `facing`, `above` (surgeon at the head) or `temporal` (surgeon at the side). */
  @property() viewpoint: Viewpoint = 'facing';

  /** Leaves out the sector in which the remaining steep meridian may lie. */
  @property({ type: Boolean, attribute: 'hide-spread' }) hideSpread = false;

  /** Shows a row that copies the drawing as a picture, saves it, or lets it be dragged into a document. */
  @property({ type: Boolean }) pictures = false;

  private readonly size = new SizeController(this);
  private readonly picture = new PictureController(this, this.language);
  private readonly drag = new DragController<Handle>(this, this);
  private readonly sliders = new SliderControls<HandleName>(this, this);
  private readonly drawing = createRef<SVGSVGElement>();
  private readonly source = new SourceController(this, this.language);
  private grip: Grip | null = null;
  private dragged = false;
  private known: { key: string; layout: CorneaLayout } | null = null;

  /**
   * The drawing as an SVG file of its own, without the handles, in the looks that it has now.
   * @throws Error while nothing is drawn, for instance without a case.
   */
  toSVG(): string {
    return this.picture.file();
  }

  /**
   * The same as a PNG, `width` px wide (16–8192).
   * @throws RangeError for a width out of range; Error where nothing is drawn or the page forbids images from `data:`.
   */
  toPNG(size: PictureSize): Promise<Blob> {
    return this.picture.png(size);
  }

  surface(): SVGSVGElement | null {
    return this.drawing.value ?? null;
  }

  pick(point: Point, reach: number): Handle | null {
    // After a touch drag no click follows that would reset this.
    this.dragged = false;
    return this.editable ? nearestHandle(this.handles(), point, reach) : null;
  }

  start(handle: Handle, point: Point): void {
    const at = direction(point);
    this.grip = { offset: at - handle.facing, direction: at, time: performance.now() };
    this.dragged = false;
    this.sliders.focusQuietly(handle.name);
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
    model.move(dragPatch(handle, degrees, model.plan, { fine: event.altKey, snap: !event.altKey && !slow }), this.sliderSource(handle.name), this);
  }

  end(handle: Handle): void {
    this.grip = null;
    this.model?.commit(this.sliderSource(handle.name), this);
    this.requestUpdate();
  }

  cancel(): void {
    this.grip = null;
    this.model?.cancel();
    this.requestUpdate();
  }

  sliderModel(): CaseModel | null {
    return this.model;
  }

  sliderRange(name: HandleName): Steppable {
    return steppable(name, this.model!.plan);
  }

  sliderLabel(name: HandleName): string {
    return controlName(name, this.language);
  }

  sliderText(name: HandleName): string {
    return spokenHandle(name, this.model!.plan, this.language);
  }

  sliderPatch(name: HandleName, value: number): EyePlan {
    return patchOf(name, value);
  }

  sliderSource(name: HandleName): string {
    return `${TAG} ${name}-handle`;
  }

  sliderHeld(): boolean {
    return this.drag.handle !== null;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.sliders.keepFocus(this.movable(), this.surface()?.closest('figure') ?? null);
  }

  protected override render(): TemplateResult {
    const { model, language } = this;
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    const say = language.say(corneaWords);
    const { plan, outcome } = model;
    const layout = this.layout();
    const viewpoint = this.knownViewpoint;
    const handles = this.editable ? this.handles() : [];
    const { half, halfHeight } = layout;
    return html`<figure class="plate" tabindex="-1" aria-label=${nameOf(plan, viewpoint, language)}>
      <span class="probe"></span>
      <svg
        ${ref(this.drawing)}
        role="img"
        aria-label=${describe(plan, outcome, viewpoint, language)}
        font-size=${layout.size}
        viewBox="${-half} ${-halfHeight} ${2 * half} ${2 * halfHeight}"
        @pointerdown=${this.drag.onPointerDown}
        @click=${this.onClick}
      >
        ${drawCornea(plan, outcome, layout, this.hideSpread)} ${handles.map((handle) => this.handle(handle))}
      </svg>
      ${this.sliders.render(this.movable())}
      ${corneaKey(plan, outcome, language)}
      <figcaption class="quiet">${say(`${viewpoint}Caption`)} <span class="hint">${handles.length > 0 ? say('hint') : nothing}</span>
        ${this.hideSpread ? nothing : html`${say('spreadHint')} ${this.source.button({ figure: 'spread' }, shared('source'), shared('sourceOfSpread'))}`}
      </figcaption>
      ${this.picture.render(this.pictures)}
    </figure>
    ${this.source.render()}`;
  }

  private handle(handle: Handle): SVGTemplateResult {
    const held = this.drag.handle;
    const isHeld = held?.name === handle.name && held.side === handle.side;
    return svg`<g class=${classMap({ handle: true, held: isHeld })} part="${handle.name}-handle">${drawHandle(handle, this.layout().scale, this.sliders.focused === handle.name)}</g>`;
  }

  /** A click on the ring, on the circle of the arcs or on the axis does what dragging does (WCAG 2.5.7). */
  private onClick(event: MouseEvent): void {
    const { model } = this;
    const located = this.editable && !this.dragged && model ? this.drag.locate(event) : null;
    this.dragged = false;
    if (!located || !model) return;
    if (nearestHandle(this.handles(), located.point, REACH * located.perPixel)) return;
    const handle = clickedHandle(located.point, model.plan, this.layout(), this.sliders.active());
    if (!handle) return;
    const degrees = direction(located.point) - this.turn;
    this.sliders.focusQuietly(handle.name);
    model.choose(dragPatch(handle, degrees, model.plan, { fine: event.altKey, snap: !event.altKey }), this.sliderSource(handle.name), this);
  }

  /** Names of what can be moved now, in the order of the keyboard. */
  private movable(): HandleName[] {
    const handles = this.editable ? this.handles() : [];
    return TAB_ORDER.filter((name) => handles.some((handle) => handle.name === name));
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
    const title = this.language.say(sharedWords)(eye);
    const place = this.language.say(placeWords);
    const sides = { temporal: place('temporal'), nasal: place('nasal') };
    const key = `${width} ${font} ${family} ${this.turn} ${eye} ${title} ${sides.temporal} ${sides.nasal}`;
    if (this.known?.key !== key) this.known = { key, layout: layoutCornea({ width, font, family, turn: this.turn, eye, title, sides }) };
    return this.known.layout;
  }
}
