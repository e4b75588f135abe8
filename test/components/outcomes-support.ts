/** What the tests of own results share. */
import { fixture, html } from '@open-wc/testing';
import '../../components/case/define.js';
import '../../components/outcomes/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigOutcomes } from '../../components/outcomes/outcomes.js';
import { CEDAR } from './support.js';

export interface Opened {
  eye: AstigCase;
  view: AstigOutcomes;
  root: ShadowRoot;
}

/** A case with own results in a column of `style`, read and drawn; without `data` nothing has been read yet. */
export async function opened(data: string | null, style = ''): Promise<Opened> {
  const page = await fixture<HTMLElement>(html`<div style=${style}><astig-case .plan=${CEDAR}><astig-outcomes .data=${data}></astig-outcomes></astig-case></div>`);
  const eye = page.querySelector('astig-case')!;
  const view = eye.querySelector('astig-outcomes')!;
  await settled(view);
  return { eye, view, root: view.shadowRoot! };
}

/** Waits until what was asked for has been read and drawn. */
export async function settled(view: AstigOutcomes): Promise<void> {
  await view.ready;
  for (let round = 0; round < 3; round += 1) {
    await view.updateComplete;
    await new Promise(requestAnimationFrame);
  }
}

export const text = (root: ShadowRoot, selector: string): string => root.querySelector(selector)?.textContent.replace(/\s+/g, ' ').trim() ?? '';

export const click = (root: ShadowRoot, selector: string): void => root.querySelector<HTMLElement>(selector)!.click();
