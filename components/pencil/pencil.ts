import { html, nothing, svg } from 'lit';
import type { PropertyValues, SVGTemplateResult, TemplateResult } from 'lit';
import { STRONGEST } from '../../core/eye-planned.js';
import { buttonStyles } from '../internal/button-styles.js';
import { AstigDrawing } from '../internal/drawing.js';
import { drawingStyles } from '../internal/drawing-styles.js';
import { decimal, dioptres, millimetres } from '../internal/format.js';
import { px } from '../internal/geometry.js';
import type { Point } from '../internal/geometry.js';
import { Later } from '../internal/later.js';
import { lastOf } from '../internal/last.js';
import { EDGE } from '../internal/layout.js';
import { line } from '../internal/line.js';
import { noticeStyles } from '../internal/notices.js';
import { property } from '../internal/property.js';
import { sourceStyles } from '../internal/source-styles.js';
import { tokens } from '../internal/tokens.js';
import { Glide } from '../internal/glide.js';
import { sharedWords } from '../internal/words.js';
import { cameraOf } from './pencil.camera.js';
import type { Camera } from './pencil.camera.js';
import { controls } from './pencil.controls.js';
import type { Mover } from './pencil.controls.js';
import { drawBundle, screenCorners } from './pencil.drawing.js';
import type { Window } from './pencil.drawing.js';
import { AstigViewEvent } from './pencil.events.js';
import { pencilKey } from './pencil.key.js';
import { placeNames } from './pencil.labels.js';
import type { PlacedName } from './pencil.labels.js';
import { layoutPencil } from './pencil.layout.js';
import type { PencilLayout } from './pencil.layout.js';
import { drawPatch } from './pencil.patch.js';
import { drawRuler } from './pencil.ruler.js';
import { depthOf, openness, roomFor, sceneOf } from './pencil.scene.js';
import type { Scene } from './pencil.scene.js';
import { USUAL, numeric, takeSettings } from './pencil.settings.js';
import type { GivenSettings, Refusal, Settings } from './pencil.settings.js';
import { astigmatismLine, describe, distances, focusText, micrometres, nameOf, namesOf, whyText } from './pencil.speech.js';
import { pencilStyles } from './pencil.styles.js';
import { pencilWords } from './pencil.words.js';

/** Width of the bundle over the room that its lines need, at the ends of what is drawn. */
const WIDER = 1.6;

/** What is on the screen now. */
interface Frame {
  scene: Scene;
  camera: Camera;
  window: Window;
  /** Half the depth that is drawn, mm. */
  depth: number;
  layout: PencilLayout;
  /** How many times widths are drawn larger than depths. */
  stretch: number;
}

/**
 * The bundle of light behind the eye, in depth: the two line foci, the circle of least confusion, the retina, and a screen
 * that can be moved through it and shows the patch of light there. Follows the case while it is changed elsewhere. The
 * bundle can be turned by pointer and keys; neither that nor the screen changes the plan, so `read-only` makes a still of
 * this element alone, and that of the case has no say.
 *
 * @tagname astig-pencil
 * @csspart rays - the rays through the rim of the pupil
 * @csspart steep-fan - the rays in the steep meridian, which meet in the front line
 * @csspart flat-fan - the rays in the flat meridian, which meet in the back line
 * @csspart front-line - the line focus nearer to the cornea
 * @csspart back-line - the line focus further from it
 * @csspart circle - the circle of least confusion
 * @csspart retina - the retina
 * @csspart screen - the screen
 * @csspart screen-handle - moves the screen
 * @csspart dial - the dial round the patch
 * @csspart patch - the patch on the screen, seen from the front
 * @csspart ruler - the depth alone, with the distances of the lines from the retina
 * @csspart controls - sliders and buttons
 * @csspart button - a button that moves the screen
 * @csspart refused - what the page has set and could not be taken
 * @csspart sourced - a figure that opens its source
 * @csspart source - what opens then
 * @cssprop [--astig-size=34rem] - greatest width of the drawing
 * @cssprop --astig-front-line - front line and steep meridian
 * @cssprop --astig-back-line - back line and flat meridian
 * @fires {AstigViewEvent} astig-view - while the user turns the bundle or moves the screen, and once more when it is let go
 */
export class AstigPencil extends AstigDrawing implements GivenSettings {
  static override styles = [tokens, drawingStyles, sourceStyles, noticeStyles, buttonStyles, pencilStyles];

  /** Which cornea is drawn: `after` surgery as expected, or `before`. */
  @property() shows = 'after';
  /** What lies on the retina: `least-blur`, `front-line` or `back-line`. */
  @property({ attribute: 'in-focus' }) inFocus = 'least-blur';
  /** Diameter of the pupil, 1–9 mm. */
  @property({ converter: numeric(3) }) pupil: number | string = 3;
  /** Where the screen stands: `retina`, `front-line`, `circle`, `back-line`, which it follows, or mm behind the retina (< 0 in front of it). */
  @property({ converter: numeric('retina') }) screen: number | string = 'retina';
  /** From where the eye is seen, degrees: 0 from the front, as on the dial; 90 from the side, with the light going to the right. */
  @property({ converter: numeric(60) }) turn: number | string = 60;
  /** From how far above the axis it is seen, degrees, -45 to 45. */
  @property({ converter: numeric(18) }) tilt: number | string = 18;

  readonly #room = new Glide(this);
  readonly #hands = new Later(this, async () => {
    const { PencilHands } = await import('./pencil.hands.js');
    return new PencilHands(this, {
      surface: () => this.renderRoot.querySelector<SVGSVGElement>('.plate > svg'),
      editable: () => !this.readOnly,
      settings: () => this.#settings,
      camera: () => this.#frame?.camera ?? null,
      knob: () => this.#knob(),
      behind: () => this.#frame?.scene.screen.behind ?? 0,
      move: this.#move,
      restore: (settings) => this.#restore(settings),
    });
  });
  readonly #layoutOf = lastOf(layoutPencil);
  readonly #notes = new Later(this, () => import('./pencil.notes.js'));
  #settings: Settings = USUAL;
  #refusals: readonly Refusal[] = [];
  #frame: Frame | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    ({ settings: this.#settings, refusals: this.#refusals } = takeSettings(this, this.#settings));
  }

  protected override render(): TemplateResult {
    const { model, language } = this;
    const say = language.say(pencilWords);
    const shared = language.say(sharedWords);
    if (!model) return html`<p class="quiet">${shared('noCase')}</p>`;
    const { plan, outcome } = model;
    const settings = this.#settings;
    const scene = sceneOf(plan, outcome, settings);
    const refused = this.#refusals.length > 0 ? this.#notes.need()?.refusedNote(this.#refusals, language) : nothing;
    this.#frame = scene && this.#framed(scene);
    if (!this.#frame || !scene) return html`${refused}<p class="quiet">${say('strongest', { most: dioptres(STRONGEST, language.numbers) })}</p>`;
    return html`${refused}<figure class="plate" tabindex="-1" aria-label=${nameOf(plan, settings, language)}>
        <span class="probe"></span>
        ${this.#drawing(this.#frame, describe(plan, settings, scene, language))}
        ${this.readOnly ? nothing : controls(scene, settings, language, this.#move, this.#onFocus)}
        ${pencilKey(scene, language)}
        ${this.#caption(this.#frame)}
        ${this.pictureRow()}
      </figure>
      <p class="quiet">${shared('estimate')}</p>
      ${this.source.render()}`;
  }

  #drawing(frame: Frame, description: string): TemplateResult {
    const { scene, camera, window, layout, depth } = frame;
    const { width, height, halfHeight, font } = layout;
    const hands = this.readOnly ? null : this.#hands.need();
    const names = placeNames(scene, camera, window, layout, namesOf(scene, this.language));
    return html`<svg
      class=${this.readOnly ? nothing : 'turns'}
      role="img"
      aria-label=${description}
      font-size=${px(font.small)}
      viewBox="${px(-width / 2)} ${px(-halfHeight)} ${px(width)} ${px(height)}"
      @pointerdown=${hands?.onPointerDown}
    >
      ${drawBundle(scene, camera, window)}
      ${drawPatch(scene, layout, layout.dial.radius / window.side, (value) => micrometres(value / 1000, this.language))}
      ${drawRuler(scene, layout, depth, (place) => distances(place, this.language))}
      ${names.map(drawName)}
      ${hands?.handle(this.shadowRoot!.activeElement?.matches('.screen:focus-visible') ?? false)}
    </svg>`;
  }

  #caption({ scene, stretch }: Frame): TemplateResult {
    const { language } = this;
    const { numbers } = language;
    const { plan } = this.model!;
    const settings = this.#settings;
    const { shows } = settings;
    const say = language.say(pencilWords);
    const figure = shows === 'after' ? 'after' : plan.backSurface === 'omitted' ? 'before' : 'backSurface';
    return html`<figcaption>
      <p class="quiet">${say(shows === 'after' ? 'astigmatismAfter' : 'astigmatismBefore')} ${this.source.button({ figure }, astigmatismLine(scene, language))}</p>
      <p class="quiet">${whyText(scene, language)}</p>
      <p class="quiet">${say('stretched', { focus: focusText(settings, language), pupil: millimetres(settings.pupil, numbers), times: decimal(stretch, stretch < 9.95 ? 1 : 0, numbers) })} ${this.readOnly ? nothing : html`<span class="hint">${say('dragHint')}</span>`}</p>
      <details @toggle=${() => this.#notes.need()}><summary>${say('modelTitle')}</summary>${this.#notes.part?.modelNote(scene, settings, language)}</details>
    </figcaption>`;
  }

  #framed(scene: Scene): Frame {
    const layout = this.#layout();
    const room = this.#room.towards(roomFor(scene.astigmatism.magnitude, this.#room.goal));
    const depth = depthOf(room);
    const width = (WIDER / 2) * depth * openness(this.#settings.pupil);
    const camera = cameraOf(this.#settings, scene.circle.position, { depth: layout.depth, width: layout.across, half: layout.half, halfHeight: layout.halfHeight - EDGE }, { depth, width });
    return {
      scene,
      camera,
      depth,
      layout,
      window: { from: scene.circle.position - depth, to: scene.circle.position + depth, side: 1.05 * width },
      stretch: layout.across / width / (layout.depth / depth),
    };
  }

  #layout(): PencilLayout {
    const { width, font, family } = this.size;
    return this.#layoutOf({ width, font, family });
  }

  #knob(): Point | null {
    return this.#frame && screenCorners(this.#frame.scene, this.#frame.camera, this.#frame.window.side)[0]!;
  }

  /** The knob shows whether the keyboard is on the slider of the screen. */
  readonly #onFocus = (): void => this.requestUpdate();

  readonly #move: Mover = (name, value, settled) => {
    const moved = { ...this.#settings, [name]: value };
    this.#restore(moved);
    this.dispatchEvent(new AstigViewEvent(moved.turn, moved.tilt, moved.screen, settled, `astig-pencil ${name}`));
  };

  #restore({ turn, tilt, screen }: Settings): void {
    Object.assign(this, { turn, tilt, screen });
    this.#settings = { ...this.#settings, turn, tilt, screen };
  }
}

function drawName({ text, centre: { x, y }, leader }: PlacedName): SVGTemplateResult {
  return svg`${leader && line(leader, 'leader')}<text class="name" x=${px(x)} y=${px(y)} text-anchor="middle" dy="0.35em">${text}</text>`;
}
