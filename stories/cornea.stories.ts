import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { Viewpoint } from '../components/index.js';
import { eyeOf } from './day-list.js';
import { alone, eyeControl, inShadow } from './parts.js';
import type { EyeArgs } from './parts.js';

interface Args extends EyeArgs {
  viewpoint: Viewpoint;
  readOnly: boolean;
  map?: 'before' | 'after' | 'difference' | null;
  mapPower?: 'axial' | 'tangential';
}

const meta: Meta<Args> = {
  title: 'Elements/astig-cornea',
  component: 'astig-cornea',
  tags: ['autodocs'],
  args: { eye: 'Cedar', viewpoint: 'facing', readOnly: false },
  argTypes: {
    eye: eyeControl,
    viewpoint: { control: 'inline-radio', options: ['facing', 'above', 'temporal'] },
    readOnly: { control: 'boolean' },
    map: { control: 'inline-radio', options: [null, 'before', 'after', 'difference'] },
    mapPower: { control: 'inline-radio', options: ['axial', 'tangential'] },
  },
  render: (args) => alone(cornea(args)),
};
export default meta;

type Story = StoryObj<Args>;

export const Facing: Story = { name: 'Facing the patient' };

export const Above: Story = { name: 'From above the head', args: { viewpoint: 'above' } };

export const Temporal: Story = { name: 'From the temporal side', args: { viewpoint: 'temporal' } };

export const ReadOnly: Story = { name: 'Read-only', args: { readOnly: true } };

export const WithLens: Story = { name: 'With a toric lens', args: { eye: 'Dogwood' } };

export const PowerMap: Story = { name: 'With a map of the power', args: { map: 'after', mapPower: 'axial' } };

export const DifferenceMap: Story = { name: 'With a map of what the operation changes', args: { map: 'difference', mapPower: 'tangential' } };

export const Rotated: Story = { name: 'In a host turned by 30°', render: (args) => alone(cornea(args), 'rotated') };

export const Zoomed: Story = { name: 'In a host zoomed 1.7 times', render: (args) => alone(cornea(args), 'zoomed') };

export const Scaled: Story = { name: 'In a host scaled 1.7 times', render: (args) => alone(cornea(args), 'scaled') };

export const Narrow: Story = { name: 'In a narrow column', args: { eye: 'Birch' }, render: (args) => alone(cornea(args), 'narrow') };

export const NestedShadowRoots: Story = {
  name: 'Three shadow roots below its case',
  render: ({ eye, viewpoint, readOnly }) =>
    alone(
      html`<astig-case .plan=${eyeOf(eye).plan}>
        ${inShadow(html`<astig-cornea .viewpoint=${viewpoint} .readOnly=${readOnly}></astig-cornea>`, 3)}
      </astig-case>`,
    ),
};

export const RightToLeft: Story = { name: 'Right to left', args: { eye: 'Birch' }, globals: { direction: 'rtl' } };

export const Several: Story = {
  name: 'Several on one page',
  render: ({ readOnly }) =>
    alone(
      html`${cornea({ eye: 'Alder', viewpoint: 'facing', readOnly })} ${cornea({ eye: 'Birch', viewpoint: 'above', readOnly })}
      ${cornea({ eye: 'Cedar', viewpoint: 'temporal', readOnly })}`,
      'side-by-side',
    ),
};

export const WithoutCase: Story = { name: 'Without a case', render: () => html`<astig-cornea></astig-cornea>` };

function cornea({ eye, viewpoint, readOnly, map, mapPower }: Args): TemplateResult {
  return html`<astig-case .plan=${eyeOf(eye).plan}>
    <astig-cornea .viewpoint=${viewpoint} .readOnly=${readOnly} .map=${map} .mapPower=${mapPower}></astig-cornea>
  </astig-case>`;
}
