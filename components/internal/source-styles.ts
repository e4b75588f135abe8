import { css } from 'lit';

/** Figures that can be asked for their source. */
export const sourceStyles = css`
  .sourced {
    all: unset;
    cursor: help;
    text-decoration: underline dotted 1px var(--_quiet);
    text-underline-offset: 0.2em;
  }
  .sourced:hover {
    text-decoration-style: solid;
  }
  .sourced:focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  @media print {
    .sourced {
      text-decoration: none;
    }
  }
`;
