import { css, html, nothing } from 'lit';
import type { TemplateResult } from 'lit';

/** What has been set and could not be taken, each with its reason; nothing where all of it was. */
export function refusedBox(heading: string, reasons: readonly string[]): TemplateResult | typeof nothing {
  if (reasons.length === 0) return nothing;
  return html`<div class="refused" part="refused" role="alert">
    <p>${heading}</p>
    <ul>
      ${reasons.map((reason) => html`<li>${reason}</li>`)}
    </ul>
  </div>`;
}

/** The box of what is refused, and the edges of cautions and of what is said like one, by their level: never told apart by colour alone. */
export const noticeStyles = css`
  .refused {
    margin: 0 0 1em;
    padding: 0.5em 0.75em;
    border: 2px solid var(--_stop);
    border-radius: 4px;
  }
  .refused p {
    margin: 0;
  }
  .refused ul {
    margin: 0.25em 0 0;
    padding-inline-start: 1.25em;
  }
  .stop {
    --_role: var(--_stop);
  }
  .think {
    --_role: var(--_think);
  }
  .note {
    --_role: var(--_note);
  }
  :is(li, p):is(.stop, .think, .note) {
    padding-inline-start: 0.75em;
    border-inline-start: 4px solid var(--_role);
  }
  :is(li, p).stop {
    border-inline-start-width: 8px;
  }
  :is(li, p).note {
    border-inline-start-style: dotted;
  }
`;
