import { html, render } from 'lit';
import type { TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { AstigCase, AstigChangeEvent, AstigInputEvent } from '../components/index.js';
import { meridian } from '../core/index.js';
import type { Astigmatism, EyePlan } from '../core/index.js';
import { EYE_NAMES, INVENTED } from './day-list.js';
import type { EyeName } from './day-list.js';

/** The control that chooses one of the invented eyes. */
export const eyeControl = { control: 'select', options: EYE_NAMES, name: 'invented eye' } as const;

/** The languages that the elements speak, and the control that chooses one. */
export const LANGUAGES = ['en', 'es', 'de', 'fr', 'ar', 'zh'] as const;
export const languageControl = { control: 'inline-radio', options: LANGUAGES } as const;

export interface EyeArgs {
  eye: EyeName;
}

/** One element with the note that every page with invented data carries. */
export function alone(content: TemplateResult, className = 'alone'): TemplateResult {
  return html`<p class="invented">${INVENTED}</p>
    <div class=${className}>${content}</div>`;
}

/** `0.61 D @ 102°`; a meridian that rounds to 0 is printed 180. */
export function written({ magnitude, meridian: at }: Astigmatism): string {
  return `${magnitude.toFixed(2)} D @ ${meridian(Math.round(at))}°`;
}

/** What a developer wants to see of an event. */
export function eventText({ type, source, outcome }: AstigInputEvent | AstigChangeEvent): string {
  return `${type} from ${source}: ${written(outcome.after)} is expected to remain`;
}

/** The content inside as many shadow roots, one in the other, as `depth` says. */
export function inShadow(content: TemplateResult, depth: number): TemplateResult {
  const inner = depth > 1 ? inShadow(content, depth - 1) : content;
  const fill = (host?: Element): void => {
    if (host) render(inner, host.shadowRoot ?? host.attachShadow({ mode: 'open' }));
  };
  return html`<div ${ref(fill)}></div>`;
}

/** A case whose page has set a good plan first and then a reading that no cornea has. */
export function refusedCase(plan: EyePlan, content: TemplateResult): TemplateResult {
  return html`<astig-case .plan=${plan} ${ref(setTooSteep)}>${content}</astig-case>`;
}

function setTooSteep(element?: Element): void {
  const owner = element as AstigCase | undefined;
  // Settings are taken in together, when the outcome is asked for: without the question the good plan would never stand.
  if (owner && owner.outcome) owner.steepK = 99;
}
