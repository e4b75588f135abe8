import { CAUTION_TEXT } from './caution-text.js';
import type { CautionWording } from './caution-text.js';
import { filled } from './fill.js';
import type { SourceId } from './references.js';
import type { Caution, CautionLevel, Quantity } from './types.js';

/** A caution with its text in English. `wording` says which text, where a caution has several. */
export function caution(
  id: string,
  level: CautionLevel,
  source: SourceId,
  values: Readonly<Record<string, Quantity>> = {},
  wording: CautionWording = id as CautionWording,
): Caution {
  return { id, level, text: filled(CAUTION_TEXT[wording], values, printed), source, wording, values };
}

/** Above a limit by more than rounding: readings of 43.1 and 43 D differ by 0.1, whatever their binary forms do. */
export function exceeds(value: number, limit: number): boolean {
  return value > limit + 1e-9;
}

const FACTORS = [1, 10, 100];

/** Dioptres with two decimals. */
export function dioptres(value: number): Quantity {
  return { value, unit: 'D', digits: 2 };
}

/** An angle in a caution: a meridian of 0 is written 180. */
export function degrees(value: number): Quantity {
  return inTenths(tenths(value) || 180, '°');
}

/** A size, or a number without a unit, with a decimal only where it has one. */
export function upToTenths(value: number, unit: Quantity['unit']): Quantity {
  return inTenths(tenths(value), unit);
}

function inTenths(value: number, unit: Quantity['unit']): Quantity {
  return { value, unit, digits: Number.isInteger(value) ? 0 : 1 };
}

/** A number without decimals. */
export function whole(value: number, unit: Quantity['unit']): Quantity {
  return { value, unit, digits: 0 };
}

function tenths(value: number): number {
  const rounded = Math.round(10 * value);
  return isClear(10 * value, rounded) ? rounded / 10 : Number(value.toFixed(1));
}

/** Whether a product is so far from a half that it cannot have been rounded across it. */
function isClear(scaled: number, rounded: number): boolean {
  return Math.abs(scaled - rounded) < 0.499999;
}

/** What `toFixed` says, in half of its time: cautions are written anew with every movement of a drag. */
function fixed(value: number, digits: number): string {
  const factor = FACTORS[digits]!;
  const rounded = Math.round(factor * value);
  if (!(value >= 0 && isClear(factor * value, rounded))) return value.toFixed(digits);
  if (digits === 0) return `${rounded}`;
  const ones = Math.floor(rounded / factor);
  const rest = rounded - ones * factor;
  return `${ones}.${digits === 2 && rest < 10 ? '0' : ''}${rest}`;
}

function printed({ value, unit, digits }: Quantity): string {
  return `${fixed(value, digits)}${unit === '°' || unit === '' ? unit : ` ${unit}`}`;
}
