import { css } from 'lit';

export const entryStyles = css`
  .form {
    container-type: inline-size;
    max-inline-size: 64em;
  }
  fieldset {
    display: grid;
    gap: 0.5em 1em;
    min-inline-size: 0;
    margin: 0;
    padding: 0.75em 0 0.25em;
    border: 0;
    border-block-start: 1px solid var(--_line);
  }
  fieldset:first-of-type {
    padding-block-start: 0;
    border-block-start: 0;
  }
  /* Floating takes the legend out of the border, so that the grid can place it; inside a grid nothing floats. */
  legend {
    float: left;
    max-inline-size: 100%;
    padding: 0;
    font-weight: 600;
    overflow-wrap: break-word;
    hyphens: auto;
  }
  .fields {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.25em 1em;
  }
  /* Label, box and notes of neighbours share three rows, so that boxes stand in line below labels of any length. */
  .field,
  .choice {
    display: grid;
    grid-template-rows: subgrid;
    grid-row: span 3;
    align-content: start;
    min-inline-size: 0;
    padding-block-end: 0.75em;
    overflow-wrap: break-word;
  }
  .field > label,
  .label {
    align-self: end;
    margin: 0;
  }
  .box {
    position: relative;
  }
  /* The unit stands inside the field. */
  input[type='text'] {
    padding-inline-end: 3em;
  }
  input[aria-invalid='true'] {
    padding-inline-start: calc(0.625em - 1px);
    border: 2px solid var(--_stop);
  }
  input[type='text']:read-only {
    border-color: var(--_line);
    background: none;
  }
  .unit {
    position: absolute;
    inset-block: 0;
    inset-inline-end: 0.75em;
    display: grid;
    align-items: center;
    color: var(--_quiet);
    font-size: 0.875em;
    pointer-events: none;
  }
  .notes p {
    margin: 0;
    font-size: 0.875em;
  }
  .limits {
    color: var(--_quiet);
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 0.375em;
  }
  .segments,
  .buttons {
    align-content: start;
  }
  .segment:has(:disabled) {
    border-color: var(--_line);
    cursor: auto;
  }
  button:hover:not([aria-disabled='true']),
  .segment:hover:not(:has(:disabled)) {
    background: var(--_cornea);
  }
  button[aria-disabled='true'] {
    border-color: var(--_line);
    color: var(--_quiet);
    cursor: auto;
  }
  .actions {
    padding-block: 0.75em 0.25em;
    border-block-start: 1px solid var(--_line);
  }
  .choice.risks,
  .more,
  .offer {
    grid-column: 1 / -1;
  }
  .more,
  .offer {
    margin-block-end: 0.5em;
  }
  .more {
    margin-block-start: -0.5em;
  }
  summary {
    inline-size: fit-content;
    padding-block: max(0.7em, (45px - 1.4em) / 2);
    color: var(--_quiet);
    cursor: pointer;
  }
  .offer {
    padding: 0.25em 0.75em;
    border-inline-start: 4px dotted var(--_note);
  }
  .offer p,
  .refused p {
    margin: 0 0 0.5em;
  }
  .refused {
    margin-block-end: 1em;
    padding: 0.5em 0.75em;
    border: 2px solid var(--_stop);
    border-radius: 4px;
  }
  .refused ul {
    margin: 0;
    padding-inline-start: 1.25em;
  }
  @container (inline-size >= 20em) {
    .fields {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .choice {
      grid-column: span 2;
    }
  }
  @container (inline-size >= 38em) {
    .fields {
      grid-template-columns: repeat(4, minmax(0, 1fr));
    }
    .choice.kUnit {
      grid-column: auto;
    }
  }
  @container (inline-size >= 54em) {
    fieldset {
      grid-template-columns: 8em minmax(0, 1fr);
    }
    .actions {
      padding-inline-start: 9em;
    }
  }
  @media (forced-colors: active) {
    button[aria-disabled='true'] {
      color: GrayText;
    }
  }
  @media print {
    .buttons,
    .offer,
    .limits {
      display: none;
    }
    .segment:not(:has(:checked)) {
      color: var(--_quiet);
    }
  }
`;
