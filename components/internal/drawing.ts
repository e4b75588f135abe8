import type { PropertyValues, TemplateResult, nothing } from 'lit';
import { Later } from './later.js';
import type { Pictures } from './picture/pictures.js';
import type { PictureSize } from './picture/raster.js';
import { property } from './property.js';
import { SizeController } from './size-controller.js';
import { SourceController } from './source-controller.js';
import { AstigView } from './view.js';

/** What every view has in common that is one drawing in its own size, with figures that can be asked where they are from. */
export abstract class AstigDrawing extends AstigView {
  /** Shows a row that copies the drawing as a picture, saves it, or lets it be dragged into a document. */
  @property({ type: Boolean }) pictures = false;

  protected readonly size = new SizeController(this, this.language);
  protected readonly source = new SourceController(this, this.language);

  /** Gives the drawing away. Follows the first drawing, and belongs to it for who waits for `updateComplete`. */
  readonly #pictures = new Later(this, async () => new (await import('./picture/pictures.js')).Pictures(this, this.language));

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    this.#pictures.need();
  }

  /** The row that gives the drawing away, where the page wants it and once it has been loaded. */
  protected pictureRow(): TemplateResult | typeof nothing | undefined {
    return this.pictures ? this.#pictures.part?.row() : undefined;
  }

  /**
   * The drawing as an SVG file of its own, without the handles, in the looks that it has now.
   * @throws Error while nothing is drawn, for instance without a case.
   */
  toSVG(): string {
    return this.#giver.file();
  }

  /**
   * The same as a PNG, `width` px wide (16–8192).
   * @throws RangeError for a width out of range; Error where nothing is drawn or the page forbids images from `data:`.
   */
  async toPNG(size: PictureSize): Promise<Blob> {
    return this.#giver.png(size);
  }

  get #giver(): Pictures {
    const { part } = this.#pictures;
    if (!part) throw new Error(`${this.localName}: there is no drawing to export yet; wait for updateComplete.`);
    return part;
  }
}
