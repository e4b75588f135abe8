import { css } from 'lit';

/** Line styles tell everything apart where colours do not. */
export const pencilStyles = css`
  :host {
    --_front: var(--astig-front-line, light-dark(#0072b2, #56b4e9));
    --_back: var(--astig-back-line, light-dark(#c25400, #ee8245));
  }
  .turns {
    touch-action: pan-y;
    cursor: move;
  }
  [part='rays'] {
    fill: none;
    stroke: var(--_quiet);
    stroke-width: 0.5;
    stroke-opacity: 0.45;
  }
  .rim {
    fill: none;
    stroke: var(--_quiet);
    stroke-width: 0.75;
  }
  .axis {
    stroke: var(--_quiet);
    stroke-width: 0.75;
    stroke-dasharray: 8 3 2 3;
  }
  .fan path {
    fill: none;
    stroke: var(--_role);
    stroke-width: 1.25;
  }
  .fan .sheet {
    fill: var(--_role);
    fill-opacity: 0.12;
    stroke: none;
  }
  [part='steep-fan'],
  [part='front-line'],
  .front {
    --_role: var(--_front);
  }
  [part='flat-fan'],
  [part='back-line'],
  .back {
    --_role: var(--_back);
  }
  [part='flat-fan'] path:not(.sheet) {
    stroke-dasharray: 5 3;
  }
  .focal {
    stroke: var(--_role);
    stroke-width: 5;
    stroke-linecap: round;
  }
  [part='back-line'] .focal,
  .back .focal {
    stroke-dasharray: 7 7;
  }
  .under {
    stroke: var(--_ground);
    stroke-width: 9;
    stroke-linecap: round;
  }
  [part='circle'],
  .circle {
    fill: var(--_remaining);
    fill-opacity: 0.12;
    stroke: var(--_remaining);
    stroke-width: 2.5;
  }
  .point {
    fill: var(--_remaining);
  }
  [part='retina'],
  .retina {
    fill: var(--_back-surface);
    fill-opacity: 0.1;
    stroke: var(--_back-surface);
    stroke-width: 1.5;
    stroke-dasharray: 2 3;
  }
  [part='screen'],
  .screen {
    fill: var(--_ground);
    fill-opacity: 0.55;
    stroke: var(--_ink);
    stroke-width: 1.5;
  }
  .patch,
  [part='patch'] {
    fill: var(--_ink);
    fill-opacity: 0.5;
    stroke: var(--_ink);
    stroke-width: 1;
  }
  [part='dial'] {
    fill: none;
    stroke: var(--_quiet);
  }
  .tick {
    stroke: var(--_quiet);
  }
  .retina line {
    stroke: var(--_back-surface);
    stroke-width: 2;
    stroke-dasharray: 2 3;
  }
  .pointer,
  .arrow {
    fill: var(--_ink);
  }
  .bar path {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.5;
  }
  svg .name {
    fill: var(--_ink);
    font-weight: 600;
    unicode-bidi: plaintext;
    paint-order: stroke;
    stroke: var(--_ground);
    stroke-width: 2px;
    stroke-linejoin: round;
    pointer-events: none;
  }
  .leader {
    stroke: var(--_quiet);
    stroke-width: 0.75;
  }
  .key li {
    align-items: start;
  }
  /* Grows and shrinks most while the screen moves. */
  .key li:last-child {
    min-block-size: 2.8em;
  }
  .key svg {
    margin-block-start: 0.3em;
  }
  .controls {
    display: grid;
    gap: 0.25em 1em;
    margin-block-start: 0.75em;
  }
  .slide {
    display: grid;
    grid-template-columns: minmax(4.5em, auto) 1fr;
    align-items: center;
    gap: 0.75em;
    min-block-size: max(44px, 1.5em);
  }
  input[type='range'] {
    inline-size: 100%;
    min-inline-size: 0;
    min-block-size: 44px;
    margin: 0;
    accent-color: var(--_incision);
  }
  .stops {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(7.5em, 1fr));
    gap: 0.375em;
  }
  button[part='button'] {
    text-align: center;
  }
  details {
    margin-block-start: 0.5em;
  }
  summary {
    box-sizing: border-box;
    min-block-size: 44px;
    padding-block: max(0.5em, (44px - 1.4em) / 2);
    cursor: pointer;
  }
  :is(button, input, summary):focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  details p {
    margin: 0 0 0.5em;
    font-size: 0.875em;
  }
  @media (forced-colors: active) {
    :host {
      --_front: LinkText;
      --_back: CanvasText;
    }
  }
  @media print {
    .controls,
    .hint,
    details:not([open]) {
      display: none;
    }
  }
`;
