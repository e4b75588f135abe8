/** How figures and tables are written, for the README and for the console. */

/** Below this an error is the last bits of a sum. */
const NOTHING = 1e-11;

/** Two digits that count; as a power of ten where zeros would have to be counted. */
export function figure(value: number): string {
  if (value < NOTHING) return '0';
  if (value < 1e-4) return value.toExponential(1).replace(/e-(\d+)$/, (_, power: string) => `·10⁻${raised(power)}`);
  return String(Number(value.toPrecision(2)));
}

const raised = (digits: string): string => [...digits].map((digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(digit)]).join('');

/** Columns of figures stand to the right. */
export function markdown(head: readonly string[], rows: readonly (readonly string[])[], figures: ReadonlySet<string>): string {
  const rule = head.map((title) => (figures.has(title) ? '---:' : '---'));
  return [head, rule, ...rows].map((cells) => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`).join('\n');
}

/** The same for eyes that read a console. */
export function columns(head: readonly string[], rows: readonly (readonly string[])[], figures: ReadonlySet<string>): string {
  const widths = head.map((title, column) => Math.max(title.length, ...rows.map((cells) => cells[column]!.length)));
  const line = (cells: readonly string[]): string =>
    cells.map((cell, column) => (figures.has(head[column]!) ? cell.padStart(widths[column]!) : cell.padEnd(widths[column]!))).join('  ').trimEnd();
  return [line(head), widths.map((width) => '─'.repeat(width)).join('  '), ...rows.map(line)].join('\n');
}
