import { css } from 'lit';

/** Buttons and the choices that look like them: 44 px high at least, in the colours and the font around them. */
export const buttonStyles = css`
  :where(.segment, button[part='button'], button[part='choose']) {
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
`;
