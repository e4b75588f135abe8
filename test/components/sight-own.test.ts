import { expect, html, nextFrame } from '@open-wc/testing';
import { Sight, difference, painted } from './sight-support.js';
import { until } from './until.js';

const STRIPES = painted(200, (context) => {
  for (let x = 0; x < 200; x += 40) context.fillRect(x, 0, 20, 100);
}, 100);

/** A picture that says how large it is, without that many pixels in the file. */
const ofSize = (width: number, height: number): string =>
  `data:image/svg+xml,${encodeURIComponent(`<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 100 100" preserveAspectRatio="none"><rect width="50" height="100" fill="#c33"/></svg>`)}`;

const open = (src: string, alt = 'My garden'): Promise<Sight> =>
  Sight.open(html`<astig-sight scene="picture"><img slot="picture" src=${src} alt=${alt} /></astig-sight>`);

/** A loaded image has told the element, and that has drawn it. */
async function settled(sight: Sight): Promise<void> {
  const image = sight.view.querySelector('img')!;
  await until(() => image.complete, 'the image');
  await sight.view.ready;
}

describe('astig-sight: the page’s own picture', () => {
  it('is looked at like a scene, in its own shape', async () => {
    const sight = await open(STRIPES);
    await settled(sight);
    const { width, height } = sight.pixels('before');
    expect([width, height]).to.deep.equal([512, 256]);
    expect(sight.label('before')).to.contain('Own picture: My garden.');
    expect(sight.text('.notes')).to.contain('The picture is 20° wide in your sight.').and.contain('is sent nowhere');
    expect(sight.text('.notes')).to.not.contain('Calculated with');
    const blurred = sight.pixels('before');
    await sight.set({ glasses: true });
    expect(difference(blurred, sight.pixels('before'))).to.be.at.least(50);
    // The right half is white on white ground, the stripes are black and sharp again.
    expect([...sight.pixels('before').data.slice(0, 4)]).to.deep.equal([0, 0, 0, 255]);
  });

  it('may be one of several sources, and loaded late', async () => {
    const sight = await Sight.open(html`<astig-sight scene="picture"><picture slot="picture"><img src=${STRIPES} loading="lazy" alt="" /></picture></astig-sight>`);
    await settled(sight);
    expect(sight.pixels('before').height).to.equal(256);
    expect(sight.label('before')).to.contain(': Own picture. It looks');
  });

  describe('while its image is on its way', () => {
    /** A view that shows the chart, with an image that is not complete before it is told to be. */
    async function held(): Promise<{ sight: Sight; image: HTMLImageElement; come: () => void }> {
      const sight = await Sight.open();
      const image = document.createElement('img');
      image.slot = 'picture';
      image.src = STRIPES;
      await image.decode();
      Object.defineProperty(image, 'complete', { value: false, configurable: true });
      sight.view.append(image);
      const come = (): void => {
        delete (image as { complete?: boolean }).complete;
        image.dispatchEvent(new Event('load'));
      };
      return { sight, image, come };
    }

    /** Whether the pictures are ready after a while. */
    const isReady = (sight: Sight): Promise<boolean> => Promise.race([sight.view.ready.then(() => true), new Promise<boolean>((resolve) => setTimeout(resolve, 300, false))]);

    it('is not ready, and then with its pixels on both sides', async () => {
      const { sight, come } = await held();
      expect(await isReady(sight)).to.equal(true);
      sight.view.scene = 'picture';
      expect(await isReady(sight)).to.equal(false);
      const { ready } = sight.view;
      come();
      await ready;
      for (const side of ['before', 'after'] as const) expect([...sight.pixels(side).data].filter((value, i) => i % 4 === 3 && value !== 255)).to.have.length(0);
      expect(sight.view.toSVG()).to.contain('<image');
    });

    it('keeps nobody waiting who looks at something else, takes it out or leaves', async () => {
      const ends: ((of: Sight, image: HTMLImageElement) => unknown)[] = [({ view }) => (view.scene = 'street'), (_, image) => image.remove(), ({ view }) => view.remove()];
      for (const end of ends) {
        const { sight, image } = await held();
        sight.view.scene = 'picture';
        expect(await isReady(sight)).to.equal(false);
        const { ready } = sight.view;
        end(sight, image);
        await ready;
      }
    });
  });

  it('can be chosen only while there is one', async () => {
    const sight = await Sight.open();
    const scenes = (): string[] => [...sight.root.querySelectorAll<HTMLInputElement>('input[name=scene]')].map(({ value }) => value);
    expect(scenes()).to.deep.equal(['chart', 'reading', 'street', 'shelf']);
    const image = document.createElement('img');
    image.slot = 'picture';
    image.src = STRIPES;
    sight.view.append(image);
    await settled(sight);
    expect(scenes()).to.deep.equal(['chart', 'reading', 'street', 'shelf', 'picture']);
    await sight.click(sight.choice('scene', 'picture'));
    expect(sight.pixels('before').height).to.equal(256);
    image.remove();
    await nextFrame();
    await sight.view.ready;
    expect(sight.text('[part=problem]')).to.equal('The page has given no picture here.');
  });

  it('follows another source, and a wider angle blurs less', async () => {
    const sight = await open(STRIPES);
    await settled(sight);
    const first = sight.pixels('before');
    await sight.set({ pictureAngle: 60 });
    expect(difference(first, sight.pixels('before'))).to.be.at.least(20);
    sight.view.querySelector('img')!.src = painted(64, (context) => context.fillRect(0, 0, 32, 64));
    await nextFrame();
    await settled(sight);
    expect(sight.pixels('before').height).to.equal(512);
  });

  it('refuses an angle in place', async () => {
    const sight = await open(STRIPES);
    await settled(sight);
    await sight.click(sight.find('summary'));
    await sight.fill('pictureAngle', '90');
    expect(sight.text('#pictureAngle-note')).to.equal('Width of the picture in your sight: 90 is refused; allowed is 5 to 60°.');
  });

  it('is scaled down when it is large, and says so', async () => {
    const sight = await open(ofSize(3000, 1500));
    await settled(sight);
    expect(sight.pixels('before').width).to.equal(512);
    expect(sight.text('.notes')).to.contain('Calculated with 512 × 256 of the 3000 × 1500 pixels.');
  });

  it('is refused when it is larger than memory allows', async () => {
    const sight = await open(ofSize(20_000, 20_000));
    await settled(sight);
    expect(sight.text('[part=problem]')).to.equal('This picture is too large: 20000 × 20000 pixels. At most 64000000 can be used.');
  });

  it('is refused when it cannot be read, and the scenes go on working', async () => {
    const sight = await open('data:image/png;base64,AAAA');
    await settled(sight);
    expect(sight.text('[part=problem]')).to.contain('cannot be read');
    expect(sight.root.querySelectorAll('canvas')).to.have.length(0);
    await sight.click(sight.choice('scene', 'chart'));
    expect(sight.root.querySelectorAll('[part=problem]')).to.have.length(0);
    expect(sight.pixels('before').width).to.equal(512);
  });

  it('is refused when it comes from another site', async () => {
    const { port } = location;
    const other = location.hostname === 'localhost' ? '127.0.0.1' : 'localhost';
    const sight = await open(`http://${other}:${port}/node_modules/lit/logo.svg`);
    await settled(sight);
    const shown = sight.text('[part=problem]');
    expect(shown).to.contain('comes from another site');
  });

  it('leaves the page alone: nothing is asked for or stored', async () => {
    const sight = await open(STRIPES);
    await settled(sight);
    const known = performance.getEntriesByType('resource').length;
    await sight.set({ pupil: 5 });
    await sight.set({ inFocus: 'front-line' });
    expect(performance.getEntriesByType('resource')).to.have.length(known);
    expect(localStorage.length + sessionStorage.length).to.equal(0);
  });
});
