import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { EyePlan } from '../core/index.js';
import { eyeOf } from './day-list.js';
import { alone, eyeControl, refusedCase } from './parts.js';
import type { EyeArgs } from './parts.js';

const meta: Meta<EyeArgs> = {
  title: 'Elements/astig-summary',
  component: 'astig-summary',
  tags: ['autodocs'],
  args: { eye: 'Cedar' },
  argTypes: { eye: eyeControl },
  render: ({ eye }) => alone(summary(eyeOf(eye).plan)),
};
export default meta;

type Story = StoryObj<EyeArgs>;

export const OneEye: Story = { name: 'One eye' };

export const NoArcsHere: Story = { name: 'An eye that should have no arcs', args: { eye: 'Elm' } };

/** A measured eye for which nothing has been decided. */
const MEASURED: EyePlan = { eye: 'left', flatK: 42.5, steepK: 44, steepMeridian: 88, age: 63 };

export const NothingPlanned: Story = { name: 'Nothing planned', render: () => alone(summary(MEASURED)) };

export const Refused: Story = {
  name: 'Refused settings',
  render: ({ eye }) => alone(refusedCase(eyeOf(eye).plan, html`<astig-summary></astig-summary>`)),
};

export const Narrow: Story = { name: 'In a narrow column', render: ({ eye }) => alone(summary(eyeOf(eye).plan), 'narrow') };

export const RightToLeft: Story = { name: 'Right to left', globals: { direction: 'rtl' } };

function summary(plan: EyePlan): TemplateResult {
  return html`<astig-case .plan=${plan}><astig-summary></astig-summary></astig-case>`;
}
