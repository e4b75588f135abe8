import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { addMessages } from '../../components/internal/language/add-messages.js';
import type { AstigCase } from '../../components/case/case.js';
import { CEDAR, drawn, listen } from './support.js';
import { until, untilText } from './until.js';

const VIEWS = ['astig-cornea', 'astig-vectors', 'astig-summary', 'astig-entry'] as const;

interface Page {
  host: HTMLElement;
  eye: AstigCase;
  view: (tag: string) => HTMLElement & { updateComplete: Promise<boolean> };
  text: (tag: string, selector: string) => string;
}

async function page(lang: string, plan: object = {}): Promise<Page> {
  const host = await fixture<HTMLElement>(html`<div lang=${lang}>
    <astig-case .plan=${{ ...CEDAR, ...plan }}><astig-cornea></astig-cornea><astig-vectors></astig-vectors><astig-summary></astig-summary><astig-entry></astig-entry></astig-case>
  </div>`);
  const eye = host.querySelector('astig-case')!;
  const view: Page['view'] = (tag) => host.querySelector(tag)!;
  const text: Page['text'] = (tag, selector) => (view(tag).shadowRoot!.querySelector(selector)?.textContent ?? '').replace(/[\s\u2066\u2069]+/g, ' ').trim();
  await drawn(...VIEWS.map(view));
  return { host, eye, view, text };
}

const NAMES = { en: 'Right eye', de: 'Rechtes Auge', es: 'Ojo derecho', fr: 'Œil droit', ar: 'العين اليمنى', zh: '右眼' };

function loadedLanguages(): string[] {
  return performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => /language\/(catalogue|languages)|messageformat/.test(name));
}

describe('language', () => {
  it('loads nothing for a page in English', async () => {
    await page('en-GB');
    await page('');
    expect(loadedLanguages()).to.deep.equal([]);
  });

  for (const [lang, name] of Object.entries(NAMES)) {
    it(`is ${lang} under the nearest lang="${lang}", in every element`, async () => {
      const { text, view } = await page(lang);
      await untilText(() => text('astig-cornea', '.title'), name);
      expect(text('astig-summary', '[part~=before] dt')).to.match(new RegExp(name.split(' ')[0]!, 'i'));
      expect(text('astig-entry', 'legend')).to.not.equal('');
      for (const tag of VIEWS) {
        const english = /\b(the|with|and|remaining|expected)\b/i;
        if (lang !== 'en') expect(view(tag).shadowRoot!.textContent, tag).to.not.match(english);
        const part = view(tag).shadowRoot!.firstElementChild as HTMLElement;
        expect([part.lang.slice(0, 2), getComputedStyle(part).direction]).to.deep.equal([lang, lang === 'ar' ? 'rtl' : 'ltr']);
      }
    });
  }

  it('writes numbers as the language does, with Latin digits, and as the region does', async () => {
    const figures: Record<string, string> = {};
    for (const lang of ['de', 'de-CH', 'fr', 'es', 'es-MX', 'ar', 'ar-EG', 'zh-Hans-CN']) {
      const { text } = await page(lang);
      figures[lang] = await untilText(() => text('astig-summary', '[part~=after] .large'), /^0[.,]28 D @ 180°$/).then((figure) => figure.slice(0, 4));
      await untilText(() => text('astig-cornea', '.title'), NAMES[lang.slice(0, 2) as keyof typeof NAMES]);
      figures[lang] = text('astig-summary', '[part~=after] .large').slice(0, 4);
    }
    expect(figures).to.deep.equal({ de: '0,28', 'de-CH': '0.28', fr: '0,28', es: '0,28', 'es-MX': '0.28', ar: '0.28', 'ar-EG': '0.28', 'zh-Hans-CN': '0.28' });
  });

  it('falls back to English for a language that nobody has added, and says so', async () => {
    const { text, view } = await page('fi');
    expect(text('astig-cornea', '.title')).to.equal('Right eye');
    expect((view('astig-cornea').shadowRoot!.firstElementChild as HTMLElement).lang).to.equal('en');
  });

  it('understands region tags, also those written the wrong way', async () => {
    for (const [lang, name] of [['de-AT', NAMES.de], ['zh-Hans-CN', NAMES.zh], ['ES', NAMES.es], ['fr_CA', NAMES.fr]] as const) {
      const { text } = await page(lang);
      await untilText(() => text('astig-cornea', '.title'), name);
    }
  });

  it('follows the innermost of nested languages, the element’s own above all', async () => {
    const { host, text, view } = await page('fr');
    const box = document.createElement('div');
    box.lang = 'de';
    host.append(box);
    box.append(host.querySelector('astig-case')!);
    await untilText(() => text('astig-cornea', '.title'), NAMES.de);
    view('astig-cornea').lang = 'es';
    await untilText(() => text('astig-cornea', '.title'), NAMES.es);
    expect(text('astig-summary', '[part~=before] dt')).to.equal('Vorher, rechtes Auge');
    box.removeAttribute('lang');
    await untilText(() => text('astig-summary', '[part~=before] dt'), 'Avant, œil droit');
  });

  it('finds the language across shadow roots and around slots, and follows a move', async () => {
    const { host, view, text } = await page('de');
    const outer = document.createElement('div');
    const card = document.createElement('div');
    outer.attachShadow({ mode: 'open' }).append(card);
    card.attachShadow({ mode: 'open' }).innerHTML = '<section><slot></slot></section>';
    document.body.append(outer);
    const eye = host.querySelector('astig-case')!;
    const title = (): string => eye.querySelector('astig-cornea')!.shadowRoot!.querySelector('.title')!.textContent;
    await untilText(title, NAMES.de);
    card.append(eye);
    await untilText(title, NAMES.en);
    outer.lang = 'es';
    await untilText(title, NAMES.es);
    card.shadowRoot!.querySelector('section')!.lang = 'fr';
    await untilText(title, NAMES.fr);
    host.append(eye);
    await untilText(() => text('astig-cornea', '.title'), NAMES.de);
    expect(view('astig-cornea').isConnected).to.equal(true);
    outer.remove();
  });

  it('changes at run time without taking the focus, what is being typed or a figure, and fires no event', async () => {
    const { host, eye, view, text } = await page('en');
    const entry = view('astig-entry');
    const input = (id: string): HTMLInputElement => entry.shadowRoot!.getElementById(id) as HTMLInputElement;
    input('flatK').focus();
    input('flatK').select();
    await sendKeys({ type: '99' });
    await drawn(entry);
    const log = listen(document);
    const before = JSON.stringify(eye.plan);
    host.lang = 'de';
    await untilText(() => text('astig-entry', '#flatK-note'), 'Flacher Messwert: 99 D liegt außerhalb von 28 bis 75 D.');
    expect([entry.shadowRoot!.activeElement?.id, input('flatK').value, input('steepK').value]).to.deep.equal(['flatK', '99', '44,00']);
    expect([JSON.stringify(eye.plan), log.inputs.length, log.changes.length]).to.deep.equal([before, 0, 0]);
    await sendKeys({ press: 'Backspace' });
    await sendKeys({ press: 'Backspace' });
    await sendKeys({ type: '42,5' });
    await drawn(entry);
    expect([eye.plan.flatK, log.inputs.length > 0]).to.deep.equal([42.5, true]);
  });

  it('says nothing aloud when only the language has changed', async () => {
    const { host, eye, view, text } = await page('en');
    eye.incisionSite = 120;
    await drawn(eye, view('astig-summary'));
    expect(text('astig-summary', '[role=status]')).to.match(/^Expected to remain/);
    host.lang = 'de';
    await untilText(() => text('astig-summary', '[part~=after] dt'), 'Rest, wie erwartet');
    expect(text('astig-summary', '[role=status]')).to.equal('');
    eye.incisionSite = 100;
    await drawn(eye, view('astig-summary'));
    expect(text('astig-summary', '[role=status]')).to.match(/^Zu erwartender Rest: \d,\d\d D bei \d+°\./);
  });

  it('keeps a figure together in a text that runs to the left', async () => {
    const { host, text, view } = await page('ar');
    host.removeAttribute('dir');
    await untilText(() => text('astig-cornea', '.title'), NAMES.ar);
    const button = view('astig-summary').shadowRoot!.querySelector('[part~=before] .large button')!;
    expect(button.textContent.replace(/[\u2066\u2069]/g, '')).to.equal('1.00\u00a0D\u00a0@\u00a0180°');
    // As it is laid out: the dioptres to the left of the meridian, though the text runs to the left.
    const node = [...button.childNodes].find(({ nodeType }) => nodeType === Node.TEXT_NODE)!;
    const at = (sign: string): number => {
      const range = document.createRange();
      const index = node.textContent!.indexOf(sign);
      range.setStart(node, index);
      range.setEnd(node, index + sign.length);
      return range.getBoundingClientRect().x;
    };
    expect([at('1.00') < at('D'), at('D') < at('@'), at('@') < at('180')]).to.deep.equal([true, true, true]);
  });

  it('reads numbers as they are written in the language', async () => {
    const { view, eye, text } = await page('ar');
    await untilText(() => text('astig-cornea', '.title'), NAMES.ar);
    const input = view('astig-entry').shadowRoot!.getElementById('incisionWidth') as HTMLInputElement;
    for (const [typed, value] of [['2,2', 2.2], ['٢٫٦', 2.6], ['２．８', 2.8], ['2.4 mm', 2.4]] as const) {
      input.focus();
      input.value = typed;
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      expect(eye.incisionWidth, typed).to.equal(value);
      input.blur();
    }
  });

  it('translates cautions, refusals and the sources of figures', async () => {
    const { eye, view, text } = await page('de', { arcDepth: 600 });
    await untilText(() => text('astig-summary', '[part~=caution]'), 'Halt: 600 µm sind 92 % der örtlichen Dicke (650 µm). Ab 90 % kann die Hornhaut perforiert werden. Quelle');
    eye.setAttribute('incision-width', '9,5');
    await drawn(eye, view('astig-summary'), view('astig-entry'));
    const refusal = 'Breite der Inzision: „9,5“ wird nicht angenommen; erlaubt ist: 1,8 bis 3,5 mm.';
    expect(text('astig-summary', '.refused li')).to.equal(refusal);
    expect(text('astig-entry', '.refused li')).to.equal(refusal);
    view('astig-summary').shadowRoot!.querySelector<HTMLElement>('[data-source=arcs] .sourced')!.click();
    await untilText(() => text('astig-summary', '.source h2'), 'Abflachung durch Bogenschnitte');
    expect(text('astig-summary', '.source')).to.contain('beabsichtigt = 1,70').and.contain('erreichter Anteil der beabsichtigten Wirkung').and.contain('Roberts HW').and.contain('Zahlen gelesen');
    expect(view('astig-summary').shadowRoot!.querySelector('.source bdi')!.getAttribute('lang')).to.equal('en');
  });

  for (const lang of ['de', 'ar', 'zh']) {
    it(`has no fault that axe can find in ${lang}`, async () => {
      const { eye, text } = await page(lang, { arcDepth: 640, lensCylinder: 1, lensMeridian: 10 });
      await untilText(() => text('astig-cornea', '.title'), NAMES[lang as keyof typeof NAMES]);
      await expect(eye).to.be.accessible();
    });
  }

  it('watches each tree once, however many elements stand in it, and stops with the last', async () => {
    const { observe, disconnect } = MutationObserver.prototype;
    let [begun, ended] = [0, 0];
    MutationObserver.prototype.observe = function (...given) {
      begun += 1;
      observe.apply(this, given);
    };
    MutationObserver.prototype.disconnect = function () {
      ended += 1;
      disconnect.call(this);
    };
    const host = document.createElement('div');
    host.attachShadow({ mode: 'open' });
    document.body.append(host);
    for (let count = 0; count < 50; count += 1) host.shadowRoot!.append(document.createElement('astig-summary'));
    const many = begun;
    host.shadowRoot!.replaceChildren();
    host.remove();
    Object.assign(MutationObserver.prototype, { observe, disconnect });
    // One for the shadow root, and one for the page unless it had one.
    expect(many).to.be.within(1, 2);
    expect(ended).to.equal(many);
  });
});

describe('addMessages', () => {
  it('adds a language, with English where it says nothing, and elements on the page take it up', async () => {
    const { text } = await page('it-IT');
    expect(text('astig-summary', '[part~=after] dt')).to.equal('Remaining, as expected');
    await addMessages('it', { summary: { after: 'Residuo atteso' } });
    await untilText(() => text('astig-summary', '[part~=after] dt'), 'Residuo atteso');
    expect(text('astig-summary', '[part~=intended] dt')).to.equal('Remaining, if all of the intended effect were reached');
    expect(text('astig-summary', '[part~=after] .large')).to.equal('0,28 D @ 180°');
  });

  it('overrides single texts, of ours and of English, and the rest stays', async () => {
    const german = await page('de');
    const english = await page('en');
    await addMessages('de', { summary: { before: 'Vor der Operation, {$eye}' } });
    await untilText(() => german.text('astig-summary', '[part~=before] dt'), 'Vor der Operation, rechtes Auge');
    expect(german.text('astig-summary', '[part~=after] dt')).to.equal('Rest, wie erwartet');
    await addMessages('en', { summary: { after: 'Expected result' }, cautions: { 'arc-zone': 'Zone: {$zone}.' } });
    await untilText(() => english.text('astig-summary', '[part~=after] dt'), 'Expected result');
    english.eye.arcZone = 9;
    await untilText(() => [...english.view('astig-summary').shadowRoot!.querySelectorAll('[part~=caution]')].map(({ textContent }) => textContent).join(' '), /Zone: 9\u00a0mm\./);
    await addMessages('en', { summary: { after: 'Remaining, as expected' } });
  });

  it('shows English instead of a text that is wrong, and tells the page', async () => {
    const { text } = await page('en');
    const errors: string[] = [];
    const hear = (event: ErrorEvent): void => {
      errors.push(event.message);
      event.preventDefault();
      event.stopImmediatePropagation();
    };
    window.addEventListener('error', hear, { capture: true });
    const { onerror } = window;
    window.onerror = null;
    await addMessages('en', { summary: { intended: '.match $x {{' } });
    await until(() => errors.length > 0, 'the error');
    window.onerror = onerror;
    window.removeEventListener('error', hear, { capture: true });
    expect(errors.join()).to.contain('.match $x {{');
    expect(text('astig-summary', '[part~=intended] dt')).to.equal('Remaining, if all of the intended effect were reached');
    await addMessages('en', { summary: { intended: 'Remaining, if all of the intended effect were reached' } });
  });

  it('understands MessageFormat 2 with its plurals, in English too', async () => {
    const { text } = await page('en');
    await addMessages('en', { summary: { chance: '.input {$eyes :integer} .match $eyes one {{One eye of 100: {$limit}.}} * {{{$eyes} eyes of 100: {$limit}.}}' } });
    await untilText(() => text('astig-summary', '[part~=chance] button'), /^\d+ eyes of 100: 0\.50 D\.$/);
    await addMessages('en', { summary: { chance: 'About {$eyes} of 100 eyes like this would end with {$limit} or less.' } });
    await untilText(() => text('astig-summary', '[part~=chance] button'), /^About/);
  });
});
