import { ruleOf, siteName } from './angle.js';
import { arcFlattening, arcSpread } from './arcs.js';
import { add, flattening, flatteningAndTorque, fromVector, subtract, toVector } from './astigmatism.js';
import { dioptres, exceeds, whole } from './caution.js';
import { incisionFlattening } from './incision.js';
import { OWN_LIMITS } from './limits.js';
import { MODEL } from './model.js';
import { OUTCOME_CONSTANTS } from './outcomes-constants.js';
import { spatialMedian } from './outcomes-robust.js';
import { said } from './outcomes-text.js';
import type { OutcomeRecord, OwnEvidence, Said } from './outcomes-types.js';
import type { OwnFigures, Quantity, Vector } from './types.js';

/** Own figures as a plan takes them, and how they came about. A part that is not advised is null. */
export interface OwnAdvice extends OwnFigures {
  incision: { flattening: number; torque: number; sd: number; eyes: number } | null;
  arcs: { share: number; sdAlong: number; sdAcross: number; eyes: number } | null;
  evidence: { incision: OwnEvidence; arcs: OwnEvidence };
}

type Operated<Part extends 'incision' | 'arcs'> = OutcomeRecord & { [Known in Part]: NonNullable<OutcomeRecord[Known]> };

/**
 * What to put into the next plan (`ownFigures` of a case), from the surgeon's own eyes. The incision is judged by eyes
 * without arcs; arcs by what remains of the change when that of the incision is taken away.
 *
 * Means are shrunk towards the model: the true mean of a surgeon is taken to be normal about the model with a standard
 * deviation τ (`OUTCOME_CONSTANTS`), the mean of n eyes normal about it with σ²/n, so that it counts τ²/(τ² + σ²/n).
 * Variances are averaged with that of the model, which counts as so many degrees of freedom. The scatter includes the
 * error of the readings, as that of the model does. Nothing is advised under a stated number of eyes.
 */
export function ownFigures(records: readonly OutcomeRecord[]): OwnAdvice {
  const incision = ownIncision(records.filter((record): record is Operated<'incision'> => record.incision !== null && record.arcs === null));
  const arcs = ownArcs(records.filter((record): record is Operated<'arcs'> => record.arcs !== null), incision.figures);
  return { incision: incision.figures, arcs: arcs.figures, evidence: { incision: incision.evidence, arcs: arcs.evidence } };
}

interface Own<Figures> {
  figures: Figures | null;
  evidence: OwnEvidence;
}

function ownIncision(eyes: readonly Operated<'incision'>[]): Own<NonNullable<OwnAdvice['incision']>> {
  const n = eyes.length;
  const changes = eyes.map(({ before, after, incision }) => flatteningAndTorque(fromVector(inducedIn(before, after)), incision.site));
  const models = eyes.map(({ eye, incision }) => incisionFlattening({ ...incision, eye }));
  const observed = mean(changes.map((change) => change.flattening));
  const torque = mean(changes.map((change) => change.torque));
  const model = mean(models.map((one) => one.flattening));
  if (n < OUTCOME_CONSTANTS.leastEyes.value) return tooFew(n, observed, model);
  const squares = sum(changes.map((change) => (change.flattening - observed) ** 2 + (change.torque - torque) ** 2));
  const variance = pooled(squares / (2 * (n - 1)), 2 * (n - 1), mean(models.map(({ sd }) => sd * sd)));
  const { weight, error } = shrinkage(OUTCOME_CONSTANTS.surgeonSd.value, variance / n);
  const flattened = model + weight * (observed - model);
  const figures = { flattening: flattened, torque: weight * torque, sd: Math.sqrt(variance), eyes: n };
  const notes = [...mixed(eyes), ...farEyes(changes)];
  return advised(figures, { flattening: flattened, torque: figures.torque, sd: figures.sd }, dioptres, { eyes: n, observed, model, weight, error, notes });
}

function ownArcs(eyes: readonly Operated<'arcs'>[], own: OwnAdvice['incision']): Own<NonNullable<OwnAdvice['arcs']>> {
  const n = eyes.length;
  const parts = eyes.map((record) => {
    const { before, after, arcs, age } = record;
    const entry = entryOf(record, own);
    const model = arcFlattening({ ...arcs, age, rule: ruleOf(before) });
    const change = flatteningAndTorque(fromVector(subtract(inducedIn(before, after), entry.vector)), arcs.site);
    return { along: change.flattening, across: change.torque, noise: entry.variance, count: arcs.count, ...model };
  });
  const power = sum(parts.map(({ intended }) => intended ** 2));
  // Both by least squares through 0, as the plan uses a share: ratios of single eyes would let the shortest arcs decide.
  const observed = sum(parts.map(({ along, intended }) => along * intended)) / power;
  const model = sum(parts.map(({ expected, intended }) => expected * intended)) / power;
  if (n < OUTCOME_CONSTANTS.leastEyes.value) return tooFew(n, observed, model);
  const noise = mean(parts.map((part) => part.noise));
  const spreads = parts.map(({ count, intended }) => arcSpread(model * intended, count));
  // The plan adds the scatter of the incision again, so it is taken out here.
  const along = pooled(sum(parts.map((part) => (part.along - observed * part.intended) ** 2)) / (n - 1) - noise, n - 1, mean(spreads.map(({ sdAlong }) => sdAlong ** 2)));
  const across = pooled(mean(parts.map((part) => part.across ** 2)) - noise, n, mean(spreads.map(({ sdAcross }) => sdAcross ** 2)));
  const { weight, error } = shrinkage(OUTCOME_CONSTANTS.shareSd.value, (along + noise) / power);
  const share = model + weight * (observed - model);
  const figures = { share, sdAlong: Math.sqrt(along), sdAcross: Math.sqrt(across), eyes: n };
  const notes = new Set(eyes.map(({ arcs }) => arcs.method)).size > 1 ? [said('mixedMethods')] : [];
  return advised(figures, { share, sd: Math.max(figures.sdAlong, figures.sdAcross) }, percent, { eyes: n, observed, model, weight, error, notes });
}

/** What the incision of an eye with arcs is expected to have done, and its variance per component. */
function entryOf({ eye, incision }: OutcomeRecord, own: OwnAdvice['incision']): { vector: Vector; variance: number } {
  if (!incision) return { vector: { x: 0, y: 0 }, variance: 2 * MODEL.uncertainty.keratometry ** 2 };
  const figures = own ?? { ...incisionFlattening({ ...incision, eye }), torque: 0 };
  const vector = add(flattening(figures.flattening, incision.site), flattening(figures.torque, incision.site + 135));
  return { vector, variance: figures.sd ** 2 };
}

function inducedIn(before: OutcomeRecord['before'], after: OutcomeRecord['after']): Vector {
  return subtract(toVector(after), toVector(before));
}

/** Variance of the own eyes averaged with that of the model. An estimate below 0, by what was taken out of it, counts as 0. */
function pooled(own: number, freedom: number, model: number): number {
  const weight = OUTCOME_CONSTANTS.scatterWeight.value;
  return (freedom * Math.max(0, own) + weight * model) / (freedom + weight);
}

/** How much a mean with the variance `sampling` counts against a prior of the standard deviation `prior`; the error of what results. */
function shrinkage(prior: number, sampling: number): { weight: number; error: number } {
  const weight = prior ** 2 / (prior ** 2 + sampling);
  return { weight, error: Math.sqrt(weight * sampling) };
}

function tooFew(eyes: number, observed: number, model: number): Own<never> {
  const reason = said('tooFew', { eyes: whole(eyes, ''), least: whole(OUTCOME_CONSTANTS.leastEyes.value, '') });
  const known = eyes > 0;
  return { figures: null, evidence: { eyes, observed: known ? observed : null, model: known ? model : null, weight: null, error: null, reason, notes: [] } };
}

/** The figures with the reason for them, unless one is outside of what a plan accepts. The first of `checked` is what is shrunk. */
function advised<Figures>(
  figures: Figures,
  checked: Partial<Record<keyof typeof OWN_LIMITS, number>>,
  print: (value: number) => Quantity,
  evidence: Omit<OwnEvidence, 'reason'> & { observed: number; model: number; weight: number },
): Own<Figures> {
  const eyes = whole(evidence.eyes, '');
  for (const [name, value] of Object.entries(checked)) {
    const { min, max, unit } = OWN_LIMITS[name as keyof typeof OWN_LIMITS];
    const shown = unit === 'D' ? dioptres : print;
    if (value < min || value > max) return { figures: null, evidence: { ...evidence, reason: said('beyond', { eyes, figure: shown(value), min: shown(min), max: shown(max) }) } };
  }
  const figure = print(Object.values(checked)[0]!);
  const reason = said('advised', { eyes, observed: print(evidence.observed), model: print(evidence.model), weight: percent(evidence.weight), figure });
  return { figures, evidence: { ...evidence, reason } };
}

/** A figure is for one kind of incision, and a plan would use it for every other. */
function mixed(eyes: readonly Operated<'incision'>[]): Said[] {
  const notes: Said[] = [];
  const places = new Set(eyes.map(({ eye, incision }) => siteName(incision.site, eye)));
  if (places.size > 1) notes.push(said('mixedSites', { sites: [...places].join(', ') }));
  const widths = eyes.map(({ incision }) => incision.width);
  const [from, to] = widths.reduce<[number, number]>(([least, most], width) => [Math.min(least, width), Math.max(most, width)], [Infinity, -Infinity]);
  if (exceeds(to - from, OUTCOME_CONSTANTS.sameWidth.value)) notes.push(said('mixedWidths', { from: millimetres(from), to: millimetres(to) }));
  return notes;
}

/** A difference below it would be told as 0.00 D. */
const LEAST_TOLD = 0.005;

/**
 * Says when a few eyes pull the mean away from where most are. In a normal series the mean and the spatial median differ by
 * (4/π − 1)·σ²/n per component (π/4 is the efficiency of the median); more than that explains in 99 of 100 series is told.
 * σ is that of most eyes: half of them lie within 1.177 σ of the centre.
 */
function farEyes(changes: readonly { flattening: number; torque: number }[]): Said[] {
  const xs = Float64Array.from(changes, (change) => change.flattening);
  const ys = Float64Array.from(changes, (change) => change.torque);
  const centre = { x: mean([...xs]), y: mean([...ys]) };
  const median = spatialMedian(xs, ys, centre);
  const distances = xs.map((x, i) => Math.hypot(x - median.x, ys[i]! - median.y)).sort();
  const sd = distances[distances.length >> 1]! / Math.sqrt(2 * Math.LN2);
  const difference = Math.hypot(centre.x - median.x, centre.y - median.y);
  const chance = Math.sqrt(((4 / Math.PI - 1) / changes.length) * -2 * Math.log(0.01));
  return difference > Math.max(chance * sd, LEAST_TOLD) ? [said('farEyes', { difference: dioptres(difference) })] : [];
}

function millimetres(value: number): Quantity {
  return { value, unit: 'mm', digits: Number.isInteger(10 * value) ? 1 : 2 };
}

function percent(share: number): Quantity {
  return whole(100 * share, '%');
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}
