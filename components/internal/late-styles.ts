import type { CSSResult } from 'lit';

/** Gives an element more styles after it has been drawn: what comes on demand brings its looks along. */
export function addStyles(element: Element, { styleSheet }: CSSResult): void {
  const sheets = element.shadowRoot!.adoptedStyleSheets;
  if (!sheets.includes(styleSheet!)) sheets.push(styleSheet!);
}
