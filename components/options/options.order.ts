import type { SuggestedPlan } from '../../core/options.js';

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

/** The best chance is the highest one; of the others the least is the best. */
export function ariaSort({ key, reversed }: Order, heading: SortKey): 'ascending' | 'descending' | 'none' {
  if (heading !== key) return 'none';
  return (key === 'chance') === reversed ? 'ascending' : 'descending';
}

/** The list as it was found: by rank. */
export function ranked(options: readonly SuggestedPlan[]): Ranked[] {
  return options.map((option, index) => ({ rank: index + 1, option }));
}
