/**
 * Registers a tag once. A second copy of the library on the same page keeps the first one's elements, since a tag
 * cannot be registered twice; a host that updates one of two copies wants to know, so it can ask `customElements.get`.
 */
export function define(tag: string, element: CustomElementConstructor): void {
  if (!customElements.get(tag)) customElements.define(tag, element);
}
