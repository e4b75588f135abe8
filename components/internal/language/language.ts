import { filled } from '../../../core/numbers.js';
import type { RefusedValue } from '../../../core/numbers.js';

/**
 * The texts of one part of the library in English, by name. English stands beside the element that uses it; the other
 * languages come as one catalogue each. Texts are in MessageFormat 2, and in English have nothing but values in them,
 * which stand as `{$name}`.
 */
export interface Words<Id extends string = string> {
  /** Name under which catalogues hold these texts. */
  readonly part: string;
  readonly en: Readonly<Record<Id, string>>;
}

/** Values of a text. Whole numbers may come as such; others, and those with units, are formatted before they get here. */
export type Values = Readonly<Record<string, string | number>>;

/** One text of one part, in the language at hand. */
export type Say<Id extends string> = (id: Id, values?: Values) => string;

/** What texts and figures need to know of the reader. */
export interface Language {
  /** The language that is served. */
  readonly lang: string;
  /** What is said to be the language of a text, for pronunciation and typeface: with the reader's region where it is theirs. */
  readonly tag: string;
  /** Whether the language runs from right to left, also on a page that has not said so. */
  readonly rightToLeft?: boolean;
  /** Tag for number formats, with the reader's region. Digits stay Latin, so that degrees read alike everywhere. */
  readonly numbers: string;
  /** The texts of a part; the same function until the language or a text changes. */
  say<Id extends string>(words: Words<Id>): Say<Id>;
  /** Why a value is refused. English is that of the core, which calls fields as the code does. */
  refusal(refused: RefusedValue): string;
}

const english = new WeakMap<Words, Say<string>>();

/** What is there from the start: no page in English loads more. */
export const ENGLISH: Language = {
  lang: 'en',
  tag: 'en',
  numbers: 'en',
  refusal: ({ message }) => message,
  say(words: Words) {
    let say = english.get(words);
    if (!say) english.set(words, (say = (id, values) => (values ? filled(words.en[id]!, values, String) : words.en[id]!)));
    return say;
  },
};

/** Serves every language, once it has been loaded. */
let server: ((tag: string) => Language) | null = null;

const listeners = new Set<() => void>();

/** The language of a reader by the tag that the page gives. What is not there yet is loaded, and English until then. */
export function languageOf(tag: string): Language {
  if (server) return server(tag);
  if (!/^en\b/i.test(tag)) import('./catalogue.js').catch(reportError);
  return ENGLISH;
}

/** From now on this serves every language. */
export function serveBy(serve: (tag: string) => Language): void {
  server = serve;
}

/** Calls back when texts have changed; returns what ends that. */
export function onMessages(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Texts have changed. */
export function tell(): void {
  for (const listener of listeners) listener();
}
