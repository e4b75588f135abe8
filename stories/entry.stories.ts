import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { KUnit } from '../components/index.js';
import { eyeOf } from './day-list.js';
import { alone, eyeControl, refusedCase } from './parts.js';
import type { EyeArgs } from './parts.js';

interface Args extends EyeArgs {
  kUnit: KUnit;
  readOnly: boolean;
}

const meta: Meta<Args> = {
  title: 'Elements/astig-entry',
  component: 'astig-entry',
  tags: ['autodocs'],
  args: { eye: 'Cedar', kUnit: 'D', readOnly: false },
  argTypes: {
    eye: eyeControl,
    kUnit: { control: 'inline-radio', options: ['D', 'mm'] },
    readOnly: { control: 'boolean' },
  },
  render: (args) => alone(entry(args)),
};
export default meta;

type Story = StoryObj<Args>;

export const Dioptres: Story = { name: 'Readings in dioptres' };

export const Millimetres: Story = { name: 'Readings in millimetres', args: { kUnit: 'mm' } };

export const EveryGroup: Story = { name: 'With a toric lens and a measured back surface', args: { eye: 'Dogwood' } };

export const ReadOnly: Story = { name: 'Read-only', args: { readOnly: true } };

export const Refused: Story = {
  name: 'Refused settings',
  render: ({ eye }) => alone(refusedCase(eyeOf(eye).plan, html`<astig-entry></astig-entry>`)),
};

export const Narrow: Story = { name: 'In a narrow column', render: (args) => alone(entry(args), 'narrow') };

export const RightToLeft: Story = { name: 'Right to left', globals: { direction: 'rtl' } };

function entry({ eye, kUnit, readOnly }: Args): TemplateResult {
  // The unit first: a plan always comes in dioptres and is shown in the unit that stands.
  return html`<astig-case .kUnit=${kUnit} .plan=${eyeOf(eye).plan}><astig-entry .readOnly=${readOnly}></astig-entry></astig-case>`;
}
