import { css } from 'lit';

/** Both pictures, side by side or one over the other. They are the same on light and dark ground. */
export const picturesStyles = css`
  .pictures {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, var(--astig-size, 34rem)));
    gap: 0.5em 1em;
  }
  .divider {
    grid-template-columns: repeat(2, minmax(0, calc(var(--astig-size, 34rem) / 2)));
    column-gap: 0;
    /* The slider reaches half a thumb further than the pictures on either side. */
    overflow-x: clip;
  }
  figure {
    margin: 0;
    min-inline-size: 0;
  }
  .divider figure {
    display: contents;
  }
  canvas {
    display: block;
    box-sizing: border-box;
    inline-size: 100%;
    block-size: auto;
    border: 1px solid var(--_line);
    background: var(--_cornea);
  }
  figcaption {
    margin-block-start: 0.5em;
    min-block-size: 5.6em;
    overflow-wrap: break-word;
    font-variant-numeric: tabular-nums;
  }
  .divider figcaption {
    grid-row: 2;
    margin-block-start: 0;
  }
  .divider .after figcaption {
    padding-inline-start: 1em;
  }
  /* Not "end": by that browsers mean different sides where a text goes its own way. */
  .divider .after figcaption p {
    text-align: right;
  }
  .divider:dir(rtl) .after figcaption p {
    text-align: left;
  }
  .divider :is(canvas, .cut, .grip) {
    grid-area: 1 / 1 / 2 / 3;
  }
  .divider .after canvas {
    clip-path: inset(0 0 0 var(--_cut));
  }
  .divider:dir(rtl) .after canvas {
    clip-path: inset(0 var(--_cut) 0 0);
  }
  .cut {
    /* A clipped canvas is painted above all that is not positioned. */
    position: relative;
    appearance: none;
    inline-size: calc(100% + 44px);
    block-size: 100%;
    margin: 0;
    margin-inline-start: -22px;
    background: none;
    cursor: ew-resize;
    touch-action: pan-y;
    outline: none;
  }
  .cut::-webkit-slider-runnable-track {
    block-size: 100%;
  }
  .cut::-webkit-slider-thumb {
    appearance: none;
    inline-size: 44px;
    block-size: 100%;
    background: none;
    border: 0;
  }
  .cut::-moz-range-track {
    background: none;
  }
  .cut::-moz-range-thumb {
    inline-size: 44px;
    block-size: 100%;
    background: none;
    border: 0;
  }
  .grip {
    position: relative;
    inset-inline-start: var(--_cut);
    display: grid;
    place-items: center;
    inline-size: 44px;
    margin-inline-start: -22px;
    pointer-events: none;
  }
  .grip::before {
    content: '';
    position: absolute;
    inset-block: 0;
    inset-inline: 20px;
    border-inline: 1px solid var(--_ground);
    background: var(--_ink);
  }
  .grip svg {
    position: relative;
    inline-size: 44px;
    block-size: 44px;
    border-radius: 50%;
    fill: none;
    stroke: var(--_ink);
    stroke-width: 2.5;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .grip circle {
    fill: var(--_ground);
  }
  .cut:focus-visible + .grip svg {
    outline: 3px solid var(--_focus);
    outline-offset: -2px;
  }
  .sharp {
    max-inline-size: var(--astig-size, 34rem);
  }
  .notes {
    display: grid;
    gap: 0.4em;
    margin-block-start: 1em;
    max-inline-size: 50em;
    font-size: 0.9375em;
  }
  .notes p + p {
    color: var(--_quiet);
  }
  @container (max-width: 26em) {
    .pair {
      grid-template-columns: minmax(0, 1fr);
    }
    .pair figcaption {
      min-block-size: 0;
      margin-block-end: 0.75em;
    }
  }
  @container (max-width: 22em) {
    .divider figcaption {
      grid-column: 1 / 3;
    }
    .divider .after figcaption {
      grid-row: 3;
    }
  }
  /* On paper nothing can be slid: both pictures stand side by side. */
  @media print {
    .cut,
    .grip {
      display: none;
    }
    .pictures {
      grid-template-columns: repeat(2, minmax(0, 1fr));
      column-gap: 1em;
    }
    .divider figure {
      display: block;
    }
    .divider .after canvas {
      clip-path: none;
    }
    .divider .after figcaption {
      padding: 0;
    }
    .divider .after figcaption p {
      text-align: left;
    }
    .divider:dir(rtl) .after figcaption p {
      text-align: right;
    }
    canvas {
      break-inside: avoid;
    }
  }
`;
