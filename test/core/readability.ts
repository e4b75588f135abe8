import { syllable } from 'syllable';

/** What a grade is made of. */
export interface Measure {
  words: number;
  sentences: number;
  syllables: number;
  /** Words of the longest sentence. */
  longest: number;
}

/** Counts in English texts. Each text ends a sentence, with or without a full stop, as headings and list items do. */
export function measure(texts: readonly string[]): Measure {
  const sentences = texts.flatMap((text) => text.split(/[.!?]+(?=\s|$)/)).map(wordsOf).filter(({ length }) => length > 0);
  const words = sentences.flat();
  return {
    words: words.length,
    sentences: sentences.length,
    syllables: words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0),
    longest: Math.max(...sentences.map(({ length }) => length)),
  };
}

function wordsOf(sentence: string): string[] {
  return sentence.match(/[\p{L}’'-]+/gu) ?? [];
}

/**
 * School grade by the numbers of words, sentences and syllables: 0.39·words/sentences + 11.8·syllables/words − 15.59
 * (Kincaid, Fishburne, Rogers & Chissom 1975, Research Branch Report 8-75; citation from memory).
 */
export function gradeBy({ words, sentences, syllables }: Pick<Measure, 'words' | 'sentences' | 'syllables'>): number {
  return (0.39 * words) / sentences + (11.8 * syllables) / words - 15.59;
}

/** School grade that texts ask for. */
export function gradeOf(texts: readonly string[]): number {
  return gradeBy(measure(texts));
}
