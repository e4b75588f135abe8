import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { FIGURES } from '../../core/figures.js';
import { references } from '../../core/references.js';
import type { ModelConstant } from '../../core/model.js';
import type { Reference, SourceId } from '../../core/references.js';
import { decimal, withUnit } from './format.js';
import type { Language } from './language/language.js';
import { unitText } from './refusal.js';
import type { Question } from './source-controller.js';
import { constantWords, figureWords, nameOf, referenceWords } from './source-texts.js';
import { sourceWords } from './source-note.words.js';
import type { SourceTextId } from './source-note.words.js';

/** Parts of a citation, as `fromMemory` names them. */
const PART: Record<string, SourceTextId> = {
  authors: 'partAuthors',
  title: 'partTitle',
  year: 'partYear',
  pages: 'partPages',
  'volume and pages': 'partVolume',
};

/** Units that are words. */
const UNIT: Record<string, SourceTextId> = { '1/year': 'perYear', gaps: 'gaps' };

/** The answer to where a figure comes from. */
export function sourceNote(question: Question, language: Language): TemplateResult {
  const say = language.say(sourceWords);
  if ('source' in question) return html`<h2>${say('title')}</h2><ul>${citation(question.source, language)}</ul>`;
  const { constants, sources } = FIGURES[question.figure];
  const prose = language.say(figureWords);
  return html`<h2>${prose(`${question.figure}.title`)}</h2>
    ${question.own ? html`<p><strong>${say('own')}</strong></p>` : nothing}
    <p>${prose(`${question.figure}.what`)}</p>
    <p class="formula">${prose(`${question.figure}.formula`)}</p>
    ${constants.length > 0 ? html`<ul class="constants">${constants.map((constant) => constantItem(constant, language))}</ul>` : nothing}
    <p>${say('range', { range: prose(`${question.figure}.range`) })}</p>
    <ul>
      ${allSources(sources, constants).map((source) => citation(source, language))}
    </ul>
    <p>${say('estimate')}</p>`;
}

function constantItem(constant: ModelConstant<unknown>, language: Language): TemplateResult {
  const { value, unit } = constant;
  const number = [value].flat().map((one) => shown(Number(one), language)).join('; ');
  const unitId = UNIT[unit];
  const withItsUnit = withUnit(number, unitId ? language.say(sourceWords)(unitId) : unitText(unit, language), language.numbers);
  return html`<li>${language.say(sourceWords)('constant', { value: withItsUnit, note: language.say(constantWords)(nameOf(constant)) })}</li>`;
}

function shown(value: number, { numbers }: Language): string {
  return decimal(value, String(value).split('.')[1]?.length ?? 0, numbers);
}

function allSources(sources: readonly SourceId[], constants: readonly ModelConstant<unknown>[]): SourceId[] {
  return [...new Set([...sources, ...constants.flatMap(({ source }) => source)])];
}

function citation(id: SourceId, language: Language): TemplateResult {
  const say = language.say(sourceWords);
  const { authors, title, journal, year, pages, doi, status, fromMemory }: Reference = references[id];
  const use = language.say(referenceWords)(id);
  if (id === 'commonPractice' || id === 'assumed') return html`<li>${say('general', { title: say(id), use })}</li>`;
  const where = `${journal}${year ? ` ${year}` : ''}${pages && `;${pages}`}`;
  const unknown = authors.includes('not shown');
  const parts = new Intl.ListFormat(language.numbers, { type: 'conjunction' }).format((fromMemory ?? []).map((part) => (PART[part] ? say(PART[part]) : part)));
  const recalled = fromMemory ? say(`${status}Partly`, { parts }) : say(status);
  // The record itself stays in the language in which it can be looked up.
  return html`<li>
    ${unknown ? html`${say('authorsUnknown')}. ` : nothing}<bdi lang="en" dir="ltr">${unknown ? nothing : html`${authors}. `}${title}. ${where}${doi && `, doi ${doi}`}.</bdi>
    <em>${recalled}</em> ${say('use', { use })}
  </li>`;
}
