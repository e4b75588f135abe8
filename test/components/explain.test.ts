import { expect, fixture, html } from '@open-wc/testing';
import type { AstigExplain } from '../../components/explain/explain.js';
import { explained, explainedIn, langOf, textOf } from './explain-support.js';
import { drawn, listen, until } from './support.js';

const SECTIONS = ['title', 'shape', 'surgery', 'likely', 'promise', 'options', 'questions', 'warning', 'contact'];

const sectionsOf = (page: Element): string[] => [...page.shadowRoot!.querySelectorAll('[part~="section"]')].map(({ id }) => id);
const headingsOf = (page: Element): string[] => [...page.shadowRoot!.querySelectorAll('h1, h2, h3, h4, h5, h6')].filter((h) => !h.closest('.source')).map(({ localName }) => localName);

describe('astig-explain: what it says', () => {
  it('calls planned only what the plan has', async () => {
    const { eye, page, text } = await explained();
    expect(text('surgery')).to.contain('In your plan, this cut is at the side, near your temple.').and.contain('Your plan has one of them.');
    expect(text('surgery').match(/This is not in your plan/g)).to.have.length(1);
    eye.plan = { ...eye.plan, arcCount: 0, lensCylinder: 1, lensMeridian: 180, incisionSite: null };
    await drawn(page);
    expect(text('surgery')).to.contain('Your plan has a toric lens.').and.contain('Your plan does not say yet where.');
    expect(text('surgery')).to.not.contain('of them');
  });

  it('names the place of the entry on the right side in each eye', async () => {
    const places: Record<string, string> = { 'right 180': 'at the side, near your temple', 'right 0': 'at the side, near your nose', 'left 180': 'at the side, near your nose', 'left 0': 'at the side, near your temple', 'left 90': 'at the top.', 'right 270': 'at the bottom.', 'right 135': 'at the top, towards your temple', 'left 135': 'at the top, towards your nose', 'right 315': 'at the bottom, towards your nose', 'left 315': 'at the bottom, towards your temple' };
    for (const [where, words] of Object.entries(places)) {
      const [eye, site] = where.split(' ');
      const { text } = await explained({ eye, incisionSite: Number(site), arcCount: 0 });
      expect(text('surgery'), where).to.contain(words);
      expect(text('title'), where).to.contain(`your ${eye} eye`);
    }
  });

  it('draws the cut where the plan has it, and the nose on its side', async () => {
    for (const [eye, site, side, arrow] of [['right', 180, -1, 'nose →'], ['right', 0, 1, 'nose →'], ['left', 0, 1, '← nose'], ['left', 180, -1, '← nose']] as const) {
      const { page } = await explained({ eye, incisionSite: site, arcCount: 0 });
      const cut = page.shadowRoot!.querySelector<SVGGeometryElement>('.cut')!.getBBox();
      expect(Math.sign(cut.x + cut.width / 2), `${eye} ${site}`).to.equal(side);
      const label = page.shadowRoot!.querySelector('.nose')!;
      expect(label.textContent).to.equal(arrow);
      const { left, right } = label.parentElement!.getBoundingClientRect();
      const words = document.createRange();
      words.selectNodeContents(label);
      const at = words.getBoundingClientRect();
      expect(eye === 'right' ? right - at.right : at.left - left, 'label on the side of the nose').to.be.closeTo(0, 2);
    }
  });

  it('tells whole people of a hundred, in words and in dots, and follows the case', async () => {
    const { eye, page, text } = await explained();
    const dots = (): number[] => [...page.shadowRoot!.querySelectorAll('[part~="dots"]')].map((array) => array.querySelectorAll('.full').length);
    for (const width of [2.2, 3.4]) {
      eye.incisionWidth = width;
      await drawn(page);
      const [little, some] = [0.5, 1].map((limit) => Math.round(100 * eye.outcome.chanceWithin(limit)));
      expect(text('likely')).to.contain(`About ${little} of 100 people like you would have very little astigmatism.`);
      expect(text('likely')).to.contain(`About ${some} of 100 people like you would have one dioptre or less.`);
      expect(text('likely')).to.contain(`About ${100 - some!} of 100 people like you would have more than that.`);
      expect(dots()).to.deep.equal([little, some]);
    }
    expect(page.shadowRoot!.querySelectorAll('[part~="dots"] circle')).to.have.length(200);
  });

  it('never promises by a bare nought or hundred', async () => {
    const { eye, page, text } = await explained({ steepK: 50, arcCount: 0 });
    expect(Math.round(100 * eye.outcome.chanceWithin(1))).to.equal(0);
    expect(text('likely')).to.contain('Almost none of 100 people like you would have very little').and.contain('Almost all of 100 people like you would have more');
    eye.plan = { flatK: 43, steepK: 43.1, ownFigures: { incision: { flattening: 0, sd: 0.05 } }, incisionSite: 180 };
    await drawn(page);
    expect(Math.round(100 * eye.outcome.chanceWithin(1))).to.equal(100);
    expect(text('likely')).to.contain('Almost all of 100 people like you would have one dioptre or less.').and.contain('Almost none of 100 people like you would have more');
  });

  it('says so when nothing is planned', async () => {
    const { text } = await explained({ incisionSite: null, arcCount: 0 });
    expect(text('likely')).to.contain('Nothing is planned here yet.');
  });

  it('does not make a plan look settled that should not be carried out', async () => {
    const { eye, text } = await explained({ arcDepth: 640 });
    expect(eye.outcome.cautions.some(({ level }) => level === 'stop')).to.equal(true);
    expect(text('surgery')).to.contain('This plan has open points.').and.not.contain('can still change');
  });

  it('says nothing of a measurement that the page may not have given', async () => {
    const { text } = await explained({ steepK: 43 });
    expect(text('shape')).to.not.contain('measured');
    expect((await explained()).text('shape')).to.contain('measured 1.0 dioptres');
  });

  it('tells nothing of an older plan while a value is refused', async () => {
    const { eye, page, text } = await explained();
    eye.setAttribute('steep-k', '99');
    await drawn(page);
    expect(text('likely')).to.contain('a number that cannot be right').and.not.contain('of 100');
    expect(text()).to.not.contain('your right eye').and.not.contain('In your plan').and.not.contain('measured');
    eye.setAttribute('steep-k', '44');
    await drawn(page);
    expect(text('likely')).to.contain('of 100');
  });

  it('shows the general parts without a case', async () => {
    const page = await fixture<AstigExplain>(html`<astig-explain></astig-explain>`);
    expect(sectionsOf(page)).to.deep.equal(SECTIONS);
    expect(textOf(page, 'likely')).to.contain('no numbers for your eye yet');
    expect(textOf(page, 'surgery')).to.contain('This can help some eyes.').and.not.match(/your plan/i);
    expect(page.shadowRoot!.querySelector('.nose')).to.equal(null);
    expect(textOf(page)).to.not.match(/(right|left) eye/);
  });

  it('offers glasses and doing nothing, and says who decides, whatever is hidden', async () => {
    const { page, text } = await explained();
    expect(text('options')).to.contain('Wear glasses').and.contain('Do nothing').and.contain('all real choices');
    page.hide = SECTIONS.join(' ');
    await drawn(page);
    expect(text()).to.equal('The numbers on this page are estimates. They are not a promise. Your surgeon measures your eye, and decides with you.');
  });
});

describe('astig-explain: what a clinic can change', () => {
  it('hides sections by name and keeps the others as they were', async () => {
    const { page } = await explained();
    const box = page.shadowRoot!.querySelectorAll('input')[2]!;
    box.click();
    page.setAttribute('hide', ' surgery  promise nonsense');
    await drawn(page);
    expect(sectionsOf(page)).to.deep.equal(SECTIONS.filter((id) => id !== 'surgery' && id !== 'promise'));
    expect(page.shadowRoot!.querySelectorAll('input')[2]!.checked).to.equal(true);
  });

  it('takes the clinic’s own sections and contact', async () => {
    const { page } = await explained(
      {},
      html`<astig-explain><p slot="contact">Ring the invented number.</p><section slot="promise"><h3>Ours</h3></section></astig-explain>`,
    );
    const shown = (name: string): string => page.shadowRoot!.querySelector<HTMLSlotElement>(`slot[name="${name}"]`)!.assignedElements({ flatten: true }).map((element) => element.textContent).join();
    expect(shown('contact')).to.equal('Ring the invented number.');
    expect(shown('promise')).to.equal('Ours');
    expect(getComputedStyle(page.shadowRoot!.querySelector('[part~="contact"] h3')!).display).to.equal('block');
    expect(page.shadowRoot!.querySelector('[part~="promise"] h3')!.getClientRects()).to.have.length(0);
    expect((await explained()).text('contact')).to.contain('Call the eye clinic');
  });

  it('fits its headings into those of the page', async () => {
    const { page } = await explained();
    expect(headingsOf(page)[0]).to.equal('h2');
    expect(new Set(headingsOf(page).slice(1))).to.deep.equal(new Set(['h3', 'h4']));
    page.headingLevel = 4;
    await drawn(page);
    expect([...new Set(headingsOf(page))]).to.deep.equal(['h4', 'h5', 'h6']);
    page.hide = 'title';
    page.setAttribute('heading-level', '1');
    await drawn(page);
    expect([...new Set(headingsOf(page))]).to.deep.equal(['h1', 'h2']);
    page.setAttribute('heading-level', 'none');
    await drawn(page);
    expect(headingsOf(page)[0]).to.equal('h2');
  });

  it('keeps ticks to itself', async () => {
    const { eye, page } = await explained();
    const heard: string[] = [];
    for (const type of ['input', 'change']) eye.addEventListener(type, () => heard.push(type));
    const log = listen(eye);
    const box = page.shadowRoot!.querySelector('input')!;
    box.click();
    expect(box.checked).to.equal(true);
    expect(heard).to.deep.equal([]);
    expect(log.inputs.length + log.changes.length).to.equal(0);
  });

  it('can be asked where its figures come from', async () => {
    const { page } = await explained();
    const ask = [...page.shadowRoot!.querySelectorAll<HTMLElement>('.ask button')];
    expect(ask).to.have.length(4);
    for (const [button, source] of [[ask[2]!, 'Villegas'], [ask[3]!, 'ommon practice']] as const) {
      button.focus();
      button.click();
      await until(() => page.shadowRoot!.querySelector('.source')?.textContent.includes(source), source);
    }
    page.shadowRoot!.querySelector<HTMLElement>('.source')!.hidePopover();
  });
});

describe('astig-explain: languages', () => {
  const WORD = { de: 'Hornhautverkrümmung', es: 'astigmatismo', fr: 'l’astigmatisme', ar: 'اللابؤرية', zh: '散光' };
  for (const [lang, word] of Object.entries(WORD)) {
    it(`speaks ${lang}, in its direction and with its numbers`, async () => {
      const { page, text } = await explainedIn(lang);
      expect(text()).to.contain(word).and.not.match(/[{}]/);
      const inner = page.shadowRoot!.querySelector('[part~="page"]')!;
      expect(inner.getAttribute('dir')).to.equal(lang === 'ar' ? 'rtl' : 'ltr');
      expect(text('shape')).to.contain(['de', 'es', 'fr'].includes(lang) ? '1,0' : '1.0');
      expect(text('likely')).to.match(/\b\d\d\b/);
    });
  }

  it('follows a change of language and goes back', async () => {
    const { page } = await explainedIn('de');
    const root = page.closest<HTMLElement>('[lang]')!;
    root.lang = 'ar';
    await until(() => langOf(page) === 'ar', 'Arabic');
    root.lang = 'en';
    await until(() => langOf(page) === 'en', 'English');
    expect(textOf(page)).to.contain('What is astigmatism?');
    expect(page.shadowRoot!.querySelector('[part~="page"]')!.getAttribute('dir')).to.equal('ltr');
  });

  it('runs to the left in English inside a page that runs to the right', async () => {
    const root = await fixture<HTMLElement>(html`<div lang="en" dir="rtl"><astig-explain></astig-explain></div>`);
    const page = root.querySelector('astig-explain')!;
    expect(getComputedStyle(page.shadowRoot!.querySelector('p')!).direction).to.equal('ltr');
    expect(getComputedStyle(page.shadowRoot!.querySelector('p')!).textAlign).to.equal('start');
  });
});
