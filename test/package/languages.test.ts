import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseMessage, validate, visit } from 'messageformat';
import { describe, expect, it } from 'vitest';
import { CAUTION_TEXT, REFUSAL_TEXT } from '../../core/index.js';
import type { Catalogue, Words } from '../../components/internal/language/catalogue.js';
import { BUILT_IN } from '../../components/internal/language/languages/built-in.js';
import { constantWords, figureWords, referenceWords } from '../../components/internal/source-texts.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Texts whose names are put together, or are those of something in the core that is looked through as a whole. */
const PUT_TOGETHER: Record<string, RegExp> = {
  vectors: /^(key|said)(Before|BackSurface|Incision|Arcs?|Lens|Residual)$/,
  cornea: /^(facing|above|temporal)Caption$/,
  explain: /^(entry|arcs|lens)(Title|What)$|^warn[A-Z]/,
  sources: /^(read|memory)(Partly)?$/,
  cautions: /^risk-/,
  figures: /./,
  constants: /./,
  references: /./,
  outcomeHeadings: /./,
};

/** Values that code hands over besides those that English uses: a number for its plural, another unit. By part. */
const ALSO_GIVEN: Record<string, readonly string[]> = { explain: ['number', 'hundredths'] };

/** English by its parts. A part may stand in several files, so that some of it can be loaded later. */
const parts = new Map<string, Words>();
for (const { part, en } of [...(await wordsIn('components')), { part: 'cautions', en: CAUTION_TEXT }, figureWords, constantWords, referenceWords]) {
  const known = parts.get(part)?.en ?? {};
  const twice = Object.keys(en).filter((id) => id in known);
  if (twice.length > 0) throw new Error(`${part} has two texts of the name ${twice.join(', ')}`);
  parts.set(part, { part, en: { ...known, ...en } });
}

const catalogues = new Map<string, Catalogue>();
for (const [lang, load] of Object.entries(BUILT_IN)) catalogues.set(lang, (await load()).catalogue);

/** Every text in English or in a catalogue, with the name under which a test reports it. */
const texts = [['en', Object.fromEntries([...parts].map(([part, { en }]) => [part, en]))] as const, ...catalogues].flatMap(([lang, catalogue]) =>
  Object.entries(catalogue).flatMap(([part, ids]) => Object.entries(ids).map(([id, text]) => ({ lang, part, id, text, name: `${lang} ${part} ${id}` }))),
);

describe('the languages', () => {
  it('are the five that the library promises beside English', () => {
    expect([...catalogues.keys()].sort()).toEqual(['ar', 'de', 'es', 'fr', 'zh']);
  });

  it('find the texts of the elements and of the core', () => {
    expect([...parts.keys()]).toEqual(expect.arrayContaining(['shared', 'places', 'fields', 'refusals', 'cautions', 'cornea', 'vectors', 'summary', 'entry', 'sources', 'figures', 'constants', 'references', 'outcomes', 'outcomeTexts', 'outcomeColumns', 'outcomeHeadings']));
    expect(texts.length).toBeGreaterThan(6 * 350);
  });

  describe.each([...catalogues])('%s', (_, catalogue) => {
    it('has the parts that English has', () => {
      expect(Object.keys(catalogue).sort()).toEqual([...parts.keys()].sort());
    });

    it.each([...parts])('has every text of %s and no other', (part, { en }) => {
      expect(Object.keys(catalogue[part] ?? {}).sort()).toEqual(Object.keys(en).sort());
    });
  });
});

describe('the texts', () => {
  it('are sentences of the language: not empty, without blanks at their ends', () => {
    expect(texts.filter(({ text }) => text.trim() === '' || text.trim() !== text).map(({ name }) => name)).toEqual([]);
  });

  it('can be read as MessageFormat 2', () => {
    const wrong = texts.flatMap(({ name, text }) => {
      try {
        validate(parseMessage(text));
        return [];
      } catch (error) {
        return [`${name}: ${String(error)}`];
      }
    });
    expect(wrong).toEqual([]);
  });

  it('have nothing but values in them in English, which is shown without a reader of MessageFormat', () => {
    const english = texts.filter(({ lang }) => lang === 'en');
    expect(english.filter(({ text }) => /[{}\\]/.test(text.replace(/\{\$\w+\}/g, '')) || text.startsWith('.i')).map(({ name }) => name)).toEqual([]);
  });

  it('use the values that English uses, all of them and no other', () => {
    const wrong = texts.flatMap(({ part, id, text, name }) => {
      const expected = valuesIn(parts.get(part)?.en[id] ?? '');
      const found = valuesIn(text);
      const missing = expected.filter((value) => !found.includes(value));
      const unknown = found.filter((value) => !expected.includes(value) && !ALSO_GIVEN[part]?.includes(value));
      return missing.length + unknown.length === 0 ? [] : [`${name}: lacks ${missing.join(', ') || 'nothing'}, has too much: ${unknown.join(', ') || 'nothing'}`];
    });
    expect(wrong).toEqual([]);
  });

  it('are translated, not copied: only terms may be the same', () => {
    const copied = texts.filter(({ lang, part, id, text }) => lang !== 'en' && text === parts.get(part)?.en[id] && /(\p{L}{2,}[^\p{L}]+){2}\p{L}{2,}/u.test(text.replace(/\{\$\w+\}/g, '')));
    expect(copied.map(({ name }) => name)).toEqual([]);
  });

  it('close every direction that they open', () => {
    const open = texts.filter(({ text }) => text.split('\u2066').length !== text.split('\u2069').length);
    expect(open.map(({ name }) => name)).toEqual([]);
  });

  it('name a button by a phrase that has its visible text in it (WCAG 2.5.3)', () => {
    const missing = [...catalogues].flatMap(([lang, { shared, summary }]) =>
      [shared!['sourceOfSpread']!, summary!['sourceOf']!].filter((label) => !label.toLowerCase().includes(shared!['source']!.toLowerCase())).map((label) => `${lang}: ${label}`),
    );
    expect(missing).toEqual([]);
  });

  it('are each used by something', () => {
    const source = ['components', 'core'].flatMap(filesIn).filter((file) => !file.includes('/languages/'))
      .map((file) => readFileSync(join(root, file), 'utf8')).join('\n');
    const unused = [...parts.values()].flatMap(({ part, en }) =>
      Object.keys(en).filter((id) => !PUT_TOGETHER[part]?.test(id) && !new RegExp(`['"\`]${id}['"\`](?!:)`).test(source)).map((id) => `${part} ${id}`),
    );
    expect(unused).toEqual([]);
  });
});

describe('refusals', () => {
  it('have the same reasons in the core and in the elements', () => {
    expect(Object.keys(parts.get('refusals')!.en)).toEqual(expect.arrayContaining(Object.keys(REFUSAL_TEXT)));
  });
});

/** Names of the values in a text, sorted. */
function valuesIn(text: string): string[] {
  const found = new Set<string>();
  visit(parseMessage(text), { value: (value) => void (value?.type === 'variable' && found.add(value.name)) });
  return [...found].sort();
}

async function wordsIn(folder: string): Promise<Words[]> {
  const modules = await Promise.all(filesIn(folder).filter(isWords).map((file) => import(join(root, file)) as Promise<Record<string, unknown>>));
  return modules.flatMap((module) => Object.values(module)).filter((value): value is Words => typeof value === 'object' && value !== null && 'part' in value && 'en' in value);
}

function isWords(file: string): boolean {
  return /[./-]words\.ts$/.test(file);
}

function filesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'));
}

describe('where there is no document', () => {
  it('elements and languages can be imported, and English is spoken', async () => {
    expect(typeof document).toBe('undefined');
    const { AstigSummary } = await import('../../components/summary/summary.js');
    const { ENGLISH, languageOf } = await import('../../components/internal/language/language.js');
    await import('../../components/internal/language/catalogue.js');
    expect(AstigSummary.name).toBe('AstigSummary');
    expect(ENGLISH.say(parts.get('shared')!)('right')).toBe('Right eye');
    expect(languageOf('en-GB').say(parts.get('shared')!)('right')).toBe('Right eye');
  });
});
