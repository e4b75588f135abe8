import { css } from 'lit';

/** What can be taken hold of in a drawing. Its colour is that of the incision unless a drawing sets `--_role`. */
export const handleStyles = css`
  .hit {
    fill: transparent;
  }
  .handle {
    /* Chromium ignores touch-action on an inline child of a drawing. */
    display: block;
    touch-action: none;
    cursor: grab;
    --_role: var(--_incision);
  }
  .handle:active,
  .handle.held {
    cursor: grabbing;
  }
  .knob {
    fill: var(--_ground);
    stroke: var(--_role);
    stroke-width: 2.5;
  }
  .grip {
    fill: none;
    stroke: var(--_role);
    stroke-width: 1.75;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .handle:hover .knob,
  .held .knob {
    fill: var(--_role);
  }
  .handle:hover .grip,
  .held .grip {
    stroke: var(--_ground);
  }
  .focus {
    fill: none;
    stroke: var(--_focus);
    stroke-width: 3;
  }
  @media print {
    .handle {
      display: none;
    }
  }
`;
