import { html } from 'lit';
import type { TemplateResult } from 'lit';

/** Marks in a row and rows of the bar, and how many units there are from mark to mark. */
const COLUMNS = 20;
const ROWS = 5;
const STEP = 5;

/** Side of a full mark and of an empty one, units. */
const FULL = 4;
const EMPTY = 1.5;

/** A hundred marks, as many of them full as eyes of a hundred end well; the others are points, whatever the colours. */
export function hundredBar(ofHundred: number): TemplateResult {
  const squares = (from: number, to: number, side: number): string => {
    let path = '';
    for (let index = from; index < to; index += 1) path += square(index, side);
    return path;
  };
  return html`<svg class="bar" viewBox="0 0 ${COLUMNS * STEP} ${ROWS * STEP}" aria-hidden="true">
    <path class="full" d=${squares(0, ofHundred, FULL)}></path>
    <path class="empty" d=${squares(ofHundred, 100, EMPTY)}></path>
  </svg>`;
}

/** The mark number `index`, filled up column by column, so that the whole reads as a bar. */
function square(index: number, side: number): string {
  const x = Math.floor(index / ROWS) * STEP + (STEP - side) / 2;
  const y = (index % ROWS) * STEP + (STEP - side) / 2;
  return `M${x} ${y}h${side}v${side}h${-side}z`;
}
