import { css } from 'lit';

/** The list: a table where there is room, cards where there is not. */
export const optionsStyles = css`
  .limits {
    container-type: inline-size;
    margin-block-end: 1em;
    border-block: 1px solid var(--_line);
  }
  summary {
    box-sizing: border-box;
    min-block-size: 44px;
    padding-block: max(0.5em, (44px - 1.4em) / 2);
    cursor: pointer;
  }
  .title {
    font-weight: 600;
  }
  .offered {
    margin-inline-start: 0.5em;
    color: var(--_quiet);
    font-size: 0.875em;
  }
  .list > p {
    margin: 0 0 0.75em;
    max-inline-size: 60em;
  }
  .against {
    padding-inline-start: 0.75em;
    border-inline-start: 8px solid var(--_stop);
  }
  .own {
    padding-inline-start: 0.75em;
    border-inline-start: 4px dotted var(--_note);
  }
  .refused {
    margin: 0 0 1em;
    padding: 0.5em 0.75em;
    border: 2px solid var(--_stop);
    border-radius: 4px;
  }
  .refused p {
    margin: 0;
  }
  .refused ul {
    margin: 0.25em 0 0;
    padding-inline-start: 1.25em;
  }
  .wrap {
    container-type: inline-size;
  }
  table {
    inline-size: 100%;
    border-collapse: collapse;
    font-variant-numeric: tabular-nums;
  }
  caption {
    padding-block: 0.25em;
    text-align: start;
    color: var(--_quiet);
    font-size: 0.875em;
  }
  [aria-busy='true'] caption {
    color: var(--_ink);
    font-weight: 600;
  }
  /* A list that does not stand for the eye as it is; fading it would take the contrast from its words. */
  [aria-busy='true'] tbody {
    outline: 2px dashed var(--_quiet);
    outline-offset: -1px;
  }
  th,
  td {
    padding: 0.75em 6px;
    border-block-end: 1px solid var(--_line);
    text-align: start;
    vertical-align: top;
    font-weight: 400;
    overflow-wrap: break-word;
  }
  thead th {
    padding-block: 0;
    color: var(--_quiet);
    font-size: 0.875em;
  }
  .plain {
    /* In line with the names in the buttons beside it. */
    padding-block-start: calc(44px - 1.5em);
  }
  .sort {
    all: unset;
    box-sizing: border-box;
    display: flex;
    align-items: end;
    gap: 0.375em;
    min-block-size: 44px;
    min-inline-size: 44px;
    padding-block-end: 0.1em;
    color: var(--_ink);
    font-weight: 600;
    cursor: pointer;
  }
  .sort:hover {
    text-decoration: underline;
  }
  .mark {
    inline-size: 0.5em;
    block-size: 0.75em;
    margin-block-end: 0.3em;
    overflow: visible;
    fill: none;
    stroke: currentColor;
    stroke-width: 0.75;
  }
  [aria-sort='ascending'] .up,
  [aria-sort='descending'] .down {
    fill: currentColor;
  }
  [aria-sort='ascending'] .down,
  [aria-sort='descending'] .up {
    display: none;
  }
  /* English stays English in a page that runs the other way. */
  caption {
    unicode-bidi: plaintext;
  }
  :is(caption, summary):dir(rtl) {
    text-align: right;
  }
  th .sourced {
    box-sizing: border-box;
    display: block;
    min-block-size: 44px;
    min-inline-size: 44px;
    white-space: nowrap;
  }
  /* Room to hit that does not push the lines of the text apart. */
  li .sourced {
    box-sizing: border-box;
    min-inline-size: 44px;
    margin-block: -14px;
    padding: 14px 2px;
    color: var(--_quiet);
  }
  /* As a table: a column that does not become a string of single words. */
  @container (min-width: 66em) {
    .cautions {
      min-inline-size: 8em;
    }
    .cautions:has([open]) {
      min-inline-size: 16em;
    }
  }
  .rank {
    white-space: nowrap;
    /* Number and picture run the way of the page. */
    unicode-bidi: normal;
  }
  .number {
    display: inline-block;
    min-inline-size: 1.25em;
    vertical-align: top;
    font-weight: 600;
  }
  .plan {
    font-weight: 600;
  }
  .used {
    display: inline-block;
    padding: 0 0.5em;
    border: 1px solid currentColor;
    border-radius: 4px;
    font-size: 0.875em;
    font-weight: 400;
  }
  [part~='in-use'] {
    background: var(--_cornea);
    outline: 2px solid var(--_remaining);
    outline-offset: -2px;
  }
  .figure {
    font-size: 1.125em;
    font-weight: 600;
  }
  .remaining,
  .phrase,
  [part='chance'],
  [part='choose'] {
    white-space: nowrap;
  }
  .bar {
    display: block;
    inline-size: 6.25rem;
    max-inline-size: 100%;
    margin-block-start: 0.25em;
  }
  .bar:dir(rtl) {
    transform: scaleX(-1);
  }
  .full {
    fill: var(--_remaining);
  }
  .empty {
    fill: var(--_quiet);
  }
  td ul {
    margin: 0;
    padding: 0;
    list-style: none;
    font-size: 0.875em;
  }
  td li {
    max-inline-size: 24em;
    margin-block-end: 0.5em;
    padding-inline-start: 0.5em;
    border-inline-start: 4px solid var(--_role);
  }
  .stop {
    --_role: var(--_stop);
    border-inline-start-width: 8px;
  }
  .think {
    --_role: var(--_think);
  }
  .note {
    --_role: var(--_note);
    border-inline-start-style: dotted;
  }
  td summary {
    /* Its text stands in line with the cells beside it. */
    margin-block-start: calc(-1 * max(0.5em, (44px - 1.4em) / 2));
    inline-size: fit-content;
    min-inline-size: 44px;
  }
  [part='choose'] {
    box-sizing: border-box;
    min-block-size: max(44px, 2.75em);
    min-inline-size: 44px;
    margin: 0;
    padding: 0.25em 0.75em;
    border: 1px solid var(--_quiet);
    border-radius: 4px;
    background: var(--_ground);
    color: inherit;
    font: inherit;
    text-align: start;
    cursor: pointer;
  }
  [part='choose'][aria-disabled='true'] {
    border-color: var(--_line);
    color: var(--_quiet);
    cursor: auto;
  }
  [part='choose']:hover:not([aria-disabled='true']) {
    background: var(--_cornea);
  }
  :is(button, summary):focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  @media print {
    .choose,
    .mark {
      display: none;
    }
    /* On paper nobody can open them. */
    td details::details-content {
      display: block;
      block-size: auto;
      content-visibility: visible;
    }
    td summary {
      list-style: none;
    }
    [part~='option'] {
      break-inside: avoid;
    }
  }
`;
