import { expect, fixture, html } from '@open-wc/testing';
import type { AstigCornea, AstigPencil, AstigSweep, AstigVectors } from '../../components/index.js';
import { screenshot } from '../engine.js';
import { CEDAR, drawn, until } from './support.js';

type Drawing = AstigCornea | AstigVectors | AstigSweep | AstigPencil;
const TAGS = ['astig-cornea', 'astig-vectors', 'astig-sweep', 'astig-pencil'] as const;

/** A drawing without handles at a whole pixel, so that what is compared does not depend on where it stands. */
async function shown(tag: (typeof TAGS)[number], scheme = 'light'): Promise<Drawing> {
  const root = await fixture<HTMLElement>(html`<div></div>`);
  root.setAttribute('style', `position: absolute; inset: 0 auto auto 0; inline-size: 480px; color-scheme: ${scheme}; font: 16px/1.5 sans-serif`);
  root.innerHTML = `<astig-case><${tag} read-only></${tag}></astig-case>`;
  const owner = root.querySelector('astig-case')!;
  owner.plan = CEDAR;
  const drawing = root.querySelector<Drawing>(tag)!;
  await drawn(owner, drawing);
  await new Promise((done) => setTimeout(done, 400));
  return drawing;
}

const svgOf = (drawing: Drawing): SVGSVGElement => drawing.shadowRoot!.querySelector<SVGSVGElement>('.plate svg:is([role=img], [role=group])')!;

/** Pixels of a part of what is seen of the page. */
async function pixels({ left, top, width, height }: DOMRect): Promise<ImageData> {
  const image = new Image();
  image.src = `data:image/png;base64,${await screenshot()}`;
  await image.decode();
  const context = new OffscreenCanvas(image.naturalWidth, image.naturalHeight).getContext('2d')!;
  context.drawImage(image, 0, 0);
  return context.getImageData(left, top, width, height);
}

let marks = 0;

/** Waits until what the page shows now has been painted, on a busy machine late: until a mark of a new colour beside the drawing is seen. */
async function painted(): Promise<void> {
  const colour = [(marks += 1), 200, 90].join(', ');
  const mark = document.createElement('div');
  mark.setAttribute('style', `position: fixed; left: 600px; top: 0; inline-size: 8px; block-size: 8px; background: rgb(${colour})`);
  document.body.append(mark);
  await until(async () => [...(await pixels(new DOMRect(604, 4, 1, 1))).data.slice(0, 3)].join(', ') === colour, 'The page as it is now');
  mark.remove();
}

/**
 * How far a channel may differ, of 255: rims of curves and letters are smoothed a little differently in another document, at
 * single pixels by up to 54. A line or a letter that moves by half a pixel differs by 100 and more.
 */
const RIM = 64;

/** How many pixels differ by more than that. */
function different(a: ImageData, b: ImageData): number {
  expect([b.width, b.height]).to.deep.equal([a.width, a.height]);
  let count = 0;
  for (let i = 0; i < a.data.length; i += 4) {
    if ([0, 1, 2].some((channel) => Math.abs(a.data[i + channel]! - b.data[i + channel]!) > RIM)) count += 1;
  }
  return count;
}

for (const tag of TAGS) {
  describe(`${tag} as a picture`, () => {
    for (const scheme of ['light', 'dark']) {
      it(`looks alone as it does in the page, pixel by pixel: ${scheme}`, async () => {
        const drawing = await shown(tag, scheme);
        // The page paints no ground of its own; the file has that of the element behind it.
        svgOf(drawing).setAttribute('style', 'background: var(--_ground)');
        const file = drawing.toSVG();
        const box = svgOf(drawing).getBoundingClientRect();
        await painted();
        const inPage = await pixels(box);
        // Else the drawing would be compared with itself as long as the frame above it has not been painted.
        drawing.setAttribute('hidden', '');
        await painted();
        const frame = document.createElement('iframe');
        frame.setAttribute('style', `position: fixed; z-index: 9; border: 0; left: ${box.left}px; top: ${box.top}px; width: ${box.width}px; height: ${box.height}px`);
        frame.src = URL.createObjectURL(new Blob([file], { type: 'image/svg+xml' }));
        const loaded = new Promise((done) => (frame.onload = done));
        document.body.append(frame);
        try {
          await loaded;
          // A frame has loaded some time before it is painted.
          const latest = performance.now() + 10_000;
          let alone = await pixels(box);
          while (different(inPage, alone) > 0 && performance.now() < latest) alone = await pixels(box);
          expect(different(inPage, alone)).to.equal(0);
          expect(different(inPage, await pixels(new DOMRect(box.x, box.y + 1, box.width, box.height))), 'the measure sees a pixel').to.be.greaterThan(500);
          expect(new Set(alone.data).size, 'a picture with something in it').to.be.greaterThan(20);
        } finally {
          frame.remove();
        }
      });
    }

    it('stands alone: no class, no custom property, no handle, a title', async () => {
      const drawing = await shown(tag);
      drawing.readOnly = false;
      await drawn(drawing);
      const file = drawing.toSVG();
      expect(file).to.not.match(/class=|part=|var\(|style=|<!--|NaN|undefined/);
      const { documentElement: root } = new DOMParser().parseFromString(file, 'image/svg+xml');
      expect(root.localName).to.equal('svg');
      expect(root.querySelector('title')!.textContent).to.equal(svgOf(drawing).getAttribute('aria-label'));
      expect(root.querySelectorAll('text').length).to.equal(svgOf(drawing).querySelectorAll('text').length);
      drawing.readOnly = true;
      await drawn(drawing);
      expect(drawing.toSVG()).to.equal(file);
    });

    it('makes a PNG of the width that is asked for', async () => {
      const drawing = await shown(tag);
      const blob = await drawing.toPNG({ width: 1000 });
      expect(blob.type).to.equal('image/png');
      const { width, height } = await createImageBitmap(blob);
      const box = svgOf(drawing).getBoundingClientRect();
      expect([width, height]).to.deep.equal([1000, Math.round((1000 * box.height) / box.width)]);
    });

    it('refuses a width out of range, and a drawing that is not there', async () => {
      const drawing = await shown(tag);
      for (const width of [0, -1, 1e9, Number.NaN]) {
        expect(await drawing.toPNG({ width }).catch((error: Error) => error.message)).to.match(/width.*16 to 8192 px|width.*finite/);
      }
      const alone = document.createElement(tag);
      expect(() => alone.toSVG()).to.throw(`${tag}: there is no drawing`);
    });
  });
}
