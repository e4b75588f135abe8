import { css } from 'lit';

/** The handles of the cornea, in the colour of what they move. */
export const corneaHandsStyles = css`
  [part='arc-handle'],
  [part='arc-end-handle'] {
    --_role: var(--_arcs);
  }
  [part='lens-handle'] {
    --_role: var(--_lens);
  }
`;
