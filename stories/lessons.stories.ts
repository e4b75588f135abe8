/// <reference types="vite/client" />
import type { Meta, StoryObj } from '@storybook/web-components-vite';
import { html } from 'lit';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import { INVENTED } from './day-list.js';
import { languageControl } from './parts.js';

/** The lessons as they are shipped, by the names of their files. */
const FILES = import.meta.glob<string>('./lessons/*.html', { query: '?raw', import: 'default', eager: true });

interface Args {
  lesson: string;
  lang: string;
}

const meta: Meta<Args> = {
  title: 'Lessons',
  args: { lang: 'en' },
  argTypes: { lang: languageControl },
  render: ({ lesson, lang }) => html`<p class="invented">${INVENTED}</p><div lang=${lang}>${unsafeHTML(FILES[`./lessons/${lesson}.html`])}</div>`,
};
export default meta;

const lesson = (name: string): StoryObj<Args> => ({ args: { lesson: name } });

export const WhyDoubleTheAngle = lesson('double-angle');
export const OnAndOffTheSteepMeridian = lesson('on-and-off-the-steep-meridian');
export const Torque = lesson('torque');
export const AgainstTheRuleAndTheBackSurface = lesson('back-surface');
export const APairOfArcs = lesson('pair-of-arcs');
export const ALensTenDegreesOff = lesson('lens-off-its-meridian');
export const WhyTheMeanOfMagnitudesMisleads = lesson('mean-of-magnitudes');
export const SeeingFromTheSurgeonsChair = lesson('surgeons-chair');
