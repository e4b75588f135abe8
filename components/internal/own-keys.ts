/** Keys that write or move in a text field, besides all that are a character. */
const EDITING = /^(Arrow|Home|End|Page|Backspace|Delete|Enter)/;
const MOVING = /^(Arrow|Home|End|Page| )/;
const PRESSING = /^(Enter| )$/;

/**
 * Keeps from the page the keys that a control acts on itself. A slide deck or a set of shortcuts that listens on the
 * document sees the element alone, not the field inside it, and would turn the page while a number is typed.
 */
export function keepOwnKeys(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey) return;
  const path = event.composedPath().filter((passed): passed is Element => 'matches' in passed);
  const closes = event.key === 'Escape' && path.some((passed) => passed.matches(':popover-open'));
  if (closes || uses(path[0], event.key)) event.stopPropagation();
}

function uses(control: Element | undefined, key: string): boolean {
  if (control?.matches('input[type=text]')) return key.length === 1 || EDITING.test(key);
  if (control?.matches('input[type=range], input[type=radio]')) return MOVING.test(key);
  return Boolean(control?.matches('input, button, summary, a[href], [role=button]')) && PRESSING.test(key);
}
