import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import { DAY_LIST, INVENTED, eyeOf } from './day-list.js';
import type { EyeName } from './day-list.js';

const meta: Meta = {
  title: 'The day list',
  parameters: { layout: 'fullscreen', controls: { disable: true } },
};
export default meta;

export const AllSix: StoryObj = {
  name: 'All six',
  render: () => html`<main class="page">
    <header class="opening">
      <h1>The day list</h1>
      <p class="invented">${INVENTED}</p>
    </header>
    <div class="side-by-side">
      ${DAY_LIST.map(
        ({ name, plan, interest }) => html`<section class="card">
          <h2>${name}</h2>
          <astig-case .plan=${plan} read-only><astig-cornea></astig-cornea></astig-case>
          <p class="interest">${interest}</p>
        </section>`,
      )}
    </div>
  </main>`,
};

export const Alder = one('Alder');
export const Birch = one('Birch');
export const Cedar = one('Cedar');
export const Dogwood = one('Dogwood');
export const Elm = one('Elm');
export const Fir = one('Fir');

function one(name: EyeName): StoryObj {
  const { plan, interest } = eyeOf(name);
  return {
    name,
    render: () => html`<main class="page">
      <header class="opening">
        <h1>${name}</h1>
        <p>${interest}</p>
        <p class="invented">${INVENTED}</p>
      </header>
      <astig-case .plan=${plan}>
        <div class="grid">
          <section class="card"><astig-cornea></astig-cornea></section>
          <section class="card"><astig-vectors></astig-vectors></section>
          <section class="card wide"><astig-summary></astig-summary></section>
        </div>
      </astig-case>
    </main>`,
  };
}
