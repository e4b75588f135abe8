import { css } from 'lit';

export const stepsStyles = css`
  nav {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.5em 1em;
    margin-block: 0.75em;
  }
  .plane {
    display: block;
    inline-size: min(100%, 22rem);
    margin-block: 0.5em;
    overflow: visible;
    cursor: crosshair;
  }
  .plane circle,
  .plane line {
    fill: none;
    stroke: var(--_line);
    vector-effect: non-scaling-stroke;
  }
  .plane text {
    fill: var(--_quiet);
    font-size: 13px;
  }
  .plane .value {
    font-size: 11px;
    paint-order: stroke;
    stroke: var(--_ground);
    stroke-width: 5px;
  }
  .plane .guess {
    stroke: var(--_ink);
    stroke-width: 2;
    stroke-dasharray: 5 4;
  }
  .plane .marker {
    display: block;
    fill: var(--_ground);
    stroke: var(--_ink);
    stroke-width: 2.5;
    touch-action: none;
    cursor: grab;
  }
  .plane .reach {
    display: block;
    fill: transparent;
    stroke: none;
    touch-action: none;
  }
  .sliders {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 14em), 1fr));
    gap: 0.5em 1.5em;
    max-inline-size: 36rem;
    margin-block-end: 0.75em;
  }
  input[type='range'] {
    inline-size: 100%;
    min-block-size: 44px;
    margin: 0;
    accent-color: var(--_ink);
  }
  .verdict {
    font-weight: 600;
  }
  button[aria-disabled='true'] {
    color: var(--_quiet);
    border-style: dashed;
    cursor: default;
  }
  @media not print {
    .sequence {
      position: absolute;
      visibility: hidden;
    }
  }
  section {
    break-inside: avoid;
    margin-block-end: 1.5em;
  }
  .pictures {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 1em;
  }
  @media print {
    nav,
    .live,
    .verdict,
    .predict {
      display: none;
    }
  }
`;
