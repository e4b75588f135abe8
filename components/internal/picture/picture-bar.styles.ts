import { css } from 'lit';

/** The row under a drawing that gives it away. */
export const pictureBarStyles = css`
  .picture-bar {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.25em 1.25em;
    margin: 0.5em 0 0;
    font-size: 0.875em;
  }
  .picture-bar :is(button, a) {
    display: inline-flex;
    align-items: center;
    min-block-size: 44px;
    padding: 0;
    border: 0;
    background: none;
    color: inherit;
    font: inherit;
    text-decoration: underline dotted 1px;
    text-underline-offset: 0.25em;
    cursor: pointer;
  }
  .picture-bar :focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  @media print {
    .picture-bar {
      display: none;
    }
  }
`;
