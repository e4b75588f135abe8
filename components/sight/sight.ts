import { html, nothing } from 'lit';
import type { PropertyValues, TemplateResult } from 'lit';
import type { Astigmatism } from '../../core/numbers.js';
import type { BlurOptions } from '../../core/sight.js';
import { SIGHT_LIMITS } from '../../core/sight-limits.js';
import { buttonStyles } from '../internal/button-styles.js';
import { controlStyles } from '../internal/control-styles.js';
import { dioptres } from '../internal/format.js';
import type { PictureSize } from '../internal/picture/raster.js';
import { property, state } from '../internal/property.js';
import { SourceController } from '../internal/source-controller.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { AstigView } from '../internal/view.js';
import { sharedWords } from '../internal/words.js';
import type { Film } from './sight.film.js';
import { choices, details } from './sight.form.js';
import type { FormState } from './sight.form.js';
import { Inputs } from './sight.inputs.js';
import { corneaBefore, focusError } from './sight.optics.js';
import type { Side } from './sight.optics.js';
import { SIDE, sceneDegrees } from './sight.scenes.js';
import { USUAL, isNumberSetting, numberConverter, takeSettings } from './sight.settings.js';
import type { GivenSettings, TakenSettings } from './sight.settings.js';
import { refusalWordsOf, sceneWords } from './sight.speech.js';
import { picturesStyles } from './sight.pictures.styles.js';
import { stage } from './sight.stage.js';
import { sightStyles } from './sight.styles.js';
import { sightWords } from './sight.words.js';

/** Settings that decide which pictures are made. */
const SETTINGS = ['scene', 'view', 'inFocus', 'acuity', 'distance', 'pupil', 'pictureAngle', 'glasses'] as const satisfies readonly (keyof GivenSettings)[];

const SHARP: Astigmatism = { magnitude: 0, meridian: 180 };

/** A share of the width, per cent; what is none stands in the middle. */
const shareConverter = { fromAttribute: (text: string | null): number => (text === null || !(Number(text) >= 0 && Number(text) <= 100) ? 50 : Number(text)) };

/**
 * What letters and a scene may look like to this eye before and after surgery: a simulation of the blur from the
 * astigmatism of the cornea alone, with the circle of least blur on the retina unless told otherwise. Follows the case
 * while it is changed elsewhere. What the user sets here changes the properties and fires no event. All is calculated in
 * the page; a picture of the page's own never leaves it.
 *
 * @tagname astig-sight
 * @slot picture - an `img` of the page's own to look at, of the same origin or a data: address
 * @csspart choices - the controls for scene, view and glasses
 * @csspart more - what opens the controls for distance, pupil and focus
 * @csspart pictures - both pictures with what is said of them
 * @csspart before - the picture before surgery and its caption
 * @csspart after - the same after surgery
 * @csspart picture - a picture alone
 * @csspart divider - the slider between the pictures
 * @csspart notes - what is simulated and what is left out
 * @csspart problem - why there is no picture
 * @csspart refused - what the page has set and could not be taken
 * @csspart sourced - a figure that opens its source
 * @csspart source - what opens then
 * @cssprop [--astig-size=34rem] - greatest width of one picture
 */
export class AstigSight extends AstigView implements GivenSettings {
  static override styles = [tokens, sourceStyles, buttonStyles, controlStyles, sightStyles, picturesStyles];

  /** What is looked at: `chart`, `reading`, `street`, `shelf`, or `picture` for the one in the slot. */
  @property() scene = 'chart';
  /** `pair` shows both pictures side by side, `divider` one over the other with a divider to slide. */
  @property() view = 'pair';
  /** Distance of the scene, m: chart 3–8, reading card 0.25–1, shelf 1–6; the others have a fixed angle. Null: the usual one. */
  @property({ converter: numberConverter }) distance: number | string | null = null;
  /** Diameter of the pupil, 1–9 mm. Null: 3 by day, 5.5 at dusk. */
  @property({ converter: numberConverter }) pupil: number | string | null = null;
  /** Visual angle of the longer side of the page's own picture, 5–60°. Null: 20. */
  @property({ attribute: 'picture-angle', converter: numberConverter }) pictureAngle: number | string | null = null;
  /** With glasses that correct sphere and cylinder in full. */
  @property({ type: Boolean }) glasses = false;
  /** What lies on the retina: `least-blur`, `front-line` or `back-line`. */
  @property({ attribute: 'in-focus' }) inFocus = 'least-blur';
  /** How acuity is written: `metres` (6/x), `feet` (20/x), `decimal` or `logmar`. Empty: as is usual in the language. */
  @property() acuity = '';
  /** Where the divider stands: per cent of the width that show the picture before. */
  @property({ converter: shareConverter }) divider = 50;
  /** Shows the pictures without controls. */
  @property({ type: Boolean, attribute: 'hide-controls' }) hideControls = false;

  @state() private moreOpen = false;

  /** What draws and blurs; null until it has been loaded, which begins after the first rendering. */
  @state() private film: Film | null = null;
  @state() private filmFailed = false;
  private readonly inputs = new Inputs(this);
  private readonly source = new SourceController(this);
  private loading: Promise<void> | null = null;
  private taken: TakenSettings = { settings: USUAL, refusals: [] };

  /** Resolves when the pictures are those of the eye and the settings as they are, or cannot be made. */
  get ready(): Promise<void> {
    return this.settled();
  }

  /**
   * Both pictures and what is said of them as an SVG file of its own, with their pixels in it. Wait for `ready` first.
   * @throws Error while there are no pictures, for instance without a case.
   */
  toSVG(): string {
    if (!this.film || !this.model) throw new Error('There are no pictures yet.');
    return this.film.file(this.cornea());
  }

  /**
   * The same as a PNG, `width` px wide (16–8192).
   * @throws RangeError for a width out of range; Error where there are no pictures or the page forbids images from `data:`.
   */
  async toPNG(size: PictureSize): Promise<Blob> {
    const file = this.toSVG();
    return (await import('../internal/picture/raster.js')).raster(file, size);
  }

  private async settled(): Promise<void> {
    // What a page has just set on the case arrives here some microtasks later.
    await new Promise((resolve) => setTimeout(resolve));
    await this.updateComplete;
    await this.loading;
    await this.updateComplete;
    await this.film?.settled();
    await this.updateComplete;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (!this.hasUpdated || SETTINGS.some((name) => changed.has(name))) this.taken = takeSettings(this, this.taken);
  }

  protected override updated(): void {
    this.renderRoot.querySelector<HTMLElement>('.pictures')?.style.setProperty('--_cut', `${this.divider}%`);
    this.loading ??= this.load();
    if (!this.model || !this.film) return;
    if (this.problem()) this.film.clear();
    else this.film.show(this.taken.settings.scene, { before: this.options('before'), after: this.options('after') });
  }

  private async load(): Promise<void> {
    try {
      const { Film } = await import('./sight.film.js');
      this.film = new Film(this, this.language);
    } catch {
      this.filmFailed = true;
    }
  }

  protected override render(): TemplateResult {
    const { model, language, taken } = this;
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    const say = language.say(sightWords);
    const inPlace = this.moreOpen && !this.hideControls;
    const refusals = taken.refusals.filter(({ setting }) => !(inPlace && isNumberSetting(setting)));
    return html`<section aria-label=${say(model.plan.eye === 'right' ? 'nameRight' : 'nameLeft')} @input=${this.inputs.onInput} @keydown=${this.inputs.onKeydown}>
        ${model.refusals.length > 0 ? html`<p class="error" part="refused">${say('caseRefused')}</p>` : nothing}
        ${this.hideControls ? nothing : this.controls()}
        ${refusals.length > 0 ? refusedBox(say('refused'), refusals.map((one) => refusalWordsOf(one, language))) : nothing}
        ${this.stage()}
        <div class="notes" part="notes">${this.notes()}</div>
      </section>
      <p class="quiet">${shared('estimate')}</p>
      <div class="visually-hidden" aria-hidden="true"><slot name="picture" @slotchange=${this.onImage.handleEvent} @load=${this.onImage} @error=${this.onImage}></slot></div>
      ${this.source.render()}`;
  }

  private controls(): TemplateResult {
    const form: FormState = {
      given: this,
      taken: this.taken,
      hasPicture: this.film?.hasPicture ?? false,
      typed: this.inputs.typed,
      thumb: (scene) => this.film?.thumb(scene),
      language: this.language,
    };
    return html`<div class="controls" part="choices" @change=${this.inputs.onChange} @focusout=${this.inputs.onFocusout}>
      ${choices(form)}
      <details .open=${this.moreOpen} @toggle=${this.onToggle}>${details(form)}</details>
    </div>`;
  }

  private stage(): TemplateResult {
    const { language, taken, film, divider, source } = this;
    const say = language.say(sightWords);
    const problem = this.problem();
    if (problem || this.failed) return html`<p class="error" part="problem">${problem || say('failed')}</p>${problem ? nothing : this.sharpScene()}`;
    return stage({ settings: taken.settings, cornea: this.cornea(), backSurface: this.backSurface, name: film?.name ?? '', divider, source, language });
  }

  /** Where nothing can be blurred there is one sharp picture, so that nobody takes it for one of the two. */
  private sharpScene(): TemplateResult {
    const { scene } = this.taken.settings;
    return html`<div class="sharp">${this.film?.vector(scene, sceneWords(scene, this.film.name, this.language))}</div>`;
  }

  private notes(): TemplateResult[] {
    const { film, taken, degrees, backSurface } = this;
    if (this.problem() || this.failed) return [];
    return (film?.notes(taken.settings, degrees, backSurface) ?? []).map((sentences) => html`<p>${sentences}</p>`);
  }

  /** Why there are no pictures, in words; empty when there are or will be some. */
  private problem(): string {
    const { model, language } = this;
    if (!model) return '';
    const { max } = SIGHT_LIMITS.cylinder;
    const { before, after } = this.cornea();
    if (Math.max(before.magnitude, after.magnitude) > max) return language.say(sightWords)('strongest', { most: dioptres(max, language.numbers) });
    return this.film?.problem(this.taken.settings.scene) ?? '';
  }

  private get failed(): boolean {
    return this.filmFailed || this.film?.failed === true;
  }

  private get backSurface(): boolean {
    return this.model!.plan.backSurface !== 'omitted';
  }

  /** The astigmatism of the cornea on either side. */
  private cornea(): Record<Side, Astigmatism> {
    const { outcome } = this.model!;
    return { before: corneaBefore(outcome), after: outcome.after };
  }

  /** Visual angle of the whole picture. */
  private get degrees(): number {
    const { scene, distance, pictureAngle } = this.taken.settings;
    return sceneDegrees(scene, distance, pictureAngle);
  }

  private options(side: Side): BlurOptions {
    const { inFocus, pupil, glasses } = this.taken.settings;
    return { refraction: focusError(glasses ? SHARP : this.cornea()[side], inFocus), pupilMm: pupil, degreesPerPixel: this.degrees / SIDE, frame: 'patient' };
  }

  /** An image says when it has come, or not come, only to those above it that listen on the way down. */
  private readonly onImage = { handleEvent: (): void => this.film?.look(), capture: true };

  private readonly onToggle = (event: Event): void => {
    this.moreOpen = (event.currentTarget as HTMLDetailsElement).open;
  };
}

function refusedBox(title: string, sentences: readonly string[]): TemplateResult {
  return html`<div class="error" part="refused">
    <p>${title}</p>
    <ul>
      ${sentences.map((sentence) => html`<li>${sentence}</li>`)}
    </ul>
  </div>`;
}
