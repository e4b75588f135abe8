import { css } from 'lit';

/** The map beneath the drawing, and what is below it. */
export const mapStyles = css`
  .map-colours {
    opacity: 0.5;
  }
  /* The middle of its scale is nearly white, which on a dark cornea would outshine the lines. */
  .map-colours.of-difference {
    opacity: 0.35;
  }
  .map-line {
    fill: none;
    stroke: var(--_quiet);
    stroke-width: 0.5;
    opacity: 0.55;
  }
  .map-line.printed {
    stroke: var(--_ink);
    stroke-width: 0.75;
    opacity: 1;
  }
  .map-line.less {
    stroke: var(--_ink);
    stroke-width: 0.75;
    stroke-dasharray: 3 3;
    opacity: 0.8;
  }
  .map-sign {
    fill: none;
    stroke: var(--_ink);
    opacity: 0.8;
  }
  svg .map-figure {
    fill: var(--_ink);
    stroke: var(--_cornea);
    stroke-width: 3px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .map-point {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.5;
  }
  .map-ground {
    fill: var(--_cornea);
  }
  .map-tick {
    stroke: var(--_quiet);
  }
  .below {
    display: none;
  }
  .map {
    margin: 0.75em 0 0;
    font-size: 0.875em;
  }
  .map p {
    margin: 0.25em 0;
  }
  .map label {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 0.75em;
  }
  .map label span {
    flex: 1 1 9em;
  }
  .map input {
    flex: 2 1 12em;
    min-inline-size: 8em;
    min-block-size: 44px;
    margin: 0;
    accent-color: var(--_ink);
  }
  .map output {
    display: block;
    min-block-size: 1.4em;
    font-variant-numeric: tabular-nums;
  }
  @media (forced-colors: active) {
    .map-colours {
      display: none;
    }
  }
  @media print {
    .map :is(.map-ask, output) {
      display: none;
    }
  }
`;
