import { css } from 'lit';

/** The form of what may be offered, and how everything that can be pressed looks. */
export const formStyles = css`
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
  .segments {
    display: flex;
    flex-wrap: wrap;
    gap: 0.375em;
  }
  .segment {
    display: inline-flex;
    align-items: center;
    gap: 0.5em;
  }
  .segment,
  button[part='choose'] {
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
  .segment:has(:checked) {
    border-color: var(--_ink);
    background: var(--_cornea);
    box-shadow: inset 0 0 0 1px var(--_ink);
  }
  .segment:hover,
  button[part='choose']:hover:not([aria-disabled='true']) {
    background: var(--_cornea);
  }
  input[type='radio'],
  input[type='checkbox'] {
    flex: none;
    appearance: none;
    box-sizing: border-box;
    inline-size: 1em;
    block-size: 1em;
    margin: 0;
    border: 0.1em solid currentColor;
    border-radius: 50%;
    color: inherit;
    outline: none;
  }
  input[type='checkbox'] {
    border-radius: 2px;
  }
  /* A border, not a background: it is seen in forced colours and on paper. */
  input:checked {
    border-width: 0.3125em;
  }
  input[type='text'] {
    box-sizing: border-box;
    inline-size: 100%;
    min-block-size: max(44px, 2.75em);
    margin: 0;
    padding: 0.25em 0.625em;
    border: 1px solid var(--_quiet);
    border-radius: 4px;
    background: var(--_ground);
    color: inherit;
    font: inherit;
    font-variant-numeric: tabular-nums;
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
  .error {
    padding-inline-start: 0.5em;
    border-inline-start: 3px solid var(--_stop);
    font-weight: 600;
  }
  input[type='text']:focus-visible,
  .segment:has(:focus-visible),
  button:focus-visible,
  summary:focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
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
  @media (forced-colors: active) {
    .segment:has(:checked) {
      border-width: 2px;
      padding-inline: calc(0.75em - 1px);
    }
  }
  @media print {
    .form {
      display: none;
    }
  }
`;
