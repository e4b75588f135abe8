import { nothing } from 'lit';
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';
import type { Language } from '../language/language.js';
import { Later } from '../later.js';
import type { Waiting } from '../later.js';
import type { PictureBar } from './picture-bar.js';
import type { PictureSize } from './raster.js';

/**
 * Gives a drawing away: as a file, as pixels, and through a row under it. What makes the file follows the first drawing, and
 * belongs to it for who waits for `updateComplete`; what few pages ask for is loaded when they do.
 */
export class PictureController implements ReactiveController {
  readonly #standAlone: Later<(host: HTMLElement) => string>;
  readonly #bar: Later<PictureBar>;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement & Waiting,
    language: Language,
  ) {
    this.#standAlone = new Later(host, async () => (await import('./stand-alone.js')).standAlone);
    this.#bar = new Later(host, async () => new (await import('./picture-bar.js')).PictureBar(host, language, this));
    host.addController(this);
  }

  hostUpdated(): void {
    this.#standAlone.need();
  }

  hostUpdate(): void {
    this.#bar.part?.forget();
  }

  /** The drawing as an SVG file. See `standAlone`. */
  file(): string {
    const { part: standAlone } = this.#standAlone;
    if (!standAlone) throw new Error(`${this.host.localName}: there is no drawing to export yet; wait for updateComplete.`);
    return standAlone(this.host);
  }

  /** The drawing as a PNG. See `raster`. */
  async png(size: PictureSize): Promise<Blob> {
    const file = this.file();
    return (await import('./raster.js')).raster(file, size);
  }

  /** The row, once it has been loaded, where the page wants it. */
  render(wanted: boolean): TemplateResult | typeof nothing {
    return (wanted && this.#bar.need()?.render()) || nothing;
  }
}
