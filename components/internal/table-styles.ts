import { css } from 'lit';

/** Tables: figures in line, a line under each row, quiet headings. The box around one tells it how much room there is. */
export const tableStyles = css`
  .wrap {
    container-type: inline-size;
  }
  table {
    border-collapse: collapse;
    inline-size: 100%;
    font-variant-numeric: tabular-nums;
  }
  th,
  td {
    text-align: start;
    vertical-align: top;
    border-block-end: 1px solid var(--_line);
    font-weight: 400;
  }
  thead th {
    color: var(--_quiet);
    font-size: 0.875em;
  }
`;
