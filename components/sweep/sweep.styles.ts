import { css } from 'lit';
import { HEIGHT } from './sweep.layout.js';

export const sweepStyles = css`
  /* A curve over a whole turn gains from width; the other drawings are round. */
  .plate {
    max-inline-size: var(--astig-size, 44rem);
  }
  /* Around the drawing only: the text below still gives the element a width where it is as wide as what it holds. */
  .frame {
    container-type: inline-size;
  }
  /* The height that the layout will come to; the size of the figures as in all drawings. */
  .stage {
    --_figures: min(0.75em, 100cqi / 18);
    block-size: max(${HEIGHT.least}px, ${100 * HEIGHT.ofWidth}cqi, ${HEIGHT.fixed}px + ${HEIGHT.ofText} * var(--_figures));
  }
  .stage svg {
    block-size: 100%;
  }
  /* The drawing runs to the right in every language, the words in it as they are read. */
  [dir='rtl'] svg text {
    unicode-bidi: plaintext;
  }
  .grid {
    stroke: var(--_line);
    stroke-width: 0.75;
  }
  .floor,
  .ticks {
    fill: none;
    stroke: var(--_quiet);
  }
  svg .names text {
    fill: var(--_ink);
  }
  .curve {
    fill: none;
    stroke: var(--_remaining);
    stroke-width: 2.5;
    stroke-linejoin: round;
  }
  .band {
    fill: var(--_remaining);
    fill-opacity: 0.09;
    stroke: var(--_remaining);
    stroke-opacity: 0.55;
    stroke-dasharray: 2 3;
  }
  .good {
    stroke: var(--_quiet);
    stroke-width: 1.5;
    stroke-dasharray: 8 4;
  }
  .guide {
    stroke: var(--_quiet);
    stroke-dasharray: 1 4;
    stroke-linecap: round;
  }
  .best .guide {
    stroke: var(--_remaining);
    stroke-dasharray: 3 3;
  }
  .dot {
    fill: var(--_ground);
    stroke: var(--_quiet);
    stroke-width: 2;
  }
  .diamond {
    fill: var(--_ground);
    stroke: var(--_remaining);
    stroke-width: 2;
    stroke-linejoin: round;
  }
  /* A rim of the ground, so that a line behind a name does not run through its letters. */
  svg .name {
    paint-order: stroke;
    stroke: var(--_ground);
    stroke-width: 3px;
    stroke-linejoin: round;
    fill: var(--_ink);
    pointer-events: none;
  }
  svg .name.best,
  .flag {
    font-weight: 600;
  }
  svg .flag text {
    fill: var(--_incision);
  }
  .marker {
    stroke: var(--_incision);
    stroke-width: 2;
  }
  .point {
    fill: var(--_incision);
  }
  /* Lies over the plot, so that all of it shows that it can be clicked. */
  .field {
    fill: transparent;
    cursor: pointer;
  }
  .plan {
    min-block-size: 44px;
    margin-block-start: 0.75em;
    padding: 0.25em 1.25em;
    border: 1px solid var(--_quiet);
    border-radius: 4px;
    background: var(--_ground);
    color: var(--_ink);
    font: inherit;
  }
  .plan:focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  @media print {
    .hint,
    .plan {
      display: none;
    }
  }
`;
