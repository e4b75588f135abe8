import { css } from 'lit';

export const resultsStyles = css`
  .diagram {
    position: relative;
  }
  .diagram canvas {
    position: absolute;
    inset: 0;
    inline-size: 100%;
    block-size: 100%;
  }
  .diagram svg {
    position: relative;
  }
  [part='ring'] {
    fill: none;
    stroke: var(--_line);
  }
  .axis {
    stroke: var(--_line);
  }
  .before {
    --_role: var(--_before);
  }
  .after {
    --_role: var(--_arcs);
  }
  .induced {
    --_role: var(--_incision);
  }
  .points {
    fill: none;
    stroke: var(--_role);
    stroke-width: 1.5;
    stroke-opacity: 0.55;
  }
  [part='mean-ellipse'],
  [part='eyes-ellipse'] {
    fill: none;
    stroke: var(--_role);
    stroke-width: 2;
  }
  [part='eyes-ellipse'] {
    stroke-dasharray: 5 4;
    stroke-width: 1.5;
  }
  [part='centroid'] {
    fill: var(--_role);
    stroke: var(--_ground);
    stroke-width: 2;
    paint-order: stroke;
  }
  .chosen {
    fill: none;
    stroke: var(--_focus);
    stroke-width: 3;
  }
  .bar {
    fill: var(--_role);
    fill-opacity: 0.75;
  }
  .bar.before {
    fill-opacity: 0.25;
    stroke: var(--_role);
    stroke-dasharray: 3 2;
  }
  .sign {
    inline-size: 1.25em;
    block-size: 1.25em;
    flex: none;
  }
  .scroll {
    overflow-x: auto;
  }
  th,
  td {
    padding: 0.375em 0.75em 0.375em 0;
  }
  .figures td {
    white-space: nowrap;
  }
  .figures th:last-child {
    min-inline-size: 13em;
  }
  thead th {
    vertical-align: bottom;
  }
  .figures,
  .figures th:first-child {
    background: var(--_ground);
  }
  .figures th:first-child {
    position: sticky;
    inset-inline-start: 0;
    min-inline-size: 6.5em;
  }
  h3 {
    margin: 1.5em 0 0.5em;
    font-size: 1.125em;
  }
  select {
    min-block-size: 44px;
    min-inline-size: 0;
    max-inline-size: 100%;
    font: inherit;
  }
  .columns {
    margin-block-end: 1em;
  }
  .columns ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .columns li {
    padding-block: 0.25em 0.5em;
    border-block-start: 1px solid var(--_line);
    overflow-wrap: anywhere;
  }
  .columns label {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.25em 1em;
    /* WebKit counts the longest name in the list as its contents, however narrow it is; the padding leaves room for the ring of focus. */
    overflow: hidden;
    padding: 5px;
  }
  .columns label span {
    flex: 1 1 9em;
  }
  .columns select {
    flex: 2 1 14em;
  }
  .columns p {
    margin: 0 5px;
  }
  [role='listbox'] {
    border: 1px solid var(--_quiet);
    border-radius: 4px;
  }
  [role='option'] {
    min-block-size: 2em;
    padding: 0.25em 0.5em;
    cursor: pointer;
  }
  [role='option'][aria-selected='true'] {
    background: var(--_cornea);
    outline: 2px solid var(--_ink);
    outline-offset: -2px;
  }
  [role='listbox']:focus-visible,
  select:focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  @media print {
    button[part='button'],
    .saved,
    .given,
    .columns {
      display: none;
    }
    h3 {
      break-after: avoid;
    }
    .scroll {
      overflow: visible;
    }
    .figures {
      font-size: 0.75em;
    }
    .figures td {
      white-space: normal;
    }
    .figures th:last-child {
      min-inline-size: 0;
    }
    [role='option'] {
      break-inside: avoid;
    }
  }
`;
