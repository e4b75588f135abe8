/** Headings that could be taken for another column: they are asked about, never guessed at. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTable, type OutcomeColumn, type OutcomeWording } from '../../core/outcomes.js';

const headingOf = (text: string) => readTable(`${text}\tz\n1\t2`, { delimiter: '\t' }).headings[0]!;

/** What is asked about each, in the six languages. */
const ASKED: Partial<Record<OutcomeWording, string[]>> = {
  readingOrMeridian: [
    'Mesure du méridien cambré avant', 'K du méridien cambré avant', 'puissance du méridien cambré après', 'Axe du K cambré avant',
    'power of the steep meridian before', 'steep meridian power pre-op', 'K on the steep axis pre', 'axis of steep K before', 'K2 axis pre', 'steep meridian before (D)', 'steep axis pre, dioptres',
    'astigmatism at the steep meridian before', 'steep K before (°)', 'astigmatism after (deg)', 'steep before', 'steepest, pre-op', 'flat after',
    'Brechkraft des steilen Meridians vorher', 'Messwert im steilen Meridian nachher', 'steiler Meridian vorher (dpt)', 'steilste vorher',
    'potencia del meridiano más curvo antes', 'lectura en el meridiano curvo después', 'más curva antes',
    'قوة خط الزوال الأكثر تحدبا قبل', 'قياس المحور الحاد بعد', 'الأكثر تحدبا قبل',
    '术前陡峭子午线屈光力', '术前陡峭子午线K值', '术后陡峭轴K', '术前陡峭子午线度数', '术前陡峭',
  ],
  steepUnclear: ['meridian before', 'Meridian nachher', 'meridiano antes', 'méridien après', 'خط الزوال قبل', '术后子午线', 'planned meridian', 'méridien prévu'],
  flatMeridian: ['flat meridian before', 'flache Achse vorher', 'méridien plat avant', 'méridien le plus plan avant', 'meridiano plano antes', 'خط الزوال المسطح قبل', '术前平坦子午线', 'K1 axis before'],
  axisUnclear: ['cylinder axis before', 'Achse des Zylinders vorher', 'axe du cylindre avant', 'eje del cilindro antes', 'محور الأسطوانة قبل', '术前散光轴位'],
  noTime: ['steep K before and after', 'astigmatisme avant et après', 'Astigmatismus vor und nach OP', 'astigmatismo antes y después', 'اللابؤرية قبل وبعد', '术前后散光', '手术前后陡峭K', 'steep meridian', 'K cambré face avant', 'méridien cambré surface avant'],
  severalThings: [
    'flat and steep K before', 'steep K1 before', 'K2 (flat) after', 'flat astigmatism before', 'planned astigmatism before', 'K plana y curva antes', 'flacher und steiler K vorher', '术前平坦陡峭K',
    'astigmatism before lens implantation', 'steep meridian before incision', 'steep axis before LRI', 'astigmatisme avant implant', 'Astigmatismus vor Linsenoperation',
    'incision width and site', 'arc length and site', 'lens cylinder and axis', 'incision on the steep meridian', 'arc zone size', 'Bogenschnitt: Zone, Breite', 'incision tunnel length', 'steep meridian of lens and incision',
  ],
  elsewhere: [
    'posterior steep meridian before', 'steiler Meridian der Hornhautrückfläche vorher', 'K cambré face postérieure avant', 'meridiano curvo de la cara posterior antes', 'خط الزوال الحاد الخلفي قبل', '术前后表面陡峭子午线',
    'refractive cylinder pre-op', 'manifest cyl before', 'Refraktion Zylinder vorher', 'cylindre réfractif avant', 'cilindro refractivo antes', '术前验光柱镜',
    'surgically induced astigmatism after', 'change of astigmatism after', 'induzierter Astigmatismus nachher', 'astigmatisme induit après', 'astigmatismo inducido después', '术后散光变化', 'residual astigmatism after', 'total corneal astigmatism before',
  ],
  oneSide: ['OD steep K before', 'right astigmatism before', 'linkes Auge: Astigmatismus vorher', 'astigmatisme œil gauche avant', 'astigmatismo ojo derecho antes', 'اللابؤرية قبل العين اليمنى', '左眼术前散光', 'astigmatism left after'],
  unitUnlike: ['incision width (°)', 'incision site (mm)', 'arc length (mm)', 'Schnittbreite in Grad', 'lens axis (D)', 'lens cylinder at the cornea (°)', 'astigmatism before (mm)'],
  lensPlane: ['lens cylinder', 'IOL cyl (D)', 'Zylinder der Linse', 'cilindro de la LIO', 'cylindre de l’implant', 'أسطوانة العدسة', '人工晶体柱镜'],
};

describe('asked about', () => {
  const cases = Object.entries(ASKED).flatMap(([id, headings]) => headings.map((heading) => [heading, id] as const));
  test.each(cases)('%s: %s', (heading, id) => {
    const { column, why } = headingOf(heading);
    expect([heading, column, why?.id]).toEqual([heading, null, id]);
  });

  test.each([
    // These were taken for an axis, for what is flat or for what is steep, because one word holds another.
    'K steil Nachsorge vorher', 'steile K Nachschau nach OP', 'K Hornhautvorderfläche vorher', 'K Vorderfläche nachher', 'bombement cornéen avant', 'عدسة أحادية البؤرة قبل',
  ])('%s is no meridian and no flat one', (heading) => expect(headingOf(heading).column ?? 'steepBefore').toMatch(/^steep/));
});

describe('a unit in the heading decides', () => {
  test.each([
    ['Mesure du méridien cambré avant (°)', 'meridianBefore'], ['K2 steep axis pre (deg)', 'meridianBefore'], ['steep axis of the cylinder before (°)', 'meridianBefore'], ['术前陡峭子午线K值（度）', 'meridianBefore'],
    ['Mesure du méridien cambré avant (D)', 'steepBefore'], ['power of the steep meridian after, dioptres', 'steepAfter'], ['steep before (mm)', 'steepBefore'], ['Brechkraft im steilen Meridian vorher (dpt)', 'steepBefore'],
  ])('%s is %s', (heading, column) => expect(headingOf(heading).column).toBe(column));
});

/** Words by what they mean, one list a language. */
const WORDS = {
  en: { flat: 'flat', steep: 'steep', before: 'before', after: 'after', meridian: 'meridian', axis: 'axis', reading: 'reading', power: 'power', astigmatism: 'astigmatism', right: 'right', left: 'left', back: 'posterior' },
  es: { flat: 'plana', steep: 'curva', before: 'antes', after: 'después', meridian: 'meridiano', axis: 'eje', reading: 'lectura', power: 'potencia', astigmatism: 'astigmatismo', right: 'derecho', left: 'izquierdo', back: 'posterior' },
  de: { flat: 'flach', steep: 'steil', before: 'vorher', after: 'nachher', meridian: 'Meridian', axis: 'Achse', reading: 'Messwert', power: 'Brechkraft', astigmatism: 'Astigmatismus', right: 'rechts', left: 'links', back: 'Rückfläche' },
  fr: { flat: 'plate', steep: 'cambrée', before: 'avant', after: 'après', meridian: 'méridien', axis: 'axe', reading: 'mesure', power: 'puissance', astigmatism: 'astigmatisme', right: 'droit', left: 'gauche', back: 'postérieure' },
  ar: { flat: 'مسطح', steep: 'حاد', before: 'قبل', after: 'بعد', meridian: 'خط الزوال', axis: 'محور', reading: 'القراءة', power: 'قوة', astigmatism: 'اللابؤرية', right: 'اليمنى', left: 'اليسرى', back: 'خلفي' },
  zh: { flat: '平坦', steep: '陡峭', before: '术前', after: '术后', meridian: '子午线', axis: '轴位', reading: '读数', power: '屈光力', astigmatism: '散光', right: '右', left: '左', back: '后表面' },
} as const;

type Meaning = keyof (typeof WORDS)['en'];

/** What these words name beyond doubt: one time, one thing, one eye not named, nothing of the back. Written apart from the reader. */
function named(words: ReadonlySet<Meaning>): OutcomeColumn | null {
  const has = (...wanted: Meaning[]) => wanted.filter((word) => words.has(word)).length;
  if (has('right', 'left', 'back') > 0 || has('before', 'after') !== 1) return null;
  const time = words.has('before') ? 'Before' : 'After';
  const [turned, power] = [has('meridian', 'axis') > 0, has('reading', 'power') > 0];
  if (words.has('astigmatism')) return turned || has('flat', 'steep') > 0 ? null : `magnitude${time}`;
  if (has('flat', 'steep') !== 1 || turned === power) return null;
  if (turned) return words.has('steep') ? `meridian${time}` : null;
  return words.has('flat') ? `flat${time}` : `steep${time}`;
}

describe.each(Object.entries(WORDS))('any words in any order, %s', (lang, words) => {
  const meanings = Object.keys(words) as Meaning[];
  const space = lang === 'zh' ? '' : ' ';

  test('name a column only if they name no other', () => {
    fc.assert(fc.property(fc.shuffledSubarray(meanings, { minLength: 1 }), (chosen) => {
      // Words for an eye alone head the column that names the eye.
      fc.pre(chosen.some((meaning) => meaning !== 'right' && meaning !== 'left'));
      const heading = chosen.map((meaning) => words[meaning]).join(space);
      expect([heading, headingOf(heading).column]).toEqual([heading, named(new Set(chosen))]);
    }), { numRuns: 2000, seed: 20 });
  });

  test('two that contradict each other are never passed over', () => {
    const pairs: [Meaning, Meaning][] = [['flat', 'steep'], ['before', 'after'], ['right', 'left'], ['meridian', 'reading'], ['axis', 'reading'], ['meridian', 'power'], ['axis', 'power'], ['meridian', 'astigmatism'], ['axis', 'astigmatism']];
    fc.assert(fc.property(fc.constantFrom(...pairs), fc.shuffledSubarray(meanings), fc.boolean(), (pair, others, first) => {
      const rest = others.filter((meaning) => !pair.includes(meaning));
      fc.pre(rest.length > 0 || !pair.includes('right'));
      const heading = (first ? [...pair, ...rest] : [...rest, ...pair]).map((meaning) => words[meaning]).join(space);
      expect([heading, headingOf(heading).column]).toEqual([heading, null]);
    }), { numRuns: 1000, seed: 21 });
  });
});

describe('figures that belong to another column', () => {
  const table = (meridians: readonly number[], eyes = meridians.length) => ['eye;magnitudeBefore;meridianBefore;magnitudeAfter;meridianAfter', ...meridians.slice(0, eyes).map((value) => `R;1;${value};1;90`)].join('\n');
  const ids = (text: string) => readTable(text).problems.map(({ id }) => id);

  test('readings in the column of the meridian are noticed', () => {
    expect(ids(table([43.1, 44.2, 42.8, 45, 43.9, 41.5]))).toEqual(['likeReadings']);
    expect(readTable(table([43.1, 44.2, 42.8, 45, 43.9, 41.5])).problems[0]!.values).toMatchObject({ column: 'meridianBefore', from: { value: 41.5, unit: '' }, to: { value: 45, unit: '' } });
  });

  test('they are quoted as they stand, to the hundredth', () => {
    const quoted = (...meridians: number[]) => readTable(table(meridians)).problems[0]!.text;
    expect(quoted(43.1, 44, 42.85, 45, 43.9, 41.25)).toMatch(/ lie between 41\.25 and 45, /);
    expect(quoted(43.1, 44, 42.85, 45.5, 43.9, 41)).toMatch(/ lie between 41 and 45\.5, /);
  });

  test('meridians are not', () => {
    expect(ids(table([43, 44, 42, 45, 43, 91]))).toEqual([]);
    expect(ids(table([43, 44]))).toEqual([]);
  });

  test('they are noticed from five on, and where all lie between 36 and 52', () => {
    expect(ids(table([36, 44, 42, 52, 43]))).toEqual(['likeReadings']);
    for (const meridians of [[36, 44, 42, 52], [35.9, 44, 42, 52, 43], [36, 44, 42, 52.1, 43], [1, 44, 42, 45, 43]]) expect(ids(table(meridians))).toEqual([]);
  });

  test('a column that was chosen against the unit of its heading says so', () => {
    const { headings } = readTable('eye;a;steep power (D);c;e\nR;1;44;1;90', { mapping: { magnitudeBefore: 'a', meridianBefore: 2, magnitudeAfter: 'c', meridianAfter: 'e' } });
    expect(headings.map(({ column, why }) => [column, why?.id])).toEqual([['eye', undefined], ['magnitudeBefore', undefined], ['meridianBefore', 'unitUnlike'], ['magnitudeAfter', undefined], ['meridianAfter', undefined]]);
  });
});
