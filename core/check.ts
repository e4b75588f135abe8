/**
 * Refusals. Every message names the field, the value and the limits, so that whoever typed it can mend it.
 */

/** A refused value, with its parts, for messages in other languages. */
export class RefusedValue extends RangeError {
  override name = 'RangeError';

  constructor(
    readonly field: string,
    readonly value: unknown,
    /** What would be accepted, in words: `28 to 75 D`. */
    readonly limits: string,
  ) {
    super(`${field}: ${printed(value)} is refused; allowed is ${limits}.`);
  }
}

/** The value itself when it is a finite number; else it is refused. */
export function finite(field: string, value: unknown, unit: string): number {
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  throw new RefusedValue(field, value, unit ? `a finite number of ${unit}` : 'a finite number');
}

/** The value itself when it lies within the limits, which both count as within; else it is refused. */
export function within(field: string, value: unknown, min: number, max: number, unit: string): number {
  if (typeof value === 'number' && value >= min && value <= max) return value;
  throw new RefusedValue(field, value, `${min} to ${max} ${unit}`.trim());
}

/** The value itself when it is one of the words or numbers; else it is refused. */
export function oneOf<Choice extends string | number>(field: string, value: unknown, choices: readonly Choice[]): Choice {
  if ((choices as readonly unknown[]).includes(value)) return value as Choice;
  throw new RefusedValue(field, value, choices.join(', '));
}

function printed(value: unknown): string {
  if (typeof value === 'string') return `“${value.length > 40 ? `${value.slice(0, 40)}…` : value}”`;
  if (value === null || value === undefined) return 'none';
  if (typeof value === 'number') return String(value);
  return typeof value;
}
