import type { Words } from '../internal/language/language.js';

/** What is said of the list once somebody works on it: the part of its texts that comes with that. */
export const handsWords = {
  part: 'options',
  en: {
    byChanceReversed: 'by chance, lowest first',
    byRemaining: 'by what remains, least first',
    byRemainingReversed: 'by what remains, most first',
    bySurgery: 'by amount of surgery, least first',
    bySurgeryReversed: 'by amount of surgery, most first',
    sorted: 'Sorted {$order}.',
    countedOne: '1 plan in the list.',
    counted: '{$count} plans in the list.',
    chosen: 'Plan {$rank} is in use: {$plan}.',
  },
} as const satisfies Words;
