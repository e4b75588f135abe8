/**
 * From an entry of the published figures to what the core says about it. One function a kind of entry; the kind is
 * the beginning of its id. Only exported functions of the core are used, so that the route is the one of a reader.
 */
import {
  KERATOMETRIC_CONSTANT, LIMITS, atVertex, chanceWithin, change, combine, dioptresFromRadius, ellipse, evaluatePlan,
  flatteningAndTorque, fromReadings, lensPlaneRatio, meridian, misplacedLens, radiusFromDioptres, siteFromClock, sum,
  toPowerVector, transpose, type Astigmatism, type Refraction, type Spread,
} from '../../core/index.js';
import published from '../fixtures/published.json' with { type: 'json' };

export type Value = number | string | boolean | number[];

export interface Entry {
  id: string;
  topic: string;
  // Each kind of entry has inputs of its own; the reader of a kind knows them.
  // eslint-disable-next-line @typescript-eslint/no-explicit-any
  inputs: any;
  expected: Record<string, unknown>;
  tolerance: number | Record<string, number>;
  source: string;
  status: 'read' | 'formula read, number computed' | 'memory or identity';
}

export const entries = published.entries as unknown as Entry[];

/** Directions of a line: 180 and 0 are one. Offsets from a direction are counted the same way. */
export const isDirection = (field: string): boolean => /^(axis|meridian)/.test(field) && !/Range$/.test(field);

/** How far a figure is from the published one of that field. */
export function distance(field: string, got: number, expected: number): number {
  if (!isDirection(field)) return Math.abs(got - expected);
  const turn = Math.abs(got - expected) % 180;
  return Math.min(turn, 180 - turn);
}

type Reader = (inputs: Entry['inputs']) => Record<string, Value>;

const lens = ({ sphere, cyl, axis }: { sphere: number; cyl: number; axis: number }): Refraction => ({ sphere, cylinder: cyl, axis });
const written = ({ sphere, cylinder, axis }: Refraction) => ({ sphere, cyl: cylinder, axis });
const steep = ({ mag, meridian: along }: { mag: number; meridian: number }): Astigmatism => ({ magnitude: mag, meridian: along });
const round = (sd: number, x = 0): Spread => ({ mean: { x, y: 0 }, covariance: [[sd * sd, 0], [0, sd * sd]] });

const READERS: [kind: RegExp, read: Reader][] = [
  [/^pv-convert/, (given) => {
    const { m, j0, j45 } = toPowerVector(lens(given));
    return { M: m, J0: j0, J45: j45, B: Math.hypot(m, j0, j45) };
  }],
  [/^power-matrix/, (given) => {
    const { m, j0, j45 } = toPowerVector(lens(given));
    return { f11: m + j0, f12: j45, f22: m - j0 };
  }],
  [/^cross-bennett/, ({ C1, axis1, C2, axis2 }) => written(transpose(combine(
    { sphere: 0, cylinder: C1, axis: axis1 },
    { sphere: 0, cylinder: C2, axis: axis2 },
  )))],
  [/^cross-/, ({ lenses }) => written(combine(...lenses.map(lens)))],

  [/^sia-/, ({ pre, post }) => {
    const { magnitude, meridian: along } = change(steep(pre), steep(post));
    return { mag: magnitude, meridian: along };
  }],
  [/^jaffe-cosine/, ({ K1, meridian1, K3, meridian3 }) => ({
    K2: change({ magnitude: K1, meridian: meridian1 }, { magnitude: K3, meridian: meridian3 }).magnitude,
  })],
  [/^incision-/, ({ pre, incision }) => {
    const { after } = evaluatePlan({
      flatK: 43,
      steepK: 43 + pre.mag,
      steepMeridian: pre.meridian,
      incisionSite: incision.meridian,
      incisionFlattening: incision.flattening,
    });
    return { mag: after.magnitude, meridian: after.meridian };
  }],
  // A polar value counts steepening of the reference as positive, which is flattening with the other sign.
  [/^naeser-kp/, ({ M, meridian: along, reference }) => {
    const { flattening, torque } = flatteningAndTorque({ magnitude: M, meridian: along }, reference);
    return { AKP: -flattening, AKP45: torque, recoveredM: Math.hypot(flattening, torque) };
  }],

  // The base curve is written in the form whose cylinder has its sign; the base lies along that cylinder's axis + 90.
  [/^transpose-toric/, ({ rx, baseCurve }) => {
    const form = Math.sign(rx.cyl) === Math.sign(baseCurve) ? lens(rx) : transpose(lens(rx));
    return {
      sphereCurve: form.sphere - baseCurve,
      axisBase: meridian(form.axis + 90),
      cross: baseCurve + form.cylinder,
      axisCross: meridian(form.axis),
    };
  }],
  [/^transpose-/, (given) => written(transpose(lens(given)))],
  [/^iso8429-axis/, dial],
  [/^iso10343-keratometric/, () => ({ keratometricConstant: KERATOMETRIC_CONSTANT })],
  [/^ansiz8023/, () => ({
    meridianRange: [LIMITS.steepMeridian.min, LIMITS.steepMeridian.max],
    semiMeridianRange: [LIMITS.incisionSite.min, LIMITS.incisionSite.max],
  })],

  [/^vertex12-toric/, ({ rx, vertexMm }) => written(atVertex(lens(rx), vertexMm))],
  [/^vertex12-/, ({ spectacle, vertexMm }) => ({ cornea: atVertex({ sphere: spectacle, cylinder: 0, axis: 180 }, vertexMm).sphere })],
  [/^toric-ratio/, ({ K, iolDepthMm }) => ({ ratio: lensPlaneRatio({ k: K, depth: iolDepthMm }) })],
  // Too much power along a meridian is corrected by a minus cylinder whose axis lies across it.
  [/^toric-iol-rotation/, ({ Kflat, Ksteep, steepMeridian, iolRotationDeg }) => {
    const cornea = fromReadings({ flat: Kflat, steep: Ksteep, steepMeridian });
    const left = misplacedLens({ cylinder: cornea.magnitude, meridian: cornea.meridian, placed: cornea.meridian + iolRotationDeg });
    return { sphere: left.magnitude / 2, cyl: -left.magnitude, axis: meridian(left.meridian + 90) };
  }],

  [/^k-/, ({ radiusMm }) => ({ K: dioptresFromRadius(radiusMm) })],
  [/^kchart/, ({ K }) => ({ radiusMm: radiusFromDioptres(K) })],
  [/^clock/, ({ clockHour }) => ({ deg: siteFromClock(clockHour) })],

  // The over-refraction is what is wanted minus what the lens gives where it sits; the offset counts against its turn.
  [/^mislocation-iacle/, ({ cyl, axisRx, axisLens }) => {
    const over = combine({ sphere: 0, cylinder: cyl, axis: axisRx }, { sphere: 0, cylinder: -cyl, axis: axisLens });
    return { sphere: over.sphere, cyl: over.cylinder, axisOffset: meridian(axisRx - over.axis) };
  }],
  [/^mislocation-zero/, ({ cyl, rotation }) => ({
    cyl: combine({ sphere: 0, cylinder: cyl, axis: 180 }, { sphere: 0, cylinder: -cyl, axis: 180 + rotation }).cylinder,
  })],
  [/^misalign-pct/, ({ rotationDeg }) => ({ residualPct: 100 * off(1, rotationDeg) })],
  [/^axis-error/, ({ cyls, rotationDeg }) => ({ residual: cyls.map((c: number) => off(c, rotationDeg)) })],
  [/^null-rotation/, ({ ratio }) => ({ rotationDeg: rotationThatLeavesAll(ratio) })],
  [/^optimal-reduced/, ({ rotationDeg }) => {
    const cornea = { magnitude: 1, meridian: 90 };
    const best = -flatteningAndTorque(cornea, 90 + rotationDeg).flattening;
    return { optimalCylFraction: best, residualFraction: sum(cornea, { magnitude: best, meridian: 180 + rotationDeg }).magnitude };
  }],

  [/^chi2/, ({ p, upperTail }) => ({ x: ellipse(round(1), p ?? 1 - upperTail).a ** 2 })],
  [/^marcumQ/, ({ a, b }) => ({ Q1: 1 - chanceWithin(round(1, a), b) })],
  [/^rice/, ({ nu, sigma, r }) => ({ P: chanceWithin(round(sigma, nu), r), mean: meanMagnitude(round(sigma, nu), nu + 9 * sigma) })],
  [/^rayleigh/, ({ sigma }) => ({
    mean: meanMagnitude(round(sigma), 9 * sigma),
    median: ellipse(round(sigma), 0.5).a,
    p95: ellipse(round(sigma), 0.95).a,
  })],
];

/** What the core says, by the field names of the entry; null when no function of the core has anything to say. */
export function compute({ id, inputs }: Entry): Record<string, Value> | null {
  return READERS.find(([kind]) => kind.test(id))?.[1](inputs) ?? null;
}

/** Mean distance from the origin: the integral of the chance to be farther away, by Simpson's rule. */
export function meanMagnitude(spread: Spread, end: number, steps = 2000): number {
  let total = 0;
  for (let i = 0; i <= steps; i += 1) {
    const weight = i === 0 || i === steps ? 1 : i % 2 ? 4 : 2;
    total += weight * (1 - chanceWithin(spread, (end * i) / steps));
  }
  return (total * end) / (3 * steps);
}

function off(cylinder: number, degrees: number): number {
  return misplacedLens({ cylinder, meridian: 90, placed: 90 + degrees }).magnitude;
}

/** Turn at which a lens of `ratio` times the corneal cylinder leaves as much as there was, by halving. */
function rotationThatLeavesAll(ratio: number): number {
  let [low, high] = [0, 45];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    const left = sum({ magnitude: 1, meridian: 90 }, { magnitude: ratio, meridian: 180 + middle }).magnitude;
    if (left < 1) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The dial as the core draws it, in the words of the entry. */
function dial(): Record<string, Value> {
  const [three, twelve, nine, six] = [3, 12, 9, 6].map(siteFromClock) as [number, number, number, number];
  const eyes = (['right', 'left'] as const).map((eye) => evaluatePlan({ eye, steepK: 44, steepMeridian: 30 }).before.meridian);
  return {
    zero: three === 0 && nine === 180 ? "horizontal, observer's right" : 'elsewhere',
    direction: three < twelve && twelve < nine && nine < six ? 'counter-clockwise' : 'clockwise',
    vertical: meridian(six),
    cylRange: [LIMITS.lensMeridian.min, LIMITS.lensMeridian.max],
    sameForBothEyes: eyes[0] === eyes[1],
  };
}
