import { css } from 'lit';

/** On paper each sheet takes one page of its own, A4 or Letter, in every language that comes with the library. */
export const sheetPaperStyles = css`
  @media print {
    :host {
      font-size: var(--astig-print-text, 10pt);
      container-type: normal;
      break-inside: avoid;
      break-after: page;
    }
    .sheet {
      max-inline-size: none;
    }
    .many {
      font-size: 0.85em;
    }
    .many .plate svg {
      inline-size: 82%;
      margin: 0 auto;
    }
    .columns {
      grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr);
    }
    .bar {
      display: none;
    }
    .wrap {
      overflow: visible;
    }
  }
`;
