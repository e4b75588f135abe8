import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { eyeOf } from './day-list.js';
import { LETTER } from './letter-texts.js';
import type { LetterLanguage, LetterTexts } from './letter-texts.js';
import './letter.css';

const meta: Meta = {
  title: 'A letter from the clinic',
  parameters: { layout: 'fullscreen', controls: { disable: true } },
};
export default meta;

/** What the clinic's developer writes: HTML, with the clinic's own words filled in below. */
const MARKUP = `
  <header class="letter-head">
    <p class="letter-name">Seaside Eye Unit</p>
    <div class="letter-tools">
      <label><span data-text="language"></span> <select></select></label>
      <button type="button" data-text="print"></button>
    </div>
  </header>
  <p class="invented" data-text="invented"></p>
  <h1 data-text="heading"></h1>
  <p data-text="greeting"></p>
  <p data-text="opening"></p>
  <astig-case read-only>
    <section class="card">
      <h2 data-text="eye"></h2>
      <astig-cornea hide-spread></astig-cornea>
    </section>
    <section class="card">
      <h2 data-text="sight"></h2>
      <astig-sight></astig-sight>
    </section>
    <section class="card">
      <astig-explain>
        <p slot="contact"><strong data-text="contact"></strong></p>
      </astig-explain>
    </section>
  </astig-case>
  <p class="letter-closing" data-text="closing"></p>
`;

export const Letter: StoryObj = {
  name: 'A letter from the clinic',
  render: letter,
};

function letter(): HTMLElement {
  const page = document.createElement('main');
  page.className = 'letter';
  page.innerHTML = MARKUP;
  page.querySelector('astig-case')!.plan = eyeOf('Cedar').plan;
  page.querySelector('button')!.addEventListener('click', () => print());
  const select = page.querySelector('select')!;
  for (const [lang, { name }] of Object.entries(LETTER)) select.append(new Option(name, lang));
  select.addEventListener('change', () => translate(page, select.value as LetterLanguage));
  translate(page, 'en');
  return page;
}

/** Sets `lang` and `dir`; the elements inside follow by themselves. */
function translate(page: HTMLElement, lang: LetterLanguage): void {
  page.lang = lang;
  page.dir = LETTER[lang].dir;
  for (const element of page.querySelectorAll<HTMLElement>('[data-text]')) {
    element.textContent = LETTER[lang][element.dataset.text as keyof LetterTexts];
  }
}
