/** Whether `ancestor` lies on the path that an event from `node` takes upwards, through slots and shadow roots. */
export function holds(ancestor: Element, node: Element): boolean {
  let current: Node | null = node;
  while (current) {
    if (current === ancestor) return true;
    const { assignedSlot } = current as Element;
    current = assignedSlot ?? current.parentNode ?? (current instanceof ShadowRoot ? current.host : null);
  }
  return false;
}
