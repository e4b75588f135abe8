import { GOOD } from '../../core/numbers.js';
import type { Caution, CautionLevel, CompletePlan, PlanOutcome } from '../../core/numbers.js';
import { DEFAULT_SITES, reasonText } from '../../core/options.js';
import type { PlanLimits, SuggestedPlan, Surgery } from '../../core/options.js';
import { cautionText } from '../internal/caution.js';
import { angle, angleNumber, astigmatismText, capital, dioptres, isolated, meridianText, millimetres, placeText, siteText, withUnit } from '../internal/format.js';
import type { Language } from '../internal/language/language.js';
import { placeWords } from '../internal/place.words.js';
import { eyeId, sharedWords } from '../internal/words.js';
import { LISTS } from './options.limits.js';
import type { LimitRefusal, TextLimit } from './options.limits.js';
import { optionsWords } from './options.words.js';
import type { OptionsId } from './options.words.js';

/** Several texts as one: each is joined to those before it. */
function joined(texts: readonly string[], id: 'and' | 'list' | 'or', language: Language): string {
  return texts.length === 0 ? '' : texts.reduce((first, second) => language.say(optionsWords)(id, { first, second }));
}

/** `Entry 180° temporal, 2.4 mm; one arc of 35° at 0°; toric lens 1.00 D on 180°`. */
export function planText(plan: CompletePlan, language: Language): string {
  const say = language.say(optionsWords);
  const { numbers } = language;
  const { eye, incisionSite, incisionWidth, arcCount, arcLength, arcSite, lensCylinder, lensMeridian } = plan;
  const parts: string[] = [];
  if (incisionSite !== null) {
    parts.push(say('entry', { site: siteText(incisionSite, numbers), place: placeText(incisionSite, eye, language), width: millimetres(incisionWidth, numbers) }));
  }
  if (arcCount > 0 && arcSite !== null) {
    const values = { length: angle(arcLength, numbers), site: siteText(arcSite, numbers), opposite: siteText(arcSite + 180, numbers) };
    parts.push(say(arcCount === 1 ? 'oneArc' : 'twoArcs', values));
  }
  if (lensCylinder && lensMeridian !== null) parts.push(say('lens', { power: dioptres(lensCylinder, numbers), meridian: meridianText(lensMeridian, numbers) }));
  return capital(joined(parts, 'and', language) || say('nothingPlanned'));
}

/** `one arc, 35°`, `no lens`, `entry 2.4 mm`. */
export function surgeryTexts({ arcs, arcDegrees, lens, width }: Surgery, language: Language): readonly string[] {
  const say = language.say(optionsWords);
  const { numbers } = language;
  return [
    say(arcs === 0 ? 'noArc' : arcs === 1 ? 'arcDegrees' : 'arcsDegrees', { length: angle(arcDegrees, numbers) }),
    lens > 0 ? say('lensPower', { power: dioptres(lens, numbers) }) : say('noLens'),
    say('entryWidth', { width: millimetres(width, numbers) }),
  ];
}

/** Why a plan is listed, as a sentence begins. */
export function whyText({ why }: SuggestedPlan, language: Language): string {
  return capital(reasonText(why, language.say(optionsWords)));
}

/** Most severe first, as in the lists of cautions. */
const COUNT: Record<CautionLevel, OptionsId> = { stop: 'countStop', think: 'countThink', note: 'countNote' };

/** `1 × think, 2 × note`. */
export function countText(cautions: readonly Caution[], language: Language): string {
  const texts = Object.entries(COUNT).flatMap(([level, id]) => {
    const count = cautions.filter((one) => one.level === level).length;
    return count > 0 ? [language.say(optionsWords)(id, { count })] : [];
  });
  return joined(texts, 'list', language);
}

/** What the list holds and in which order, which is `by chance, highest first` to begin with. */
export function captionText(count: number, { eye }: CompletePlan, order: string | undefined, language: Language): string {
  const values = { count, eye: language.say(sharedWords)(eyeId(eye)), order: order ?? language.say(optionsWords)('byChance') };
  return language.say(optionsWords)(count === 1 ? 'captionOne' : 'caption', values);
}

/** The plan as it is, to hold the others against. */
export function presentText(plan: CompletePlan, { after, chanceWithin }: PlanOutcome, rank: number | null, language: Language): string {
  const say = language.say(optionsWords);
  const values = {
    plan: planText(plan, language),
    astigmatism: astigmatismText(after, language.numbers),
    chance: say('ofHundred', { eyes: Math.round(100 * chanceWithin(GOOD)) }),
    good: dioptres(GOOD, language.numbers),
  };
  return `${say('present', values)} ${rank === null ? say('notListed') : say('listed', { rank })}`;
}

/** Why there are no arcs in the list. */
export function againstText(against: readonly Caution[], language: Language): string {
  return [language.say(optionsWords)('against'), ...against.map((caution) => cautionText(caution, language))].join(' ');
}

/** A figure in the plan that overrides the model does so in every row; that must not go unsaid. Empty without any. */
export function ownText({ incisionFlattening: entry, arcFlattening: arcs }: CompletePlan, language: Language): string {
  if (entry === null && arcs === null) return '';
  const values = { entry: dioptres(entry ?? 0, language.numbers), arcs: dioptres(arcs ?? 0, language.numbers) };
  return language.say(optionsWords)(arcs === null ? 'ownEntry' : entry === null ? 'ownArcs' : 'ownBoth', values);
}

/** The sentence of all refusals; the catalogues have it in other languages. */
const REFUSAL = { part: 'refusals', en: { refused: '{$field}: {$value} is refused; allowed is {$limits}.' } } as const;

/** Longer texts are cut when they are quoted. */
const QUOTED = 40;

/** A refusal with the limit called by its name. */
export function limitRefusal({ field, value }: LimitRefusal, language: Language): string {
  const text = String(value);
  const quoted = isolated(text.length > QUOTED ? `${text.slice(0, QUOTED)}…` : text, language.numbers);
  return language.say(REFUSAL)('refused', {
    field: language.say(optionsWords)(field),
    value: language.say(sharedWords)('quoted', { text: quoted }),
    limits: allowedText(field, language),
  });
}

/** What a limit may be: `1.8 to 3.5 mm, at most 4, separated by spaces`. */
export function allowedText(name: LimitRefusal['field'], language: Language): string {
  const say = language.say(optionsWords);
  if (name === 'most-arcs') return say('allowedArcs');
  return say(name === 'sites' ? 'allowedSites' : 'allowed', rangeValues(name, language));
}

export function rangeValues(name: TextLimit, { numbers }: Language): Record<'min' | 'max' | 'most', string> {
  const { range, most } = LISTS[name];
  return { min: angleNumber(range.min, numbers), max: withUnit(angleNumber(range.max, numbers), range.unit, numbers), most: String(most) };
}

const MOST_ARCS = ['offeredNoArcs', 'offeredArc', 'offeredArcs'] as const;

/** What the search works with, in one line: `entry temporal, superior or steep; 2.4 mm; up to two arcs; no lens`. */
export function offeredText({ sites, widths, arcs, lenses }: PlanLimits, plan: CompletePlan, language: Language): string {
  const say = language.say(optionsWords);
  const { numbers } = language;
  const places = (sites ?? DEFAULT_SITES).map((place) => (typeof place === 'number' ? siteText(place, numbers) : place === 'steep' ? say('steep') : language.say(placeWords)(place)));
  const powers = lenses?.filter((cylinder) => cylinder > 0).map((cylinder) => dioptres(cylinder, numbers));
  const parts = [
    say('offeredEntry', { places: either(places, language) }),
    either((widths ?? [plan.incisionWidth]).map((width) => millimetres(width, numbers)), language),
    say(MOST_ARCS[arcs ?? 2]),
    !powers ? say('offeredLenses') : powers.length === 0 ? say('noLens') : say('offeredLens', { powers: either(powers, language) }),
  ];
  return joined(parts, 'and', language);
}

/** `a, b or c`. */
function either(texts: readonly string[], language: Language): string {
  return joined([joined(texts.slice(0, -1), 'list', language), ...texts.slice(-1)].filter(Boolean), 'or', language);
}
