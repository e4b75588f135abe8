import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { AstigCase, AstigChangeEvent, AstigInputEvent } from '../components/index.js';
import { INVENTED, eyeOf } from './day-list.js';
import type { EyeName } from './day-list.js';
import { eventText, eyeControl } from './parts.js';

/** Not called `eye`, as in the other stories: that is a property of the element. */
interface Args {
  invented: EyeName;
}

const meta: Meta<Args> = {
  title: 'Elements/astig-case',
  component: 'astig-case',
  tags: ['autodocs'],
  args: { invented: 'Alder' },
  argTypes: { invented: eyeControl },
  parameters: { layout: 'fullscreen' },
};
export default meta;

type Story = StoryObj<Args>;

/** How many events the list keeps. */
const KEPT = 6;

export const Events: Story = {
  render: ({ invented }) =>
    page(html`<astig-case .plan=${eyeOf(invented).plan} @astig-input=${list} @astig-change=${list}>
      <div class="grid">
        <section class="card"><astig-cornea></astig-cornea></section>
        <section class="card">
          <h2>What the page hears, newest first</h2>
          <p>Move something in the drawing: one astig-input for every movement, and one astig-change when it is let go.</p>
          <ul class="log-list"></ul>
        </section>
      </div>
    </astig-case>`),
};

export const Buttons: Story = {
  name: 'Undo, redo and reset by the page',
  render: ({ invented }) =>
    page(html`<div class="buttons">
        <button type="button" @click=${(event: Event) => caseNear(event).undo()}>Undo</button>
        <button type="button" @click=${(event: Event) => caseNear(event).redo()}>Redo</button>
        <button type="button" @click=${(event: Event) => caseNear(event).reset()}>Back to the measured eye</button>
      </div>
      <astig-case .plan=${eyeOf(invented).plan}>
        <div class="grid">
          <section class="card"><astig-cornea></astig-cornea></section>
          <section class="card"><astig-summary></astig-summary></section>
        </div>
      </astig-case>`),
};

export const For: Story = {
  name: 'Elements outside of it, by for',
  render: ({ invented }) =>
    page(html`<astig-case id="far-case" .plan=${eyeOf(invented).plan}></astig-case>
      <div class="grid">
        <section class="card"><astig-cornea for="far-case"></astig-cornea></section>
        <section class="card"><astig-summary for="far-case"></astig-summary></section>
      </div>`),
};

export const Attributes: Story = {
  name: 'By attributes alone',
  parameters: { controls: { disable: true } },
  render: () =>
    page(html`<astig-case
      eye="left"
      k-unit="mm"
      flat-k="7.85"
      steep-k="7.60"
      steep-meridian="92"
      age="64"
      back-surface="typical"
      incision-site="0"
      arc-site="92"
      arc-count="2"
      arc-length="40"
    >
      <div class="grid">
        <section class="card"><astig-cornea></astig-cornea></section>
        <section class="card"><astig-summary></astig-summary></section>
      </div>
    </astig-case>`),
};

export const ReadOnly: Story = {
  name: 'Read-only as a whole',
  render: ({ invented }) =>
    page(html`<astig-case .plan=${eyeOf(invented).plan} read-only>
      <div class="grid">
        <section class="card"><astig-cornea></astig-cornea></section>
        <section class="card"><astig-vectors></astig-vectors></section>
      </div>
    </astig-case>`),
};

function page(content: TemplateResult): TemplateResult {
  return html`<main class="page">
    <p class="invented">${INVENTED}</p>
    ${content}
  </main>`;
}

function caseNear(event: Event): AstigCase {
  return (event.currentTarget as Element).closest('.page')!.querySelector('astig-case')!;
}

function list(event: AstigInputEvent | AstigChangeEvent): void {
  const target = (event.currentTarget as Element).querySelector('.log-list')!;
  const item = document.createElement('li');
  item.textContent = eventText(event);
  target.prepend(item);
  while (target.childElementCount > KEPT) target.lastElementChild!.remove();
}
