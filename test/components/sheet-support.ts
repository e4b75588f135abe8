import { fixture, html, waitUntil } from '@open-wc/testing';
import type { TemplateResult } from 'lit';
import '../../components/sheet/define.js';
import type { AstigCase } from '../../components/case/case.js';
import type { AstigSheet } from '../../components/sheet/sheet.js';
import { CEDAR, drawn } from './support.js';

export const LANGUAGES = ['en', 'es', 'de', 'fr', 'ar', 'zh'];

/** The most that a plan can have: a pair, a lens, and every grave caution at once. Invented. */
export const FULL = {
  eye: 'left',
  steepK: 49,
  steepMeridian: 40,
  risks: 'collagen dry-eye radial-cuts ectasia',
  incisionSite: 45,
  arcSite: 40,
  arcLength: 95,
  arcCount: 2,
  arcDepth: 640,
  arcZone: 9,
  localThickness: 680,
  lensCylinder: 1.5,
  lensMeridian: 82,
} as const;

export interface Shown {
  eye: AstigCase;
  sheet: AstigSheet;
  /** What a part says, white space as it is read. */
  text: (part?: string) => string;
}

export function textOf(sheet: Element, part = 'sheet'): string {
  return (sheet.shadowRoot!.querySelector(`[part~="${part}"]`)?.textContent ?? '').replace(/\s+/g, ' ').trim();
}

/** The sheet of an invented eye, with changes to its plan, in a language once its texts have arrived. */
export async function sheetOf(plan: object = {}, content: TemplateResult = html`<astig-sheet></astig-sheet>`, lang = 'en'): Promise<Shown> {
  const root = await fixture<HTMLElement>(html`<div lang=${lang} dir=${lang === 'ar' ? 'rtl' : 'ltr'}>
    <astig-case .plan=${{ ...CEDAR, ...plan }}>${content}</astig-case>
  </div>`);
  const sheet = root.querySelector('astig-sheet')!;
  await waitUntil(() => sheet.shadowRoot?.querySelector('[part~="sheet"]')?.getAttribute('lang')?.split('-')[0] === lang, `texts in ${lang}`, { timeout: 5000 });
  await drawn(sheet);
  return { eye: root.querySelector('astig-case')!, sheet, text: (part) => textOf(sheet, part) };
}

/** Rows of the table, each as the texts of its cells. */
export function rowsOf(sheet: Element): string[][] {
  return [...sheet.shadowRoot!.querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent!.replace(/\s+/g, ' ').trim()));
}
