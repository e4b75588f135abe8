import { nothing } from 'lit';
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';
import type { Language } from '../language/language.js';
import type * as Bar from './picture-bar.js';
import type { PictureSize } from './raster.js';
import { pictureWords } from './picture-words.js';
import { standAlone } from './stand-alone.js';

/** Gives a drawing away: as a file, as pixels, and through a row under it. What few pages ask for is loaded when they do. */
export class PictureController implements ReactiveController {
  private bar: typeof Bar | null = null;
  private said = '';
  private pixels: string | null = null;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly language: Language,
  ) {
    host.addController(this);
  }

  /** A PNG that has been made no longer shows the drawing. */
  hostUpdate(): void {
    this.pixels = null;
  }

  /** The drawing as an SVG file. See `standAlone`. */
  readonly file = (): string => standAlone(this.host);

  /** The drawing as a PNG. See `raster`. */
  async png(size: PictureSize): Promise<Blob> {
    const file = this.file();
    return (await import('./raster.js')).raster(file, size);
  }

  /** The row, once it has been loaded, where the page wants it. */
  render(wanted: boolean): TemplateResult | typeof nothing {
    if (!wanted) return nothing;
    if (!this.bar) void this.load();
    const { said, file, copy, prepare } = this;
    const name = this.host.localName;
    return this.bar?.pictureBar({ say: this.language.say(pictureWords), said, name, file, png: () => this.pixels, prepare, copy }) ?? nothing;
  }

  private async load(): Promise<void> {
    this.bar = await import('./picture-bar.js');
    this.host.requestUpdate();
  }

  private readonly prepare = (): void => {
    const reader = new FileReader();
    reader.onload = () => (this.pixels = String(reader.result));
    // Without a PNG the drag gives the SVG.
    this.png({ width: this.bar!.SLIDE_WIDTH }).then((blob) => reader.readAsDataURL(blob), () => undefined);
  };

  private readonly copy = (): void => {
    const say = this.language.say(pictureWords);
    const tell = (said: string) => (): void => {
      this.said = said;
      this.host.requestUpdate();
    };
    // The picture may still be in the making, but the clipboard has to be asked for while the click lasts.
    const asked = async (): Promise<void> => navigator.clipboard.write([new ClipboardItem({ 'image/png': this.png({ width: this.bar!.SLIDE_WIDTH }) })]);
    asked().then(tell(say('copied')), tell(say('notCopied')));
  };
}
