import { css } from 'lit';

/** The drawing: black lines of widths that tell them apart, with dashes where two kinds lie near each other. */
export const sheetDrawingStyles = css`
  svg text,
  .solid {
    fill: var(--_ink);
  }
  .title {
    font-weight: 700;
  }
  :is(.open, .fine, .tunnel, .lens, .arc, .entry, .brow) {
    fill: none;
    stroke: var(--_ink);
  }
  .open {
    stroke-width: 1.75px;
  }
  [part='reference-mark'] {
    fill: var(--_ground);
  }
  .tunnel {
    stroke-dasharray: 4 3;
  }
  .entry {
    stroke-width: 8px;
  }
  .arc {
    stroke-width: 5px;
  }
  .brow {
    stroke-width: 8px;
    stroke-linecap: round;
  }
  .lens {
    stroke-width: 2.5px;
    stroke-dasharray: 14 4 3 4;
  }
  circle.number {
    fill: var(--_ground);
    stroke: var(--_ink);
    stroke-width: 1.5px;
  }
  [part='number'] text {
    font-weight: 700;
  }
`;
