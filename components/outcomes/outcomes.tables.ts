import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { fromVector } from '../../core/numbers.js';
import { OUTCOME_COLUMNS } from '../../core/outcomes.js';
import type { Grouping, Heading, Mapping, OutcomeColumn } from '../../core/outcomes.js';
import { astigmatismText, decimal, dioptres, millimetres, percent, signedDioptres } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { placeWords } from '../internal/place.words.js';
import { quoted } from '../internal/refusal.js';
import { SERIES } from './outcomes.messages.js';
import type { Findings, GroupFigures } from './outcomes.messages.js';
import { resultsWords } from './outcomes.results.words.js';
import { asGiven, columnText, faultText, saidText } from './outcomes.said.js';

/** The figures of all series; what the diagram shows stands in it too. */
export function figureTable({ summaries }: Findings, language: Language): TemplateResult {
  const say = language.say(resultsWords);
  const lang = language.numbers;
  const number = (value: number | null): string => (value === null ? '–' : dioptres(value, lang));
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${say('figures')}><table class="figures">
    <thead><tr><th scope="col">${say('series')}</th><th scope="col">${say('eyes')}</th><th scope="col">${say('centroid')}</th><th scope="col">${say('mean')}</th><th scope="col">${say('median')}</th>
      ${[0.25, 0.5, 0.75, 1].map((limit) => html`<th scope="col">${say('within', { limit: dioptres(limit, lang) })}</th>`)}
      <th scope="col">${say('robust')}</th><th scope="col">${say('zero')}</th></tr></thead>
    <tbody>${SERIES.map((series) => {
      const { n, centroid, meanMagnitude, medianMagnitude, within, robust, pValue } = summaries[series];
      return html`<tr data-series=${series}><th scope="row">${say(series)}</th><td>${n}</td><td>${centroid ? astigmatismText(fromVector(centroid), lang) : '–'}</td><td>${number(meanMagnitude)}</td><td>${number(medianMagnitude)}</td>
        ${[0, 1, 2, 3].map((index) => html`<td>${within[index] ? say('share', { share: percent(within[index].share, lang), low: percent(within[index].low, lang), high: percent(within[index].high, lang) }) : '–'}</td>`)}
        <td>${robust ? astigmatismText(fromVector(robust.spatialMedian), lang) : '–'}</td><td>${pValue === null ? '–' : pValue < 0.001 ? `< ${decimal(0.001, 3, lang)}` : decimal(pValue, 3, lang)}</td></tr>`;
    })}</tbody></table></div>
    <p class="quiet">${say('frame')}</p>
    ${summaries.induced.meanAgainstCentroid ? html`<p>${saidText(summaries.induced.meanAgainstCentroid, language)}</p>` : nothing}`;
}

/** Rows that are not counted: how many for which reason, and the first of them in full. */
export function refusedList({ refused }: Findings, language: Language): TemplateResult | typeof nothing {
  if (refused.total === 0) return nothing;
  const say = language.say(resultsWords);
  const of = (column: OutcomeColumn | null, value: string): string => (column ? say('pair', { name: columnText(column, language), value }) : value);
  return html`<details class="refusals"><summary>${say('notCounted', { rows: refused.total })}</summary>
    <ul>${refused.reasons.map(({ column, reason, rows }) => html`<li>${of(column, say('rowsFor', { rows, reason: saidText(reason, language) }))}</li>`)}</ul>
    <dl>${refused.first.map(({ line, faults }) => html`<dt>${say('line', { line })}</dt>${faults.map((fault) => html`<dd>${faultText(fault, language)}</dd>`)}`)}</dl>
  </details>`;
}

/**
 * What each column was taken for, to be corrected. It opens by itself where something is to be asked. Of a column that is
 * not used nothing is shown, for it may hold names, unless its heading speaks of a measurement that is asked about.
 */
export function columnForm({ headings, preview, problems }: Findings, mapping: Mapping, language: Language, choose: (mapping: Mapping) => void): TemplateResult {
  const say = language.say(resultsWords);
  const onChange = (index: number, old: OutcomeColumn | null) => (event: Event): void => {
    event.stopPropagation();
    const next = (event.currentTarget as HTMLSelectElement).value as OutcomeColumn | '';
    choose({ ...mapping, ...(old && { [old]: null }), ...(next && { [next]: index }) });
  };
  // The whole name once more, for a narrow list cuts it off before it says whether before or after.
  const sample = (index: number, column: OutcomeColumn | null): string =>
    say('pair', { name: column ? columnText(column, language) : say('sample'), value: preview.map((cells) => asGiven(cells[index] ?? '', language)).join(' · ') });
  return html`<details class="columns" ?open=${problems.length > 0 || headings.some(isAsked)}><summary>${say('columns')}</summary>
    <ul>${headings.map(({ index, text, column, why }) => html`<li><label><span>${text ? asGiven(text, language) : index + 1}</span>
      <select @change=${onChange(index, column)}>
        <option value="" ?selected=${column === null}>${say('nothing')}</option>
        ${OUTCOME_COLUMNS.map((name) => html`<option value=${name} ?selected=${name === column}>${columnText(name, language)}</option>`)}
      </select></label>${column || isAsked({ column, why }) ? html`<p class="quiet">${sample(index, column)}</p>` : nothing}${why ? html`<p>${saidText(why, language)}</p>` : nothing}</li>`)}</ul></details>`;
}

/** What is said of a column that is not used, but of names and of columns of which there are two. */
function isAsked({ column, why }: Pick<Heading, 'column' | 'why'>): boolean {
  return column === null && why !== null && why.id !== 'person' && why.id !== 'duplicate';
}

/** What the saved table will not have. */
export function leftOut({ headings }: Findings, language: Language): string {
  const say = language.say(resultsWords);
  const columns = headings.filter(({ column }) => column === null).map(({ text, index }) => quoted(text || `${index + 1}`, language));
  return columns.length === 0 ? say('allSaved') : say('leftOut', { columns: columns.reduce((first, second) => say('both', { first, second })) });
}

export function groupTable({ groups }: Findings, language: Language): TemplateResult {
  const say = language.say(resultsWords);
  const lang = language.numbers;
  const key = (by: Grouping, value: GroupFigures['key']): string => {
    if (value === null) return say('unknown');
    if (typeof value === 'string') return language.say(placeWords)(value);
    return by === 'width' ? millimetres(value, lang) : String(value);
  };
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${say('groups')}><table class="groups">
    <thead><tr><th scope="col">${say('groups')}</th><th scope="col">${say('eyes')}</th><th scope="col">${say('flattening')}</th><th scope="col">${say('torque')}</th><th scope="col">${say('mean')}</th></tr></thead>
    <tbody>${(['width', 'site', 'arcs'] as const).flatMap((by) => groups[by].map((group) => html`<tr><th scope="row">${say('pair', { name: say(by), value: key(by, group.key) })}</th><td>${group.n}</td>
      <td>${group.centroid ? signedDioptres(-group.centroid.x, lang) : '–'}</td><td>${group.centroid ? signedDioptres(group.centroid.y, lang) : '–'}</td><td>${group.meanMagnitude === null ? '–' : dioptres(group.meanMagnitude, lang)}</td></tr>`))}</tbody></table></div>`;
}
