import { css } from 'lit';

export const corneaStyles = css`
  .sclera {
    fill: var(--_sclera);
    stroke: var(--_line);
  }
  [part='limbus'] {
    fill: var(--_cornea);
    stroke: var(--_quiet);
    stroke-width: 1.25;
  }
  .iris {
    stroke: var(--_line);
    stroke-width: 0.75;
    opacity: 0.7;
  }
  .pupil {
    fill: var(--_pupil);
  }
  .tick {
    stroke: var(--_line);
  }
  .long-tick {
    stroke: var(--_quiet);
    stroke-width: 1.5;
  }
  .clock text {
    opacity: 0.8;
  }
  .before {
    fill: none;
    stroke: var(--_before);
    stroke-width: 2;
    stroke-dasharray: 6 4;
  }
  [part='flat-before'] {
    stroke: var(--_before);
    stroke-width: 1.25;
    stroke-dasharray: 1 5;
    stroke-linecap: round;
  }
  .remaining-petals {
    fill: var(--_remaining);
    fill-opacity: 0.75;
    stroke: var(--_remaining);
    stroke-width: 1.5;
  }
  [part='steep-after'],
  .after-line {
    stroke: var(--_remaining);
    stroke-width: 1.5;
  }
  [part='steep-spread'] {
    fill: var(--_remaining);
    fill-opacity: 0.09;
  }
  .entry {
    fill: none;
    stroke: var(--_incision);
    stroke-width: 6;
  }
  .tunnel {
    fill: var(--_incision);
    fill-opacity: 0.15;
    stroke: var(--_incision);
    stroke-dasharray: 3 2;
  }
  [part='arc'],
  .arc-line {
    fill: none;
    stroke: var(--_arcs);
    stroke-width: 5;
  }
  [part='lens-axis'],
  .lens-line {
    stroke: var(--_lens);
    stroke-width: 2.5;
    stroke-dasharray: 12 3 2 3;
  }
  @media (forced-colors: active) {
    .iris {
      display: none;
    }
  }
  @media print {
    .hint {
      display: none;
    }
  }
`;
