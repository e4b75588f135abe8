import { nothing } from 'lit';
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';
import type { Language } from '../language/language.js';
import { Later } from '../later.js';
import type { Waiting } from '../later.js';
import type { PictureBar } from './picture-bar.js';
import type { PictureSize } from './raster.js';
import { standAlone } from './stand-alone.js';

/** Gives a drawing away: as a file, as pixels, and through a row under it. What few pages ask for is loaded when they do. */
export class Pictures implements ReactiveController {
  readonly #bar: Later<PictureBar>;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement & Waiting,
    language: Language,
  ) {
    this.#bar = new Later(host, async () => new (await import('./picture-bar.js')).PictureBar(host, language, this));
    host.addController(this);
  }

  hostUpdate(): void {
    this.#bar.part?.forget();
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

  /** The row, once it has been loaded. */
  row(): TemplateResult | typeof nothing {
    return this.#bar.need()?.render() ?? nothing;
  }
}
