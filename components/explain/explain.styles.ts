import { css } from 'lit';

/** Large type and one idea a line: the reader has a cataract. Widths are in `em`, so columns give way to large text. */
export const explainStyles = css`
  :host {
    --_paper: light-dark(#ffffff, #14171a);
    --_plate: light-dark(#fdf3e1, #33291c);
    --_sun: light-dark(#f6c344, #b98310);
    font-size: var(--astig-text, 1.1875em);
    line-height: 1.5;
    container-type: inline-size;
  }
  .page {
    max-inline-size: 46em;
    overflow-wrap: anywhere;
  }
  /* The page runs the way of its own language, whichever way the host runs. */
  .page[dir] :is(p, li, figcaption, label, span, strong, button) {
    text-align: start;
    unicode-bidi: isolate;
  }
  .section {
    margin-block-end: 2em;
  }
  :is(h1, h2, h3, h4, h5, h6) {
    margin: 0 0 0.4em;
    font-size: 1.25em;
    line-height: 1.25;
  }
  .title :is(h1, h2, h3, h4) {
    font-size: 1.6em;
  }
  .item :is(h2, h3, h4, h5, h6) {
    font-size: 1.0625em;
    margin-block-end: 0.2em;
  }
  p {
    margin: 0 0 0.6em;
    text-wrap: pretty;
  }
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  figure {
    margin: 0;
  }
  figcaption {
    margin-block-start: 0.4em;
  }
  :is(.two, .three, .item, .signs) {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1.25em 1.5em;
  }
  :is(.two, .three) {
    margin-block: 1em;
  }
  .item {
    gap: 0.5em 1em;
  }
  .row > .picture {
    margin-block-end: 0.75em;
  }
  .planned,
  .unplanned {
    padding-inline-start: 0.6em;
    border-inline-start: 5px solid var(--_incision);
    font-weight: 600;
  }
  .unplanned {
    border-inline-start: 5px dotted var(--_quiet);
    font-weight: 400;
  }
  .ticks label {
    display: flex;
    gap: 0.6em;
    min-block-size: 44px;
    padding-block: 0.45em;
    box-sizing: border-box;
    cursor: pointer;
  }
  .ticks input {
    flex: none;
    inline-size: 1.2em;
    block-size: 1.2em;
    margin: 0.15em 0 0;
    accent-color: var(--_incision);
  }
  .ticks input:focus-visible,
  .ask .sourced:focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 3px;
  }
  .own {
    display: none;
  }
  .signs {
    gap: 0.4em 1.5em;
    margin-block-end: 0.8em;
  }
  .signs li {
    display: flex;
    align-items: center;
    gap: 0.7em;
  }
  .warning {
    padding: 1em 1.1em 0.6em;
    border: 3px solid var(--_ink);
    border-radius: 10px;
  }
  .ask {
    margin: 0;
    font-size: 0.8125em;
  }
  .ask .sourced {
    display: inline-block;
    min-block-size: 44px;
    padding-block: 0.7em;
    margin-inline-end: 1.5em;
    box-sizing: border-box;
    color: var(--_quiet);
  }
  .estimate {
    margin: 0;
    padding-block-start: 0.8em;
    border-block-start: 1px solid var(--_line);
  }

  .picture {
    display: block;
    inline-size: min(100%, 7.5em);
    block-size: auto;
  }
  .picture.wide {
    inline-size: min(100%, 18em);
  }
  .sign {
    flex: none;
    inline-size: 2.4em;
  }
  :is(.picture, .sign) :is(path, circle, rect) {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 2.5;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .picture .plate {
    fill: var(--_plate);
    stroke: none;
  }
  :is(.picture, .sign) .paper {
    fill: var(--_paper);
  }
  :is(.picture, .sign) .window {
    fill: var(--_cornea);
  }
  :is(.picture, .sign) .sun {
    fill: var(--_sun);
  }
  :is(.picture, .sign) .thin {
    stroke-width: 1.25;
  }
  :is(.picture, .sign) .heavy {
    stroke-width: 3.5;
  }
  :is(.picture, .sign) :is(.point, .dark) {
    fill: var(--_ink);
  }
  .picture .pupil {
    fill: var(--_pupil);
  }
  .picture .ray {
    stroke: var(--_before);
  }
  .picture .dashed {
    stroke-dasharray: 1 6;
  }
  .picture .cut {
    stroke: var(--_incision);
    stroke-width: 9;
    stroke-linecap: butt;
  }
  .picture .arc {
    stroke: var(--_arcs);
    stroke-width: 5;
  }
  .picture .lens {
    fill: var(--_paper);
    stroke: var(--_lens);
  }
  .front {
    inline-size: min(100%, 7.5em);
  }
  /* An arrow that points where the nose is does so in every language. */
  .page[dir] .nose {
    display: block;
    direction: ltr;
    text-align: left;
    font-size: max(0.75em, 9pt);
    line-height: 1.3;
    white-space: nowrap;
  }
  .page[dir] .nose.right {
    text-align: right;
  }

  @media (forced-colors: active) {
    :host {
      --_paper: Canvas;
      --_plate: Canvas;
      --_sun: Canvas;
    }
  }
  @container (max-width: 20em) {
    .page {
      hyphens: auto;
    }
  }
  @container (max-width: 14em) {
    .signs li {
      display: block;
    }
    .warning {
      padding-inline: 0.5em;
    }
  }
  @container (min-width: 14em) {
    .item {
      grid-template-columns: 5.5em minmax(0, 1fr);
    }
  }
  @container (min-width: 34em) {
    .two {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .three {
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }
    .item {
      grid-template-columns: minmax(0, 1fr);
      align-content: start;
    }
    .row {
      display: grid;
      grid-template-columns: 7.5em minmax(0, 1fr);
      gap: 1.5em;
    }
    .signs {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
`;
