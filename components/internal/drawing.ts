import { PictureController } from './picture/picture-controller.js';
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
  protected readonly picture = new PictureController(this, this.language);
  protected readonly source = new SourceController(this, this.language);

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
}
