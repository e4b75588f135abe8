import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { EyePlan } from '../core/index.js';
import { eyeOf } from './day-list.js';
import { alone, eyeControl } from './parts.js';
import type { EyeArgs } from './parts.js';

const meta: Meta<EyeArgs> = {
  title: 'Elements/astig-vectors',
  component: 'astig-vectors',
  tags: ['autodocs'],
  args: { eye: 'Birch' },
  argTypes: { eye: eyeControl },
  render: ({ eye }) => alone(vectors(eyeOf(eye).plan)),
};
export default meta;

type Story = StoryObj<EyeArgs>;

export const OneEye: Story = { name: 'One eye' };

/** Every kind of arrow at once. */
const CROWDED: EyePlan = { ...eyeOf('Birch').plan, lensCylinder: 1, lensMeridian: 60 };

export const AllArrows: Story = { name: 'All arrows', args: { eye: 'Birch' }, render: () => alone(vectors(CROWDED)) };

export const AlongOneLine: Story = { name: 'All along one line', args: { eye: 'Cedar' } };

export const NextToNothing: Story = { name: 'Next to nothing', args: { eye: 'Fir' } };

export const Rotated: Story = { name: 'In a host turned by 30°', render: ({ eye }) => alone(vectors(eyeOf(eye).plan), 'rotated') };

export const Zoomed: Story = { name: 'In a host zoomed 1.7 times', render: ({ eye }) => alone(vectors(eyeOf(eye).plan), 'zoomed') };

export const Narrow: Story = { name: 'In a narrow column', render: ({ eye }) => alone(vectors(eyeOf(eye).plan), 'narrow') };

export const RightToLeft: Story = { name: 'Right to left', globals: { direction: 'rtl' } };

function vectors(plan: EyePlan): TemplateResult {
  return html`<astig-case .plan=${plan}><astig-vectors></astig-vectors></astig-case>`;
}
