/** Number of the step that an address names, by its own id or by that of the steps and its number; 0 when it names none. */
export function stepAt(hash: string, id: string, steps: readonly Element[]): number {
  const name = named(hash);
  if (!name) return 0;
  const own = steps.findIndex((step) => step.id === name) + 1;
  const number = id && name.startsWith(`${id}-`) ? Number(name.slice(id.length + 1)) : 0;
  return own || (Number.isInteger(number) && number >= 1 && number <= steps.length ? number : 0);
}

/** Writes a step into the address in place of what is there: the first only where another one stands. */
export function writeAddress(step: number, id: string, steps: readonly Element[]): void {
  const address = addressOf(step, id, steps);
  if (address && address !== location.hash && (step > 1 || stepAt(location.hash, id, steps))) history.replaceState(history.state, '', address);
}

/** The address of a step; empty when neither it nor the steps have an id. */
function addressOf(step: number, id: string, steps: readonly Element[]): string {
  const name = steps[step - 1]?.id || (id && `${id}-${step}`);
  return name && `#${encodeURIComponent(name)}`;
}

function named(hash: string): string {
  try {
    return decodeURIComponent(hash.slice(1));
  } catch {
    return '';
  }
}
