import { DEFAULT_SITES, LIMITS, RefusedValue } from '../../core/numbers.js';
import type { EntrySite, PlanLimits } from '../../core/numbers.js';
import { DECIMAL } from '../internal/decimal.js';

/** What a surgeon can say of the plans that may be offered, as the properties of the element hold it. */
export interface GivenLimits {
  widths: string;
  lenses: string;
  sites: string;
  mostArcs: number | null;
  noArcs: boolean;
  noLens: boolean;
}

/** Limits that are written as a text. */
export type TextLimit = 'widths' | 'lenses' | 'sites';

/** Attributes that can be refused. */
export type LimitName = TextLimit | 'most-arcs';

/** How many a list may hold: the search grows with the product of them. */
export const MOST: Record<TextLimit, number> = { widths: 4, sites: 6, lenses: 12 };

/** Places with a name. */
export const SITE_NAMES = DEFAULT_SITES;

/** What a form writes when no place at all is ticked: it is refused, since nothing at all stands for the default. */
export const NOWHERE = 'nowhere';

/** What may stand behind a number of a list. */
const UNIT: Record<TextLimit, RegExp> = { widths: /mm$/i, sites: /°$/, lenses: /(?:d|dpt)$/i };

/** What was read: values that hold for the search, and what was refused of the newest settings. */
export interface TakenLimits {
  /** The last good value of each; missing = the default. */
  good: Omit<PlanLimits, 'arcs'> & { arcs?: 0 | 1 | 2 };
  refusals: readonly RefusedValue[];
}

export const NO_LIMITS: TakenLimits = { good: {}, refusals: [] };

/** Reads the settings; for each that cannot be taken its last good value stands. */
export function takeLimits(given: GivenLimits, { good: before }: TakenLimits): TakenLimits {
  const good = { ...before };
  const refusals: RefusedValue[] = [];
  const take = <Name extends keyof typeof good>(name: Name, read: () => (typeof good)[Name]): void => {
    try {
      good[name] = read();
    } catch (error) {
      if (!(error instanceof RefusedValue)) throw error;
      refusals.push(error);
    }
  };
  take('sites', () => readSites(given.sites));
  take('widths', () => readNumbers('widths', given.widths));
  // What is not offered at all need not be right.
  if (!given.noArcs) take('arcs', () => readMost(given.mostArcs));
  if (!given.noLens) take('lenses', () => readNumbers('lenses', given.lenses));
  return { good, refusals };
}

/** The limits for the search. */
export function planLimits({ noArcs, noLens }: GivenLimits, { good }: TakenLimits): PlanLimits {
  return { ...good, arcs: noArcs ? 0 : good.arcs, lenses: noLens ? [] : good.lenses };
}

/** What a list may hold, in words: `1.8 to 3.5 mm, at most 4, separated by spaces`. */
export function allowed(name: TextLimit): string {
  const { min, max, unit } = rangeOf(name);
  const named = name === 'sites' ? `${SITE_NAMES.join(', ')}, or ` : '';
  return `${named}${min} to ${max}${unit === '°' ? '' : '\u00a0'}${unit}, at most ${MOST[name]}, separated by spaces`;
}

/** The parts of a list: names of places, and the rest. */
export function splitSites(text: string): { names: string[]; others: string } {
  const parts = partsOf('sites', text);
  const isName = (part: string): boolean => (SITE_NAMES as readonly string[]).includes(part.toLowerCase());
  const others = parts.filter((part) => !isName(part) && part !== NOWHERE);
  return { names: parts.filter(isName).map((part) => part.toLowerCase()), others: others.join(' ') };
}

function readSites(text: string): EntrySite[] | undefined {
  const { names, others } = splitSites(text);
  const sites = [...names, ...(readNumbers('sites', others) ?? [])] as EntrySite[];
  if (sites.length === 0 && partsOf('sites', text).length > 0) throw new RefusedValue('sites', text, allowed('sites'));
  return checkedCount('sites', text, sites);
}

function readNumbers(name: TextLimit, text: string): number[] | undefined {
  const { min, max } = rangeOf(name);
  const numbers = partsOf(name, text).map((part) => {
    const bare = part.replace(UNIT[name], '').replace(',', '.');
    const value = DECIMAL.test(bare) ? Number(bare) : Number.NaN;
    if (value >= min && value <= max) return value;
    throw new RefusedValue(name, part, allowed(name));
  });
  return checkedCount(name, text, numbers);
}

/** Each value once; none at all leaves the default. */
function checkedCount<Value>(name: TextLimit, text: string, values: Value[]): Value[] | undefined {
  const unique = [...new Set(values)];
  if (unique.length > MOST[name]) throw new RefusedValue(name, text, allowed(name));
  return unique.length > 0 ? unique : undefined;
}

function readMost(value: unknown): 0 | 1 | 2 | undefined {
  if (value === null || value === undefined) return undefined;
  if (value === 0 || value === 1 || value === 2) return value;
  throw new RefusedValue('most-arcs', value, '0, 1 or 2');
}

/** A comma ends a value where a space follows it, and everywhere between places; else it is a decimal comma. */
function partsOf(name: TextLimit, text: unknown): string[] {
  const separator = name === 'sites' ? /[\s;,]+/ : /,?(?:\s|;)+|,$/;
  const parts = String(text ?? '').normalize('NFKC').split(separator);
  return parts.filter((part) => part !== '' && part.replace(UNIT[name], '') !== '');
}

function rangeOf(name: TextLimit): { min: number; max: number; unit: string } {
  return { widths: LIMITS.incisionWidth, sites: LIMITS.incisionSite, lenses: LIMITS.lensCylinder }[name];
}
