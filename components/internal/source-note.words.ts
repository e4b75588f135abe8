import type { Words } from './language/language.js';

/** Texts around the answer to where a figure comes from. What the figures are stands in `FIGURES`, in the core. */
export const sourceWords = {
  part: 'sources',
  en: {
    title: 'Source',
    own: 'Here the surgeon’s own figure stands in place of the model.',
    range: 'For: {$range}.',
    constant: '{$value}: {$note}',
    perYear: '1/year',
    gaps: 'gaps',
    general: '{$title}: {$use}.',
    commonPractice: 'Common practice',
    assumed: 'Assumed by this library',
    use: 'Used for: {$use}.',
    authorsUnknown: 'authors not shown on the page',
    read: 'Figures read.',
    memory: 'From memory.',
    readPartly: 'Figures read; from memory in the citation: {$parts}.',
    memoryPartly: 'From memory, in the citation too: {$parts}.',
    partAuthors: 'authors',
    partTitle: 'title',
    partYear: 'year',
    partPages: 'pages',
    partVolume: 'volume and pages',
    estimate: 'A teaching estimate. It is consistent with the papers it was chosen on, and validated on none.',
  },
} as const satisfies Words;

export type SourceTextId = keyof typeof sourceWords.en;
