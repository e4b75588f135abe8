import { html, nothing, svg } from 'lit';
import type { SVGTemplateResult, TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { AstigDrawing } from '../internal/drawing.js';
import { drawingStyles } from '../internal/drawing-styles.js';
import { px } from '../internal/geometry.js';
import { Glide } from '../internal/glide.js';
import { labelText } from '../internal/label-text.js';
import type { Say } from '../internal/language/language.js';
import { Later } from '../internal/later.js';
import { property } from '../internal/property.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { sharedWords } from '../internal/words.js';
import { axisSteps, axisTop } from './axis.parts.js';
import { sweepCaption } from './sweep.caption.js';
import { drawAxes, drawMarker, drawNames, drawSweep } from './sweep.drawing.js';
import type { Frame } from './sweep.drawing.js';
import type { Curve, SweepHands } from './sweep.hands.js';
import { sweepKey } from './sweep.key.js';
import { flagLabel } from './sweep.labels.js';
import type { SweepLayout } from './sweep.layout.js';
import { SweepMemory } from './sweep.memory.js';
import { bandAt } from './sweep.parts.js';
import type { Sample, Sweep } from './sweep.parts.js';
import { describeSweep, toldSite } from './sweep.speech.js';
import type { ToldSite, ToldSweep } from './sweep.speech.js';
import { sweepStyles } from './sweep.styles.js';
import { sweepWords } from './sweep.words.js';

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
 * @csspart sourced - a figure that opens its source
 * @csspart source - what opens then
 * @cssprop [--astig-size=44rem] - greatest width of the drawing
 * @fires {AstigInputEvent} astig-input - while the user moves the marker
 * @fires {AstigChangeEvent} astig-change - once when the user lets it go
 */
export class AstigSweep extends AstigDrawing {
  static override styles = [tokens, drawingStyles, sourceStyles, sweepStyles];

  /** Leaves out the band in which half of all eyes like this end. */
  @property({ type: Boolean, attribute: 'hide-spread' }) hideSpread = false;

  readonly #axis = new Glide(this);
  /** What is on the screen now. */
  #frame: Frame | null = null;
  readonly #hands = new Later(this, async () => new (await import('./sweep.hands.js')).SweepHands(this, this.#worked()));
  readonly #memory = new SweepMemory(this.language);

  get #say(): Say<keyof typeof sweepWords.en> {
    return this.language.say(sweepWords);
  }

  protected override render(): TemplateResult {
    const { model, editable, hideSpread, language } = this;
    const source = this.source;
    const say = this.#say;
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    if (model.moves?.asking) return html`<p class="quiet">${say('asking')}</p>`;
    const { plan } = model;
    const sweep = this.#memory.sweep(plan, !hideSpread);
    const told = this.#memory.told(sweep, plan.eye);
    const present = this.#toldPresent();
    const range = present && bandAt(sweep.band, plan.incisionSite!);
    const layout = this.#layout();
    const hands = editable ? this.#hands.need() : null;
    this.#frame = { layout, end: this.#axis.towards(axisTop(sweep, this.#axis.goal)) };
    return html`<figure class="plate" tabindex="-1" aria-label=${say('name', { eye: shared(plan.eye) })}>
        <span class="probe"></span>
        <div class="frame">
          <div class="stage">
            <svg
              role="img"
              aria-label=${describeSweep(told, present, range, language)}
              font-size=${px(layout.font.small)}
              viewBox="0 0 ${px(layout.width)} ${px(layout.height)}"
            >
              ${this.#plot(this.#frame, sweep, told, present)} ${hands?.handle(this.#frame)}
            </svg>
          </div>
        </div>
        ${hands?.sliders()} ${sweepKey({ told, present, hideSpread, language })}
        ${sweepCaption({ plan, source, language, editable, hideSpread })}
        ${hands && !present ? this.#planButton(hands, sweep, told) : nothing} ${this.pictureRow()}
      </figure>
      ${this.source.render()}`;
  }

  #plot(frame: Frame, sweep: Sweep, told: ToldSweep, toldPresent: ToldSite | null): SVGTemplateResult {
    const { layout, end } = frame;
    const { left, right, top, bottom, font } = layout;
    const present = this.#present();
    const flag = present && flagLabel(layout, present, toldPresent!, this.language);
    // While the incision is moved, only what belongs to it is drawn anew.
    const still = [layout, end, sweep, told];
    const steps = (): number[] => axisSteps(end, (bottom - top) / (STEP_ROOM * font.small));
    return svg`${guard(still, () => [drawAxes(frame, steps(), this.language), drawSweep(frame, sweep)])}
      ${present && drawMarker(frame, present)}
      ${guard(still, () => drawNames(frame, sweep, told))}
      ${flag ? svg`<g class="flag">${labelText(flag)}</g>` : nothing}
      ${this.editable ? svg`<rect class="field" x=${px(left)} y=${px(top)} width=${px(right - left)} height=${px(bottom - top)}></rect>` : nothing}`;
  }

  /** Plans an incision where there is none. The button comes with what it needs, so it is never a dead one. */
  #planButton(hands: SweepHands, sweep: Sweep, { plan }: ToldSweep): TemplateResult {
    const { site: incisionSite } = sweep.best[0] ?? sweep.temporal;
    return html`<button type="button" class="plan" @click=${() => hands.choose(incisionSite, false)}>${plan}</button>`;
  }

  /** What the hands see of the drawing: what it is when they look, not what it was when they came. */
  #worked(): Curve {
    return {
      language: this.language,
      model: () => this.model,
      editable: () => this.editable,
      surface: () => this.renderRoot.querySelector<SVGSVGElement>('.stage svg'),
      frame: () => this.#frame,
      present: () => this.#present(),
    };
  }

  /** The incision as planned and what is expected to remain with it. */
  #present(): Sample | null {
    const { plan, outcome } = this.model!;
    return plan.incisionSite === null ? null : { site: plan.incisionSite, remaining: outcome.after.magnitude };
  }

  #toldPresent(): ToldSite | null {
    const present = this.#present();
    return present && toldSite(present, this.model!.plan.eye, this.language);
  }

  #layout(): SweepLayout {
    return this.#memory.layout(this.size, this.model!.plan.eye);
  }
}
