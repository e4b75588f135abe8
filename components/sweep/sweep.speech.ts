import { GOOD } from '../../core/numbers.js';
import type { EyeSide } from '../../core/numbers.js';
import { decimal, dioptres, placeText, siteText, spokenSite, withUnit } from '../internal/format.js';
import { directionOf } from '../internal/language/direction.js';
import type { Language } from '../internal/language/language.js';
import { sharedWords } from '../internal/words.js';
import type { LayoutTexts } from './sweep.layout.js';
import type { Range, Sample, Sweep } from './sweep.parts.js';
import { sweepWords } from './sweep.words.js';

/** Values of the texts on one site, as they are printed and as they are spoken. */
export interface ToldSite extends Record<string, string> {
  site: string;
  place: string;
  at: string;
  power: string;
  incision: string;
  amount: string;
}

/** A site and what is expected to remain with the incision there. */
export function toldSite({ site, remaining }: Sample, eye: EyeSide, language: Language): ToldSite {
  const { numbers } = language;
  const where = { site: siteText(site, numbers), place: placeText(site, eye, language) };
  return {
    ...where,
    at: language.say(sweepWords)('at', where),
    power: dioptres(remaining, numbers),
    incision: spokenSite(site, eye, language),
    amount: decimal(remaining, 2, numbers),
  };
}

/** A label in the plot: with its figure first, then in fewer and fewer words for where there is less room. */
export interface SiteLabel {
  id: 'best' | 'temporal' | 'superior';
  at: Sample;
  texts: readonly string[];
}

/** What is said of a curve, wherever the present incision lies. */
export interface ToldSweep {
  /** The best first: it chooses its place before the others. */
  labels: readonly SiteLabel[];
  /** In the key: the best site, if there is one, and those with a name. */
  best: string | null;
  named: string;
  /** The picture in words, without the present incision. */
  described: string;
  /** What a button says that plans an incision. */
  plan: string;
}

/** All texts on a curve, put together once for as long as only the incision is moved. */
export function toldSweep({ best, temporal, superior }: Sweep, eye: EyeSide, language: Language): ToldSweep {
  const say = language.say(sweepWords);
  const [first, second] = best.map((at) => toldSite(at, eye, language));
  const [side, top] = [toldSite(temporal, eye, language), toldSite(superior, eye, language)];
  const labels: SiteLabel[] = [
    { id: 'temporal', at: temporal, texts: [say('named', side), side.place] },
    { id: 'superior', at: superior, texts: [say('named', top), top.place] },
  ];
  const either = (one: 'bestWith' | 'keyBest' | 'least', two: 'bestTwo' | 'keyBestTwo' | 'leastTwo', name: keyof ToldSite): string =>
    second ? say(two, { ...first, other: second[name]! }) : say(one, first);
  if (first) labels.unshift({ id: 'best', at: best[0]!, texts: [either('bestWith', 'bestTwo', 'site'), say('bestAt', first), say('best')] });
  return {
    labels,
    best: first ? either('keyBest', 'keyBestTwo', 'at') : null,
    named: say('keyNamed', { temporal: side.power, superior: top.power }),
    described: [
      say('described', { eye: language.say(sharedWords)(eye) }),
      first ? either('least', 'leastTwo', 'incision') : say('same', side),
      say('namedSites', { temporal: side.amount, superior: top.amount }),
    ].join(' '),
    plan: say(first ? 'planBest' : 'planTemporal', first ?? side),
  };
}

/** The picture in words, with the present incision if there is one, and what half of all eyes would end with. */
export function describeSweep({ described }: ToldSweep, present: ToldSite | null, range: Range | null, language: Language): string {
  const say = language.say(sweepWords);
  if (!present) return `${described} ${say('none')}`;
  const parts = [described, say('present', present)];
  if (range) parts.push(say('half', { low: decimal(range.low, 2, language.numbers), high: decimal(range.high, 2, language.numbers) }));
  return parts.join(' ');
}

/** What stands around the plot. */
export function layoutTexts(eye: EyeSide, language: Language): LayoutTexts {
  const say = language.say(sweepWords);
  return {
    title: language.say(sharedWords)(eye),
    subtitles: [say('shown'), say('shownShort'), say('shownShorter'), say('shownShortest')],
    rightToLeft: directionOf(language.tag) === 'rtl',
    figure: goodText(language),
    clock: say('clock'),
    place: (degrees) => placeText(degrees, eye, language),
  };
}

/** What counts as good, as it is printed. */
export function goodText({ numbers }: Language): string {
  return dioptres(GOOD, numbers);
}

/** A figure of the vertical axis: no more decimals than it needs. */
export function stepText(value: number, { numbers }: Language): string {
  const digits = String(Number(value.toFixed(2))).split('.')[1]?.length ?? 0;
  return withUnit(decimal(value, digits, numbers), 'D', numbers);
}
