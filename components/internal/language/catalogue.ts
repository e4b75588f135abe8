import type { MessageFormat } from 'messageformat';

/**
 * The texts of one part of the library in English, by name. English stands beside the element that uses it; the other
 * languages come as one catalogue each. Texts are in MessageFormat 2: values stand as `{$name}`.
 */
export interface Words<Id extends string = string> {
  /** Name under which catalogues hold these texts. */
  readonly part: string;
  readonly en: Readonly<Record<Id, string>>;
}

/** Texts of one language: by part, then by name. What is missing falls back to English. */
export type Catalogue = Record<string, Record<string, string>>;

/** Values of a text. Numbers with units are formatted before they get here. */
export type Values = Record<string, string | number>;

/** One text of one part, in the language at hand. */
export type Say<Id extends string> = (id: Id, values?: Values) => string;

/** Languages that the library brings along, loaded when a page asks for them. English needs no catalogue. */
const BUILT_IN: Record<string, () => Promise<{ catalogue: Catalogue }>> = {};

const loaded = new Map<string, Catalogue>();
const added = new Map<string, Catalogue>();
const formats = new Map<string, MessageFormat>();

/** The library that reads MessageFormat 2; loaded with the first catalogue, since our English needs no more than values. */
let Formatter: typeof MessageFormat | null = null;

/** Called when a language has been added or has arrived. */
const listeners = new Set<() => void>();

/**
 * Adds a language, or replaces single texts of one, English included: `addMessages('it', { summary: { before: 'Prima' } })`.
 * Elements that are on the page change at once.
 */
export function addMessages(lang: string, messages: Catalogue): void {
  const key = lang.toLowerCase();
  const own = added.get(key) ?? {};
  for (const [part, texts] of Object.entries(messages)) own[part] = { ...own[part], ...texts };
  added.set(key, own);
  void loadFormatter().then(tell);
  tell();
}

/** Calls back when texts have changed; returns what ends that. */
export function onMessages(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** The language in which a reader of `lang` can be served: `de-AT` by `de`; what is unknown by English. */
export function servedLanguage(lang: string): string {
  const wanted = lang.toLowerCase();
  const base = wanted.split('-')[0]!;
  return [wanted, base].find((key) => key in BUILT_IN || added.has(key)) ?? 'en';
}

/** Loads a language that the library brings along. Until it is there, English is shown. */
export async function load(lang: string): Promise<void> {
  const loader = loaded.has(lang) ? undefined : BUILT_IN[lang];
  if (!loader) return;
  const [{ catalogue }] = await Promise.all([loader(), loadFormatter()]);
  loaded.set(lang, catalogue);
  tell();
}

async function loadFormatter(): Promise<void> {
  Formatter ??= (await import('messageformat')).MessageFormat;
}

function tell(): void {
  for (const listener of listeners) listener();
}

/** A text with its values, in the served language. */
export function message<Id extends string>(lang: string, { part, en }: Words<Id>, id: Id, values?: Values): string {
  const own = added.get(lang)?.[part]?.[id] ?? loaded.get(lang)?.[part]?.[id];
  const text = own ?? added.get('en')?.[part]?.[id] ?? en[id];
  if (!text.includes('{')) return text;
  return text !== en[id] && Formatter ? formatOf(Formatter, own ? lang : 'en', text).format(values) : filled(text, values);
}

/** Puts values into a text that has nothing but values in it. */
function filled(text: string, values: Values = {}): string {
  return text.replace(/\{\$(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
}

function formatOf(Format: typeof MessageFormat, lang: string, text: string): MessageFormat {
  const key = `${lang} ${text}`;
  let format = formats.get(key);
  if (!format) {
    // Isolating marks would stand in the way of texts in attributes; blocks of text find their own direction by CSS.
    format = new Format(lang, text, { bidiIsolation: 'none' });
    formats.set(key, format);
  }
  return format;
}
