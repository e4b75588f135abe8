import { css } from 'lit';

/**
 * On paper the page takes two sheets, A4 or Letter, in every language that comes with the library: no section is torn
 * apart, and there is room to tick and to write.
 */
export const printStyles = css`
  @media print {
    :host {
      --_paper: #fff;
      --_plate: #f4f4f4;
      --_sun: #e6e6e6;
      font-size: var(--astig-print-text, 12pt);
      break-inside: auto;
      /* Firefox neither asks a container on paper nor breaks one well; every sheet is wide enough for columns. */
      container-type: normal;
    }
    .two {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
    .three {
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }
    :host > * {
      line-height: 1.25;
    }
    .page {
      max-inline-size: none;
    }
    /* The same sheets hold languages with longer and with shorter words. */
    .page:is(:lang(de), :lang(es), :lang(fr)) {
      font-size: 0.95em;
    }
    .page:is(:lang(ar), :lang(zh)) {
      font-size: 1.08em;
    }
    .section {
      break-inside: avoid;
      margin-block-end: 0.6em;
    }
    p {
      margin-block-end: 0.25em;
    }
    :is(h1, h2, h3, h4, h5, h6) {
      margin-block-end: 0.15em;
      font-size: 1.17em;
    }
    .title :is(h1, h2, h3, h4) {
      font-size: 1.4em;
    }
    .how,
    .ask {
      display: none;
    }
    :is(.two, .three) {
      gap: 0.6em 1.5em;
      margin-block: 0.5em;
    }
    .row > .picture {
      inline-size: 100%;
      margin: 0;
    }
    .shape figure {
      display: grid;
      grid-template-columns: 9.5em minmax(0, 1fr);
      gap: 0.8em;
    }
    .shape figcaption {
      margin: 0;
    }
    .item {
      grid-template-columns: 4.1em minmax(0, 1fr);
      gap: 0.2em 0.7em;
      align-items: center;
    }
    .item > .said {
      display: contents;
    }
    .item p {
      grid-column: 1 / -1;
      margin: 0;
    }
    .item > :is(.front, .picture) {
      inline-size: 100%;
    }
    .row {
      display: grid;
      grid-template-columns: 4em minmax(0, 1fr);
      gap: 0.8em;
    }
    .dots {
      inline-size: min(100%, 14em);
    }
    .ticks {
      display: grid;
      grid-template-columns: repeat(2, minmax(0, 1fr));
      gap: 0 1.5em;
    }
    .ticks label {
      min-block-size: 0;
      padding-block: 0.15em;
    }
    .ticks .own {
      display: block;
      grid-column: 1 / -1;
      margin-block-start: 0.3em;
    }
    /* Two lines to write on. */
    .own::after {
      content: '';
      display: block;
      block-size: 1.8em;
      margin-block-start: 1.5em;
      border-block: 1px solid;
    }
    .warning .row {
      display: block;
    }
    .warning .row > .picture {
      display: none;
    }
    .signs {
      grid-template-columns: repeat(3, minmax(0, 1fr));
      gap: 0.2em 1em;
      margin-block-end: 0.4em;
    }
    .warning {
      padding: 0.6em 0.8em 0.4em;
      border-width: 2px;
    }
    .estimate {
      padding-block-start: 0.4em;
    }
  }
`;
