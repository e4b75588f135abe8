import { css } from 'lit';

/** The form of what may be offered. */
export const formStyles = css`
  .form,
  .fields {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1em;
  }
  .form {
    padding-block-end: 1em;
  }
  /* Label, box and note of neighbours share three rows, so that boxes stand in line below labels of any length. */
  .fields {
    gap: 0 1em;
  }
  .field {
    display: grid;
    grid-template-rows: subgrid;
    grid-row: span 3;
    padding-block-end: 0.75em;
  }
  .choice,
  .field {
    min-inline-size: 0;
    overflow-wrap: break-word;
  }
  .choice p,
  .field p {
    margin: 0.25em 0 0;
  }
  .choice .label,
  .field label {
    align-self: end;
    margin: 0 0 0.25em;
  }
  .segment:hover {
    background: var(--_cornea);
  }
  input[aria-invalid='true'] {
    padding-inline: calc(0.625em - 1px);
    border: 2px solid var(--_stop);
  }
  .allowed,
  .error {
    font-size: 0.875em;
  }
  .allowed {
    color: var(--_quiet);
  }
  @container (inline-size >= 34em) {
    .form {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .choice.sites,
    .fields {
      grid-column: 1 / -1;
    }
    .fields {
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }
  }
  @media print {
    .form {
      display: none;
    }
  }
`;
