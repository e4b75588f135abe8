import { css } from 'lit';

export const outcomesStyles = css`
  .drop {
    padding: 1em;
    border: 2px dashed var(--_quiet);
    border-radius: 6px;
  }
  .drop.over {
    border-style: solid;
    border-color: var(--_focus);
  }
  .file {
    position: relative;
    display: inline-flex;
  }
  .file input {
    position: absolute;
    inset: 0;
    opacity: 0;
    cursor: pointer;
  }
  .file:focus-within button {
    outline: 3px solid var(--_focus);
  }
  textarea {
    box-sizing: border-box;
    inline-size: 100%;
    min-block-size: 7em;
    margin-block: 0.5em;
    border: 1px solid var(--_quiet);
    background: var(--_ground);
    color: inherit;
    font: inherit;
    direction: ltr;
  }
  progress {
    inline-size: min(100%, 20em);
  }
  summary {
    padding-block: 0.7em;
    cursor: pointer;
  }
  @media print {
    .drop,
    [part='button'] {
      display: none;
    }
  }
`;
