/** A node and what an event from it passes on its way upwards, through slots and shadow roots. */
export function* upwards(node: Node): Generator<Node> {
  let current: Node | null = node;
  while (current) {
    yield current;
    const { assignedSlot } = current as Element;
    current = assignedSlot ?? current.parentNode ?? (current instanceof ShadowRoot ? current.host : null);
  }
}

/** Whether `ancestor` lies on the path that an event from `node` takes upwards. */
export function holds(ancestor: Element, node: Element): boolean {
  for (const passed of upwards(node)) if (passed === ancestor) return true;
  return false;
}
