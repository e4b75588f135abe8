import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';
import type { Say } from '../internal/language/language.js';
import type { SourceController } from '../internal/source-controller.js';
import type { ExplainId } from './explain.words.js';

/** What the sections are made of. */
export interface Page {
  say: Say<ExplainId>;
  /** Language tag for numbers. */
  numbers: string;
  /** The case that is shown: none, or one whose newest settings were refused and of which nothing is told. */
  known: { plan: CompletePlan; outcome: PlanOutcome } | 'none' | 'refused';
  /** Level of the sections' headings. */
  level: number;
  source: SourceController;
}

/** The plan, where one may be told. */
export function planOf({ known }: Page): CompletePlan | null {
  return typeof known === 'string' ? null : known.plan;
}

const HEADINGS = [
  (text: string) => html`<h1>${text}</h1>`,
  (text: string) => html`<h2>${text}</h2>`,
  (text: string) => html`<h3>${text}</h3>`,
  (text: string) => html`<h4>${text}</h4>`,
  (text: string) => html`<h5>${text}</h5>`,
  (text: string) => html`<h6>${text}</h6>`,
] as const;

/** A heading of a level from 1 to 6; what would lie deeper is 6. */
export function heading(level: number, text: string): TemplateResult {
  return HEADINGS[Math.min(Math.max(Math.round(level) || 1, 1), 6) - 1]!(text);
}

/** A picture beside its words, or above them where there is little room. */
export function beside(image: TemplateResult, words: TemplateResult): TemplateResult {
  return html`<div class="row">${image}<div class="words">${words}</div></div>`;
}

/** A picture, a small heading and words, one of three side by side. */
export function item({ level }: Page, image: TemplateResult, title: string, words: TemplateResult): TemplateResult {
  return html`<div class="item">${image}<div class="said">${heading(level + 1, title)} ${words}</div></div>`;
}

/** Sentences one after the other; after a full-width mark there is no space. */
export function sentences(...texts: string[]): string {
  return texts.join(' ').replace(/([。！？]) /g, '$1');
}

/** Whole numbers, one decimal at least and two where they are needed: 0.5, 1.25. */
export function amountText(value: number, numbers: string): string {
  return new Intl.NumberFormat(numbers, { minimumFractionDigits: 1, maximumFractionDigits: 2 }).format(value);
}
