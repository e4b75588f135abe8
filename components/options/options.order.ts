import type { SuggestedPlan, Surgery } from '../../core/numbers.js';

/** By what the list can be sorted. Chance is the rank: at equal chance the plan with less surgery stands first. */
export type SortKey = 'chance' | 'remaining' | 'surgery';

/** An order of the list: the best first, or the other way round. */
export interface Order {
  key: SortKey;
  reversed: boolean;
}

/** A plan with its place by rank, from 1, which stays whatever the list is sorted by. */
export interface Ranked {
  rank: number;
  option: SuggestedPlan;
}

export const BY_RANK: Order = { key: 'chance', reversed: false };

const COMPARE: Record<SortKey, (a: Ranked, b: Ranked) => number> = {
  chance: (a, b) => a.rank - b.rank,
  // As printed: what looks equal counts as equal.
  remaining: (a, b) => hundredths(a) - hundredths(b),
  surgery: (a, b) => amount(a.option.surgery, b.option.surgery),
};

/** The list in an order. Equals keep their rank, in both directions. */
export function ordered(options: readonly SuggestedPlan[], { key, reversed }: Order): Ranked[] {
  const sign = reversed ? -1 : 1;
  return options.map((option, index) => ({ rank: index + 1, option })).sort((a, b) => sign * COMPARE[key](a, b) || a.rank - b.rank);
}

/** The order after a press on a heading: another key starts with its best, the same one turns round. */
export function pressed({ key, reversed }: Order, heading: SortKey): Order {
  return { key: heading, reversed: heading === key && !reversed };
}

/** The best chance is the highest one; of the others the least is the best. */
export function ariaSort({ key, reversed }: Order, heading: SortKey): 'ascending' | 'descending' | 'none' {
  if (heading !== key) return 'none';
  return (key === 'chance') === reversed ? 'ascending' : 'descending';
}

function hundredths({ option }: Ranked): number {
  return Math.round(100 * option.outcome.after.magnitude);
}

/** The order that the source of the figure states: fewer arcs, then no lens, then shorter arcs, then the narrower entry. */
function amount(a: Surgery, b: Surgery): number {
  return a.arcs - b.arcs || Number(a.lens > 0) - Number(b.lens > 0) || a.arcDegrees - b.arcDegrees || a.width - b.width;
}
