import { css } from 'lit';

export const vectorsStyles = css`
  [part='ring'] {
    fill: none;
    stroke: var(--_line);
  }
  [part='good'] {
    fill: var(--_ink);
    fill-opacity: 0.06;
  }
  [part='spread'] {
    fill: var(--_remaining);
    fill-opacity: 0.07;
    stroke: var(--_remaining);
    stroke-dasharray: 2 3;
  }
  .axis {
    stroke: var(--_line);
  }
  .rim text {
    fill: var(--_ink);
  }
  .vector {
    --_role: var(--_before);
    outline: none;
  }
  .incision {
    --_role: var(--_incision);
  }
  .arcs {
    --_role: var(--_arcs);
  }
  .backSurface {
    --_role: var(--_back-surface);
  }
  .lens {
    --_role: var(--_lens);
  }
  .residual {
    --_role: var(--_remaining);
  }
  .shaft {
    stroke: var(--_role);
    stroke-width: 2.25;
  }
  .before .shaft {
    stroke-dasharray: 6 4;
  }
  /* A wide band under the other arrows, so that it shows where they lie on it. */
  .band {
    stroke: var(--_before);
    stroke-opacity: 0.22;
    stroke-width: 13;
  }
  .backSurface .shaft {
    stroke-dasharray: 2 3;
  }
  .arcs .shaft {
    stroke-width: 4;
  }
  .lens .shaft {
    stroke-dasharray: 12 3 2 3;
  }
  .residual .shaft {
    stroke-width: 3;
  }
  .head {
    fill: var(--_role);
  }
  .grab {
    stroke: transparent;
    stroke-width: 24;
    stroke-linecap: round;
  }
  .vector:hover .shaft,
  .vector:focus .shaft {
    stroke-width: 5;
  }
  .vector:focus-visible .halo {
    stroke: var(--_focus);
    stroke-opacity: 0.45;
    stroke-width: 14;
    stroke-linecap: round;
  }
  .rings text,
  svg .name {
    paint-order: stroke;
    stroke: var(--_ground);
    stroke-width: 2px;
    stroke-linejoin: round;
  }
  .leader {
    stroke: var(--_quiet);
    stroke-width: 0.75;
  }
  svg .name {
    fill: var(--_ink);
    font-weight: 600;
    pointer-events: none;
  }
  .origin {
    fill: var(--_remaining);
  }
  .readout {
    min-block-size: 2.8em;
  }
`;
