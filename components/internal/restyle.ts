import type { CSSResult, CSSResultOrNative, LitElement } from 'lit';

/** What elements were given to wear after they had been drawn. */
const late = new WeakMap<Element, CSSResult[]>();

/** Gives an element more styles after it has been drawn: what comes on demand brings its looks along. */
export function addStyles(element: Element, styles: CSSResult): void {
  const worn = late.get(element) ?? [];
  if (worn.includes(styles)) return;
  late.set(element, [...worn, styles]);
  const sheet = sheetFor(element, styles);
  if (sheet) element.shadowRoot!.adoptedStyleSheets.push(sheet);
}

/**
 * For `adoptedCallback`: an element that moves into another document, as into a frame, loses its style sheets, since a
 * sheet belongs to the document that made it.
 */
export function restyle(element: LitElement): void {
  const { shadowRoot } = element;
  const worn = [...(element.constructor as typeof LitElement).elementStyles, ...(late.get(element) ?? [])];
  const sheets = worn.map((styles) => sheetFor(element, styles)).filter((sheet) => sheet !== null);
  if (shadowRoot && sheets.length > 0) shadowRoot.adoptedStyleSheets = sheets;
}

/** A sheet of the document in which the element stands. One that nobody sees, such as that of a template, has none. */
function sheetFor({ ownerDocument }: Element, styles: CSSResultOrNative): CSSStyleSheet | null {
  const view = ownerDocument.defaultView;
  if (!view) return null;
  const shared = 'cssText' in styles ? styles.styleSheet : styles;
  // That of the document in which this script runs is shared by all elements in it.
  if (view === globalThis.window && shared) return shared;
  const sheet = new view.CSSStyleSheet();
  sheet.replaceSync('cssText' in styles ? styles.cssText : [...styles.cssRules].map((rule) => rule.cssText).join('\n'));
  return sheet;
}
