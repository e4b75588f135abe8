import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { EyePlan } from '../core/index.js';
import { eyeOf } from './day-list.js';
import { alone, eyeControl, refusedCase } from './parts.js';
import type { EyeArgs } from './parts.js';

interface Args extends EyeArgs {
  widths: string;
  lenses: string;
  sites: string;
  mostArcs: number;
  noArcs: boolean;
  noLens: boolean;
  readOnly: boolean;
}

const meta: Meta<Args> = {
  title: 'Elements/astig-options',
  component: 'astig-options',
  tags: ['autodocs'],
  args: { eye: 'Cedar', widths: '', lenses: '', sites: '', mostArcs: 2, noArcs: false, noLens: false, readOnly: false },
  argTypes: {
    eye: eyeControl,
    widths: { control: 'text' },
    lenses: { control: 'text' },
    sites: { control: 'text' },
    mostArcs: { control: 'inline-radio', options: [0, 1, 2] },
    noArcs: { control: 'boolean' },
    noLens: { control: 'boolean' },
    readOnly: { control: 'boolean' },
  },
  render: (args) => alone(options(eyeOf(args.eye).plan, args), 'wide'),
};
export default meta;

type Story = StoryObj<Args>;

export const OneEye: Story = { name: 'One eye' };

export const OwnBlades: Story = { name: 'Two blades, no lens', args: { widths: '2.2 2.75', noLens: true } };

export const NoArcsHere: Story = { name: 'An eye that should have no arcs', args: { eye: 'Elm' } };

export const WrongLimits: Story = { name: 'Limits that cannot be taken', args: { widths: '2.2 9' } };

export const ReadOnly: Story = { name: 'Read-only', args: { readOnly: true } };

export const Refused: Story = {
  name: 'Refused settings',
  render: ({ eye }) => alone(refusedCase(eyeOf(eye).plan, html`<astig-options></astig-options>`), 'wide'),
};

export const BesideTheEye: Story = {
  name: 'Beside the eye',
  render: ({ eye }) =>
    alone(html`<astig-case .plan=${eyeOf(eye).plan}><div class="alone"><astig-cornea></astig-cornea></div><astig-options></astig-options></astig-case>`, 'wide'),
};

export const Narrow: Story = { name: 'In a narrow column', render: (args) => alone(options(eyeOf(args.eye).plan, args), 'narrow') };

export const RightToLeft: Story = { name: 'Right to left', globals: { direction: 'rtl' } };

function options(plan: EyePlan, { widths, lenses, sites, mostArcs, noArcs, noLens, readOnly }: Args): TemplateResult {
  return html`<astig-case .plan=${plan}>
    <astig-options
      .widths=${widths}
      .lenses=${lenses}
      .sites=${sites}
      .mostArcs=${mostArcs as 0 | 1 | 2}
      .noArcs=${noArcs}
      .noLens=${noLens}
      .readOnly=${readOnly}
    ></astig-options>
  </astig-case>`;
}
