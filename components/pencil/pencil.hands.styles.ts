import { css } from 'lit';

/** What turns the bundle and moves the screen. */
export const pencilHandsStyles = css`
  .handle[part='screen-handle'] {
    --_role: var(--_ink);
  }
  .slide {
    display: grid;
    grid-template-columns: minmax(4.5em, auto) 1fr;
    align-items: center;
    gap: 0.75em;
    min-block-size: var(--_row);
  }
  input[type='range'] {
    inline-size: 100%;
    min-inline-size: 0;
    min-block-size: 44px;
    margin: 0;
    accent-color: var(--_incision);
  }
  :is(button, input):focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  .stops {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 0.375em;
  }
  button[part='button'] {
    box-sizing: border-box;
    min-block-size: var(--_button);
    padding: 0.25em 0.75em;
    border: 1px solid var(--_quiet);
    border-radius: 4px;
    background: var(--_ground);
    color: inherit;
    font: inherit;
    cursor: pointer;
  }
`;
