import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { EyePlan } from '../core/index.js';
import { eyeOf } from './day-list.js';
import { alone, eyeControl } from './parts.js';
import type { EyeArgs } from './parts.js';

interface Args extends EyeArgs {
  readOnly: boolean;
  hideSpread: boolean;
}

const meta: Meta<Args> = {
  title: 'Elements/astig-sweep',
  component: 'astig-sweep',
  tags: ['autodocs'],
  args: { eye: 'Cedar', readOnly: false, hideSpread: false },
  argTypes: { eye: eyeControl, readOnly: { control: 'boolean' }, hideSpread: { control: 'boolean' } },
  render: (args) => alone(sweep(eyeOf(args.eye).plan, args)),
};
export default meta;

type Story = StoryObj<Args>;

export const OneEye: Story = { name: 'One eye' };

export const WithoutIncision: Story = {
  name: 'No incision planned',
  render: (args) => alone(sweep({ ...eyeOf(args.eye).plan, incisionSite: null }, args)),
};

export const WithoutBand: Story = { name: 'Without the band', args: { hideSpread: true } };

export const ReadOnly: Story = { name: 'Read-only', args: { readOnly: true } };

export const Oblique: Story = { name: 'Oblique, with a pair of arcs', args: { eye: 'Birch' } };

export const High: Story = { name: 'High: the site hardly matters', args: { eye: 'Elm' } };

export const NextToNothing: Story = { name: 'Next to nothing to correct', args: { eye: 'Fir' } };

/** The surgeon's own figure without any flattening. */
export const SameEverywhere: Story = {
  name: 'The same at every site',
  render: (args) => alone(sweep({ ...eyeOf(args.eye).plan, incisionFlattening: 0 }, args)),
};

export const WithCornea: Story = {
  name: 'Beside the cornea: drag an arc there',
  render: ({ eye, readOnly, hideSpread }) =>
    alone(
      html`<astig-case .plan=${eyeOf(eye).plan}>
        <astig-cornea .readOnly=${readOnly}></astig-cornea>
        <astig-sweep .readOnly=${readOnly} .hideSpread=${hideSpread}></astig-sweep>
      </astig-case>`,
    ),
};

export const Rotated: Story = { name: 'In a host turned by 30°', render: (args) => alone(sweep(eyeOf(args.eye).plan, args), 'rotated') };

export const Zoomed: Story = { name: 'In a host zoomed 1.7 times', render: (args) => alone(sweep(eyeOf(args.eye).plan, args), 'zoomed') };

export const Scaled: Story = { name: 'In a host scaled 1.7 times', render: (args) => alone(sweep(eyeOf(args.eye).plan, args), 'scaled') };

export const Narrow: Story = { name: 'In a narrow column', render: (args) => alone(sweep(eyeOf(args.eye).plan, args), 'narrow') };

export const RightToLeft: Story = { name: 'Right to left', globals: { direction: 'rtl' } };

export const WithoutCase: Story = { name: 'Without a case', render: () => html`<astig-sweep></astig-sweep>` };

function sweep(plan: EyePlan, { readOnly, hideSpread }: Omit<Args, 'eye'>): TemplateResult {
  return html`<astig-case .plan=${plan}><astig-sweep .readOnly=${readOnly} .hideSpread=${hideSpread}></astig-sweep></astig-case>`;
}
