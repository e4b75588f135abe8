import { css } from 'lit';

/** Fields, choices and buttons of forms, 44 px high at least. */
export const controlStyles = css`
  input[type='text'] {
    box-sizing: border-box;
    inline-size: 100%;
    min-block-size: max(44px, 2.75em);
    margin: 0;
    padding: 0.25em 0.625em;
    border: 1px solid var(--_quiet);
    border-radius: 4px;
    background: var(--_ground);
    color: inherit;
    font: inherit;
    font-variant-numeric: tabular-nums;
  }
  .error {
    padding-inline-start: 0.5em;
    border-inline-start: 3px solid var(--_stop);
    font-weight: 600;
  }
  .segments {
    display: flex;
    flex-wrap: wrap;
    gap: 0.375em;
  }
  .segment,
  button[part='button'] {
    display: inline-flex;
    align-items: center;
    gap: 0.5em;
  }
  .segment:has(:checked) {
    border-color: var(--_ink);
    background: var(--_cornea);
    box-shadow: inset 0 0 0 1px var(--_ink);
  }
  input[type='radio'],
  input[type='checkbox'] {
    flex: none;
    appearance: none;
    box-sizing: border-box;
    inline-size: 1em;
    block-size: 1em;
    margin: 0;
    border: 0.1em solid currentColor;
    border-radius: 50%;
    color: inherit;
    outline: none;
  }
  input[type='checkbox'] {
    border-radius: 2px;
  }
  /* A border, not a background: it is seen in forced colours and on paper, and does not fade when it cannot be changed. */
  input:checked {
    border-width: 0.3125em;
  }
  input[type='text']:focus-visible,
  .segment:has(:focus-visible),
  button:focus-visible,
  summary:focus-visible {
    outline: 3px solid var(--_focus);
    outline-offset: 2px;
  }
  @media (forced-colors: active) {
    .segment:has(:checked) {
      border-width: 2px;
      padding-inline: calc(0.75em - 1px);
    }
  }
`;
