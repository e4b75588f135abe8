import { MessageFormat } from 'messageformat';
import { beforeAll, describe, expect, it } from 'vitest';
import { explainWords } from '../../components/explain/explain.words.js';
import type { ExplainId } from '../../components/explain/explain.words.js';
import { BUILT_IN } from '../../components/internal/language/languages/built-in.js';

const LANGUAGES = ['ar', 'de', 'es', 'fr', 'zh'] as const;
const ids = Object.keys(explainWords.en) as ExplainId[];

/** Values that a text may ask for, and what stands in the page for them. */
const VALUES = { amount: '1.5', number: 1.5, hundredths: 150, limit: '0.5', people: '62', who: 'WHO', place: 'PLACE' };

/** Names of the values in a text; those that only choose a form do not count as shown. */
function namesIn(text: string): string[] {
  return [...new Set([...text.replace(/^\.(input|match).*$/gm, '').matchAll(/\{\$(\w+)\}/g)].map(([, name]) => name!))].sort();
}

type Texts = Readonly<Record<string, string>>;

async function textsOf(lang: string): Promise<Texts> {
  return (await BUILT_IN[lang]!()).catalogue.explain!;
}

/** A text with its values, and what is wrong with it. */
function format(lang: string, text: string, values: Record<string, string | number>): { shown: string; errors: unknown[] } {
  const errors: unknown[] = [];
  const shown = new MessageFormat(`${lang}-u-nu-latn`, text, { bidiIsolation: 'none' }).format(values, (error) => errors.push(error));
  return { shown, errors };
}

describe.each(LANGUAGES)('the patient’s page in %s', (lang) => {
  let texts: Texts;
  beforeAll(async () => {
    texts = await textsOf(lang);
  });

  it('has every text and no other', () => {
    expect(Object.keys(texts).sort()).toEqual([...ids].sort());
  });

  it('has no text in English', () => {
    expect(ids.filter((id) => texts[id] === explainWords.en[id])).toEqual([]);
  });

  it('shows the values that English shows', () => {
    for (const id of ids) {
      // Chinese counts astigmatism in hundredths of a dioptre beside the dioptres.
      expect(namesIn(texts[id]!).filter((name) => name !== 'hundredths'), id).toEqual(namesIn(explainWords.en[id]));
    }
  });

  it('is well-formed: nothing is missing or shows its code', () => {
    for (const id of ids) {
      const { shown, errors } = format(lang, texts[id]!, VALUES);
      expect(errors, id).toEqual([]);
      expect(shown, id).not.toMatch(/[{}|$]|undefined|^\./);
    }
  });

  it('has plain quotation marks nowhere, and no doubled or trailing space', () => {
    for (const id of ids) expect(texts[id], id).not.toMatch(/["']| {2}|^\s|\s$/);
  });

  it('tells every number of people as it is', () => {
    for (const people of [1, 2, 3, 11, 62, 99]) {
      expect(format(lang, texts.peopleAbout!, { people: String(people), number: people }).shown).toContain(String(people));
    }
  });
});

describe('one person and many', () => {
  it.each([
    ['de', 'Von 100 Menschen wie Ihnen hätte etwa 1', 'Von 100 Menschen wie Ihnen hätten etwa 2'],
    ['es', 'De 100 personas como usted, cerca de 1 tendría', 'De 100 personas como usted, cerca de 2 tendrían'],
    ['fr', 'Sur 100 personnes comme vous, environ 1 aurait', 'Sur 100 personnes comme vous, environ 2 auraient'],
  ])('%s', async (lang, one, two) => {
    const { peopleAbout } = await textsOf(lang);
    expect([1, 2].map((number) => format(lang, peopleAbout!, { people: String(number), number }).shown)).toEqual([one, two]);
  });

  it('French counts dioptres below two in the singular', async () => {
    const { shapeMeasured } = await textsOf('fr');
    const measured = (amount: string, number: number): string => format('fr', shapeMeasured!, { amount, number }).shown;
    expect(measured('1,75', 1.75)).toContain('1,75 dioptrie ');
    expect(measured('2,0', 2)).toContain('2,0 dioptries ');
  });
});
