import { decimal, isolated } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';

/** How an acuity is written. */
export const NOTATIONS = ['metres', 'feet', 'decimal', 'logmar'] as const;
export type Notation = (typeof NOTATIONS)[number];

/** Where `20/x` is written: the United States, and Spanish outside of Spain; and languages that write decimals. Common practice. */
const FEET = /^en-us\b|^es-(?!es\b)/i;
const DECIMALS = /^(?:de|fr|es|zh)\b/i;

/** As is usual where the language is spoken; `6/x` for all others. */
export function usualNotation(tag: string): Notation {
  if (FEET.test(tag)) return 'feet';
  return DECIMALS.test(tag) ? 'decimal' : 'metres';
}

/** An acuity, two digits of it: `6/7.6`, `20/25`, `0.79`, or logMAR with two decimals. */
export function acuityText(logMAR: number, notation: Notation, { numbers }: Pick<Language, 'numbers'>): string {
  const mar = 10 ** logMAR;
  if (notation === 'logmar') return isolated(`${logMAR < -0.005 ? '−' : ''}${decimal(Math.abs(logMAR), 2, numbers)} logMAR`, numbers);
  if (notation === 'decimal') return twoDigits(1 / mar, numbers);
  const [far, unit] = notation === 'feet' ? [20, Math.round(20 * mar).toString()] : [6, twoDigits(6 * mar, numbers)];
  return isolated(`${far}/${unit}`, numbers);
}

function twoDigits(value: number, numbers: string): string {
  const rounded = Number(value.toPrecision(2));
  const digits = rounded >= 10 ? 0 : rounded >= 1 ? 1 : 2;
  // No trailing zero: 6/6 and not 6/6.0.
  return decimal(rounded, Number.isInteger(rounded) ? 0 : digits, numbers);
}
