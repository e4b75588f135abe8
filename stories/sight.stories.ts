import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
// Registered here as well, so that the story stands by itself.
import { SCENE_NAMES } from '../components/sight/sight.scenes.js';
import type { SceneName } from '../components/sight/sight.scenes.js';
import type { EyePlan } from '../core/index.js';
import { eyeOf } from './day-list.js';
import { alone, eyeControl, languageControl, refusedCase } from './parts.js';
import type { EyeArgs } from './parts.js';

interface Args extends EyeArgs {
  scene: SceneName;
  view: 'pair' | 'divider';
  glasses: boolean;
  inFocus: 'least-blur' | 'front-line' | 'back-line';
  pupil: number | null;
  distance: number | null;
  acuity: '' | 'metres' | 'feet' | 'decimal' | 'logmar';
  hideControls: boolean;
  lang: string;
}

const meta: Meta<Args> = {
  title: 'Elements/astig-sight',
  args: { eye: 'Birch', scene: 'chart', view: 'pair', glasses: false, inFocus: 'least-blur', pupil: null, distance: null, acuity: '', hideControls: false, lang: 'en' },
  argTypes: {
    eye: eyeControl,
    scene: { control: 'select', options: SCENE_NAMES.filter((name) => name !== 'picture') },
    view: { control: 'inline-radio', options: ['pair', 'divider'] },
    inFocus: { control: 'select', options: ['least-blur', 'front-line', 'back-line'], name: 'in-focus' },
    acuity: { control: 'select', options: ['', 'metres', 'feet', 'decimal', 'logmar'] },
    pupil: { control: { type: 'number', min: 1, max: 9, step: 0.5 }, name: 'pupil, mm' },
    distance: { control: { type: 'number' }, name: 'distance, m' },
    hideControls: { name: 'hide-controls' },
    lang: languageControl,
  },
  render: (args) => alone(sight(eyeOf(args.eye).plan, args)),
};
export default meta;

type Story = StoryObj<Args>;

export const Chart: Story = { name: 'Letter chart' };

export const Reading: Story = { name: 'Reading card', args: { scene: 'reading' } };

export const Street: Story = { name: 'Street at dusk', args: { scene: 'street' } };

export const Shelf: Story = { name: 'Clock and shelf', args: { scene: 'shelf' } };

export const Divider: Story = { name: 'With a divider', args: { scene: 'street', view: 'divider' } };

export const FocalLine: Story = { name: 'A focal line in focus', args: { inFocus: 'back-line', scene: 'shelf' } };

export const WithGlasses: Story = { name: 'With glasses', args: { glasses: true } };

export const Languages: Story = { name: 'Reading card in Arabic', args: { scene: 'reading', lang: 'ar' }, globals: { direction: 'rtl' } };

/** A house by the sea, drawn for this story: a page gives a picture of its own in the same way. */
const HOUSE = `data:image/svg+xml,${encodeURIComponent(`<svg xmlns="http://www.w3.org/2000/svg" width="1600" height="1000" viewBox="0 0 160 100">
  <rect width="160" height="62" fill="#bfe0f2"/><rect y="60" width="160" height="40" fill="#2f7fa6"/><circle cx="132" cy="18" r="9" fill="#f6c344"/>
  <path d="M0 66Q40 54 92 70T160 74V100H0z" fill="#6d9a4f"/><path d="M34 40h44v30H34z" fill="#f4ead6"/><path d="M29 42L56 20L83 42z" fill="#a2452f"/>
  <path d="M40 48h9v9h-9zM62 48h9v9h-9z" fill="#35546b"/><path d="M52 56h8v14h-8z" fill="#6b3f27"/>
  <path d="M20 84h120M26 78v12M46 78v12M66 78v12M86 78v12M106 78v12M126 78v12" stroke="#fff" stroke-width="2.5"/>
</svg>`)}`;

export const OwnPicture: Story = {
  name: 'A picture of the page’s own',
  render: ({ eye, view }) =>
    alone(
      html`<astig-case .plan=${eyeOf(eye).plan}>
        <astig-sight scene="picture" .view=${view}><img slot="picture" src=${HOUSE} alt="A house by the sea" /></astig-sight>
      </astig-case>`,
    ),
};

export const BrokenPicture: Story = {
  name: 'A picture that cannot be read',
  render: ({ eye }) =>
    alone(
      html`<astig-case .plan=${eyeOf(eye).plan}>
        <astig-sight scene="picture"><img slot="picture" src="data:image/png;base64,AAAA" alt="" /></astig-sight>
      </astig-case>`,
    ),
};

export const WithCornea: Story = {
  name: 'Beside the cornea: drag the incision there',
  args: { eye: 'Cedar', scene: 'shelf', view: 'divider' },
  render: ({ eye, ...args }) =>
    alone(
      html`<astig-case .plan=${eyeOf(eye).plan}>
        <div class="grid"><astig-cornea></astig-cornea>${element(args)}</div>
      </astig-case>`,
      'page',
    ),
};

export const Refused: Story = { name: 'Refused settings', render: ({ eye }) => alone(refusedCase(eyeOf(eye).plan, html`<astig-sight scene="garden" pupil="40"></astig-sight>`)) };

export const Narrow: Story = { name: 'In a narrow column', render: (args) => alone(sight(eyeOf(args.eye).plan, args), 'narrow') };

export const WithoutCase: Story = { name: 'Without a case', render: () => html`<astig-sight></astig-sight>` };

function sight(plan: EyePlan, args: Omit<Args, 'eye'>): TemplateResult {
  return html`<astig-case .plan=${plan}>${element(args)}</astig-case>`;
}

function element({ scene, view, glasses, inFocus, pupil, distance, acuity, hideControls, lang }: Omit<Args, 'eye'>): TemplateResult {
  return html`<astig-sight
    lang=${lang || nothing}
    .scene=${scene}
    .view=${view}
    .glasses=${glasses}
    .inFocus=${inFocus}
    .pupil=${pupil}
    .distance=${distance}
    .acuity=${acuity}
    .hideControls=${hideControls}
  ></astig-sight>`;
}
