import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { EyePlan } from '../core/index.js';
import { eyeOf } from './day-list.js';
import { alone, eyeControl } from './parts.js';
import type { EyeArgs } from './parts.js';

interface Args extends EyeArgs {
  readOnly: boolean;
  shows: string;
  inFocus: string;
  pupil: number;
  screen: string | number;
  turn: number;
  tilt: number;
}

const meta: Meta<Args> = {
  title: 'Elements/astig-pencil',
  component: 'astig-pencil',
  tags: ['autodocs'],
  args: { eye: 'Cedar', readOnly: false, shows: 'after', inFocus: 'least-blur', pupil: 3, screen: 'front-line', turn: 60, tilt: 18 },
  argTypes: {
    eye: eyeControl,
    readOnly: { control: 'boolean' },
    shows: { control: 'inline-radio', options: ['after', 'before'] },
    inFocus: { control: 'inline-radio', options: ['least-blur', 'front-line', 'back-line'] },
    pupil: { control: { type: 'range', min: 1, max: 9, step: 0.5 } },
    screen: { control: 'inline-radio', options: ['retina', 'front-line', 'circle', 'back-line'] },
    turn: { control: { type: 'range', min: -180, max: 180 } },
    tilt: { control: { type: 'range', min: -45, max: 45 } },
  },
  render: (args) => alone(pencil(eyeOf(args.eye).plan, args)),
};
export default meta;

type Story = StoryObj<Args>;

export const OneEye: Story = { name: 'One eye' };

export const WithCornea: Story = {
  name: 'Beside the cornea: drag the incision there',
  render: (args) =>
    alone(
      html`<astig-case .plan=${eyeOf(args.eye).plan}>
        <astig-cornea></astig-cornea>
        ${bare(args)}
      </astig-case>`,
    ),
};

export const BeforeAndAfter: Story = {
  name: 'Before and after',
  render: (args) =>
    alone(
      html`<astig-case .plan=${eyeOf(args.eye).plan}>
        <h3>Before surgery</h3>
        ${bare({ ...args, shows: 'before' })}
        <h3>After surgery, as expected</h3>
        ${bare({ ...args, shows: 'after' })}
      </astig-case>`,
    ),
};

export const FromTheFront: Story = { name: 'From the front: both lines at right angles, as on the dial', args: { turn: 0, tilt: 0, screen: 'circle' } };

export const FromTheSide: Story = { name: 'From the side: one line after the other', args: { turn: 90, tilt: 0 } };

export const FrontLineInFocus: Story = { name: 'The front line on the retina', args: { inFocus: 'front-line', screen: 'retina' } };

export const Oblique: Story = { args: { eye: 'Birch' } };

export const High: Story = { args: { eye: 'Elm' } };

export const NextToNothing: Story = { name: 'Next to nothing to correct', args: { eye: 'Fir' } };

export const OnePoint: Story = {
  name: 'No astigmatism: one point',
  render: (args) => alone(pencil({ flatK: 43, steepK: 43 }, args)),
};

export const Still: Story = { name: 'A still, read-only', args: { readOnly: true } };

export const Refused: Story = { name: 'Settings that cannot be taken', args: { pupil: 40 } };

export const Rotated: Story = { name: 'In a host turned by 30°', render: (args) => alone(pencil(eyeOf(args.eye).plan, args), 'rotated') };

export const Zoomed: Story = { name: 'In a host zoomed 1.7 times', render: (args) => alone(pencil(eyeOf(args.eye).plan, args), 'zoomed') };

export const Narrow: Story = { name: 'In a narrow column', render: (args) => alone(pencil(eyeOf(args.eye).plan, args), 'narrow') };

export const RightToLeft: Story = { name: 'Right to left', globals: { direction: 'rtl' } };

export const WithoutCase: Story = { name: 'Without a case', render: () => html`<astig-pencil></astig-pencil>` };

function pencil(plan: EyePlan, args: Omit<Args, 'eye'>): TemplateResult {
  return html`<astig-case .plan=${plan}>${bare(args)}</astig-case>`;
}

function bare({ readOnly, shows, inFocus, pupil, screen, turn, tilt }: Omit<Args, 'eye'>): TemplateResult {
  return html`<astig-pencil .readOnly=${readOnly} .shows=${shows} .inFocus=${inFocus} .pupil=${pupil} .screen=${screen} .turn=${turn} .tilt=${tilt}></astig-pencil>`;
}
