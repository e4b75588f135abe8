import { css } from 'lit';

export const summaryStyles = css`
  .figures {
    display: flex;
    flex-wrap: wrap;
    gap: 1em 2.5em;
    margin: 0;
  }
  .figures div {
    min-inline-size: 9em;
  }
  dt {
    color: var(--_quiet);
    font-size: 0.875em;
  }
  dd {
    margin: 0;
  }
  .large {
    font-size: 1.5em;
    font-weight: 600;
    line-height: 1.25;
    font-variant-numeric: tabular-nums;
    white-space: nowrap;
  }
  .before .large {
    text-decoration: underline dashed 2px var(--_before);
    text-underline-offset: 0.25em;
  }
  .after .large {
    text-decoration: underline solid 3px var(--_remaining);
    text-underline-offset: 0.25em;
  }
  .chance {
    margin-block: 1.25em 0;
  }
  .chance p {
    margin: 0 0 0.5em;
  }
  .own {
    padding: 0 0.4em;
    border: 1px solid var(--_quiet);
    border-radius: 3px;
    font-size: 0.8125em;
    white-space: nowrap;
  }
  .wrap {
    container-type: inline-size;
    margin-block: 1em 0;
  }
  table {
    border-collapse: collapse;
    inline-size: 100%;
    font-variant-numeric: tabular-nums;
  }
  th,
  td {
    padding: 0.35em 0.75em 0.35em 0;
    text-align: start;
    vertical-align: top;
    border-block-end: 1px solid var(--_line);
    font-weight: 400;
  }
  thead th {
    color: var(--_quiet);
    font-size: 0.875em;
  }
  @container (max-width: 26em) {
    thead {
      display: none;
    }
    tr {
      display: block;
      padding-block: 0.35em;
      border-block-end: 1px solid var(--_line);
    }
    th,
    td {
      display: block;
      border: 0;
      padding: 0;
    }
    th {
      font-weight: 600;
    }
    td[data-label]::before {
      content: attr(data-label) ': ';
      color: var(--_quiet);
      font-size: 0.875em;
    }
  }
  .cautions {
    list-style: none;
    margin: 1em 0 0;
    padding: 0;
    display: grid;
    gap: 0.5em;
  }
  .cautions li {
    border-inline-start: 4px solid var(--_role);
    padding-inline-start: 0.75em;
  }
  .stop {
    --_role: var(--_stop);
  }
  .think {
    --_role: var(--_think);
  }
  .note {
    --_role: var(--_note);
  }
  .stop li,
  li.stop {
    border-inline-start-width: 8px;
  }
  li.note {
    border-inline-start-style: dotted;
  }
  .refused {
    border: 2px solid var(--_stop);
    border-radius: 4px;
    padding: 0.5em 0.75em;
    margin: 0 0 1em;
  }
  .refused p {
    margin: 0;
  }
  .refused ul {
    margin: 0.25em 0 0;
    padding-inline-start: 1.25em;
  }
`;
