import { css } from 'lit';

/** What the drawings have in common: the plate, the text, and the key below. */
export const drawingStyles = css`
  .plate {
    position: relative;
    margin: 0 auto;
    max-inline-size: var(--astig-size, 34rem);
  }
  /* As wide as the drawing and one em high: changes with both, and never because of what is drawn. */
  .probe {
    position: absolute;
    inline-size: 100%;
    block-size: 1em;
    visibility: hidden;
    pointer-events: none;
    /* Asked for by the export, where the page paints no ground. */
    background-color: var(--_ground);
  }
  svg {
    display: block;
    inline-size: 100%;
    block-size: auto;
    user-select: none;
    -webkit-user-select: none;
    overflow: hidden;
    direction: ltr;
  }
  svg text {
    fill: var(--_quiet);
  }
  .side,
  .title {
    fill: var(--_ink);
  }
  .title {
    font-weight: 600;
  }
  /* A cell for each line: a word that grows while something is dragged must not move what is below. */
  .key {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 18em), 1fr));
    gap: 0.25em 1.25em;
    margin: 0.75em 0 0;
    padding: 0;
    list-style: none;
    font-size: 0.875em;
  }
  .key li {
    display: flex;
    align-items: center;
    gap: 0.5em;
  }
  .key svg {
    inline-size: 1.75em;
    block-size: 0.75em;
    flex: none;
  }
`;
