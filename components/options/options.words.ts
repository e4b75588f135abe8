import { DEFAULT_SITES, GOOD, siteName } from '../../core/numbers.js';
import type { Caution, CautionLevel, CompletePlan, PlanLimits, RefusedValue, SuggestedPlan, Surgery } from '../../core/numbers.js';
import { angle, astigmatismText, capital, dioptres, meridianText, millimetres, siteText } from '../internal/format.js';
import { EYE_NAME } from '../internal/words.js';
import type { LimitName, TextLimit } from './options.limits.js';
import { MOST, allowed } from './options.limits.js';
import type { Order, SortKey } from './options.order.js';

/** What stands over a column that can be sorted, and the figure's own words below it. */
export const HEADING: Record<SortKey, { name: string; what: string }> = {
  remaining: { name: 'Remaining', what: 'as expected' },
  chance: { name: 'Chance', what: `of ${dioptres(GOOD)} or less` },
  surgery: { name: 'Surgery', what: 'how much' },
};

export const COLUMN = { rank: 'Rank', plan: 'Plan', cautions: 'Cautions', reason: 'Reason', choose: 'Choose' } as const;

const SORTED: Record<SortKey, [by: string, first: string, reversed: string]> = {
  chance: ['chance', 'highest first', 'lowest first'],
  remaining: ['what remains', 'least first', 'most first'],
  surgery: ['amount of surgery', 'least first', 'most first'],
};

/** Most severe first, as in the lists of cautions. */
export const LEVELS: readonly CautionLevel[] = ['stop', 'think', 'note'];


/** What a limit is called where it is refused. */
const LIMIT_NAME: Record<LimitName, string> = {
  sites: 'Places of entry',
  widths: 'Widths of the blades',
  'most-arcs': 'Most arcs',
  lenses: 'Cylinders of the lenses',
};

/** What stands over a row of switches, and over a field. */
export const GROUP = { sites: 'Places of entry', arcs: 'Relaxing arcs', lens: 'Toric lens' } as const;
export const FIELD: Record<TextLimit, string> = { sites: 'Other places, in degrees', widths: 'Widths of the blades, mm', lenses: 'Cylinders of the lenses, D' };

export const LIMITS_TITLE = 'What may be offered';
export const REFUSED_LIMITS = 'These limits cannot be taken. The list is by the last good ones:';
export const REFUSED_CASE = 'The page has set values that cannot be taken. The list is for the last good plan, and none can be chosen until this is mended:';
export const NOTHING = 'No plan can be suggested within these limits.';
export const WHEN_LET_GO = 'The eye is being changed: this list will be refreshed when you let go.';
export const BEING_REFRESHED = 'The eye or the limits have changed: this list is being refreshed.';
export const USE = 'Use this plan';
export const IN_USE = 'In use';

/** `Entry 180° temporal, 2.4 mm; one arc of 35° at 0°; toric lens 1.00 D on 180°`. */
export function planText(plan: CompletePlan): string {
  const text = [entryText(plan), arcsText(plan), lensText(plan)].filter(Boolean).join('; ');
  return text === '' ? 'Nothing planned' : capital(text);
}

function entryText({ incisionSite, incisionWidth, eye }: CompletePlan): string {
  return incisionSite === null ? '' : `entry ${siteText(incisionSite)} ${siteName(incisionSite, eye)}, ${millimetres(incisionWidth)}`;
}

function arcsText({ arcCount, arcLength, arcSite }: CompletePlan): string {
  if (arcCount === 0 || arcSite === null) return '';
  if (arcCount === 1) return `one arc of ${angle(arcLength)} at ${siteText(arcSite)}`;
  return `two arcs of ${angle(arcLength)} at ${siteText(arcSite)} and ${siteText(arcSite + 180)}`;
}

function lensText({ lensCylinder, lensMeridian }: CompletePlan): string {
  return lensCylinder && lensMeridian !== null ? `toric lens ${dioptres(lensCylinder)} on ${meridianText(lensMeridian)}` : '';
}

/** `one arc, 35°`, `no lens`, `entry 2.4 mm`. */
export function surgeryTexts({ arcs, arcDegrees, lens, width }: Surgery): readonly string[] {
  const cut = arcs === 0 ? 'no arc' : arcs === 1 ? `one arc, ${angle(arcDegrees)}` : `two arcs, ${angle(arcDegrees)} in all`;
  return [cut, lens > 0 ? `lens ${dioptres(lens)}` : 'no lens', `entry ${millimetres(width)}`];
}

/** `53 of 100`. */
export function chanceText(ofHundred: number): string {
  return `${ofHundred}\u00a0of\u00a0100`;
}

/** `one arc gains 20 in 100`, as a sentence begins. */
export function reasonText({ reason }: SuggestedPlan): string {
  return capital(reason);
}

/** `1 × think, 2 × note`. */
export function countText(cautions: readonly Caution[]): string {
  const counts = LEVELS.map((level) => [level, cautions.filter((one) => one.level === level).length] as const);
  return counts.filter(([, count]) => count > 0).map(([level, count]) => `${count}\u00a0×\u00a0${level}`).join(', ');
}

/** What the list holds and in which order, or why it is not that of the eye as it is. */
export function captionText(count: number, plan: CompletePlan, order: Order): string {
  return `${plansText(count)} for the ${EYE_NAME[plan.eye].toLowerCase()}, by ${orderText(order)}`;
}

/** What is heard when other limits have led to another list. */
export function countedText(count: number): string {
  return `${plansText(count)} in the list.`;
}

function plansText(count: number): string {
  return `${count} ${count === 1 ? 'plan' : 'plans'}`;
}

export function sortedText(order: Order): string {
  return `Sorted by ${orderText(order)}.`;
}

function orderText({ key, reversed }: Order): string {
  const [by, first, last] = SORTED[key];
  return `${by}, ${reversed ? last : first}`;
}

/** The plan as it is, to hold the others against. */
export function presentText(plan: CompletePlan, after: { magnitude: number; meridian: number }, ofHundred: number, rank: number | null): string {
  const figures = `${astigmatismText(after)} remaining as expected, ${chanceText(ofHundred)} end with ${dioptres(GOOD)} or less`;
  return `${planText(plan)}: ${figures}. ${rank === null ? 'It is not in this list.' : `It is plan ${rank} of this list.`}`;
}

/** What is heard when a plan was chosen; what it does to the eye, other elements of the page may say. */
export function chosenText(rank: number, { plan }: SuggestedPlan): string {
  return `Plan ${rank} is in use: ${planText(plan)}.`;
}

/** Why there are no arcs in the list. */
export function againstText(against: readonly Caution[]): string {
  return `Arcs are not offered. ${against.map(({ text }) => text).join(' ')}`;
}

/** A figure in the plan that overrides the model does so in every row; that must not go unsaid. Empty without any. */
export function ownText({ incisionFlattening, arcFlattening }: CompletePlan): string {
  const own = [
    incisionFlattening === null ? '' : `${dioptres(incisionFlattening)} of flattening by the incision wherever it lies`,
    arcFlattening === null ? '' : `${dioptres(arcFlattening)} by the arcs whatever their length`,
  ].filter(Boolean);
  return own.length === 0 ? '' : `Own figures of this plan count in every row: ${own.join(', and ')}.`;
}

/** A refusal with the field called by its label. */
export function refusalText({ field, value, limits }: RefusedValue): string {
  return `${LIMIT_NAME[field as LimitName] ?? field}: “${shortened(String(value))}” is refused; allowed is ${limits}.`;
}

/** What may be typed into a field. */
export function limitsText(name: TextLimit): string {
  const empty: Record<TextLimit, string> = { sites: 'may stay empty', widths: 'empty: the width in the plan', lenses: 'at the corneal plane; empty: 1 to 4\u00a0D in half dioptres' };
  const range = name === 'sites' ? `0 to 360°, at most ${MOST.sites} places in all` : allowed(name);
  return `${range}; ${empty[name]}`;
}

/** What the search works with, in one line: `entry temporal, superior or steep; 2.4 mm; up to two arcs; no lens`. */
export function offeredText({ sites, widths, arcs, lenses }: PlanLimits, plan: CompletePlan): string {
  const places = (sites ?? DEFAULT_SITES).map((place) => (typeof place === 'number' ? siteText(place) : place));
  const cylinders = lenses?.filter((cylinder) => cylinder > 0);
  return [
    `entry ${either(places)}`,
    either((widths ?? [plan.incisionWidth]).map((width) => millimetres(width))),
    ['no arcs', 'one arc', 'up to two arcs'][arcs ?? 2]!,
    cylinders?.length === 0 ? 'no lens' : `toric lens ${cylinders ? either(cylinders.map((cylinder) => dioptres(cylinder))) : '1 to 4\u00a0D'}`,
  ].join('; ');
}

function either(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
