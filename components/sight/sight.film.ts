import { nothing } from 'lit';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { Astigmatism } from '../../core/numbers.js';
import type { BlurOptions, Picture } from '../../core/sight.js';
import { directionOf } from '../internal/language/direction.js';
import type { Language } from '../internal/language/language.js';
import { drawingOf, pictureOf } from './scenes/scenes.js';
import type { Reader } from './scenes/scenes.js';
import type { Drawing } from './scenes/shapes.js';
import { vectorScene } from './scenes/vector.js';
import { Darkroom } from './sight.darkroom.js';
import type { Side } from './sight.optics.js';
import { notes } from './sight.notes.js';
import { imageIn, readImage, unreadable } from './sight.own.js';
import type { OwnPicture } from './sight.own.js';
import { ownNotes, ownProblem } from './sight.own.speech.js';
import type { DrawnScene, SceneName } from './sight.scenes.js';
import type { Settings } from './sight.settings.js';
import { sheet } from './sight.sheet.js';

/** What is looked at, sharp and blurred: the scenes, and the page's own picture. Loaded when the first is to be seen. */
export class Film implements ReactiveController {
  private own: OwnPicture = { state: 'missing' };
  private readonly darkroom: Darkroom;
  private undrawable = false;
  private reading: Promise<void> | null = null;
  private family = { of: '', is: '' };

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly language: Language,
  ) {
    this.darkroom = new Darkroom(host);
    host.addController(this);
  }

  hostConnected(): void {
    this.look();
  }

  /** Whether the page has put in a picture of its own. */
  get hasPicture(): boolean {
    return this.own.state !== 'missing';
  }

  /** What the page says of it. */
  get name(): string {
    return this.own.state === 'ready' ? this.own.name : '';
  }

  /** Why a scene cannot be shown, in words; empty when it can. */
  problem(scene: SceneName): string {
    return scene === 'picture' ? ownProblem(this.own, this.language) : '';
  }

  /** What the pictures stand for and what they leave out, a paragraph each. */
  notes(settings: Settings, degrees: number, backSurface: boolean): string[] {
    const own = settings.scene === 'picture' ? ownNotes(this.own, this.language) : [];
    return notes({ settings, degrees, backSurface, own }, this.language);
  }

  /** Whether scenes cannot be drawn or blurred. */
  get failed(): boolean {
    return this.undrawable || this.darkroom.failed;
  }

  /** Resolves when what was asked for is shown, or cannot be. */
  async settled(): Promise<void> {
    let reading: Promise<void> | null;
    do {
      reading = this.reading;
      await reading;
      await this.host.updateComplete;
      await this.darkroom.settled();
      // Meanwhile the page may have put in another image, or this one may have come after all.
    } while (reading !== this.reading);
  }

  /** Shows a scene as it looks with an error in focus on either side. */
  show(scene: SceneName, options: Record<Side, BlurOptions>): void {
    const picture = this.picture(scene);
    if (picture) this.darkroom.show(picture, options);
    else if (scene === 'picture' && this.own.state === 'loading') this.darkroom.expect();
    else this.darkroom.clear();
  }

  /**
   * Both pictures as they are now, in one file.
   * @throws Error while there are none.
   */
  file(cornea: Record<Side, Astigmatism>): string {
    const { shown } = this.darkroom;
    if (!shown) throw new Error('There are no pictures yet.');
    return sheet(shown, cornea, getComputedStyle(this.host).fontFamily, this.language);
  }

  /** Shows nothing. */
  clear(): void {
    this.darkroom.clear();
  }

  /** A scene as a small SVG, drawn once. */
  thumb(scene: SceneName): unknown {
    const drawing = this.drawing(scene);
    return drawing ? guard([drawing], () => this.vector(scene)) : nothing;
  }

  /** A scene as SVG; `label` says what it shows. */
  vector(scene: SceneName, label?: string): unknown {
    const drawing = this.drawing(scene);
    return drawing ? vectorScene(drawing, `${scene}${label ? '-large' : ''}`, directionOf(this.language.lang) === 'rtl', label) : nothing;
  }

  /** The image in the slot may be another one, or have come meanwhile. */
  look(): void {
    this.reading = this.read();
  }

  private picture(scene: SceneName): Picture | null {
    if (scene === 'picture') return this.own.state === 'ready' ? this.own.picture : null;
    if (this.undrawable) return null;
    try {
      return pictureOf(scene, this.reader(scene));
    } catch {
      // A browser without a canvas will not get one.
      this.undrawable = true;
      this.host.requestUpdate();
      return null;
    }
  }

  /** The card is measured on a canvas too, so it may not be had; the other scenes always are. */
  private drawing(scene: SceneName): Drawing | null {
    if (scene === 'picture') return null;
    try {
      return drawingOf(scene, this.reader(scene));
    } catch {
      return null;
    }
  }

  /** To ask for the typeface holds up a page that is being changed, so it is asked for when the language is another. */
  private reader(scene: DrawnScene): Reader {
    const { language } = this;
    if (scene === 'reading' && this.family.of !== language.tag) this.family = { of: language.tag, is: getComputedStyle(this.host).fontFamily };
    return { language, family: this.family.is };
  }

  private async read(): Promise<void> {
    const slot = this.host.shadowRoot?.querySelector('slot');
    const image = slot ? imageIn(slot) : null;
    const now = unreadable(image);
    const pending: OwnPicture = now ?? { state: 'loading' };
    this.take(pending);
    if (now) return;
    const own = await readImage(image!);
    // Another picture may have been put in meanwhile.
    if (this.own === pending) this.take(own);
  }

  private take(own: OwnPicture): void {
    this.own = own;
    this.host.requestUpdate();
  }
}
