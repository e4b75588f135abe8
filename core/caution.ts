import type { SourceId } from './references.js';
import type { Caution, CautionLevel } from './types.js';

export function caution(id: string, level: CautionLevel, source: SourceId, text: string): Caution {
  return { id, level, text, source };
}

/** Above a limit by more than rounding: readings of 43.1 and 43 D differ by 0.1, whatever their binary forms do. */
export function exceeds(value: number, limit: number): boolean {
  return value > limit + 1e-9;
}

/** An angle in a caution: a meridian of 0 is written 180. */
export function degrees(value: number): string {
  return `${Number(value.toFixed(1)) || 180}°`;
}
