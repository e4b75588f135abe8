import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import type { FigureId } from '../../core/figures.js';
import type { Caution, SuggestedPlan } from '../../core/numbers.js';
import type { SourceId } from '../../core/references.js';
import { astigmatismText } from '../internal/format.js';
import type { SourceController } from '../internal/source-controller.js';
import { LEVEL_NAME } from '../internal/words.js';
import { hundredBar } from './options.bar.js';
import { ariaSort } from './options.order.js';
import type { Order, Ranked, SortKey } from './options.order.js';
import { planPicture } from './options.picture.js';
import { surgeryKey } from './options.plan.js';
import { COLUMN, HEADING, IN_USE, USE, chanceText, countText, planText, reasonText, surgeryTexts } from './options.words.js';

/** What the table is drawn from. */
export interface TableState {
  rows: readonly Ranked[];
  order: Order;
  caption: string;
  /** The row of the present plan. */
  inUse: number | null;
  /** Whether the list is not, or not yet, that of the eye as it is. */
  stale: boolean;
  /** Whether a plan can be chosen here; null when there are no buttons for it. */
  choosable: boolean | null;
  source: SourceController;
}

const SOURCE: Record<SortKey, FigureId> = { remaining: 'after', chance: 'chance', surgery: 'surgery' };

/**
 * The plans side by side. Every role is stated: in a narrow place the rows are laid out as cards, and a table whose parts
 * are not displayed as one is no table to assistive technology.
 */
export function planTable(state: TableState): TemplateResult {
  const { rows, caption, stale, choosable } = state;
  return html`<table part="table" role="table" aria-labelledby="caption" aria-busy=${stale ? 'true' : 'false'}>
    <caption id="caption">${caption}</caption>
    <thead role="rowgroup">
      <tr role="row">
        ${plainHead(COLUMN.rank)} ${plainHead(COLUMN.plan)} ${sortHead('remaining', state)} ${sortHead('chance', state)} ${sortHead('surgery', state)}
        ${plainHead(COLUMN.cautions)} ${plainHead(COLUMN.reason)} ${choosable === null ? nothing : plainHead(COLUMN.choose)}
      </tr>
    </thead>
    <tbody role="rowgroup">
      ${repeat(
        rows,
        ({ option }) => surgeryKey(option.plan),
        (row) => guard([row.option, row.rank, row.rank === state.inUse, choosable], () => planRow(row, state)),
      )}
    </tbody>
  </table>`;
}

function plainHead(text: string): TemplateResult {
  return html`<th role="columnheader" scope="col" class=${text === COLUMN.choose ? 'plain choose' : 'plain'}>${text}</th>`;
}

function sortHead(key: SortKey, { order, source }: TableState): TemplateResult {
  const { name, what } = HEADING[key];
  return html`<th role="columnheader" scope="col" class="sortable" aria-sort=${ariaSort(order, key)}>
    <button type="button" class="sort" data-sort=${key}>${name} ${MARK}</button>
    ${source.button({ figure: SOURCE[key] }, what)}
  </th>`;
}

/** Which way the figures run down the column; both ways where it can be sorted and is not. The styles choose by `aria-sort`. */
const MARK = html`<svg class="mark" viewBox="0 0 8 12" aria-hidden="true"><path class="up" d="M4 0 8 5H0z"></path><path class="down" d="M4 12 0 7h8z"></path></svg>`;

function planRow({ option, rank }: Ranked, { inUse, choosable, source }: TableState): TemplateResult {
  const used = rank === inUse;
  return html`<tr role="row" part=${used ? 'option in-use' : 'option'} data-rank=${rank} aria-current=${used ? 'true' : nothing}>
    <td role="cell" class="rank"><span class="number">${rank}</span>${planPicture(option)}</td>
    <th role="rowheader" scope="row" class="plan">${planText(option.plan)} ${used ? html`<span class="used">${IN_USE.toLowerCase()}</span>` : nothing}</th>
    <td role="cell" class="figure remaining" data-label=${HEADING.remaining.name}>${astigmatismText(option.outcome.after)}</td>
    <td role="cell" class="figure odds" data-label=${HEADING.chance.name}><span part="chance">${chanceText(option.ofHundred)}${hundredBar(option.ofHundred)}</span></td>
    <td role="cell" class="surgery" data-label=${HEADING.surgery.name}>${unbroken(surgeryTexts(option.surgery))}</td>
    <td role="cell" class="cautions" data-label=${COLUMN.cautions}>${cautions(option, source)}</td>
    <td role="cell" class="reason" data-label=${COLUMN.reason}>${reasonText(option)}</td>
    ${choosable === null ? nothing : html`<td role="cell" class="choose">${chooseButton(rank, used, choosable)}</td>`}
  </tr>`;
}

/** Phrases that are broken between, never within. */
function unbroken(phrases: readonly string[]): TemplateResult[] {
  return phrases.map((phrase, index) => html`${index > 0 ? '; ' : nothing}<span class="phrase">${phrase}</span>`);
}

/** A button that cannot be used now keeps the focus, so that the keyboard is not thrown out of the table. */
function chooseButton(rank: number, used: boolean, choosable: boolean): TemplateResult {
  return html`<button type="button" part="choose" data-rank=${rank} aria-disabled=${used || !choosable ? 'true' : 'false'}>
    ${used ? IN_USE : USE}<span class="visually-hidden">, number ${rank}</span>
  </button>`;
}

function cautions({ outcome }: SuggestedPlan, source: SourceController): TemplateResult | string {
  if (outcome.cautions.length === 0) return 'none';
  return html`<details>
    <summary><span>${countText(outcome.cautions)}</span></summary>
    <ul>
      ${outcome.cautions.map((caution) => cautionItem(caution, source))}
    </ul>
  </details>`;
}

function cautionItem({ level, text, source: id }: Caution, source: SourceController): TemplateResult {
  return html`<li class=${level}><strong>${LEVEL_NAME[level]}:</strong> ${text} ${source.button({ source: id as SourceId }, 'source')}</li>`;
}
