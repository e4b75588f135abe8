/** What several tests of results share: tables as text, series with a known truth. */
import { readFileSync } from 'node:fs';
import { OUTCOME_COLUMNS, type OutcomeColumn, type OutcomeRecord } from '../../core/outcomes.js';
import { fromVector, toVector } from '../../core/astigmatism.js';
import type { Astigmatism, Vector } from '../../core/types.js';

export const fixture = (name: string): string => readFileSync(new URL(`../fixtures/outcomes/${name}`, import.meta.url), 'utf8');

/** One eye with every column, by its canonical names. */
export const EYE: Readonly<Record<OutcomeColumn, string>> = {
  label: 'Alder', eye: 'right',
  flatBefore: '43.25', steepBefore: '44.5', magnitudeBefore: '', meridianBefore: '90',
  flatAfter: '43.5', steepAfter: '44.25', magnitudeAfter: '', meridianAfter: '95',
  incisionSite: '180', incisionWidth: '2.4',
  arcCount: '0', arcLength: '', arcSite: '', arcMethod: '',
  lensCylinder: '', lensMeridian: '',
  age: '71', predictedMagnitude: '', predictedMeridian: '',
};

/** A table of such eyes, each with what differs from `EYE` and with a label of its own. */
export function tableOf(eyes: readonly Partial<Record<OutcomeColumn, string>>[], delimiter = ';'): string {
  const rows = eyes.map((eye, index) => OUTCOME_COLUMNS.map((column) => ({ ...EYE, label: index ? `${EYE.label} ${index + 1}` : EYE.label, ...eye })[column]));
  return [OUTCOME_COLUMNS as readonly string[], ...rows].map((cells) => cells.join(delimiter)).join('\n');
}

export const at = (magnitude: number, meridian: number): Astigmatism => ({ magnitude, meridian });

/** An eye that an incision has changed by `induced`. */
export function recordOf(before: Astigmatism, induced: Vector, rest: Partial<OutcomeRecord> = {}): OutcomeRecord {
  const start = toVector(before);
  return {
    line: 1, label: null, eye: 'right', before, after: fromVector({ x: start.x + induced.x, y: start.y + induced.y }), readings: null,
    incision: { site: 180, width: 2.4 }, arcs: null, lens: null, age: null, predicted: null, ...rest,
  };
}

/** Every number anywhere in a structure. */
export function* numbersIn(value: unknown): Generator<number> {
  if (typeof value === 'number') yield value;
  else if (typeof value === 'object' && value !== null) for (const inner of Object.values(value)) yield* numbersIn(inner);
}
