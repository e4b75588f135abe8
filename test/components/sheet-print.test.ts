import { expect, fixture, html } from '@open-wc/testing';
import { movesOf } from '../../components/internal/case-moves.js';
import { framed } from '../../components/sheet/sheet.print.js';
import { emulate, itInEveryScheme, itWith, sheets } from '../engine.js';
import { faults } from './label-faults.js';
import { FULL, LANGUAGES, rowsOf, sheetOf, textOf } from './sheet-support.js';
import { drawn, until } from './support.js';

/** Inches. */
const PAPER = { A4: { width: 8.27, height: 11.69 }, Letter: { width: 8.5, height: 11 } };

/** What Firefox leaves when nobody has set another; Chromium leaves less. Inches. */
const MARGIN = 0.5;

const pages = (paper: { width: number; height: number }): Promise<number> => sheets({ ...paper, margin: MARGIN });

/** The longest of everything: a label of three lines, a turn that is unusual, and all that a plan can have. */
const LONGEST = html`<astig-sheet mark-seated="180" mark-lying="187"><div slot="patient">Label of the ward<br>second line 000 000 000<br>third line</div></astig-sheet>`;

describe('astig-sheet on paper', () => {
  before(() => document.body.setAttribute('style', 'margin: 0; font-family: sans-serif'));
  after(() => document.body.removeAttribute('style'));
  afterEach(() => emulate({}));

  for (const lang of LANGUAGES) {
    itWith('print', `takes one page in ${lang}, A4 and Letter, with all that there can be`, async () => {
      const { sheet } = await sheetOf(FULL, LONGEST, lang);
      expect(sheet.shadowRoot!.querySelectorAll('[part~="caution"]')).to.have.length.above(8);
      expect(await pages(PAPER.A4)).to.equal(1);
      expect(await pages(PAPER.Letter)).to.equal(1);
    });

    itWith('print', `takes one page in ${lang} with few cautions, in larger type`, async () => {
      const plan = { ...FULL, steepK: 44.5, risks: '', arcLength: 60, arcDepth: 560, arcZone: 11, incisionSite: 180 };
      const { sheet } = await sheetOf(plan, LONGEST, lang);
      expect(sheet.shadowRoot!.querySelectorAll('[part~="caution"]')).to.have.length.below(5);
      await emulate({ media: 'print' });
      const size = Number.parseFloat(getComputedStyle(sheet.shadowRoot!.querySelector('.sheet')!).fontSize);
      await emulate({});
      // 10 pt
      expect(size).to.be.closeTo(13.33, 0.1);
      expect(await pages(PAPER.A4)).to.equal(1);
      expect(await pages(PAPER.Letter)).to.equal(1);
    });
  }

  for (const view of ['above', 'temporal']) {
    itWith('print', `takes one page seen ${view}`, async () => {
      await sheetOf(FULL, html`<astig-sheet viewpoint=${view} mark-seated="180" mark-lying="187"></astig-sheet>`, 'de');
      expect(await pages(PAPER.Letter)).to.equal(1);
    });
  }

  itWith('print', 'gives each of two eyes a page of its own, also where one must not be used', async () => {
    const both = (one: object, two: object): Promise<HTMLElement> =>
      fixture(html`<div><astig-case .plan=${one}><astig-sheet></astig-sheet></astig-case><astig-case .plan=${two}><astig-sheet></astig-sheet></astig-case></div>`);
    const root = await both({ eye: 'right', incisionSite: 180 }, { eye: 'left', incisionSite: 0 });
    await drawn(...root.querySelectorAll('astig-sheet'));
    expect(await pages(PAPER.A4)).to.equal(2);
    root.remove();
    const nothing = await both({}, {});
    await drawn(...nothing.querySelectorAll('astig-sheet'));
    expect(await pages(PAPER.A4)).to.equal(2);
  });

  itWith('print', 'says “do not use” on one page', async () => {
    await fixture(html`<astig-sheet></astig-sheet>`);
    expect(await pages(PAPER.A4)).to.equal(1);
  });

  itWith('print', 'has no button on paper, and its drawing is large', async () => {
    const { sheet } = await sheetOf(FULL, LONGEST);
    await emulate({ media: 'print' });
    const buttons = [...sheet.shadowRoot!.querySelectorAll('button')].map((button) => button.getClientRects().length);
    const { width } = sheet.shadowRoot!.querySelector('[part~="drawing"]')!.getBoundingClientRect();
    const page = sheet.getBoundingClientRect().width;
    await emulate({});
    expect(buttons).to.deep.equal([0]);
    expect(width / page).to.be.above(0.4);
  });
});

describe('astig-sheet at the moment of printing', () => {
  const tell = (type: 'beforeprint' | 'afterprint'): boolean => window.dispatchEvent(new Event(type));

  it('shows what was set in the same breath', async () => {
    const { eye, sheet } = await sheetOf();
    eye.eye = 'left';
    eye.incisionSite = 0;
    // Nothing has been drawn anew yet.
    expect(textOf(sheet, 'side')).to.equal('Right eye');
    tell('beforeprint');
    expect(textOf(sheet, 'side')).to.equal('Left eye');
    expect(rowsOf(sheet)[0]![1]).to.equal('0°');
    eye.steepK = 99;
    tell('beforeprint');
    expect(textOf(sheet, 'void')).to.match(/^Do not use/);
    tell('afterprint');
  });

  it('must not be used while something is being moved', async () => {
    const { eye, sheet } = await sheetOf();
    movesOf(eye.model).move({ incisionSite: 170 }, 'test', null);
    await drawn(sheet);
    expect(textOf(sheet, 'side')).to.equal('Right eye');
    tell('beforeprint');
    expect(textOf(sheet, 'void')).to.match(/^Do not use *The plan is being changed/);
    tell('afterprint');
    movesOf(eye.model).commit('test', null);
    await drawn(sheet);
    expect(rowsOf(sheet)[0]![1]).to.equal('170°');
    tell('beforeprint');
    expect(textOf(sheet, 'side')).to.equal('Right eye');
    tell('afterprint');
  });

  it('must not be used when the case that it names has gone', async () => {
    const root = await fixture<HTMLElement>(html`<div><astig-case id="gone" incision-site="180"></astig-case><astig-sheet for="gone"></astig-sheet></div>`);
    const sheet = root.querySelector('astig-sheet')!;
    await drawn(sheet);
    root.querySelector('#gone')!.remove();
    tell('beforeprint');
    expect(textOf(sheet, 'void')).to.match(/^Do not use/);
    tell('afterprint');
  });

  it('listens no more once it is gone', async () => {
    const { eye, sheet } = await sheetOf();
    sheet.remove();
    eye.eye = 'left';
    tell('beforeprint');
    expect(textOf(sheet, 'side')).to.equal('Right eye');
    tell('afterprint');
  });

  it('is put alone into a frame without an address, with its styles and what the page has given it', async () => {
    const { sheet } = await sheetOf(FULL, LONGEST, 'fr');
    const frame = await framed(sheet);
    try {
      const { contentDocument: inner } = frame;
      expect(frame.getAttribute('src')).to.equal(null);
      expect(inner!.documentElement.lang).to.equal('fr');
      expect(inner!.body.children).to.have.length(1);
      const copy = inner!.body.firstElementChild!;
      expect(textOf(copy)).to.equal(textOf(sheet));
      expect(copy.shadowRoot!.querySelector('slot')!.assignedElements().map(({ textContent }) => textContent!.slice(0, 5))).to.deep.equal(['Label']);
      expect(copy.shadowRoot!.adoptedStyleSheets.length).to.equal(sheet.shadowRoot!.adoptedStyleSheets.length);
      const { borderLeftStyle } = inner!.defaultView!.getComputedStyle(copy.shadowRoot!.querySelector('.sheet')!);
      expect(borderLeftStyle).to.equal('double');
      const asked = (performance.getEntriesByType('resource') as PerformanceResourceTiming[]).filter(({ initiatorType }) => initiatorType === 'iframe' || initiatorType === 'frame');
      expect(asked).to.have.length(0);
    } finally {
      frame.remove();
    }
  });

  it('is printed from that frame by its button, and the frame goes when that is over', async () => {
    const { sheet } = await sheetOf();
    const printed: string[] = [];
    const instead = ({ target }: Event): void => {
      const { contentWindow } = target as HTMLIFrameElement;
      if (contentWindow) contentWindow.print = () => printed.push(textOf(contentWindow.document.body.firstElementChild!, 'side'));
    };
    document.addEventListener('load', instead, true);
    try {
      sheet.shadowRoot!.querySelector('button')!.click();
      await until(() => printed.length > 0, 'the print');
      expect(printed).to.deep.equal(['Right eye']);
      expect(document.querySelectorAll('body > iframe')).to.have.length(1);
      document.querySelector<HTMLIFrameElement>('body > iframe')!.contentWindow!.dispatchEvent(new Event('afterprint'));
      await until(() => document.querySelectorAll('body > iframe').length === 0, 'the end of the frame');
      expect(textOf(sheet, 'side')).to.equal('Right eye');
    } finally {
      document.removeEventListener('load', instead, true);
    }
  });
});

describe('astig-sheet for everybody', () => {
  afterEach(() => emulate({}));

  itInEveryScheme('has no fault that axe can find', async () => {
    const { sheet } = await sheetOf(FULL, LONGEST);
    await expect(sheet).to.be.accessible();
  });

  it('has none in Arabic, and none where it must not be used', async () => {
    await expect((await sheetOf(FULL, LONGEST, 'ar')).sheet).to.be.accessible();
    await expect((await sheetOf({ incisionSite: null, arcCount: 0, arcSite: null })).sheet).to.be.accessible();
  });

  for (const lang of LANGUAGES) {
    it(`has labels that never overlap or clip, in ${lang}`, async () => {
      const bad: string[] = [];
      for (const eye of ['right', 'left']) {
        for (const view of ['facing', 'above', 'temporal']) {
          for (const site of [0, 40, 90, 180, 265]) {
            const plan = { ...FULL, eye, incisionSite: site, arcSite: site, lensMeridian: site % 180 };
            const { sheet } = await sheetOf(plan, html`<astig-sheet viewpoint=${view} mark-seated="180" mark-lying="187"></astig-sheet>`, lang);
            bad.push(...faults(sheet.shadowRoot!.querySelector('[part~="drawing"]')!).map((fault) => `${eye} ${view} ${site}: ${fault}`));
            sheet.closest('div')!.remove();
          }
        }
      }
      expect(bad.slice(0, 8)).to.deep.equal([]);
    }).timeout(60_000);

    it(`fits a phone of 360 px, and with text at 200 %, in ${lang}`, async () => {
      const { sheet } = await sheetOf(FULL, LONGEST, lang);
      const root = sheet.parentElement!.parentElement!;
      for (const size of ['16px', '32px']) {
        root.setAttribute('style', `inline-size: 328px; font: ${size} sans-serif`);
        await drawn(sheet);
        expect(sheet.scrollWidth, size).to.be.at.most(sheet.clientWidth + 1);
        const { left, right } = root.getBoundingClientRect();
        const outside = [...sheet.shadowRoot!.querySelectorAll('.sheet *:not(.wrap *, svg *)')]
          .filter((element) => element.getClientRects().length > 0)
          .filter((element) => element.getBoundingClientRect().right > right + 1 || element.getBoundingClientRect().left < left - 1);
        expect(outside.map(({ localName, className }) => `${localName} ${String(className)}`), size).to.deep.equal([]);
      }
    });
  }
});
