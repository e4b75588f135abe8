import { describe, expect, it } from 'vitest';
import { explainWords } from '../../components/explain/explain.words.js';
import type { ExplainId } from '../../components/explain/explain.words.js';
import { gradeBy, gradeOf, measure } from './readability.js';

/** Numbers as they are read aloud. A number that is typed would count as nothing. */
const SPOKEN: Record<string, string> = { amount: 'one point five', limit: 'nought point five', people: 'sixty two', place: explainWords.en.placeTemporal };

/** Ids begin with the name of what they belong to; these are the sections as a reader meets them. */
const SECTION: Record<string, RegExp> = {
  title: /^(title|lead|about)/,
  shape: /^(shape|sourceMeasured)/,
  surgery: /^(surgery|entry|arcs|lens|possible|notPlanned|plan|asInPhoto|nose|place)/,
  likely: /^(likely|people|sourceLikely|sourceNotice)/,
  promise: /^promise/,
  options: /^(options|glasses|nothing|treat)/,
  questions: /^(questions|ask)/,
  warning: /^(warn|sourceWarning)/,
  contact: /^contact/,
  estimate: /^estimate/,
};

/** A text as it is read: values put in, and what is only a piece of a sentence not counted alone. */
function spoken(id: ExplainId): string {
  return explainWords.en[id]
    .replace('{$who}', explainWords.en.peopleAbout)
    .replace(/\{\$(\w+)\}/g, (_, name: string) => SPOKEN[name]!)
    .replaceAll('100', 'one hundred');
}

const PIECES = /^(place|people|nose)/;
const ids = (Object.keys(explainWords.en) as ExplainId[]).filter((id) => !PIECES.test(id));

/** The highest grade that a section may ask for. */
const GRADE = 6;

describe('the patient’s page can be read by a child of eleven', () => {
  it('has each text in one section', () => {
    const found = Object.values(SECTION).flatMap((belongs) => ids.filter((id) => belongs.test(id)));
    expect(found.sort()).toEqual([...ids].sort());
  });

  it.each(Object.entries(SECTION))('section %s', (_, belongs) => {
    expect(gradeOf(ids.filter((id) => belongs.test(id)).map(spoken))).toBeLessThanOrEqual(GRADE);
  });

  it('as a whole, with room to spare', () => {
    const grades = Object.entries(SECTION).map(([name, belongs]) => `${name} ${gradeOf(ids.filter((id) => belongs.test(id)).map(spoken)).toFixed(1)}`);
    const grade = gradeOf(ids.map(spoken));
    console.log(`Flesch–Kincaid grade of the patient’s page: ${grade.toFixed(1)} (${grades.join(', ')})`);
    expect(grade).toBeLessThanOrEqual(5);
  });

  it('has no long sentence', () => {
    expect(ids.filter((id) => measure([spoken(id)]).longest > 20)).toEqual([]);
  });

  it('never calls what remains “left”, which is the name of an eye', () => {
    expect(ids.filter((id) => /\bleft\b/i.test(explainWords.en[id].replace('left eye', '')))).toEqual([]);
  });
});

describe('the measure itself', () => {
  // A sentence often used as an example: 13 words, 24 syllables when "-ian" is spoken as one, grade 11.3.
  const PLATYPUS = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.';

  it('has the published formula', () => {
    expect(gradeBy({ words: 13, sentences: 1, syllables: 24 })).toBeCloseTo(11.3, 1);
  });

  it('counts rather too many syllables than too few: "-ian" as two', () => {
    expect(measure([PLATYPUS])).toEqual({ words: 13, sentences: 1, syllables: 26, longest: 13 });
  });

  it('falls with short words and short sentences', () => {
    expect(gradeOf(['The cat sat on the mat.'])).toBeCloseTo(-1.45, 2);
  });

  it('refuses what a leaflet often says', () => {
    expect(gradeOf(['Preoperative quantification of corneal astigmatism facilitates individualised surgical intervention.'])).toBeGreaterThan(GRADE);
    expect(gradeOf(['Patients experiencing postoperative complications should immediately communicate with their ophthalmological department.'])).toBeGreaterThan(GRADE);
  });

  it('rises when one such sentence gets into a section', () => {
    const options = ids.filter((id) => SECTION.promise!.test(id)).map(spoken);
    const worse = [...options, 'Postoperative refractive predictability fundamentally depends upon individual biological variability and surgical reproducibility.'];
    expect(gradeOf(options)).toBeLessThanOrEqual(GRADE);
    expect(gradeOf(worse)).toBeGreaterThan(GRADE);
  });

  it('counts a heading or a list item as a sentence', () => {
    expect(measure(['Wear glasses', 'Do nothing. You can wait.']).sentences).toBe(3);
  });
});
