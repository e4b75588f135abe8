import { filled } from './fill.js';
import type { PlanReason, SuggestedPlan, Surgery, Surplus } from './options-types.js';

type Option = Omit<SuggestedPlan, 'reason' | 'why'>;

/** Why a plan is listed, in English. Catalogues of other languages have the same names. */
export const REASON_TEXT = {
  best: 'the best chance',
  bestAndLeast: 'the best chance, with the least surgery',
  least: 'the least surgery',
  another: 'another way',
  gains: '{$more} gains {$eyes} in 100',
  bestGains: 'the best chance; {$more} gains {$eyes} in 100',
  both: '{$first} and {$second}',
  byOneArc: 'one arc',
  byPair: 'a pair of arcs',
  byArcMore: 'one arc more',
  byLongerArc: 'a longer arc',
  byLens: 'a toric lens',
  byWiderEntry: 'a wider entry',
} as const satisfies Record<string, string>;

export type ReasonWording = keyof typeof REASON_TEXT;

/** What a plan gains over the nearest listed plan with less surgery. */
export function reasonFor(option: Option, all: readonly Option[]): PlanReason {
  const others = all.filter((other) => other !== option);
  const less = others.filter((other) => lessThan(other, option));
  const simpler = less.filter((other) => other.ofHundred < option.ofHundred).sort((a, b) => b.ofHundred - a.ofHundred)[0];
  const reason = { best: all[0] === option, least: others.every((other) => lessThan(option, other)) };
  return simpler ? { ...reason, gain: { by: surplus(simpler.surgery, option.surgery), eyes: option.ofHundred - simpler.ofHundred } } : reason;
}

/** A reason in words, in the language of `say`: "one arc more gains 4 in 100". */
export function reasonText({ best, least, gain }: PlanReason, say: (id: ReasonWording, values?: Record<string, string | number>) => string): string {
  if (!gain) return say(best ? (least ? 'bestAndLeast' : 'best') : least ? 'least' : 'another');
  const more = gain.by.map((part) => say(part)).reduce((first, second) => say('both', { first, second }));
  return say(best ? 'bestGains' : 'gains', { more, eyes: gain.eyes });
}

/** The same in English. */
export function englishReason(reason: PlanReason): string {
  return reasonText(reason, (id, values = {}) => filled(REASON_TEXT[id], values, String));
}

/** No more arcs, no longer ones together, no lens where there was none, no wider entry. */
export function noMore(a: Surgery, b: Surgery): boolean {
  return a.arcs <= b.arcs && a.arcDegrees <= b.arcDegrees && !(a.lens > 0 && b.lens === 0) && a.width <= b.width;
}

/** Whether the first plan does no more of anything and less of something. */
function lessThan(a: Option, b: Option): boolean {
  return noMore(a.surgery, b.surgery) && !noMore(b.surgery, a.surgery);
}

/** What the second does more than the first. */
function surplus(a: Surgery, b: Surgery): Surplus[] {
  const parts: Surplus[] = [];
  if (b.arcs > a.arcs) parts.push(a.arcs > 0 ? 'byArcMore' : b.arcs === 1 ? 'byOneArc' : 'byPair');
  else if (b.arcDegrees > a.arcDegrees) parts.push('byLongerArc');
  if (b.lens > 0 && a.lens === 0) parts.push('byLens');
  if (b.width > a.width) parts.push('byWiderEntry');
  return parts;
}
