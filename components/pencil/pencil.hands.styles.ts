import { css } from 'lit';

/** What turns the bundle and moves the screen. */
export const pencilHandsStyles = css`
  .handle[part='screen-handle'] {
    --_role: var(--_ink);
  }
`;
