import { aTimeout, expect, fixture, html } from '@open-wc/testing';
import type { AstigExplain } from '../../components/explain/explain.js';
import { emulate, itInEveryScheme, itWith, sheets } from '../engine.js';
import { explained, explainedIn } from './explain-support.js';
import { drawn, press } from './support.js';
import { systemColours } from './system-colours.js';

const LANGUAGES = ['en', 'es', 'de', 'fr', 'ar', 'zh'];

/** The most that a plan can have, with the longest words for where. */
const FULL = { eye: 'left', steepMeridian: 40, incisionSite: 45, arcSite: 40, arcCount: 2, lensCylinder: 1, lensMeridian: 40 };

/** Inches. */
const PAPER = { A4: { width: 8.27, height: 11.69 }, Letter: { width: 8.5, height: 11 } };

const pages = (paper: { width: number; height: number }): Promise<number> => sheets({ ...paper, margin: 0.4 });

describe('astig-explain on paper', () => {
  before(() => document.body.setAttribute('style', 'margin: 0; font-family: sans-serif'));
  after(() => document.body.removeAttribute('style'));

  for (const lang of LANGUAGES) {
    itWith('print', `takes two sheets in ${lang}, A4 and Letter`, async () => {
      await explainedIn(lang, FULL);
      expect(await pages(PAPER.A4)).to.equal(2);
      expect(await pages(PAPER.Letter)).to.equal(2);
    });
  }

  itWith('print', 'takes two sheets without a case', async () => {
    await fixture(html`<astig-explain></astig-explain>`);
    expect(await pages(PAPER.A4)).to.equal(2);
  });

  itWith('print', 'has boxes to tick and room to write, and nothing that only a screen can do', async () => {
    const { page } = await explained();
    const shown = (selector: string): number[] => [...page.shadowRoot!.querySelectorAll(selector)].map((element) => element.getClientRects().length);
    expect(shown('.own')).to.deep.equal([0]);
    await emulate({ media: 'print' });
    const own = page.shadowRoot!.querySelector('.own')!.getBoundingClientRect().height;
    const [boxes, asks] = [shown('input'), shown('.ask, .how')];
    await emulate({});
    expect(own).to.be.above(60);
    expect(boxes).to.deep.equal(Array(7).fill(1));
    expect(asks.every((count) => count === 0)).to.equal(true);
  });
});

describe('astig-explain for everybody', () => {
  afterEach(() => emulate({}));

  itInEveryScheme('has no fault that axe can find', async () => {
    const { page } = await explained(FULL);
    await expect(page).to.be.accessible();
  });

  it('has none in Arabic, without a case, and with a refused value', async () => {
    await expect((await explainedIn('ar')).page).to.be.accessible();
    await expect(await fixture<AstigExplain>(html`<astig-explain></astig-explain>`)).to.be.accessible();
    const { eye, page } = await explained();
    eye.setAttribute('arc-length', 'long');
    await drawn(page);
    await expect(page).to.be.accessible();
  });

  it('can be gone through by keys alone, in the order in which it is read', async () => {
    const { page } = await explained();
    const root = page.shadowRoot!;
    const controls = [...root.querySelectorAll<HTMLElement>('.page button, .page input')];
    controls[0]!.focus();
    const reached = [0];
    for (let step = 1; step < controls.length; step += 1) {
      await press('Tab');
      reached.push(controls.indexOf(root.activeElement as HTMLElement));
    }
    expect(reached).to.deep.equal(controls.map((_, index) => index));
    const box = root.querySelector('input')!;
    box.focus();
    await press(' ');
    expect(box.checked).to.equal(true);
  });

  it('is one region with a name, and its pictures are not read aloud', async () => {
    const { page } = await explained();
    const root = page.shadowRoot!;
    expect(root.querySelectorAll('section')).to.have.length(1);
    expect(root.querySelector('section')!.getAttribute('aria-label')).to.equal('Your eye and its shape');
    expect(root.querySelectorAll('svg:not([aria-hidden="true"])')).to.have.length(0);
  });

  it('gives every control 44 px of height', async () => {
    const { page } = await explained();
    for (const target of page.shadowRoot!.querySelectorAll('.page label, .page button')) expect(target.getBoundingClientRect().height, target.textContent).to.be.at.least(44);
  });

  for (const lang of LANGUAGES) {
    it(`fits a phone of 360 px, and with text at 200 %, in ${lang}`, async () => {
      const { page } = await explainedIn(lang, FULL);
      const root = page.parentElement!.parentElement!;
      for (const size of ['16px', '32px']) {
        root.setAttribute('style', `inline-size: 328px; font: ${size} sans-serif`);
        await aTimeout(50);
        const { left, right } = root.getBoundingClientRect();
        const outside = [...page.shadowRoot!.querySelectorAll('.page *')]
          .filter((element) => element.getClientRects().length > 0)
          .filter((element) => element.getBoundingClientRect().right > right + 1 || element.getBoundingClientRect().left < left - 1);
        expect(outside.map(({ localName, className }) => `${localName} ${String(className)}`), size).to.deep.equal([]);
        expect(page.scrollWidth, size).to.be.at.most(page.clientWidth + 1);
      }
    });
  }

  itWith('forced colours', 'shows its pictures in forced colours with the colours of the system only', async () => {
    await emulate({ 'forced-colors': 'active' });
    const { page } = await explained(FULL);
    const system = systemColours();
    for (const shape of page.shadowRoot!.querySelectorAll(':is(.picture, .sign, .dots) :is(path, circle, rect)')) {
      const { fill, stroke } = getComputedStyle(shape);
      for (const colour of [fill, stroke]) if (colour !== 'none') expect(system, shape.outerHTML).to.include(colour);
    }
  });
});
