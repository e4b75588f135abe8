import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { FIGURES } from '../../core/figures.js';
import { references } from '../../core/references.js';
import type { ModelConstant } from '../../core/model.js';
import type { Reference, SourceId } from '../../core/references.js';
import type { Question } from './source-controller.js';

/** Said under every source. */
const ESTIMATE = 'A teaching estimate. It is consistent with the papers it was chosen on, and validated on none.';

/** The answer to where a figure comes from. */
export function sourceNote(question: Question): TemplateResult {
  if ('source' in question) return html`<h2>Source</h2><ul>${citation(question.source)}</ul>`;
  const { title, what, formula, constants, sources, range } = FIGURES[question.figure];
  return html`<h2>${title}</h2>
    ${question.own ? html`<p><strong>Here the surgeon’s own figure stands in place of the model.</strong></p>` : nothing}
    <p>${what}</p>
    <p class="formula">${formula}</p>
    ${constants.length > 0 ? html`<ul class="constants">${constants.map(constantItem)}</ul>` : nothing}
    <p>For: ${range}.</p>
    <ul>
      ${allSources(sources, constants).map(citation)}
    </ul>
    <p>${ESTIMATE}</p>`;
}

function constantItem({ value, unit, note }: ModelConstant<unknown>): TemplateResult {
  return html`<li><strong>${Array.isArray(value) ? value.join(', ') : value}${unit && `\u00a0${unit}`}</strong>: ${note}</li>`;
}

function allSources(sources: readonly SourceId[], constants: readonly ModelConstant<unknown>[]): SourceId[] {
  return [...new Set([...sources, ...constants.flatMap(({ source }) => source)])];
}

function citation(id: SourceId): TemplateResult {
  const { authors, title, journal, year, pages, doi, status, fromMemory, use }: Reference = references[id];
  if (journal === '–') return html`<li>${title}: ${use}.</li>`;
  const where = `${journal}${year ? ` ${year}` : ''}${pages && `;${pages}`}`;
  const recalled = fromMemory ? `; ${fromMemory.join(' and ')} of the citation from memory` : '';
  return html`<li>${authors}. ${title}. ${where}${doi && `, doi ${doi}`}. <em>${status === 'read' ? 'Figures read' : 'From memory'}${recalled}.</em> Used for: ${use}.</li>`;
}
