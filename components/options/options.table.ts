import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { FigureId } from '../../core/figures.js';
import { GOOD } from '../../core/numbers.js';
import type { Caution } from '../../core/numbers.js';
import type { SourceId } from '../../core/references.js';
import { cautionText } from '../internal/caution.js';
import { astigmatismText, dioptres } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import type { SourceController } from '../internal/source-controller.js';
import { sharedWords } from '../internal/words.js';
import { hundredBar } from './options.bar.js';
import { kept } from './options.kept.js';
import { ariaSort } from './options.order.js';
import type { Order, Ranked, SortKey } from './options.order.js';
import { planPicture } from './options.picture.js';
import { surgeryKey } from './options.plan.js';
import { countText, planText, surgeryTexts, whyText } from './options.speech.js';
import { optionsWords } from './options.words.js';
import type { OptionsId } from './options.words.js';

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
  language: Language;
}

/** What stands under a heading that sorts, and where its figures come from. */
const SORTED: Record<SortKey, readonly [OptionsId, FigureId]> = {
  remaining: ['remainingIs', 'after'],
  chance: ['chanceIs', 'chance'],
  surgery: ['surgeryIs', 'surgery'],
};

/**
 * The plans side by side. Every role is stated: in a narrow place the rows are laid out as cards, and a table whose parts
 * are not displayed as one is no table to assistive technology. A row belongs to its plan: where another plan comes in its
 * place, nothing of it stays, least of all a focus that would then choose the other one.
 */
export function planTable(state: TableState): TemplateResult {
  const { rows, caption, stale, choosable, language } = state;
  const say = language.say(optionsWords);
  const plain = (id: OptionsId, className = ''): TemplateResult => html`<th role="columnheader" scope="col" class="plain ${className}">${say(id)}</th>`;
  return html`<table part="table" role="table" aria-labelledby="caption" aria-busy=${stale ? 'true' : 'false'}>
    <caption id="caption">${caption}</caption>
    <thead role="rowgroup">
      <tr role="row">
        ${plain('rank')} ${plain('plan')} ${sortHead('remaining', state)} ${sortHead('chance', state)} ${sortHead('surgery', state)}
        ${plain('cautions')} ${plain('reason')} ${choosable === null ? nothing : plain('choose', 'choose')}
      </tr>
    </thead>
    <tbody role="rowgroup">
      ${rows.map((row) => {
        const { option, rank } = row;
        return kept(surgeryKey(option.plan), [option, rank, rank === state.inUse, choosable, say, language.numbers], () => planRow(row, state));
      })}
    </tbody>
  </table>`;
}

function sortHead(key: SortKey, { order, source, language }: TableState): TemplateResult {
  const say = language.say(optionsWords);
  const [what, figure] = SORTED[key];
  return html`<th role="columnheader" scope="col" class="sortable" aria-sort=${ariaSort(order, key)}>
    <button type="button" class="sort" data-sort=${key}>${say(key)}</button>
    ${source.button({ figure }, say(what, { good: dioptres(GOOD, language.numbers) }))}
  </th>`;
}

function planRow({ option, rank }: Ranked, { inUse, choosable, source, language }: TableState): TemplateResult {
  const say = language.say(optionsWords);
  const { plan, outcome, ofHundred, surgery } = option;
  const used = rank === inUse;
  return html`<tr role="row" part=${used ? 'option in-use' : 'option'} data-rank=${rank} aria-current=${used ? 'true' : nothing}>
    <td role="cell" class="rank"><span class="number">${rank}</span>${planPicture(option)}</td>
    <th role="rowheader" scope="row" class="plan">${planText(plan, language)} ${used ? html`<span class="used">${say('used')}</span>` : nothing}</th>
    <td role="cell" class="figure remaining" data-label=${say('remaining')}>${astigmatismText(outcome.after, language.numbers)}</td>
    <td role="cell" class="figure odds" data-label=${say('chance')}><span part="chance">${say('ofHundred', { eyes: ofHundred })}${hundredBar(ofHundred)}</span></td>
    <td role="cell" class="surgery" data-label=${say('surgery')}>${unbroken(surgeryTexts(surgery, language), say('and', { first: '', second: '' }))}</td>
    <td role="cell" class="cautions" data-label=${say('cautions')}>${cautions(outcome.cautions, source, language)}</td>
    <td role="cell" class="reason" data-label=${say('reason')}>${whyText(option, language)}</td>
    ${choosable === null ? nothing : html`<td role="cell" class="choose">${chooseButton(rank, used, choosable, language)}</td>`}
  </tr>`;
}

/** Phrases that are broken between rather than within. */
function unbroken(phrases: readonly string[], between: string): TemplateResult[] {
  return phrases.map((phrase, index) => html`${index > 0 ? between : nothing}<span class="phrase">${phrase}</span>`);
}

/** A button that cannot be used now keeps the focus, so that the keyboard is not thrown out of the table. */
function chooseButton(rank: number, used: boolean, choosable: boolean, language: Language): TemplateResult {
  const say = language.say(optionsWords);
  return html`<button type="button" part="choose" data-rank=${rank} aria-disabled=${used || !choosable ? 'true' : 'false'}>
    ${say(used ? 'inUse' : 'use')}<span class="visually-hidden">${say('number', { rank })}</span>
  </button>`;
}

function cautions(found: readonly Caution[], source: SourceController, language: Language): TemplateResult | string {
  if (found.length === 0) return language.say(optionsWords)('noCautions');
  return html`<details>
    <summary><span>${countText(found, language)}</span></summary>
    <ul>
      ${found.map((caution) => cautionItem(caution, source, language))}
    </ul>
  </details>`;
}

function cautionItem(caution: Caution, source: SourceController, language: Language): TemplateResult {
  const say = language.say(optionsWords);
  const { level, source: id } = caution;
  return html`<li class=${level}>
    <strong>${say('caution', { level: language.say(sharedWords)(level) })}</strong> ${cautionText(caution, language)} ${source.button({ source: id as SourceId }, say('source'))}
  </li>`;
}
