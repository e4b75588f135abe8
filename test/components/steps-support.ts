import { fixture, html } from '@open-wc/testing';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigStepEvent } from '../../components/steps/steps.event.js';
import type { AstigSteps } from '../../components/steps/steps.js';
import { emulate } from '../engine.js';
import { drawn, until } from './support.js';

export interface Walk {
  eye: AstigCase;
  steps: AstigSteps;
  at: (name: string) => HTMLElement;
  text: (selector: string) => string;
  events: AstigStepEvent[];
}

/** Invented: 1.50 D against the rule, an entry on the steep meridian, then a pair of arcs. */
export async function walk(inner = html`<astig-step id="start">As measured.</astig-step>
  <astig-step incision-site="180" incision-width="2.8">The entry.</astig-step>
  <astig-step arc-site="0" arc-count="2" arc-length="40">Two arcs.</astig-step>`): Promise<Walk> {
  const eye = await fixture<AstigCase>(html`<astig-case flat-k="42.5" steep-k="44" steep-meridian="180" age="70">
    <astig-steps id="lesson">${inner}<astig-vectors></astig-vectors><astig-summary></astig-summary></astig-steps>
  </astig-case>`);
  const steps = eye.querySelector('astig-steps')!;
  const at = (selector: string): HTMLElement => steps.shadowRoot!.querySelector<HTMLElement>(selector)!;
  const events: AstigStepEvent[] = [];
  eye.addEventListener('astig-step', (event) => events.push(event));
  await until(() => at('nav') ?? at('[part~="refused"]'), 'the bar');
  await drawn(steps, ...eye.querySelectorAll('astig-step'));
  return { eye, steps, at, text: (selector) => at(selector)?.textContent.replaceAll(/[\s\u00a0]+/g, ' ').trim() ?? '', events };
}

export function texts({ eye }: Walk): string[] {
  return [...eye.querySelectorAll('astig-step')].filter((step) => !step.shadowRoot!.querySelector('.off')).map((step) => step.textContent.trim());
}

export async function settled({ eye, steps }: Walk): Promise<void> {
  await drawn(steps);
  await until(() => !eye.model.moving, 'the end of the movement');
  await drawn(steps, ...eye.querySelectorAll('astig-step'));
}

/** For `afterEach`: what a test has set of the address and the ways of showing. */
export async function asBefore(): Promise<void> {
  history.replaceState(null, '', location.pathname + location.search);
  await emulate({ 'prefers-reduced-motion': 'no-preference' });
}
