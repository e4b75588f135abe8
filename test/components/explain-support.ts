import { fixture, html } from '@open-wc/testing';
import type { TemplateResult } from 'lit';
import '../../components/explain/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigExplain } from '../../components/explain/explain.js';
import { CEDAR, drawn, until } from './support.js';

export interface Explained {
  eye: AstigCase;
  page: AstigExplain;
  /** What a section says, white space as it is read. */
  text: (part?: string) => string;
}

export function textOf(page: Element, part = 'page'): string {
  return (page.shadowRoot!.querySelector(`[part~="${part}"]`)?.textContent ?? '').replace(/\s+/g, ' ').trim();
}

/** The page of an invented eye, with changes to its plan. */
export async function explained(plan: object = {}, content: TemplateResult = html`<astig-explain></astig-explain>`): Promise<Explained> {
  const eye = await fixture<AstigCase>(html`<astig-case .plan=${{ ...CEDAR, ...plan }}>${content}</astig-case>`);
  const page = eye.querySelector('astig-explain')!;
  await drawn(page);
  return { eye, page, text: (part) => textOf(page, part) };
}

/** The page of an invented eye in a language, once its texts have arrived. */
export async function explainedIn(lang: string, plan: object = {}): Promise<Explained> {
  const root = await fixture<HTMLElement>(html`<div lang=${lang} dir=${lang === 'ar' ? 'rtl' : 'ltr'}>
    <astig-case .plan=${{ ...CEDAR, ...plan }}><astig-explain></astig-explain></astig-case>
  </div>`);
  const page = root.querySelector('astig-explain')!;
  await until(() => langOf(page).split('-')[0] === lang, `texts in ${lang}`);
  await drawn(page);
  return { eye: root.querySelector('astig-case')!, page, text: (part) => textOf(page, part) };
}

/** The language in which the page is. */
export function langOf(page: Element): string {
  return page.shadowRoot?.querySelector('[part~="page"]')?.getAttribute('lang') ?? '';
}
