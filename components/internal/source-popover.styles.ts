import { css } from 'lit';

/** The answer to where a figure comes from. */
export const popoverStyles = css`
  .source {
    box-sizing: border-box;
    inline-size: min(36rem, calc(100vw - 2rem));
    max-block-size: calc(100vh - 2rem);
    overflow: auto;
    padding: 1em 1.25em;
    border: 1px solid var(--_quiet);
    border-radius: 6px;
    background: var(--_ground);
    color: var(--_ink);
    font-size: 1rem;
    font-weight: 400;
    text-align: start;
    white-space: normal;
  }
  .source h2 {
    margin: 0 0 0.5em;
    font-size: 1.125em;
  }
  .source p {
    margin: 0.5em 0;
  }
  .source ul {
    margin: 0.5em 0;
    padding-inline-start: 1.25em;
    font-size: 0.875em;
  }
  .formula {
    padding: 0.5em 0.75em;
    border-inline-start: 3px solid var(--_line);
  }
  .close {
    position: sticky;
    inset-block-end: 0;
    min-block-size: 44px;
    padding: 0 1.25em;
    border: 1px solid var(--_quiet);
    border-radius: 4px;
    background: var(--_ground);
    color: var(--_ink);
    font: inherit;
  }
`;
