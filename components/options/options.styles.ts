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
  }
  .offered,
  caption,
  td::before {
    color: var(--_quiet);
    font-size: 0.875em;
  }
  .list > p {
    margin: 0 0 0.75em;
    max-inline-size: 60em;
  }
  /* English stays English in a page that runs the other way. */
  caption {
    padding-block: 0.25em;
    text-align: start;
    unicode-bidi: plaintext;
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
    overflow-wrap: break-word;
  }
  thead th {
    padding-block: 0;
  }
  .plain {
    /* In line with the names in the buttons beside it. */
    padding-block-start: calc(44px - 1.5em);
  }
  .sort {
    all: unset;
    display: flex;
    align-items: end;
    gap: 0.375em;
    padding-block-end: 0.1em;
    color: var(--_ink);
    font-weight: 600;
    cursor: pointer;
  }
  .sort,
  th .sourced,
  li .sourced {
    box-sizing: border-box;
    min-inline-size: 44px;
    min-block-size: 44px;
  }
  .sort:hover {
    text-decoration: underline;
  }
  /* Which way the figures run down the column; both ways where it can be sorted and is not. Heard by aria-sort. */
  .sort::after {
    content: '↕' / '';
  }
  [aria-sort='ascending'] .sort::after {
    content: '↑' / '';
  }
  [aria-sort='descending'] .sort::after {
    content: '↓' / '';
  }
  :is(caption, summary):dir(rtl) {
    text-align: right;
  }
  th .sourced {
    display: block;
    white-space: nowrap;
  }
  /* Room to hit that does not push the lines of the text apart. */
  li .sourced {
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
  [part='chance'],
  [part='choose'] {
    white-space: nowrap;
  }
  /* Broken within only where it has a line of its own and that is too short. */
  .phrase {
    display: inline-block;
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
  }
  td summary {
    /* Its text stands in line with the cells beside it. */
    margin-block-start: calc(-1 * max(0.5em, (44px - 1.4em) / 2));
    inline-size: fit-content;
    min-inline-size: 44px;
  }
  [part='choose'] {
    min-block-size: 44px;
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
    .choose {
      display: none;
    }
    .sort::after {
      content: none;
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
