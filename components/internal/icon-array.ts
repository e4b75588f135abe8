import { css, svg, html } from 'lit';
import type { TemplateResult } from 'lit';

const COLUMNS = 20;
const ROWS = 5;
/** Radius of a dot over the distance of two. */
const RADIUS = 0.375;

/** A hundred dots, of which `filled` are full: the picture of "62 of 100". The sentence beside it says the same. */
export function iconArray(filled: number): TemplateResult {
  return html`<svg class="dots" part="dots" aria-hidden="true" viewBox="0 0 ${COLUMNS} ${ROWS}">
    ${Array.from({ length: COLUMNS * ROWS }, (_, index) => {
      const [x, y] = [(index % COLUMNS) + 0.5, Math.floor(index / COLUMNS) + 0.5];
      return svg`<circle class=${index < filled ? 'full' : 'empty'} cx=${x} cy=${y} r=${RADIUS}></circle>`;
    })}
  </svg>`;
}

/** A chance as whole eyes of a hundred. */
export function ofHundred(chance: number): number {
  return Math.round(100 * chance);
}

export const iconArrayStyles = css`
  .dots {
    display: block;
    inline-size: min(100%, 22em);
    stroke: var(--_remaining);
    stroke-width: 0.1;
  }
  .full {
    fill: var(--_remaining);
  }
  .empty {
    fill: none;
  }
`;
