/** What `npm run accuracy` prints: the tables, and the schematic eyes value by value. */
import { SCHEMATIC } from '../fixtures/sources.js';
import { columns, figure } from './print.js';
import { summary } from './readme.js';
import { rowOf } from './rows.js';
import { NOTES, added, checkedTable, setByTable, takenOver, workedTable, type Table } from './tables.js';
import { VALUES } from './values.js';

const plain = (cells: readonly string[]): string[] => cells.map((cell) => cell.replaceAll('**', ''));
const table = ({ head, rows, figures }: Table): string => columns(head, rows.map(plain), figures);

const FIELD: Record<string, string> = {
  F: 'power', P1: 'front surface', P2: 'back surface', Fo: 'front focus', Fi: 'back focus', f: 'front focal length', f2: 'back focal length',
  H: 'first principal point', H2: 'second principal point', N: 'first nodal point', N2: 'second nodal point',
};

/** Each published figure of each eye beside that of the core. */
function eyes(): Table {
  const known = { read: 'read', quoted: 'second-hand', memory: 'from memory', worked: '' };
  const rows = SCHEMATIC.map((source) => rowOf(source)).flatMap((row) =>
    row.values.map(({ id, field, published, calculated, error }) => {
      const digits = Math.max(0, Math.round(-Math.log10(row.step)));
      return [id.replace('eye-', ''), FIELD[field]!, row.unit, published.toFixed(digits), calculated.toFixed(digits + 2), figure(error), known[row.known]];
    }),
  );
  const order = VALUES.map(({ id }) => id.replace('eye-', ''));
  rows.sort(([a], [b]) => order.indexOf(a!) - order.indexOf(b!));
  return { head: ['eye', 'what', 'unit', 'published', 'calculated', 'error', 'source is'], rows, figures: new Set(['published', 'calculated', 'error']) };
}

export function report(): string {
  const part = (title: string, ...text: string[]): string => [title, '', ...text, ''].join('\n');
  return [
    part('Published values', table(checkedTable()), '', summary(), ...NOTES.map((note, index) => `(${index + 1}) ${note}`)),
    part('Worked out by a second method', table(workedTable())),
    part('No check: what the model was set by', table(setByTable()), '', `Added in this table: ${added().join('; ')}.`, `Counted nowhere: ${takenOver().join('; ')}.`),
    part('Schematic eyes, value by value (distances from the corneal vertex)', table(eyes())),
  ].join('\n');
}
