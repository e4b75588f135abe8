import { LitElement, css, html } from 'lit';
import type { TemplateResult } from 'lit';
import { restyle } from '../internal/restyle.js';
import { property, state } from '../internal/property.js';

/**
 * One step of an `<astig-steps>`: its text, and as attributes what changes in the case with it. The attributes are those
 * of `<astig-case>`, and add to those of the steps before; `none` takes one away. An empty attribute is `none` too.
 *
 * @tagname astig-step
 * @slot - the text of the step
 */
export class AstigStep extends LitElement {
  static override styles = css`
    :host {
      display: block;
    }
    :host([hidden]) {
      display: none;
    }
    div {
      margin-block-end: 0.75em;
    }
    /* A text runs the way of its own language. */
    div,
    ::slotted(*) {
      unicode-bidi: plaintext;
    }
    @media not print {
      .off {
        display: none;
      }
    }
  `;

  /** Has the reader say first what to expect: the step is shown only then. Its text is the question; none asks in general. */
  @property() predict: string | null = null;

  /** @internal Whether this is the step that is shown. */
  @state() active = false;

  adoptedCallback(): void {
    restyle(this);
  }

  /** What is asked first is not to be read out with the slide on which it waits. */
  protected override updated(): void {
    if (this.predict === null || this.active) this.removeAttribute('aria-hidden');
    else this.setAttribute('aria-hidden', 'true');
  }

  protected override render(): TemplateResult {
    return html`<div class=${this.active ? '' : 'off'}><slot></slot></div>`;
  }
}
