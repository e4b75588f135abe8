/** Texts with values in them, taken apart once. */
const known = new Map<string, readonly string[]>();

/** Puts values into a text, where they stand as `{$name}`. */
export function filled<Value>(text: string, values: Readonly<Record<string, Value>>, print: (value: Value) => string): string {
  let pieces = known.get(text);
  if (!pieces) known.set(text, (pieces = text.split(/\{\$(\w+)\}/)));
  let result = pieces[0]!;
  // Names stand between the pieces of text.
  for (let index = 1; index < pieces.length; index += 2) {
    const value = values[pieces[index]!];
    result += (value === undefined ? `{$${pieces[index]}}` : print(value)) + pieces[index + 1]!;
  }
  return result;
}
