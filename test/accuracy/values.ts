/** Every published figure of the fixtures beside what the core calculates for it. */
import { compute as computeEye } from '../core/eye-readers.js';
import { compute as computeOutcomes, entries as outcomes } from '../core/outcomes-readers.js';
import { compute as computePlain, distance, entries as plain, type Entry, type Value } from '../core/published.js';
import { compute as computeShape } from '../core/shape-readers.js';
import { compute as computeSight } from '../core/sight-readers.js';
import eye from '../fixtures/eye.json' with { type: 'json' };
import sight from '../fixtures/sight.json' with { type: 'json' };

export interface Compared {
  id: string;
  field: string;
  published: number;
  calculated: number;
  error: number;
}

type Compute = (entry: Entry) => Record<string, Value> | null;

const FIXTURES: readonly [entries: readonly Entry[], ...by: Compute[]][] = [
  [plain, computePlain, computeShape, computeSight],
  [eye.entries as unknown as Entry[], computeEye],
  [sight.entries as unknown as Entry[], computeSight],
  [outcomes, computeOutcomes],
];

const isNumber = (value: unknown): value is number => typeof value === 'number';

/** The numbers of one entry that somebody calculates; a list counts as so many numbers of one field. */
function* compare(entry: Entry, ours: Record<string, Value>): Generator<Compared> {
  for (const [field, expected] of Object.entries(entry.expected)) {
    const [printed, made] = [[expected].flat(), [ours[field]].flat()];
    for (const [index, published] of printed.entries()) {
      const calculated = made[index];
      if (!isNumber(published) || !isNumber(calculated)) continue;
      yield { id: entry.id, field, published, calculated, error: distance(field, calculated, published) };
    }
  }
}

export const VALUES: readonly Compared[] = FIXTURES.flatMap(([entries, ...by]) =>
  entries.flatMap((entry) => {
    const ours = Object.assign({}, ...by.map((compute) => compute(entry))) as Record<string, Value>;
    return [...compare(entry, ours)];
  }),
);

/** How well the source of each entry is known, by id. */
export const STATUS: ReadonlyMap<string, Entry['status']> = new Map(FIXTURES.flatMap(([entries]) => entries.map(({ id, status }) => [id, status] as const)));
