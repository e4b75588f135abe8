import { css } from 'lit';

/** The small pictures, with the colours and line styles of the large one, and the layout of a narrow place and of paper. */
export const cardsStyles = css`
  .picture {
    inline-size: 4.5em;
    block-size: 4.5em;
    overflow: hidden;
  }
  .limbus {
    fill: var(--_cornea);
    stroke: var(--_quiet);
  }
  .entry,
  .arc,
  .lens {
    fill: none;
  }
  .entry {
    stroke: var(--_incision);
    stroke-width: 4;
  }
  .tunnel {
    fill: var(--_incision);
    fill-opacity: 0.15;
    stroke: var(--_incision);
    stroke-dasharray: 2 1.5;
  }
  .arc {
    stroke: var(--_arcs);
    stroke-width: 3;
  }
  .lens {
    stroke: var(--_lens);
    stroke-width: 2;
    stroke-dasharray: 8 2 2 2;
  }
  .petals {
    fill: var(--_remaining);
    stroke: var(--_remaining);
    stroke-width: 0.75;
  }
  /* Too narrow for eight columns: three of them, with their headings, and the other cells above and below. */
  @container (max-width: 66em) {
    table,
    caption,
    thead,
    tbody,
    th,
    td {
      display: block;
    }
    tr {
      display: grid;
      grid-template-columns: 5.75em repeat(3, minmax(0, 1fr));
      gap: 0.5em 1em;
      padding: 0.75em 0.5em;
      border-block-end: 1px solid var(--_line);
    }
    thead tr {
      padding-block: 0;
    }
    th,
    td {
      padding: 0;
      border: 0;
    }
    thead .plain {
      position: absolute;
      inline-size: 1px;
      block-size: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }
    .sortable:nth-of-type(3) {
      grid-column: 2;
    }
    td[data-label]::before {
      content: attr(data-label);
      display: block;
      font-weight: 400;
    }
    td:is(.figure, .surgery)::before {
      display: none;
    }
    [part='choose'] {
      white-space: normal;
    }
    .rank {
      grid-area: 1 / 1 / 4 / 2;
    }
    .plan {
      grid-area: 1 / 2 / 2 / 4;
    }
    .choose {
      grid-area: 1 / 4 / 2 / 5;
    }
    .remaining {
      grid-area: 2 / 2 / 3 / 3;
    }
    .odds {
      grid-area: 2 / 3 / 3 / 4;
    }
    .surgery {
      grid-area: 2 / 4 / 3 / 5;
    }
    .reason {
      grid-area: 3 / 2 / 4 / 3;
    }
    .cautions {
      grid-area: 3 / 3 / 4 / 5;
    }
  }
  /* Narrower still: a card for each plan, and the headings that sort in a row above them. */
  @container (max-width: 34em) {
    tr {
      display: flex;
      flex-wrap: wrap;
    }
    thead tr {
      gap: 0 1em;
      margin-block-end: 0.25em;
      border: 0;
      padding-inline: 0;
    }
    tbody tr {
      margin-block-end: 0.75em;
      padding: 0.75em;
      border: 1px solid var(--_line);
      border-radius: 6px;
    }
    .rank {
      inline-size: 5.75em;
    }
    .plan {
      flex: 1 1 calc(100% - 7em);
      min-inline-size: 8em;
    }
    .figure {
      flex: 1 1 7em;
    }
    .surgery,
    .cautions {
      flex: 1 1 8.25em;
    }
    .reason,
    .choose,
    .cautions:has([open]) {
      flex: 1 1 100%;
    }
    td:is(.figure, .surgery)::before {
      display: block;
    }
    td.figure::before {
      font-size: 0.7778em;
    }
  }
`;
