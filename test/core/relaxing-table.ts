/** The published table of relaxing arcs, and what the formula that was fitted to it says of each cell. */
import { MODEL, arcFlattening } from '../../core/index.js';
import table from '../fixtures/relaxing-table.json' with { type: 'json' };

type Cell = { rule: 'with' | 'against'; cylinder: [number, number]; age: [number, number | null]; degrees: number; count: 1 | 2 };

export const cells = table.cells as Cell[];

/** The table treats eyes steep near 180° only 4 % differently; the model answers other series with a larger factor. */
const TABLE_AGAINST = 1.04;

/** The open band is taken as ten years wide, like the others. */
const OPEN_BAND = 10;

const middle = ([from, to]: readonly [number, number | null]): number => (from + (to ?? from + OPEN_BAND)) / 2;

export const target = ({ cylinder }: Cell): number => middle(cylinder);

export function intended({ degrees, count, age, rule }: Cell): number {
  const effect = arcFlattening({ length: degrees, count, age: middle(age), rule, method: 'blade' }).intended;
  return rule === 'against' ? (effect / MODEL.arcs.againstFactor) * TABLE_AGAINST : effect;
}
