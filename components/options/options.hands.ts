import type { SuggestedPlan, Surgery } from '../../core/options.js';
import type { CaseModel } from '../internal/case-model.js';
import { movesOf } from '../internal/case-moves.js';
import type { Language } from '../internal/language/language.js';
import { handsWords } from './options.hands.words.js';
import { ranked } from './options.order.js';
import type { Order, Ranked, SortKey } from './options.order.js';
import { patchOf } from './options.plan.js';
import { planText } from './options.speech.js';
import { optionsWords } from './options.words.js';

type HandsId = keyof typeof handsWords.en;

const COMPARE: Record<SortKey, (a: Ranked, b: Ranked) => number> = {
  chance: (a, b) => a.rank - b.rank,
  // As printed: what looks equal counts as equal.
  remaining: (a, b) => hundredths(a) - hundredths(b),
  surgery: (a, b) => amount(a.option.surgery, b.option.surgery),
};

/** The list in an order. Equals keep their rank, in both directions. */
export function ordered(options: readonly SuggestedPlan[], { key, reversed }: Order): Ranked[] {
  const sign = reversed ? -1 : 1;
  return ranked(options).sort((a, b) => sign * COMPARE[key](a, b) || a.rank - b.rank);
}

/** The order after a press on a heading: another key starts with its best, the same one turns round. */
export function pressed({ key, reversed }: Order, heading: SortKey): Order {
  return { key: heading, reversed: heading === key && !reversed };
}

const ORDER: Record<SortKey, readonly [HandsId | 'byChance', HandsId]> = {
  chance: ['byChance', 'byChanceReversed'],
  remaining: ['byRemaining', 'byRemainingReversed'],
  surgery: ['bySurgery', 'bySurgeryReversed'],
};

/** `by chance, highest first`. */
export function orderText({ key, reversed }: Order, language: Language): string {
  const id = ORDER[key][reversed ? 1 : 0];
  return id === 'byChance' ? language.say(optionsWords)(id) : language.say(handsWords)(id);
}

/** What a screen reader hears of another order. */
export function sortedText(order: Order, language: Language): string {
  return language.say(handsWords)('sorted', { order: orderText(order, language) });
}

/** What a screen reader hears of another list. */
export function countedText(count: number, language: Language): string {
  const say = language.say(handsWords);
  return count === 1 ? say('countedOne') : say('counted', { count });
}

/** Puts a plan into the case, as one step that can be taken back, and says so. What it does to the eye, other elements may say. */
export function choosePlan({ rank, option: { plan } }: Ranked, model: CaseModel, from: Element, language: Language): string {
  movesOf(model).choose(patchOf(plan), 'astig-options choose', from);
  return language.say(handsWords)('chosen', { rank, plan: planText(plan, language) });
}

function hundredths({ option }: Ranked): number {
  return Math.round(100 * option.outcome.after.magnitude);
}

/** The order that the source of the figure states: fewer arcs, then no lens, then shorter arcs, then the narrower entry. */
function amount(a: Surgery, b: Surgery): number {
  return a.arcs - b.arcs || Number(a.lens > 0) - Number(b.lens > 0) || a.arcDegrees - b.arcDegrees || a.width - b.width;
}
