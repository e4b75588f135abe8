import type { LitElement } from 'lit';

/**
 * For `adoptedCallback`: an element that moves into another document, as into a frame, loses its style sheets, since a
 * sheet belongs to the document that made it.
 */
export function restyle(element: LitElement): void {
  const { shadowRoot } = element;
  const Sheet = element.ownerDocument.defaultView?.CSSStyleSheet;
  // A document that nobody sees, such as that of a template, has none.
  if (!shadowRoot || !Sheet) return;
  shadowRoot.adoptedStyleSheets = (element.constructor as typeof LitElement).elementStyles.map((style) => {
    const sheet = new Sheet();
    // Of the document's own kind, not of the one in which this script runs.
    sheet.replaceSync('cssText' in style ? style.cssText : [...style.cssRules].map((rule) => rule.cssText).join('\n'));
    return sheet;
  });
}
