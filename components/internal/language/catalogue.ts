import type { MessageFormat } from 'messageformat';
import { filled } from '../../../core/numbers.js';
import { writeForeignBy } from '../format.js';
import { refusalText } from '../refusal.js';
import { directionOf } from './direction.js';
import { FOREIGN_NUMBERS } from './foreign-numbers.js';
import { serveBy, tell } from './language.js';
import type { Language, Say, Values, Words } from './language.js';
import { BUILT_IN } from './languages/built-in.js';

export type { Language, Say, Values, Words } from './language.js';

/** Texts of one language: by part, then by name. What is missing falls back to English. */
export type Catalogue = Readonly<Record<string, Readonly<Record<string, string>>>>;

const loaded = new Map<string, Catalogue>();
const loading = new Set<string>();
const added = new Map<string, Catalogue>();

/** The library that reads MessageFormat 2; loaded when a text needs more than values put into it. */
let Formatter: typeof MessageFormat | null = null;

/**
 * Adds a language, or replaces single texts of one, English included: `addMessages('it', { summary: { step: 'Passo' } })`.
 * Elements that are on the page change at once.
 */
export function addMessages(lang: string, messages: Catalogue): void {
  const key = lang.toLowerCase().replaceAll('_', '-');
  const own: Record<string, Readonly<Record<string, string>>> = { ...added.get(key) };
  for (const [part, texts] of Object.entries(messages)) own[part] = { ...own[part], ...texts };
  added.set(key, own);
  changed();
  if (needsFormatter(messages)) loadFormatter().then(changed, reportError);
}

/** The language in which a reader of `tag` can be served: `de-AT` by `de`; what is unknown by English. */
export function servedLanguage(tag: string): string {
  const parts = tag.toLowerCase().split(/[-_]/);
  for (let length = parts.length; length > 0; length -= 1) {
    const shorter = parts.slice(0, length).join('-');
    if (Object.hasOwn(BUILT_IN, shorter) || added.has(shorter)) return shorter;
  }
  return 'en';
}

function serve(tag: string): Language {
  const wanted = servedLanguage(tag);
  load(wanted);
  // English stands in for a language that is on its way, as a whole.
  const lang = added.has(wanted) || loaded.has(wanted) ? wanted : 'en';
  return {
    lang,
    tag: spokenTag(lang, tag),
    rightToLeft: directionOf(lang) === 'rtl',
    numbers: numbersTag(lang, tag),
    say: (words) => sayIn(lang, words),
    refusal(refused) {
      return refusalText(refused, this);
    },
  };
}

function spokenTag(lang: string, tag: string): string {
  // Our Chinese is in simplified characters, for every reader of Chinese.
  if (lang === 'zh') return 'zh-Hans';
  return tag.toLowerCase().startsWith(`${lang}-`) ? tag : lang;
}

/** English numbers are written alike everywhere here: that is the tag by which formats take the short way. */
function numbersTag(lang: string, tag: string): string {
  if (lang.split('-')[0] === 'en') return 'en';
  try {
    return new Intl.Locale(tag.replaceAll('_', '-'), { numberingSystem: 'latn' }).toString();
  } catch {
    return `${lang}-u-nu-latn`;
  }
}

/** Loads a language that the library brings along. */
function load(lang: string): void {
  const base = lang.split('-')[0]!;
  if (!Object.hasOwn(BUILT_IN, base) || loading.has(base)) return;
  loading.add(base);
  arrive(base).catch((error) => {
    // The next element that asks tries again.
    loading.delete(base);
    reportError(error);
  });
}

async function arrive(base: string): Promise<void> {
  const { catalogue } = await BUILT_IN[base]!();
  if (needsFormatter(catalogue)) await loadFormatter();
  loaded.set(base, catalogue);
  changed();
}

async function loadFormatter(): Promise<void> {
  Formatter ??= (await import('messageformat')).MessageFormat;
}

function changed(): void {
  bound.clear();
  tell();
}

/** Texts bound to a language, shared by all elements, until texts change. */
const bound = new Map<string, WeakMap<Words, Say<string>>>();

function sayIn<Id extends string>(lang: string, words: Words<Id>): Say<Id> {
  let parts = bound.get(lang);
  if (!parts) bound.set(lang, (parts = new WeakMap()));
  let say = parts.get(words);
  if (!say) parts.set(words, (say = (id, values) => message(lang, words, id as Id, values)));
  return say;
}

/** A text with its values, in a language that is there. */
export function message<Id extends string>(lang: string, { part, en }: Words<Id>, id: Id, values?: Values): string {
  const own = lang === 'en' ? undefined : ownText(lang, part, id);
  const text = own ?? added.get('en')?.[part]?.[id] ?? en[id];
  if (isPlain(text)) return values ? filled(text, values, String) : text;
  const format = Formatter && formatOf(Formatter, own === undefined ? 'en' : lang, text);
  // A text shows as it is in the code before the library that reads it is there, and when that cannot read it.
  return format ? format.format(values) : filled(en[id], values ?? {}, String);
}

/** A text of the language itself: `es-MX` has what was added for it, and else that of `es`. */
function ownText(lang: string, part: string, id: string): string | undefined {
  const base = lang.split('-')[0]!;
  return added.get(lang)?.[part]?.[id] ?? added.get(base)?.[part]?.[id] ?? loaded.get(base)?.[part]?.[id];
}

const plain = new Map<string, boolean>();

/** Whether a text has nothing in it but values. Then it is filled without the library. */
function isPlain(text: string): boolean {
  let known = plain.get(text);
  if (known === undefined) {
    known = !/^\s*(?:\.[a-z]|\{\{)|\\/.test(text) && !text.replace(/\{\$\w+\}/g, '').includes('{');
    plain.set(text, known);
  }
  return known;
}

function needsFormatter(messages: Catalogue): boolean {
  return Object.values(messages).some((texts) => !Object.values(texts).every(isPlain));
}

const formats = new Map<string, MessageFormat | null>();

/** The reader of a text; null, and an error for the page, when the text is wrong. */
function formatOf(Format: typeof MessageFormat, lang: string, text: string): MessageFormat | null {
  const key = `${lang} ${text}`;
  const known = formats.get(key);
  if (known !== undefined) return known;
  let format: MessageFormat | null = null;
  try {
    // Figures come isolated already, and digits stay Latin, so that degrees read alike everywhere.
    format = new Format(`${lang}-u-nu-latn`, text, { bidiIsolation: 'none' });
  } catch (cause) {
    reportError(new Error(`This text in “${lang}” is not MessageFormat 2: ${text}`, { cause }));
  }
  formats.set(key, format);
  return format;
}

writeForeignBy(FOREIGN_NUMBERS);
serveBy(serve);
tell();
