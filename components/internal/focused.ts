/** What has the focus in a document, inside all shadow roots; the body where nothing has. */
export function focused({ activeElement: at }: DocumentOrShadowRoot): Element | null {
  return (at?.shadowRoot?.activeElement && focused(at.shadowRoot)) ?? at;
}
