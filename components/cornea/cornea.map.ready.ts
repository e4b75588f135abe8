import { powerField } from './cornea.map.field.js';
import type { FieldInput, PowerField } from './cornea.map.field.js';
import { contoursOf, lowest, sample, signsOf } from './cornea.map.parts.js';
import type { Contour, Range, Sign } from './cornea.map.parts.js';

/** A map that is ready to be drawn. */
export interface Ready {
  field: PowerField;
  range: Range;
  contours: readonly Contour[];
  /** The level of the colour beneath all contours. */
  ground: number;
  /** Of a difference; else none. */
  signs: readonly Sign[];
}

export interface ReadyInput extends FieldInput {
  /** How the drawing stands: degrees, and px a mm. */
  turn: number;
  scale: number;
  /** Points of the grid along each side. */
  grid: number;
  /** What the scale has to hold besides, or null. */
  range: Range | null;
}

/** From figures to paths. */
export function readyOf(input: ReadyInput): Ready {
  const { turn, scale, state } = input;
  const field = powerField(input);
  const sampled = sample(field, turn, state, input.grid);
  const range: Range = input.range ? [Math.min(input.range[0], sampled.range[0]), Math.max(input.range[1], sampled.range[1])] : sampled.range;
  const contours = contoursOf(sampled, range, state, field.zone, scale);
  return { field, range, contours, ground: lowest(sampled, range, state), signs: state === 'difference' ? signsOf(field, turn, scale) : [] };
}
