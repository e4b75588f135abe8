import { filled } from './fill.js';
import type { FieldLimits } from './limits.js';
import { REFUSAL_TEXT } from './refusal-text.js';
import type { RefusalWording } from './refusal-text.js';

/**
 * Refusals. Every message names the field, the value and the limits, so that whoever typed it can mend it.
 */

/** Why a value is refused, without a language: the name of a text, and the values in it. */
export interface Reason {
  id: RefusalWording;
  values: Readonly<Record<string, string | number>>;
  /** The reason that is quoted in this one. */
  inner?: Reason | undefined;
}

/** A refused value, with its parts, for messages in other languages. */
export class RefusedValue extends RangeError {
  override name = 'RangeError';

  constructor(
    readonly field: string,
    readonly value: unknown,
    /** What would be accepted, in words: `28 to 75 D`. */
    readonly limits: string,
    /** The same for other languages, where the refusal can be put into them. */
    readonly reason?: Reason,
  ) {
    super(`${field}: ${printed(value)} is refused; allowed is ${limits}.`);
  }
}

/** A refusal for one of the reasons that have a text in every language. */
export function refused(field: string, value: unknown, id: RefusalWording, values: Reason['values'] = {}, inner?: Reason): RefusedValue {
  return new RefusedValue(field, value, filled(REFUSAL_TEXT[id], values, String).trim(), { id, values, inner });
}

/** The value itself when it is a finite number; else it is refused. */
export function finite(field: string, value: unknown, unit: string): number {
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  throw new RefusedValue(field, value, unit ? `a finite number of ${unit}` : 'a finite number');
}

/** The value itself when it lies within the limits, which both count as within; else it is refused. */
export function within(field: string, value: unknown, min: number, max: number, unit: string): number {
  if (typeof value === 'number' && value >= min && value <= max) return value;
  throw refused(field, value, 'range', { min, max, unit });
}

/** The value of a field of a plan when it lies within that field's limits; else it is refused. */
export function allowed({ field, min, max, unit }: FieldLimits, value: unknown): number {
  // A zero without a sign, which no text would keep.
  return within(field, value, min, max, unit) + 0;
}

/** The choice that a value is, as it stands in the list (a zero without a sign); else the value is refused. */
export function oneOf<Choice extends string | number>(field: string, value: unknown, choices: readonly Choice[]): Choice {
  const known = choices[choices.indexOf(value as Choice)];
  if (known !== undefined) return known;
  throw refused(field, value, 'choice', { choices: choices.join(', ') });
}

function printed(value: unknown): string {
  if (typeof value === 'string') return `“${value.length > 40 ? `${value.slice(0, 40)}…` : value}”`;
  if (value === null || value === undefined) return 'none';
  if (typeof value === 'number') return String(value);
  return typeof value;
}
