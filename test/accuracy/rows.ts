/** The errors of each source, and whether rounding in print explains them. */
import type { PublishedSource } from '../fixtures/sources.js';
import { VALUES, type Compared } from './values.js';

export interface Row extends PublishedSource {
  values: readonly Compared[];
  mean: number;
  worst: number;
  /** Most that rounding alone explains. */
  rounding: number;
  /** Figures whose error is larger than that. */
  beyond: readonly Compared[];
}

/** Room for the last bits of sums that come out at exactly half a digit. */
const BITS = 1e-9;

export const belongsTo = ({ ids, fields }: { ids: RegExp; fields?: readonly string[] }, { id, field }: Compared): boolean =>
  ids.test(id) && (!fields || fields.includes(field));

export function rowOf(source: PublishedSource, among: readonly Compared[] = VALUES): Row {
  const values = among.filter((value) => belongsTo(source, value));
  if (values.length === 0) throw new Error(`No published figure belongs to “${source.source}, ${source.what}”.`);
  const errors = values.map(({ error }) => error);
  const rounding = source.half ?? source.step / 2;
  return {
    ...source,
    values,
    mean: errors.reduce((sum, error) => sum + error, 0) / errors.length,
    worst: Math.max(...errors),
    rounding,
    beyond: values.filter(({ error }) => error > rounding + BITS),
  };
}
