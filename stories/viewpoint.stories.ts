import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import { eyeOf } from './day-list.js';
import { alone, eyeControl } from './parts.js';
import type { EyeArgs } from './parts.js';

const meta: Meta<EyeArgs> = {
  title: 'Three seats',
  args: { eye: 'Cedar' },
  argTypes: { eye: eyeControl },
};
export default meta;

/** One eye for three people: whoever faces the patient, the surgeon at the head, and the surgeon at the side. */
export const ThreeSeats: StoryObj<EyeArgs> = {
  name: 'Three seats',
  render: ({ eye }) =>
    alone(
      html`<astig-case class="side-by-side" .plan=${eyeOf(eye).plan}>
        <astig-cornea viewpoint="facing"></astig-cornea>
        <astig-cornea viewpoint="above"></astig-cornea>
        <astig-cornea viewpoint="temporal"></astig-cornea>
      </astig-case>`,
      'seats',
    ),
};

/** The same with the power beneath: it turns with the eye, its figures stay upright. */
export const ThreeSeatsWithMap: StoryObj<EyeArgs> = {
  name: 'Three seats, with a map of the power',
  render: ({ eye }) =>
    alone(
      html`<astig-case class="side-by-side" .plan=${eyeOf(eye).plan}>
        <astig-cornea map="after" viewpoint="facing"></astig-cornea>
        <astig-cornea map="after" viewpoint="above"></astig-cornea>
        <astig-cornea map="after" viewpoint="temporal"></astig-cornea>
      </astig-case>`,
      'seats',
    ),
};
