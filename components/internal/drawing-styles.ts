import { css } from 'lit';

/** What the drawings have in common: the plate, the text, and the key below. */
export const drawingStyles = css`
  .plate {
    position: relative;
    margin: 0 auto;
    max-inline-size: var(--astig-size, 34rem);
  }
  .probe {
    position: absolute;
    inline-size: 1em;
    block-size: 1em;
    visibility: hidden;
    pointer-events: none;
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
  .title {
    fill: var(--_ink);
    font-weight: 600;
  }
  .key {
    display: flex;
    flex-wrap: wrap;
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
