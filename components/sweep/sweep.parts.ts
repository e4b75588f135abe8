import { chanceWithin, evaluatePlan, site, temporalSite, turn } from '../../core/numbers.js';
import type { CompletePlan, PlanOutcome, Spread } from '../../core/numbers.js';

/** What is expected to remain with the incision at one site: degrees on the limbus, dioptres. */
export interface Sample {
  site: number;
  remaining: number;
}

/** Between which dioptres half of all eyes like this end with the incision at one site. */
export interface Range {
  site: number;
  low: number;
  high: number;
}

/** One plan with its incision moved all round the limbus. Curve and band run from 0 to 360°, where they meet their start. */
export interface Sweep {
  curve: readonly Sample[];
  /** Empty when it was not asked for. */
  band: readonly Range[];
  /** The site with the least expected remainder; two when another does as well; none when it is the same everywhere. */
  best: readonly Sample[];
  temporal: Sample;
  superior: Sample;
}

/** Distance of the sites at which the curve is calculated, degrees. A kink of the model, every 45°, is always among them. */
const STEP = 2.5;

/** Shares of eyes that end below the band and below its upper edge. */
const QUARTILES = [0.25, 0.75] as const;

/** Smaller differences, in dioptres, do not make a site better than another. */
const SAME = 0.005;

/** Two sites that are nearer, in degrees, are one place and not a choice. */
const ONE_PLACE = 30;

const SUPERIOR = 90;

/** All that the drawing shows of a plan but its present incision, which does not enter. About a millisecond. */
export function sweepOf(plan: CompletePlan, withBand = true): Sweep {
  const at = (degrees: number): PlanOutcome => evaluatePlan({ ...plan, incisionSite: degrees });
  const remainingAt = (degrees: number): Sample => ({ site: degrees, remaining: at(degrees).after.magnitude });
  const outcomes = Array.from({ length: 360 / STEP }, (_, index) => at(index * STEP));
  const coarse = outcomes.map(({ after }, index) => ({ site: index * STEP, remaining: after.magnitude }));
  const best = bestOf(coarse, remainingAt);
  return {
    curve: closed([...coarse, ...best.filter((sample) => sample.site % STEP !== 0)].sort((a, b) => a.site - b.site)),
    band: withBand ? closed(bandOf(outcomes)) : [],
    best,
    temporal: remainingAt(temporalSite(plan.eye)),
    superior: remainingAt(SUPERIOR),
  };
}

/** What `sweepOf` depends on, as text: everything in the plan but the site of the incision. */
export function sweepDependsOn(plan: CompletePlan, withBand: boolean): string {
  return JSON.stringify([{ ...plan, incisionSite: null }, withBand]);
}

function closed<Place extends { site: number }>(places: Place[]): Place[] {
  return [...places, { ...places[0]!, site: 360 }];
}

/** The best whole degrees: around each dip of the coarse curve every degree is tried. */
function bestOf(coarse: readonly Sample[], remainingAt: (degrees: number) => Sample): Sample[] {
  const values = coarse.map(({ remaining }) => remaining);
  if (Math.max(...values) - Math.min(...values) < SAME) return [];
  const dips = coarse.filter(({ remaining }, index) => remaining <= values.at(index - 1)! && remaining < values[(index + 1) % values.length]!);
  const tried = dips.flatMap((dip) => wholeDegreesAround(dip.site).map(remainingAt));
  // Sites that do equally well differ by rounding alone; the first of them is taken.
  const first = tried.reduce((best, one) => (one.remaining < best.remaining - 1e-9 ? one : best));
  const others = tried.filter((one) => Math.abs(turn(one.site, first.site)) > ONE_PLACE && one.remaining - first.remaining < SAME);
  if (others.length === 0) return [first];
  return [first, others.reduce((best, one) => (one.remaining < best.remaining - 1e-9 ? one : best))];
}

function wholeDegreesAround(centre: number): number[] {
  const from = Math.ceil(centre - STEP);
  return Array.from({ length: Math.floor(centre + STEP) - from + 1 }, (_, index) => site(from + index));
}

/** Quartiles of the size of what remains. Each site starts the search where its neighbour's has ended. */
function bandOf(outcomes: readonly PlanOutcome[]): Range[] {
  const { mean } = outcomes[0]!.spread;
  let low: Quantile = { value: Math.hypot(mean.x, mean.y) + SAME, density: 1 };
  let high = low;
  return outcomes.map(({ spread }, index) => {
    low = quantile(spread, QUARTILES[0], low);
    high = quantile(spread, QUARTILES[1], high);
    return { site: index * STEP, low: low.value, high: high.value };
  });
}

/** A magnitude, D, and how fast the share of eyes grows there, per D. */
export interface Quantile {
  value: number;
  density: number;
}

/** The search ends when the share is this close, and at the latest after so many steps. */
const CLOSE = 1e-4;
const MOST_STEPS = 60;

/**
 * The magnitude, D, that the share `p` of a spread does not exceed. Secant steps from a start above 0, kept inside what
 * is known to hold the answer; where a step would leave that, it is halved instead.
 */
export function quantile(spread: Spread, p: number, start: Quantile): Quantile {
  let { value, density } = start;
  let [low, high] = [0, Infinity];
  let last: { value: number; miss: number } | null = null;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const miss = chanceWithin(spread, value) - p;
    if (Math.abs(miss) < CLOSE) break;
    if (miss < 0) low = value;
    else high = value;
    if (last) density = (miss - last.miss) / (value - last.value);
    last = { value, miss };
    const next = value - miss / density;
    const middle = high === Infinity ? 2 * low : (low + high) / 2;
    value = next > low && next < high ? next : middle;
  }
  return { value, density };
}

/** The band at any site, linear between its own. */
export function bandAt(band: readonly Range[], degrees: number): Range | null {
  if (band.length === 0) return null;
  const position = site(degrees) / STEP;
  const [from, to] = [band[Math.floor(position)]!, band[Math.floor(position) + 1]!];
  const share = position % 1;
  return { site: degrees, low: from.low + share * (to.low - from.low), high: from.high + share * (to.high - from.high) };
}
