import { nothing } from 'lit';
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';
import type { Language } from '../language/language.js';
import type { PictureBar } from './picture-bar.js';
import type { PictureSize } from './raster.js';
import { standAlone } from './stand-alone.js';

/** Gives a drawing away: as a file, as pixels, and through a row under it. What few pages ask for is loaded when they do. */
export class PictureController implements ReactiveController {
  #bar: PictureBar | null = null;
  #loading: Promise<void> | null = null;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly language: Language,
  ) {
    host.addController(this);
  }

  hostUpdate(): void {
    this.#bar?.forget();
  }

  /** The drawing as an SVG file. See `standAlone`. */
  file(): string {
    return standAlone(this.host);
  }

  /** The drawing as a PNG. See `raster`. */
  async png(size: PictureSize): Promise<Blob> {
    const file = this.file();
    return (await import('./raster.js')).raster(file, size);
  }

  /** The row, once it has been loaded, where the page wants it. */
  render(wanted: boolean): TemplateResult | typeof nothing {
    if (!wanted) return nothing;
    this.#loading ??= this.#load();
    return this.#bar?.render() ?? nothing;
  }

  async #load(): Promise<void> {
    const { PictureBar } = await import('./picture-bar.js');
    this.#bar = new PictureBar(this.host, this.language, this);
    this.host.requestUpdate();
  }
}
