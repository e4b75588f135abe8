/**
 * For `createRenderRoot`: the root of an element that was made here and is drawn first in another document, without the
 * styles. Lit would share its sheets, which no browser allows; `restyle` makes them anew there.
 */
export function bareRootElsewhere(element: Element): ShadowRoot | null {
  const elsewhere = !element.shadowRoot && element.ownerDocument !== globalThis.document;
  return elsewhere ? element.attachShadow({ mode: 'open' }) : null;
}
