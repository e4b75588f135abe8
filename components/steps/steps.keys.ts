/** By how many steps a key leads on: 1, -1, or 0 for what is not for the steps. */
export function stepsByKey(event: KeyboardEvent, host: Element): number {
  if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return 0;
  const own = event.composedPath()[0] as Element;
  if (own.matches?.('input, textarea, select, [contenteditable]')) return 0;
  const [forward, back] = getComputedStyle(host).direction === 'rtl' ? ['ArrowLeft', 'ArrowRight'] : ['ArrowRight', 'ArrowLeft'];
  return { [forward!]: 1, PageDown: 1, [back!]: -1, PageUp: -1 }[event.key] ?? 0;
}
