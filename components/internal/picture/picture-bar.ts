import { html } from 'lit';
import type { ReactiveControllerHost, TemplateResult } from 'lit';
import type { Language, Say } from '../language/language.js';
import { addStyles } from '../restyle.js';
import { pictureBarStyles } from './picture-bar.styles.js';
import { pictureWords } from './picture-words.js';
import type { Pictures } from './pictures.js';

/** A picture that is copied or dragged: as wide as is sharp on a slide. */
const SLIDE = { width: 1600 };

/** A row with a button that copies the drawing, and a link that saves it and can be dragged into a document. */
export class PictureBar {
  /** What has come of the last copying. */
  #said = '';
  /** Address of a PNG of the drawing as it is now, once there is one. */
  #pixels: string | null = null;

  constructor(
    private readonly host: ReactiveControllerHost & HTMLElement,
    private readonly language: Language,
    private readonly picture: Pictures,
  ) {
    addStyles(host, pictureBarStyles);
  }

  /** A PNG that has been made no longer shows the drawing. */
  forget(): void {
    this.#pixels = null;
  }

  render(): TemplateResult {
    const say = this.#say;
    return html`<p class="picture-bar" part="picture-bar" @pointerenter=${this.#prepare}>
      <button type="button" @click=${this.#copy}>${say('copy')}</button>
      <a href="data:," download="${this.host.localName}.svg" draggable="true" @pointerdown=${this.#aim} @focus=${this.#aim} @click=${this.#aim} @dragstart=${this.#give}>${say('save')}</a>
      <span role="status">${this.#said}</span>
    </p>`;
  }

  get #say(): Say<keyof typeof pictureWords.en> {
    return this.language.say(pictureWords);
  }

  /** Called when somebody comes near, so that the PNG is there when it is dragged: a drag cannot wait for it. */
  readonly #prepare = (): void => {
    const reader = new FileReader();
    reader.onload = () => (this.#pixels = String(reader.result));
    // Without a PNG the drag gives the SVG.
    this.picture.png(SLIDE).then((blob) => reader.readAsDataURL(blob), () => undefined);
  };

  readonly #aim = (event: Event): void => {
    this.#prepare();
    (event.currentTarget as HTMLAnchorElement).href = address(this.picture.file());
  };

  readonly #copy = (): void => {
    const say = this.#say;
    const tell = (said: string) => (): void => {
      this.#said = said;
      this.host.requestUpdate();
    };
    // The picture may still be in the making, but the clipboard has to be asked for while the click lasts.
    const asked = async (): Promise<void> => navigator.clipboard.write([new ClipboardItem({ 'image/png': this.picture.png(SLIDE) })]);
    asked().then(tell(say('copied')), tell(say('notCopied')));
  };

  /** Puts the picture into the drag in the forms that programs for slides, mail and files take. */
  readonly #give = ({ dataTransfer }: DragEvent): void => {
    if (!dataTransfer) return;
    const name = this.host.localName;
    const svg = address(this.picture.file());
    const pixels = this.#pixels;
    dataTransfer.effectAllowed = 'copy';
    dataTransfer.setData('text/html', `<img src="${pixels ?? svg}" alt="">`);
    dataTransfer.setData('text/uri-list', pixels ?? svg);
    dataTransfer.setData('DownloadURL', pixels ? `image/png:${name}.png:${pixels}` : `image/svg+xml:${name}.svg:${svg}`);
  };
}

function address(file: string): string {
  return `data:image/svg+xml;charset=utf-8,${encodeURIComponent(file)}`;
}
