import { css } from 'lit';

/**
 * A sheet of paper, on the screen too: black on white, no greys that a photocopier would lose. What tells left from right
 * is never mirrored by the direction of the text: the bar stands at the edge that the side is called after.
 */
export const sheetStyles = css`
  :host {
    --_ground: #fff;
    --_ink: #000;
    --_quiet: #000;
    color-scheme: light;
    background: var(--_ground);
    container-type: inline-size;
  }
  .sheet {
    box-sizing: border-box;
    max-inline-size: var(--astig-sheet-width, 46em);
    margin: 0 auto;
    padding: 0.75em;
    border: 1px solid var(--_ink);
    line-height: 1.25;
    overflow-wrap: anywhere;
  }
  /* One solid bar at the right edge, two bars at the left edge. Borders are printed even where grounds are not. */
  .sheet.right {
    border-right: 1.5em solid var(--_ink);
  }
  .sheet.left {
    border-left: 2.2em double var(--_ink);
  }
  :is(h2, h3, p, dl, dd, ul, figure) {
    margin: 0;
    padding: 0;
  }
  ul {
    list-style: none;
  }
  header {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0.5em 1.5em;
    direction: ltr;
  }
  .right header {
    flex-direction: row-reverse;
  }
  .which {
    display: flex;
    align-items: center;
    gap: 0.75em;
  }
  .right .which {
    flex-direction: row-reverse;
    text-align: right;
  }
  .face {
    inline-size: clamp(3em, 15cqi, 4.5em);
    flex: none;
  }
  h2 {
    font-size: clamp(1.2em, 11cqi, 3.2em);
    line-height: 1;
  }
  .which :is(h2, p) {
    text-align: inherit;
  }
  .who {
    flex: 1 1 min(12em, 100%);
    min-inline-size: 0;
    max-inline-size: 24em;
  }
  .sheet[dir='rtl'] .who {
    direction: rtl;
  }
  .who > span {
    display: block;
  }
  h3 {
    margin-block: 0.7em 0.15em;
    font-size: 1em;
  }
  .fill {
    display: flex;
    align-items: end;
    gap: 0.5em;
    min-block-size: 2.2em;
  }
  .blank {
    display: inline-block;
    inline-size: 6em;
    max-inline-size: 100%;
    min-inline-size: 0;
    flex: 1;
    min-block-size: 1.1em;
    border-block-end: 1px solid var(--_ink);
  }
  .columns {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.5em 1.25em;
  }
  .plate {
    position: relative;
  }
  .probe {
    position: absolute;
    inline-size: 100%;
    block-size: 1em;
    visibility: hidden;
    background-color: var(--_ground);
  }
  figcaption {
    text-align: center;
  }
  .plate svg {
    display: block;
    inline-size: 100%;
    direction: ltr;
  }
  .sample {
    inline-size: 0.7em;
    vertical-align: baseline;
  }
  .cautions {
    margin-block-start: 0.6em;
    border: 1px solid var(--_ink);
    padding: 0.25em 0.5em;
  }
  .stop {
    border-inline-start: 0.5em solid var(--_ink);
    padding-inline-start: 0.4em;
  }
  :is(dt, dd) {
    display: inline;
  }
  dd {
    margin-inline-start: 0.4em;
    font-weight: 700;
  }
  .whole {
    white-space: nowrap;
  }
  .wrap {
    margin-block-start: 0.6em;
    overflow-x: auto;
  }
  table {
    border-collapse: collapse;
    inline-size: 100%;
    font-variant-numeric: tabular-nums;
  }
  :is(th, td) {
    overflow-wrap: normal;
    padding: 0.15em 0.4em;
    border: 1px solid var(--_ink);
    text-align: start;
    vertical-align: top;
    font-weight: 400;
  }
  thead th {
    font-size: 0.9em;
    vertical-align: bottom;
  }
  td strong {
    font-size: 1.3em;
  }
  span.number {
    display: inline-block;
    box-sizing: border-box;
    min-inline-size: 1.5em;
    border: 1px solid var(--_ink);
    border-radius: 1em;
    font-weight: 700;
    text-align: center;
  }
  .boxes,
  .signatures {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4em 1.25em;
  }
  .boxes li {
    display: flex;
    align-items: center;
    gap: 0.4em;
  }
  .box {
    flex: none;
    inline-size: 1em;
    block-size: 1em;
    border: 1.5px solid var(--_ink);
  }
  .signatures {
    margin-block: 0.5em;
  }
  .signatures li {
    flex: 1 1 min(12em, 100%);
    min-inline-size: 0;
    display: flex;
    align-items: end;
    gap: 0.5em;
    min-block-size: 2.2em;
  }
  .foot {
    margin-block-start: 0.3em;
    font-size: 0.85em;
  }
  .void {
    padding: 2em 1em;
    border: 0.6em solid var(--_ink);
    font-size: 1.25em;
  }
  .void > * {
    margin-block-end: 0.4em;
  }
  .void ul {
    padding-inline-start: 1.2em;
    list-style: disc;
  }
  .bar button {
    max-inline-size: 100%;
    min-block-size: 44px;
    margin-block: 0.5em;
    padding-inline: 1em;
    border: 1px solid var(--_ink);
    border-radius: 4px;
    background: var(--_ground);
    color: var(--_ink);
    font: inherit;
    cursor: pointer;
  }
  .bar {
    max-inline-size: var(--astig-sheet-width, 46em);
    margin: 0 auto;
  }
  :is(.bar button, .wrap):focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  @container (min-width: 36em) {
    .columns {
      grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr);
    }
  }
  @media (forced-colors: active) {
    :host {
      --_ground: Canvas;
      --_ink: CanvasText;
      --_quiet: CanvasText;
    }
  }
`;
