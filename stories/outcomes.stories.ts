import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import { INVENTED, eyeOf } from './day-list.js';
import { languageControl } from './parts.js';
import { INVENTED_SLIPS, inventedResults } from './results.js';

interface Args {
  eyes: number;
  seed: number;
  slips: boolean;
  lang: string;
}

const meta: Meta<Args> = {
  title: 'Elements/astig-outcomes',
  args: { eyes: 120, seed: 7, slips: true, lang: 'en' },
  argTypes: {
    eyes: { control: 'select', options: [1, 2, 5, 19, 20, 120, 1000, 10_000, 100_000] },
    lang: languageControl,
  },
  render: ({ eyes, seed, slips, lang }) => html`<p class="invented">${INVENTED}</p>
    <astig-case .plan=${eyeOf('Cedar').plan} lang=${lang}>
      <astig-outcomes .data=${inventedResults(eyes, seed) + (slips ? `\n${INVENTED_SLIPS}` : '')}></astig-outcomes>
      <astig-summary></astig-summary>
    </astig-case>`,
};
export default meta;

export const Series: StoryObj<Args> = {};
export const TooFew: StoryObj<Args> = { args: { eyes: 12 } };
export const HundredThousand: StoryObj<Args> = { args: { eyes: 100_000, slips: false } };
