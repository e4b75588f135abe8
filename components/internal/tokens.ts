import { css } from 'lit';

/**
 * Colours by role, from the colour-blind-safe palette of Okabe & Ito, darker or lighter where 3:1 against the ground asks
 * for it. Each role also has its own line style, so that nothing rests on colour. A page sets `--astig-…` to change one.
 */
export const tokens = css`
  :host {
    --_ground: var(--astig-ground, light-dark(#fff, #1d2024));
    --_ink: var(--astig-ink, light-dark(#1b1f24, #eceae4));
    --_quiet: var(--astig-quiet, light-dark(#565d66, #a9afb7));
    --_line: var(--astig-line, light-dark(#c5cad0, #4a5058));
    --_before: var(--astig-before, light-dark(#d55e00, #ee8245));
    --_remaining: var(--astig-remaining, light-dark(#1b1f24, #f4f2ec));
    --_incision: var(--astig-incision, light-dark(#0072b2, #56b4e9));
    --_arcs: var(--astig-arcs, light-dark(#00805d, #1fbf92));
    --_back-surface: var(--astig-back-surface, light-dark(#b0568a, #d993bb));
    --_lens: var(--astig-lens, light-dark(#8f6200, #e69f00));
    --_cornea: var(--astig-cornea, light-dark(#eaf0f4, #232d35));
    --_sclera: var(--astig-sclera, light-dark(#fbf9f6, #22252a));
    --_pupil: var(--astig-pupil, light-dark(#cfd7de, #0e1013));
    --_stop: var(--astig-stop, light-dark(#b3261e, #ff8a80));
    --_think: var(--astig-think, light-dark(#8a6100, #f0b429));
    --_note: var(--astig-note, light-dark(#0072b2, #7cc4f0));
    --_focus: var(--astig-focus, light-dark(#0a58ca, #9ecbff));
    display: block;
    color: var(--_ink);
  }
  /* A page's rule for all elements is stronger than a rule for the host, so what it would hand down is ended one step further in. */
  :host > * {
    line-height: 1.4;
    text-align: start;
    text-indent: 0;
    text-shadow: none;
    /* In capitals mm would be MM, and µm nothing at all. */
    text-transform: none;
    white-space: normal;
  }
  /* What is drawn is placed by calculation, for plain letters. */
  svg {
    fill: #000;
    font-style: normal;
    font-stretch: normal;
    font-variant: normal;
    font-weight: 400;
    letter-spacing: normal;
    word-spacing: normal;
    paint-order: normal;
    stroke: none;
    stroke-dasharray: none;
    stroke-width: 1px;
    text-anchor: start;
    dominant-baseline: auto;
  }
  :host([hidden]) {
    display: none;
  }
  .visually-hidden {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    /* Not at the sides: in a text that runs to the left it would stick out of the page. */
    margin: -1px 0;
    padding: 0;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
    border: 0;
  }
  /* Text runs the way of its own language, also on a page that runs the other way. */
  :is(p, li, dd, dt, td, th, figcaption, legend, label, span, strong, button) {
    unicode-bidi: plaintext;
  }
  /* In a language that runs to the left even a text that begins with a figure or a button does. */
  [dir='rtl'] :is(p, li, dd, dt, td, th, figcaption, legend, label, span, strong, button) {
    unicode-bidi: isolate;
  }
  [dir='rtl'] :is(p, li, dd, dt, td, th, figcaption, legend, label),
  :host(:dir(rtl)) :is(p, li, dd, dt, td, th, figcaption, legend, label) {
    text-align: right;
  }
  .quiet {
    color: var(--_quiet);
    font-size: 0.875em;
    margin: 0.5em 0 0;
  }
  @media (forced-colors: active) {
    :host {
      --_ground: Canvas;
      --_ink: CanvasText;
      --_quiet: CanvasText;
      --_line: GrayText;
      --_before: CanvasText;
      --_remaining: Highlight;
      --_incision: LinkText;
      --_arcs: CanvasText;
      --_back-surface: CanvasText;
      --_lens: CanvasText;
      --_cornea: Canvas;
      --_sclera: Canvas;
      --_pupil: Canvas;
      --_stop: CanvasText;
      --_think: CanvasText;
      --_note: CanvasText;
      --_focus: Highlight;
    }
  }
  @media print {
    :host {
      --_ground: #fff;
      --_ink: #000;
      --_quiet: #333;
      --_cornea: #fff;
      --_sclera: #fff;
      --_pupil: #e6e6e6;
      --_remaining: #000;
      print-color-adjust: exact;
      break-inside: avoid;
    }
  }
`;
