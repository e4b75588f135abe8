/** Waits until something is so: as long as a machine that is busy with other engines may take. */
export async function until(condition: () => unknown, what: string): Promise<void> {
  for (const start = performance.now(); !(await condition()); await new Promise(requestAnimationFrame)) {
    if (performance.now() > start + 20_000) throw new Error(`${what} has not come.`);
  }
}

/** Waits until a text is there, and gives it: languages are loaded when somebody asks for them. */
export async function untilText(read: () => string, wanted: RegExp | string): Promise<string> {
  const there = (): boolean => (typeof wanted === 'string' ? read() === wanted : wanted.test(read()));
  await until(there, String(wanted)).catch((error: Error) => {
    throw new Error(`${error.message} There is “${read()}”.`);
  });
  return read();
}

/** Gives an element a language, and waits until a drawing within it is named in that language. */
export async function speak(lang: string, element: HTMLElement, view: HTMLElement): Promise<void> {
  const name = (): string | null => view.shadowRoot!.querySelector('svg[aria-label]')!.getAttribute('aria-label');
  const before = name();
  element.lang = lang;
  await until(() => name() !== before, `The language ${lang}`);
}
