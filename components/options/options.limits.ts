import { LIMITS } from '../../core/numbers.js';
import type { Limits } from '../../core/numbers.js';
import { DEFAULT_SITES } from '../../core/options.js';
import type { EntrySite, PlanLimits } from '../../core/options.js';
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

/** A limit that is a list: its numbers, how many there may be, since the search grows with the product, and what may stand behind one. */
export const LISTS: Record<TextLimit, { range: Limits; most: number; unit: RegExp }> = {
  widths: { range: LIMITS.incisionWidth, most: 4, unit: /mm$/i },
  sites: { range: LIMITS.incisionSite, most: 6, unit: /°$/ },
  lenses: { range: LIMITS.lensCylinder, most: 12, unit: /(?:d|dpt)$/i },
};

/** What a form writes when no place at all is ticked: it is refused, since nothing at all stands for the default. */
export const NOWHERE = 'nowhere';

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

/** The places with a name, and the others as a text. */
export function splitSites(text: string): { names: string[]; others: string } {
  const parts = partsOf('sites', text);
  const isName = (part: string): boolean => (DEFAULT_SITES as readonly string[]).includes(part.toLowerCase());
  const others = parts.filter((part) => !isName(part) && part !== NOWHERE);
  return { names: parts.filter(isName).map((part) => part.toLowerCase()), others: others.join(' ') };
}

function readSites(text: string): EntrySite[] | undefined | Unfit {
  const { names, others } = splitSites(text);
  const numbers = readNumbers('sites', others) ?? [];
  if (numbers instanceof Unfit) return numbers;
  const sites = [...names, ...numbers] as EntrySite[];
  return sites.length === 0 && partsOf('sites', text).length > 0 ? new Unfit(text) : checkedCount('sites', text, sites);
}

function readNumbers(name: TextLimit, text: string): number[] | undefined | Unfit {
  const { range, unit } = LISTS[name];
  const numbers: number[] = [];
  for (const part of partsOf(name, text)) {
    const bare = part.replace(unit, '').replace(',', '.');
    const value = DECIMAL.test(bare) ? Number(bare) : Number.NaN;
    if (!(value >= range.min && value <= range.max)) return new Unfit(part);
    numbers.push(value);
  }
  return checkedCount(name, text, numbers);
}

/** Each value once; none at all leaves the default. */
function checkedCount<Value>(name: TextLimit, text: string, values: Value[]): Value[] | undefined | Unfit {
  const unique = [...new Set(values)];
  if (unique.length > LISTS[name].most) return new Unfit(text);
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
  return parts.filter((part) => part !== '' && part.replace(LISTS[name].unit, '') !== '');
}
