import { expect, html } from '@open-wc/testing';
import { sight as ar } from '../../components/internal/language/languages/ar/sight.js';
import { sight as de } from '../../components/internal/language/languages/de/sight.js';
import { sight as es } from '../../components/internal/language/languages/es/sight.js';
import { sight as fr } from '../../components/internal/language/languages/fr/sight.js';
import { sight as zh } from '../../components/internal/language/languages/zh/sight.js';
import { ENGLISH as ENGLISH_READER } from '../../components/internal/language/language.js';
import { acuityText, usualNotation } from '../../components/sight/sight.acuity.js';
import type { Notation } from '../../components/sight/sight.acuity.js';
import { notesWords } from '../../components/sight/sight.notes.words.js';
import { ownWords } from '../../components/sight/sight.own.words.js';
import { SIDE } from '../../components/sight/sight.scenes.js';
import { sightWords } from '../../components/sight/sight.words.js';
import { cardWords } from '../../components/sight/scenes/card.words.js';
import { contextOf } from '../../components/sight/scenes/scenes.js';
import { typeSize } from '../../components/sight/scenes/paint.js';
import { reading } from '../../components/sight/scenes/reading.js';
import { itInEveryScheme } from '../engine.js';
import { MAPLE, Sight } from './sight-support.js';
import { until } from './until.js';

const ENGLISH: Record<string, string> = { ...sightWords.en, ...notesWords.en, ...ownWords.en, ...cardWords.en };
const CATALOGUES: Record<string, Record<string, string>> = { ar, de, es, fr, zh };

const values = (text: string): string[] => (text.match(/\{\$\w+\}/g) ?? []).sort();

describe('astig-sight: languages', () => {
  for (const [lang, texts] of Object.entries(CATALOGUES)) {
    it(`${lang} has every text, with the same values in it`, () => {
      expect(Object.keys(texts).sort()).to.deep.equal(Object.keys(ENGLISH).sort());
      for (const [id, text] of Object.entries(texts)) expect(values(text), id).to.deep.equal(values(ENGLISH[id]!));
    });
  }

  for (const [lang, texts] of Object.entries({ en: ENGLISH, ...CATALOGUES })) {
    for (const family of ['sans-serif', 'serif']) {
      it(`${lang}: the reading card fits, in ${family}`, () => {
        const context = contextOf(1, 1);
        const measure = (text: string, xHeight: number): number => {
          context.font = `${typeSize(context, xHeight, family)}px ${family}`;
          return context.measureText(text).width;
        };
        const { lines } = reading([1, 2, 3, 4, 5].map((i) => texts[`card${i}`]!), measure);
        expect(lines!.map(({ text }) => text.replace(/\s/g, '')).join('')).to.equal([1, 2, 3, 4, 5].map((i) => texts[`card${i}`]!.replace(/\s/g, '')).join(''));
        for (const { text, xHeight } of lines!) expect(measure(text, xHeight)).to.be.at.most(SIDE - 52);
        expect(lines!.at(-1)!.y).to.be.at.most(SIDE - 10);
        // Each paragraph smaller than the one before, and none of them a single word.
        expect(new Set(lines!.map(({ xHeight }) => xHeight)).size).to.equal(5);
      });
    }
  }

  it('speaks the language of the page, and writes its numbers', async () => {
    const sight = await Sight.open(html`<astig-sight scene="reading"></astig-sight>`, MAPLE, 'de');
    await until(() => sight.text('.before strong') === 'Vor der Operation', 'German');
    await sight.view.ready;
    expect(sight.text('.notes')).to.contain('Aus 0,4 m gesehen ist das Bild 8,6° breit.');
    // Germany writes decimals: 0.5·… of 2 D.
    expect(sight.text('.before figcaption')).to.match(/liest etwa 0,6\d; zwei von drei solchen Augen zwischen 0,4\d und 0,8\d/);
    const german = sight.pixels('before').data.join();
    sight.eye.lang = 'fr';
    await until(() => sight.text('.before strong') === 'Avant l’opération', 'French');
    await sight.view.ready;
    expect(sight.pixels('before').data.join() === german, 'the card is in French too').to.equal(false);
  });
});

describe('astig-sight: acuity', () => {
  
  for (const [logMAR, notation, text] of [
    [0, 'metres', '6/6'],
    [0.1, 'metres', '6/7.6'],
    [1, 'metres', '6/60'],
    [-0.116, 'metres', '6/4.6'],
    [0.1, 'feet', '20/25'],
    [0.3, 'decimal', '0.50'],
    [-0.1, 'decimal', '1.3'],
    [0, 'decimal', '1'],
    [0.026, 'logmar', '0.03 logMAR'],
    [-0.116, 'logmar', '−0.12 logMAR'],
  ] as [number, Notation, string][]) {
    it(`writes ${logMAR} as ${text}`, () => expect(acuityText(logMAR, notation, ENGLISH_READER)).to.equal(text));
  }

  it('is written as is usual where the language is spoken', () => {
    const tags = ['en', 'en-GB', 'en-US', 'ar', 'de', 'de-AT', 'fr', 'es', 'es-ES', 'es-MX', 'zh-Hans', 'it'];
    expect(tags.map(usualNotation)).to.deep.equal(['metres', 'metres', 'feet', 'metres', 'decimal', 'decimal', 'decimal', 'decimal', 'decimal', 'feet', 'decimal', 'metres']);
  });

  it('is an estimate with its spread, which can be asked for its source', async () => {
    const sight = await Sight.open();
    // 0.017·4 + 0.125·2 − 0.116 = 0.202; ± 0.14.
    const sentence = 'A healthy eye with this much reads about 6/9.6; two in three such eyes between 6/13 and 6/6.9';
    expect(sight.text('.before figcaption p:last-child')).to.equal(sentence);
    expect(sight.label('before')).to.contain(`Before surgery, astigmatism of 2.00\u00a0D: A chart`).and.contain('It looks strongly blurred.').and.contain(sentence);
    await sight.set({ acuity: 'feet' });
    expect(sight.text('.before figcaption p:last-child')).to.contain('about 20/32');
    expect(sight.text('.notes')).to.contain('20/200, 20/100');
    await sight.click(sight.find('.before figcaption p:last-child button'));
    await until(() => sight.text('.source')?.includes('Hoshikawa'), 'the source');
  });

  it('says that it is less beyond what was studied, and nothing where a focal line is in focus', async () => {
    const sight = await Sight.open(undefined, { ...MAPLE, steepK: 46 });
    expect(sight.text('.before figcaption p:last-child')).to.contain('reads less than 6/');
    await sight.set({ inFocus: 'back-line' });
    expect(sight.root.querySelectorAll('.before figcaption p')).to.have.length(2);
    expect(sight.label('before')).to.not.contain('reads');
  });

  it('makes no picture of what no cornea of the study of blur has', async () => {
    const sight = await Sight.open(undefined, { ...MAPLE, flatK: 35, steepK: 55 });
    expect(sight.text('[part=problem]')).to.equal('More than 15.00 D of astigmatism is not simulated.');
    await sight.plan(MAPLE);
    expect(sight.root.querySelectorAll('canvas')).to.have.length(2);
  });
});

describe('astig-sight: accessibility', () => {
  for (const view of ['pair', 'divider']) {
    itInEveryScheme(`has no fault that axe can find, ${view}`, async () => {
      const sight = await Sight.open(html`<astig-sight view=${view} scene="street"></astig-sight>`);
      await sight.click(sight.find('summary'));
      await sight.fill('pupil', '77');
      await expect(sight.eye).to.be.accessible();
    });
  }

  it('has none in Arabic, nor without a picture', async () => {
    const sight = await Sight.open(html`<astig-sight scene="picture" view="divider"></astig-sight>`, MAPLE, 'ar');
    await until(() => sight.text('[part=problem]')?.startsWith('لم'), 'Arabic');
    await expect(sight.eye).to.be.accessible();
    expect(sight.text('[part=problem]')).to.equal('لم تضع الصفحة صورة هنا.');
  });

  it('says what it needs without a case', async () => {
    const view = document.createElement('astig-sight');
    document.body.append(view);
    await view.ready;
    expect(view.shadowRoot!.textContent).to.contain('astig-case');
    view.remove();
  });

  it('has no live region that speaks while the eye changes', async () => {
    const sight = await Sight.open();
    expect(sight.root.querySelectorAll('[aria-live], [role=status], [role=alert]')).to.have.length(0);
  });
});
