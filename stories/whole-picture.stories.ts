import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { AstigChangeEvent, AstigInputEvent } from '../components/index.js';
import { DAY_LIST, INVENTED, eyeOf } from './day-list.js';
import type { EyeName } from './day-list.js';
import { eventText } from './parts.js';

const FIRST: EyeName = 'Cedar';
const NO_EVENT = 'No event yet. Choosing an eye sets case.plan, which fires none.';

const meta: Meta = {
  title: 'The whole picture',
  parameters: { layout: 'fullscreen', controls: { disable: true } },
};
export default meta;

export const WholePicture: StoryObj = {
  // The title again, so that it stands in the list as one entry and not as a folder with one story.
  name: 'The whole picture',
  render: () => html`<main class="page">
    <header class="opening">
      <h1>One eye, one plan, one picture</h1>
      <p class="invented">${INVENTED}</p>
      <div class="picker">
        <label>
          <span>Eye</span>
          <select @change=${choose}>
            ${DAY_LIST.map(({ name }) => html`<option value=${name} ?selected=${name === FIRST}>${name}</option>`)}
          </select>
        </label>
        <p class="interest">${eyeOf(FIRST).interest}</p>
      </div>
    </header>
    <astig-case .plan=${eyeOf(FIRST).plan} @astig-input=${log} @astig-change=${log}>
      <div class="grid three">
        <section class="card">
          <h2>The plan on the cornea</h2>
          <astig-cornea></astig-cornea>
        </section>
        <section class="card">
          <h2>How the parts add up</h2>
          <astig-vectors></astig-vectors>
        </section>
        <section class="card wide words">
          <h2>In words and numbers</h2>
          <astig-summary></astig-summary>
        </section>
        <p class="log wide">${NO_EVENT}</p>
        <section class="card">
          <h2>Where to enter</h2>
          <astig-sweep></astig-sweep>
        </section>
        <section class="card wider">
          <h2>Which plan</h2>
          <astig-options></astig-options>
        </section>
        <section class="card wide">
          <h2>Measurements and plan</h2>
          <astig-entry></astig-entry>
        </section>
      </div>
    </astig-case>
  </main>`,
};

function choose(event: Event): void {
  const select = event.currentTarget as HTMLSelectElement;
  const page = select.closest('.page')!;
  const { plan, interest } = eyeOf(select.value as EyeName);
  page.querySelector('astig-case')!.plan = plan;
  page.querySelector('.interest')!.textContent = interest;
  page.querySelector('.log')!.textContent = NO_EVENT;
}

function log(event: AstigInputEvent | AstigChangeEvent): void {
  (event.currentTarget as Element).closest('.page')!.querySelector('.log')!.textContent = eventText(event);
}
