import { css } from 'lit';

/** The element and its controls. */
export const sightStyles = css`
  :host {
    container-type: inline-size;
  }
  p,
  ul {
    margin: 0;
  }
  .controls {
    display: grid;
    gap: 1em;
    margin-block-end: 1.25em;
  }
  .pair-of-groups {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 1em 2em;
  }
  .choice {
    min-inline-size: 0;
  }
  .label,
  .field label {
    margin: 0 0 0.25em;
    color: var(--_quiet);
    font-size: 0.875em;
  }
  .segment:hover {
    background: var(--_cornea);
  }
  .scene .segments {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 11.5em), 1fr));
    max-inline-size: 62em;
  }
  .scene .segment {
    padding: 0.375em 0.625em;
  }
  .segment span {
    min-inline-size: 0;
    overflow-wrap: anywhere;
  }
  .segment svg {
    flex: none;
    inline-size: 2.5em;
    block-size: 2.5em;
    border-radius: 3px;
    overflow: hidden;
  }
  details {
    border-block: 1px solid var(--_line);
  }
  summary {
    box-sizing: border-box;
    min-block-size: 44px;
    padding-block: max(0.5em, (44px - 1.4em) / 2);
    cursor: pointer;
  }
  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 12em), 18em));
    gap: 1em 2em;
  }
  details > * + * {
    margin-block-end: 1em;
  }
  .field label {
    display: block;
  }
  .field p {
    margin: 0.25em 0 0;
  }
  input[aria-invalid='true'] {
    padding-inline: calc(0.625em - 1px);
    border: 2px solid var(--_stop);
  }
  .error {
    margin-block-end: 1em;
  }
  .field .error {
    margin-block-end: 0;
  }
  .allowed,
  .field .error {
    font-size: 0.875em;
  }
  .allowed {
    color: var(--_quiet);
  }
  @container (max-width: 26em) {
    .scene .segments {
      grid-template-columns: repeat(auto-fit, minmax(min(100%, 10em), 1fr));
    }
    .segment svg {
      inline-size: 2em;
      block-size: 2em;
    }
  }
  @media (forced-colors: active) {
    .segment svg,
    .sharp svg {
      forced-color-adjust: none;
    }
  }
  @media print {
    .controls {
      display: none;
    }
  }
`;
