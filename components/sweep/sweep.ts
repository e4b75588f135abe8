import { html, nothing, svg } from 'lit';
import type { PropertyValues, SVGTemplateResult, TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { classMap } from 'lit/directives/class-map.js';
import { guard } from 'lit/directives/guard.js';
import { createRef, ref } from 'lit/directives/ref.js';
import { site } from '../../core/numbers.js';
import type { EyePlan } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import { DragController, REACH } from '../internal/drag-controller.js';
import type { DragTarget } from '../internal/drag-controller.js';
import { drawingStyles } from '../internal/drawing-styles.js';
import { px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import type { Steppable } from '../internal/key-step.js';
import { handleStyles } from '../internal/handle-styles.js';
import { labelText } from '../internal/label-text.js';
import type { Say } from '../internal/language/language.js';
import { PictureController } from '../internal/picture/picture-controller.js';
import type { PictureSize } from '../internal/picture/raster.js';
import { SizeController } from '../internal/size-controller.js';
import { SliderControls } from '../internal/slider-controls.js';
import type { SliderOwner } from '../internal/slider-controls.js';
import { SourceController } from '../internal/source-controller.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { Tween } from '../internal/tween.js';
import { AstigView } from '../internal/view.js';
import { sharedWords } from '../internal/words.js';
import { axisSteps, axisTop } from './axis.parts.js';
import { sweepCaption } from './sweep.caption.js';
import { drawAxes, drawKnob, drawMarker, drawNames, drawSweep, pointOf } from './sweep.drawing.js';
import type { Frame } from './sweep.drawing.js';
import { sweepKey } from './sweep.key.js';
import { flagLabel } from './sweep.labels.js';
import { inPlot, siteAt, xOf } from './sweep.layout.js';
import type { SweepLayout } from './sweep.layout.js';
import { SweepMemory } from './sweep.memory.js';
import { bandAt } from './sweep.parts.js';
import type { Sample, Sweep } from './sweep.parts.js';
import { describeSweep, toldSite } from './sweep.speech.js';
import type { ToldSite, ToldSweep } from './sweep.speech.js';
import { sweepStyles } from './sweep.styles.js';
import { sweepWords } from './sweep.words.js';

/** The one thing that can be moved. */
type Handle = 'marker';

const SOURCE = 'astig-sweep marker';

/** Lines across the plot for one of its height, in heights of text. */
const STEP_ROOM = 2.4;

/**
 * What is expected to remain for every site of the incision all round the limbus, with all else of the plan as it is; the
 * band in which half of all eyes like this end; the best, the temporal and the superior site. The present incision is a
 * marker that can be moved by pointer and keyboard; a click in the plot sets it.
 *
 * @tagname astig-sweep
 * @csspart curve - what is expected to remain, by the site of the incision
 * @csspart band - between the quartiles of what remains in eyes like this
 * @csspart good - the line of 0.50 D
 * @csspart best - the line of the site with the least expected remainder
 * @csspart temporal - line and point of the temporal site
 * @csspart superior - line and point of the superior site
 * @csspart marker - line and point of the present incision
 * @csspart marker-handle - moves the incision
 * @cssprop [--astig-size=44rem] - greatest width of the drawing
 * @fires {AstigInputEvent} astig-input - while the user moves the marker
 * @fires {AstigChangeEvent} astig-change - once when the user lets it go
 */
export class AstigSweep extends AstigView implements DragTarget<Handle>, SliderOwner<Handle> {
  static override styles = [tokens, drawingStyles, sourceStyles, handleStyles, sweepStyles];

  /** Leaves out the band in which half of all eyes like this end. */
  @property({ type: Boolean, attribute: 'hide-spread' }) hideSpread = false;

  /** Shows a row that copies the drawing as a picture, saves it, or lets it be dragged into a document. */
  @property({ type: Boolean }) pictures = false;

  private readonly size = new SizeController(this);
  private readonly picture = new PictureController(this, this.language);
  private readonly drag = new DragController<Handle>(this, this);
  private readonly sliders = new SliderControls<Handle>(this, this);
  private readonly source = new SourceController(this, this.language);
  private readonly axis = new Tween(this);
  private readonly drawing = createRef<SVGSVGElement>();
  private dragged = false;
  /** From the pointer to the line of the marker when it was taken hold of, px. */
  private offset = 0;
  /** What is on the screen now. */
  private frame: Frame | null = null;
  private readonly memory = new SweepMemory(this.language);

  private get say(): Say<keyof typeof sweepWords.en> {
    return this.language.say(sweepWords);
  }

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
    const present = this.editable ? this.present() : null;
    if (!present || !this.frame) return null;
    const knob = pointOf(this.frame, present);
    return Math.hypot(knob.x - point.x, knob.y - point.y) <= reach ? 'marker' : null;
  }

  start(_handle: Handle, { x }: Point): void {
    this.offset = xOf(this.layout(), this.present()!.site) - x;
    this.sliders.focusQuietly('marker');
    this.requestUpdate();
  }

  move(_handle: Handle, { x }: Point, { altKey }: PointerEvent): void {
    this.dragged = true;
    this.model?.move({ incisionSite: siteAt(this.layout(), x + this.offset, altKey) }, SOURCE, this);
  }

  end(): void {
    this.model?.commit(SOURCE, this);
    this.requestUpdate();
  }

  cancel(): void {
    this.model?.cancel();
    this.requestUpdate();
  }

  sliderModel(): CaseModel | null {
    return this.model;
  }

  sliderRange(): Steppable {
    return { value: this.present()?.site ?? 0, min: 0, max: 359, period: 360 };
  }

  sliderLabel(): string {
    return this.say('control');
  }

  sliderText(): string {
    return this.say('incisionAt', this.toldPresent()!);
  }

  sliderPatch(_name: Handle, value: number): EyePlan {
    return { incisionSite: site(value) };
  }

  sliderSource(): string {
    return SOURCE;
  }

  sliderHeld(): boolean {
    return this.drag.handle !== null;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    this.sliders.keepFocus(this.movable(), this.surface()?.closest('figure') ?? null);
  }

  protected override render(): TemplateResult {
    const { model, editable, hideSpread, source, language, say } = this;
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    const { plan } = model;
    const sweep = this.memory.sweep(plan, !hideSpread);
    const told = this.memory.told(sweep, plan.eye);
    const present = this.toldPresent();
    const range = present && bandAt(sweep.band, plan.incisionSite!);
    const layout = this.layout();
    this.frame = { layout, end: this.axis.towards(axisTop(sweep, this.axis.goal)) };
    return html`<figure class="plate" tabindex="-1" aria-label=${say('name', { eye: shared(plan.eye) })}>
        <span class="probe"></span>
        <div class="frame">
          <div class="stage">
            <svg
              ${ref(this.drawing)}
              role="img"
              aria-label=${describeSweep(told, present, range, language)}
              font-size=${px(layout.font.small)}
              viewBox="0 0 ${px(layout.width)} ${px(layout.height)}"
              @pointerdown=${this.onPointerDown}
              @click=${this.onClick}
            >
              ${this.plot(this.frame, sweep, told, present)}
            </svg>
          </div>
        </div>
        ${this.sliders.render(this.movable())} ${sweepKey({ told, present, hideSpread, language })}
        ${sweepCaption({ plan, source, language, editable, hideSpread })}
        ${editable && !present ? this.planButton(sweep, told) : nothing} ${this.picture.render(this.pictures)}
      </figure>
      ${this.source.render()}`;
  }

  private plot(frame: Frame, sweep: Sweep, told: ToldSweep, toldPresent: ToldSite | null): SVGTemplateResult {
    const { layout, end } = frame;
    const { left, right, top, bottom, font } = layout;
    const present = this.present();
    const flag = present && flagLabel(layout, present, toldPresent!, this.language);
    // While the incision is moved, only what belongs to it is drawn anew.
    const still = [layout, end, sweep, told];
    const steps = (): number[] => axisSteps(end, (bottom - top) / (STEP_ROOM * font.small));
    return svg`${guard(still, () => [drawAxes(frame, steps(), this.language), drawSweep(frame, sweep)])}
      ${present && drawMarker(frame, present)}
      ${guard(still, () => drawNames(frame, sweep, told))}
      ${flag ? svg`<g class="flag">${labelText(flag)}</g>` : nothing}
      ${this.editable ? svg`<rect class="field" x=${px(left)} y=${px(top)} width=${px(right - left)} height=${px(bottom - top)}></rect>` : nothing}
      ${present && this.editable ? this.handle(frame, present) : nothing}`;
  }

  private handle(frame: Frame, present: Sample): SVGTemplateResult {
    const held = this.drag.handle !== null;
    return svg`<g class=${classMap({ handle: true, held })} part="marker-handle">${drawKnob(frame, present, this.sliders.focused === 'marker')}</g>`;
  }

  private planButton(sweep: Sweep, { plan }: ToldSweep): TemplateResult {
    const { site: incisionSite } = sweep.best[0] ?? sweep.temporal;
    const focus = (): void => this.renderRoot.querySelector<HTMLElement>('input.marker')?.focus();
    return html`<button type="button" class="plan" @click=${() => this.choose(incisionSite, focus)}>${plan}</button>`;
  }

  private onPointerDown(event: PointerEvent): void {
    this.dragged = false;
    this.drag.onPointerDown(event);
  }

  /** A click in the plot does what dragging does, and plans an incision where there is none (WCAG 2.5.7). */
  private onClick(event: MouseEvent): void {
    const located = this.editable && !this.dragged ? this.drag.locate(event) : null;
    this.dragged = false;
    if (!located || !inPlot(this.layout(), located.point) || this.pick(located.point, REACH * located.perPixel)) return;
    this.choose(siteAt(this.layout(), located.point.x, event.altKey), () => this.sliders.focusQuietly('marker'));
  }

  /** Puts the incision somewhere in one go. Where none was planned, its slider comes with the next rendering. */
  private choose(incisionSite: number, focus: () => void): void {
    this.model?.choose({ incisionSite }, SOURCE, this);
    this.requestUpdate();
    void this.updateComplete.then(focus);
  }

  private movable(): Handle[] {
    return this.editable && this.present() ? ['marker'] : [];
  }

  /** The incision as planned and what is expected to remain with it. */
  private present(): Sample | null {
    const { plan, outcome } = this.model!;
    return plan.incisionSite === null ? null : { site: plan.incisionSite, remaining: outcome.after.magnitude };
  }

  private toldPresent(): ToldSite | null {
    const present = this.present();
    return present && toldSite(present, this.model!.plan.eye, this.language);
  }

  private layout(): SweepLayout {
    return this.memory.layout(this.size, this.model!.plan.eye);
  }
}
