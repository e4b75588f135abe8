import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { EyePlan } from '../core/index.js';
import { eyeOf } from './day-list.js';
import { LANGUAGES, alone, eyeControl, refusedCase } from './parts.js';
import type { EyeArgs } from './parts.js';

interface Args extends EyeArgs {
  lang: (typeof LANGUAGES)[number];
  hide: string;
  headingLevel: number;
}

const meta: Meta<Args> = {
  title: 'Elements/astig-explain',
  args: { eye: 'Cedar', lang: 'en', hide: '', headingLevel: 2 },
  argTypes: {
    eye: eyeControl,
    lang: { control: 'select', options: LANGUAGES, name: 'language' },
    hide: { control: 'text' },
    headingLevel: { control: { type: 'number', min: 1, max: 4 }, name: 'heading-level' },
  },
  render: ({ eye, ...args }) => alone(inLanguage(args.lang, explain(eyeOf(eye).plan, args)), ''),
};
export default meta;

type Story = StoryObj<Args>;

export const OneEye: Story = { name: 'One eye' };

export const ToricLens: Story = { name: 'With a toric lens', args: { eye: 'Dogwood' } };

export const OpenPoints: Story = { name: 'A plan that should not be carried out', args: { eye: 'Elm' } };

/** A measured eye for which nothing has been decided. */
const MEASURED: EyePlan = { eye: 'left', flatK: 42.5, steepK: 44, steepMeridian: 88, age: 63 };

export const NothingPlanned: Story = { name: 'Nothing planned', render: (args) => alone(inLanguage(args.lang, explain(MEASURED, args)), '') };

export const WithoutACase: Story = { name: 'Without a case', render: ({ lang }) => inLanguage(lang, html`<astig-explain></astig-explain>`) };

export const Refused: Story = {
  name: 'Refused settings',
  render: ({ eye, lang }) => alone(inLanguage(lang, refusedCase(eyeOf(eye).plan, html`<astig-explain></astig-explain>`)), ''),
};

export const OwnSections: Story = {
  name: 'The clinic’s own sections',
  args: { hide: 'promise' },
  render: ({ eye, hide, lang }) =>
    alone(
      inLanguage(
        lang,
        html`<astig-case .plan=${eyeOf(eye).plan}>
          <astig-explain .hide=${hide}>
            <div slot="questions">
              <h3>Before you come</h3>
              <p>Bring your glasses and a list of your medicines.</p>
            </div>
            <p slot="contact">Call the Seaside Eye Unit, which does not exist: 01632 960 123.</p>
          </astig-explain>
        </astig-case>`,
      ),
      '',
    ),
};

export const Arabic: Story = { name: 'Arabic', args: { lang: 'ar', eye: 'Dogwood' } };

export const Narrow: Story = { name: 'In a narrow column', render: (args) => alone(inLanguage(args.lang, explain(eyeOf(args.eye).plan, args)), 'narrow') };

function explain(plan: EyePlan, { hide, headingLevel }: Pick<Args, 'hide' | 'headingLevel'>): TemplateResult {
  return html`<astig-case .plan=${plan}><astig-explain .hide=${hide} .headingLevel=${headingLevel}></astig-explain></astig-case>`;
}

function inLanguage(lang: Args['lang'], content: TemplateResult): TemplateResult {
  return html`<div lang=${lang} dir=${lang === 'ar' ? 'rtl' : 'ltr'}>${content}</div>`;
}
