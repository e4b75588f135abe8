import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import fc from 'fast-check';
import '../../components/case/define.js';
import '../../components/options/define.js';
import '../../components/sweep/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigOptions } from '../../components/options/options.js';
import type { AstigSweep } from '../../components/sweep/sweep.js';
import { anyPlan, faults } from './label-faults.js';
import { ROWAN } from './options-support.js';
import { CEDAR, drawn, listen } from './support.js';
import { until, untilText } from './until.js';

/** A face for each script. One that no page names is left to the engine, and WebKit for GTK may draw another than it has measured. */
const FACES = "'Liberation Sans', 'DejaVu Sans', sans-serif";

/** What the two elements say that is in no other language. */
const LANGUAGES = {
  de: { eye: 'Rechtes Auge', offered: 'Was angeboten werden darf', best: 'Die beste Aussicht' },
  es: { eye: 'Ojo derecho', offered: 'Qué se puede ofrecer', best: 'La mayor probabilidad' },
  fr: { eye: 'Œil droit', offered: 'Ce qui peut être proposé', best: 'Les meilleures chances' },
  ar: { eye: 'العين اليمنى', offered: 'ما يجوز عرضه', best: 'أفضل فرصة' },
  zh: { eye: '右眼', offered: '可提供的范围', best: '机会最大' },
} as const;

interface Page {
  box: HTMLElement;
  eye: AstigCase;
  sweep: AstigSweep;
  options: AstigOptions;
}

async function page(lang: string, plan: object = CEDAR): Promise<Page> {
  const box = await fixture<HTMLElement>(html`<div lang=${lang}><astig-case .plan=${plan}><astig-sweep></astig-sweep><astig-options></astig-options></astig-case></div>`);
  const opened = { box, eye: box.querySelector('astig-case')!, sweep: box.querySelector('astig-sweep')!, options: box.querySelector('astig-options')! };
  await drawn(opened.sweep, opened.options);
  return opened;
}

/** Text of the first match, with plain spaces and without marks of direction. */
function text(view: Element, selector: string): string {
  return (view.shadowRoot!.querySelector(selector)?.textContent ?? '').replace(/[\s\u2066\u2069]+/g, ' ').trim();
}

async function openForm({ options }: Page): Promise<HTMLDetailsElement> {
  const form = options.shadowRoot!.querySelector<HTMLDetailsElement>('.limits')!;
  form.open = true;
  await untilText(() => String(options.shadowRoot!.querySelector('.form') !== null), 'true');
  return form;
}

describe('astig-options: its form', () => {
  it('is loaded when somebody comes near it, and looks as a form does', async () => {
    // A browser keeps only so many of these.
    performance.clearResourceTimings();
    const here = await page('en');
    const loaded = (): string[] => performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => /options\.form\./.test(name));
    expect(loaded()).to.deep.equal([]);
    await openForm(here);
    expect(loaded().length).to.be.above(0);
    const field = here.options.shadowRoot!.getElementById('widths')!;
    expect([getComputedStyle(field).borderTopWidth, field.getBoundingClientRect().height >= 44]).to.deep.equal(['1px', true]);
  });
});

describe('sweep and options in other languages', () => {
  for (const [lang, { eye, offered, best }] of Object.entries(LANGUAGES)) {
    it(`say nothing in English under lang="${lang}"`, async () => {
      const here = await page(lang, { ...CEDAR, risks: 'dry-eye', incisionFlattening: 0.3, arcFlattening: 0.4 });
      await untilText(() => text(here.sweep, '.title'), eye);
      await untilText(() => text(here.options, '.limits .title'), offered);
      await openForm(here);
      here.options.setAttribute('sites', 'nasal');
      here.options.setAttribute('most-arcs', '7');
      for (const heading of here.options.shadowRoot!.querySelectorAll<HTMLElement>('[data-sort]')) heading.click();
      await here.options.ready;
      expect(text(here.options, '[role=status]')).to.not.equal('');
      expect(here.options.shadowRoot!.querySelector('tbody')!.textContent).to.contain(best);
      for (const view of [here.sweep, here.options]) {
        const { shadowRoot } = view;
        const labels = [...shadowRoot!.querySelectorAll('[aria-label], [aria-valuetext], [data-label]')].flatMap((part) => ['aria-label', 'aria-valuetext', 'data-label'].map((name) => part.getAttribute(name) ?? ''));
        for (const said of [shadowRoot!.textContent, ...labels]) expect(said, view.localName).to.not.match(/\b(the|with|and|remaining|expected|entry|toric|eyes?|refused)\b/i);
        const part = shadowRoot!.firstElementChild as HTMLElement;
        expect([part.lang.slice(0, 2), getComputedStyle(part).direction]).to.deep.equal([lang, lang === 'ar' ? 'rtl' : 'ltr']);
      }
    });

    for (const width of [300, 544]) {
      for (const size of [100, 200]) {
        it(`have no label of the curve that overlaps or is clipped in ${lang} at ${width} px with text at ${size} %, and nearly all have a place`, async () => {
          const here = await page(lang);
          // Which labels find a place depends on how wide the letters are: the narrower face, that of the figure below.
          here.box.setAttribute('style', `inline-size: ${width}px; font-size: ${size}%; font-family: ${FACES}`);
          await untilText(() => text(here.sweep, '.title'), eye);
          await drawn(here.sweep);
          here.options.remove();
          const drawing = here.sweep.shadowRoot!.querySelector('svg')!;
          // The browser tells of a new size when it has laid the page out, which may be after all this.
          await until(() => Math.abs(drawing.viewBox.baseVal.width - drawing.getBoundingClientRect().width) < 1, 'the curve is laid out for its place');
          const bad: string[] = [];
          let named = 0;
          const plans = fc.sample(anyPlan, { numRuns: 60, seed: 20_253 });
          for (const plan of plans) {
            here.eye.plan = plan;
            for (const element of [here.eye, here.sweep]) await element.updateComplete;
            bad.push(...faults(drawing).map((fault) => `${fault}: ${JSON.stringify(plan)}`));
            named += drawing.querySelectorAll('.name').length;
          }
          expect(bad.slice(0, 5)).to.deep.equal([]);
          expect(named).to.be.above(plans.length * 2.7);
        });
      }
    }

    it(`fit 320, 600 and 1200 px in ${lang} at 16 and 32 px text`, async () => {
      const here = await page(lang, { ...ROWAN, risks: 'dry-eye' });
      const { box, options } = here;
      await untilText(() => text(options, '.limits .title'), offered);
      await openForm(here);
      for (const details of options.shadowRoot!.querySelectorAll('details')) details.open = true;
      for (const width of [320, 600, 1200]) {
        for (const size of [16, 32]) {
          box.setAttribute('style', `inline-size: ${width}px; font-size: ${size}px`);
          await drawn(options);
          expect(box.scrollWidth, `${width} px, ${size} px text`).to.be.at.most(box.clientWidth);
          const edges = box.getBoundingClientRect();
          for (const part of options.shadowRoot!.querySelectorAll('.sort, .sourced, [part=choose], .segment, .phrase, [part=chance], .remaining')) {
            const { left, right } = part.getBoundingClientRect();
            expect(left >= edges.left - 0.5 && right <= edges.right + 0.5, `${part.textContent} at ${width} px, ${size} px text`).to.equal(true);
          }
        }
      }
    });
  }

  it('translate refusals, cautions, reasons and what is done', async () => {
    const here = await page('de', { ...ROWAN, steepMeridian: 95 });
    const { options, eye } = here;
    await untilText(() => text(options, '.limits .title'), LANGUAGES.de.offered);
    expect(text(options, '.offered')).to.equal('Zugang temporal, oben oder am steilen Meridian; 2,4 mm; bis zu zwei Bogenschnitte; torische Linse 1 bis 4 D');
    expect(text(options, '.present')).to.match(/^Jetzt: Zugang 0° temporal, 2,4 mm: Rest, wie erwartet, \d,\d\d D @ \d+°; \d+ von 100 enden bei 0,50 D oder weniger\. Das steht nicht in dieser Liste\.$/);
    expect(options.shadowRoot!.querySelector('tbody')!.textContent).to.match(/von\s100 mehr durch eine torische Linse/).and.match(/ein Bogenschnitt, \d+°/);
    options.widths = '2.2 22';
    await options.ready;
    expect(text(options, '.refused li')).to.equal('Breiten der Messer: „22“ wird nicht angenommen; erlaubt ist: 1,8 bis 3,5 mm, höchstens 4, durch Leerzeichen getrennt.');
    eye.setAttribute('incision-width', '9.5');
    await options.ready;
    expect(text(options, '.refused li')).to.equal('Breite der Inzision: 9,5 wird nicht angenommen; erlaubt ist: 1,8 bis 3,5 mm.');
  });

  it('change at run time without taking the focus, what is being typed or what was heard, and fire nothing', async () => {
    const here = await page('en', ROWAN);
    const { box, options } = here;
    await openForm(here);
    const input = options.shadowRoot!.getElementById('widths') as HTMLInputElement;
    input.focus();
    await sendKeys({ type: '2.2 2.' });
    const log = listen(document);
    box.lang = 'fr';
    await untilText(() => text(options, 'label[for=widths]'), 'Largeurs des couteaux, mm');
    expect([options.shadowRoot!.activeElement?.id, input.value, text(options, '[role=status]'), log.inputs.length, log.changes.length]).to.deep.equal(['widths', '2.2 2.', '', 0, 0]);
    await sendKeys({ type: '75' });
    await sendKeys({ press: 'Tab' });
    await options.ready;
    expect([options.widths, text(options, '.offered')]).to.deep.equal(['2.2 2.75', 'site de l’incision : temporal, supérieur ou sur le méridien cambré ; 2,2 mm ou 2,75 mm ; jusqu’à deux arcs ; implant torique de 1 à 4 D']);
  });

  it('write numbers as the region does, also where the words stay the same', async () => {
    const here = await page('de');
    await untilText(() => text(here.sweep, '.title'), LANGUAGES.de.eye);
    const names = (): string => [...here.sweep.shadowRoot!.querySelectorAll('.name, .steps text')].map(({ textContent }) => textContent).join(' ');
    expect(names()).to.match(/\d,\d/).and.not.match(/\d\.\d/);
    here.box.lang = 'de-CH';
    await untilText(names, /^[^,]*\d\.\d[^,]*$/);
    await untilText(() => text(here.options, '.remaining'), /^\d\.\d\d D/);
  });

  it('speak the sweep, and draw it to the right in Arabic too, with the words as they are read', async () => {
    const here = await page('ar');
    here.box.setAttribute('style', `inline-size: 700px; font-family: ${FACES}`);
    await untilText(() => text(here.sweep, '.title'), LANGUAGES.ar.eye);
    await drawn(here.sweep);
    const { shadowRoot } = here.sweep;
    expect(shadowRoot!.querySelector('input')!.getAttribute('aria-valuetext')!.replace(/[\u2066\u2069]/g, '')).to.equal('الشق عند الدرجة 180، صدغي، الساعة 9: المتبقي 0.28 ديوبتر');
    const at = (selector: string): DOMRect => shadowRoot!.querySelector(selector)!.getBoundingClientRect();
    const drawing = at('svg');
    expect(Math.abs(at('.title').right - drawing.right), 'the heading begins at the right').to.be.below(8);
    expect(at('.subtitle').right).to.be.below(at('.title').left);
    const degrees = [...shadowRoot!.querySelectorAll('svg text')].filter(({ textContent }) => /^\d+°$/.test(textContent)).map((label) => [Number.parseInt(label.textContent, 10), label.getBoundingClientRect().left] as const);
    expect(degrees.map(([site]) => site)).to.deep.equal(degrees.toSorted((a, b) => a[1] - b[1]).map(([site]) => site));
  });
});
