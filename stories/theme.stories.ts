import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import { INVENTED, eyeOf } from './day-list.js';
import './theme.css';

const meta: Meta = {
  title: 'In another look',
  parameters: { layout: 'fullscreen', controls: { disable: true } },
};
export default meta;

/** Every element in a fictitious clinic's colours and type: `theme.css` is all that the page says. */
export const Seaside: StoryObj = {
  name: 'In another look',
  render: () => html`<main class="page seaside">
    <header class="opening">
      <h1>A fictitious clinic’s own look</h1>
      <p class="invented">${INVENTED} Colours, type and one part: 18 lines of CSS.</p>
    </header>
    <astig-case .plan=${{ ...eyeOf('Cedar').plan, lensCylinder: 1, lensMeridian: 10 }}>
      <div class="grid three">
        <section class="card"><astig-cornea pictures></astig-cornea></section>
        <section class="card"><astig-vectors></astig-vectors></section>
        <section class="card wide words"><astig-summary></astig-summary></section>
        <section class="card"><astig-sweep></astig-sweep></section>
        <section class="card wider"><astig-options></astig-options></section>
        <section class="card wide"><astig-entry></astig-entry></section>
        <section class="card wide"><astig-sight></astig-sight></section>
        <section class="card wide"><astig-explain></astig-explain></section>
      </div>
    </astig-case>
  </main>`,
};
