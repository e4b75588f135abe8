import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { Say } from '../language/catalogue.js';
import type { pictureWords } from './picture-words.js';

/** Width of a picture that is copied or dragged, px: sharp on a slide. */
export const SLIDE_WIDTH = 1600;

/** What the row needs to know, and what it calls. */
export interface PictureBar {
  say: Say<keyof typeof pictureWords.en>;
  /** What has come of the last copying. */
  said: string;
  /** File name without its ending. */
  name: string;
  /** The drawing as SVG, and as the address of a PNG once there is one. */
  file(): string;
  png(): string | null;
  /** Called when somebody comes near, so that the PNG is there when it is dragged: a drag cannot wait for it. */
  prepare(): void;
  copy(): void;
}

/** A row with a button that copies the drawing, and a link that saves it and can be dragged into a document. */
export function pictureBar(bar: PictureBar): TemplateResult {
  const { say, said, name } = bar;
  const aim = (event: Event): void => {
    bar.prepare();
    (event.currentTarget as HTMLAnchorElement).href = address(bar.file());
  };
  return html`<p class="picture-bar" part="picture-bar" @pointerenter=${bar.prepare}>
    <button type="button" @click=${bar.copy}>${say('copy')}</button>
    <a href="data:," download="${name}.svg" draggable="true" @pointerdown=${aim} @focus=${aim} @click=${aim} @dragstart=${(event: DragEvent) => give(event, bar)}>${say('save')}</a>
    <span role="status">${said}</span>
  </p>`;
}

/** Puts the picture into the drag in the forms that programs for slides, mail and files take. */
function give({ dataTransfer }: DragEvent, { name, file, png }: PictureBar): void {
  if (!dataTransfer) return;
  const svg = address(file());
  const pixels = png();
  dataTransfer.effectAllowed = 'copy';
  dataTransfer.setData('text/html', `<img src="${pixels ?? svg}" alt="">`);
  dataTransfer.setData('text/uri-list', pixels ?? svg);
  dataTransfer.setData('DownloadURL', pixels ? `image/png:${name}.png:${pixels}` : `image/svg+xml:${name}.svg:${svg}`);
}

function address(file: string): string {
  return `data:image/svg+xml;charset=utf-8,${encodeURIComponent(file)}`;
}
