import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Viewpoint } from '../components/index.js';
import type { EyePlan } from '../core/index.js';
import { DAY_LIST, eyeOf } from './day-list.js';
import { LANGUAGES, alone, eyeControl, refusedCase } from './parts.js';
import type { EyeArgs } from './parts.js';

interface Args extends EyeArgs {
  lang: (typeof LANGUAGES)[number];
  viewpoint: Viewpoint;
  markSeated: number | null;
  markLying: number | null;
}

const degrees = { control: { type: 'number', min: 0, max: 360 } } as const;

const meta: Meta<Args> = {
  title: 'Elements/astig-sheet',
  component: 'astig-sheet',
  tags: ['autodocs'],
  args: { eye: 'Cedar', lang: 'en', viewpoint: 'facing', markSeated: null, markLying: null },
  argTypes: {
    eye: eyeControl,
    lang: { control: 'select', options: LANGUAGES, name: 'language' },
    viewpoint: { control: 'inline-radio', options: ['facing', 'above', 'temporal'] },
    markSeated: { ...degrees, name: 'mark-seated' },
    markLying: { ...degrees, name: 'mark-lying' },
  },
  render: ({ eye, lang, ...args }) => alone(inLanguage(lang, sheet(eyeOf(eye).plan, args, eye)), ''),
};
export default meta;

type Story = StoryObj<Args>;

export const RightEye: Story = { name: 'A right eye' };

export const LeftEye: Story = { name: 'A left eye, a pair by laser', args: { eye: 'Birch' } };

export const Above: Story = { name: 'For a surgeon at the head', args: { eye: 'Birch', viewpoint: 'above' } };

export const Temporal: Story = { name: 'For a surgeon at the side', args: { viewpoint: 'temporal' } };

export const Turned: Story = { name: 'The eye has turned on lying down', args: { eye: 'Dogwood', markSeated: 180, markLying: 184 } };

export const TurnedTooFar: Story = { name: 'Readings of a mark that cannot be right', args: { eye: 'Dogwood', markSeated: 180, markLying: 148 } };

export const Cautions: Story = { name: 'A plan that should not be carried out', args: { eye: 'Elm' } };

export const Arabic: Story = { name: 'Arabic', args: { eye: 'Birch', lang: 'ar' } };

export const Refused: Story = {
  name: 'Refused settings',
  render: ({ eye, lang }) => alone(inLanguage(lang, refusedCase(eyeOf(eye).plan, html`<astig-sheet></astig-sheet>`)), ''),
};

export const WithoutACase: Story = { name: 'Without a case', render: ({ lang }) => inLanguage(lang, html`<astig-sheet></astig-sheet>`) };

export const DayList: Story = {
  name: 'The whole day list, one page each',
  render: ({ lang, ...args }) => alone(inLanguage(lang, html`${DAY_LIST.map(({ name, plan }) => sheet(plan, args, name))}`), ''),
};

function sheet(plan: EyePlan, { viewpoint, markSeated, markLying }: Pick<Args, 'viewpoint' | 'markSeated' | 'markLying'>, name: string): TemplateResult {
  return html`<astig-case .plan=${plan}>
    <astig-sheet .viewpoint=${viewpoint} .markSeated=${markSeated} .markLying=${markLying}><span slot="patient">${name} (an invented eye)</span></astig-sheet>
  </astig-case>`;
}

function inLanguage(lang: Args['lang'], content: TemplateResult): TemplateResult {
  return html`<div lang=${lang} dir=${lang === 'ar' ? 'rtl' : nothing}>${content}</div>`;
}
