import { DEFAULT_SITES, LIMITS } from '../../core/numbers.js';
import type { EntrySite, Limits, PlanLimits } from '../../core/numbers.js';
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
const SITE_NAMES = DEFAULT_SITES;

/** What a form writes when no place at all is ticked: it is refused, since nothing at all stands for the default. */
const NOWHERE = 'nowhere';

/** What may stand behind a number of a list. */
const UNIT: Record<TextLimit, RegExp> = { widths: /mm$/i, sites: /°$/, lenses: /(?:d|dpt)$/i };

/** A setting that cannot be taken, and the text of it that is wrong. */
export interface LimitRefusal {
  field: LimitName;
  value: unknown;
}

/** What was read: values that hold for the search, and what was refused of the newest settings. */
export interface TakenLimits {
  /** The last good value of each; missing = the default. */
  good: Omit<PlanLimits, 'arcs'> & { arcs?: 0 | 1 | 2 };
  refusals: readonly LimitRefusal[];
}

export const NO_LIMITS: TakenLimits = { good: {}, refusals: [] };

/** Reads the settings; for each that cannot be taken its last good value stands. */
export function takeLimits(given: GivenLimits, { good: before }: TakenLimits): TakenLimits {
  const good = { ...before };
  const refusals: LimitRefusal[] = [];
  const take = <Name extends keyof typeof good>(name: Name, field: LimitName, read: (typeof good)[Name] | Unfit): void => {
    if (read instanceof Unfit) refusals.push({ field, value: read.value });
    else good[name] = read;
  };
  take('sites', 'sites', readSites(given.sites));
  take('widths', 'widths', readNumbers('widths', given.widths));
  // What is not offered at all need not be right.
  if (!given.noArcs) take('arcs', 'most-arcs', readMost(given.mostArcs));
  if (!given.noLens) take('lenses', 'lenses', readNumbers('lenses', given.lenses));
  return { good, refusals };
}

/** In place of a value: what cannot be one. */
class Unfit {
  constructor(readonly value: unknown) {}
}

/** The limits for the search. */
export function planLimits({ noArcs, noLens }: GivenLimits, { good }: TakenLimits): PlanLimits {
  return { ...good, arcs: noArcs ? 0 : good.arcs, lenses: noLens ? [] : good.lenses };
}

/** The parts of a list: names of places, and the rest. */
function splitSites(text: string): { names: string[]; others: string } {
  const parts = partsOf('sites', text);
  const isName = (part: string): boolean => (SITE_NAMES as readonly string[]).includes(part.toLowerCase());
  const others = parts.filter((part) => !isName(part) && part !== NOWHERE);
  return { names: parts.filter(isName).map((part) => part.toLowerCase()), others: others.join(' ') };
}

/** The places that are ticked, without a word all of them, and the others. */
export function tickedSites(text: string): { names: readonly string[]; others: string } {
  const { names, others } = splitSites(text);
  return { names: partsOf('sites', text).length === 0 ? SITE_NAMES : names, others };
}

/** The places as a text: nothing for the default, and what will be refused when there is none. */
export function sitesText(names: readonly string[], others: string): string {
  const text = [...names, others.trim()].filter(Boolean).join(' ');
  return text === SITE_NAMES.join(' ') ? '' : text || NOWHERE;
}

function readSites(text: string): EntrySite[] | undefined | Unfit {
  const { names, others } = splitSites(text);
  const numbers = readNumbers('sites', others) ?? [];
  if (numbers instanceof Unfit) return numbers;
  const sites = [...names, ...numbers] as EntrySite[];
  return sites.length === 0 && partsOf('sites', text).length > 0 ? new Unfit(text) : checkedCount('sites', text, sites);
}

function readNumbers(name: TextLimit, text: string): number[] | undefined | Unfit {
  const { min, max } = rangeOf(name);
  const numbers: number[] = [];
  for (const part of partsOf(name, text)) {
    const bare = part.replace(UNIT[name], '').replace(',', '.');
    const value = DECIMAL.test(bare) ? Number(bare) : Number.NaN;
    if (!(value >= min && value <= max)) return new Unfit(part);
    numbers.push(value);
  }
  return checkedCount(name, text, numbers);
}

/** Each value once; none at all leaves the default. */
function checkedCount<Value>(name: TextLimit, text: string, values: Value[]): Value[] | undefined | Unfit {
  const unique = [...new Set(values)];
  if (unique.length > MOST[name]) return new Unfit(text);
  return unique.length > 0 ? unique : undefined;
}

function readMost(value: unknown): 0 | 1 | 2 | undefined | Unfit {
  if (value === null || value === undefined) return undefined;
  return value === 0 || value === 1 || value === 2 ? value : new Unfit(value);
}

/** A comma ends a value where a space follows it, and everywhere between places; else it is a decimal comma. */
function partsOf(name: TextLimit, text: unknown): string[] {
  const separator = name === 'sites' ? /[\s;,]+/ : /,?(?:\s|;)+|,$/;
  const parts = String(text ?? '').normalize('NFKC').split(separator);
  return parts.filter((part) => part !== '' && part.replace(UNIT[name], '') !== '');
}

export function rangeOf(name: TextLimit): Limits {
  return { widths: LIMITS.incisionWidth, sites: LIMITS.incisionSite, lenses: LIMITS.lensCylinder }[name];
}
