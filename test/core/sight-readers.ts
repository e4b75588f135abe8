/** From a published entry to what the functions on sight say about it; one reader a kind of entry. */
import {
  GAP_DIRECTIONS, blurEllipse, cutOffFrequency, discTransform, besselJ1, gapSize, landolt, refractionOf, transfer, wavefront, zernikeIndex,
  type TransferOptions,
} from '../../core/sight.js';
import type { Refraction } from '../../core/types.js';
import published from '../fixtures/published.json' with { type: 'json' };
import sight from '../fixtures/sight.json' with { type: 'json' };
import { elsewhere } from './elsewhere.js';
import type { Entry, Value } from './published.js';
import { RADIANS, SHARP } from './sight-support.js';

/** All entries on sight: the fixture of its own, and what the other fixture leaves to it. */
export const entries = [
  ...(sight.entries as unknown as Entry[]),
  ...(published.entries as unknown as Entry[]).filter(({ id }) => elsewhere.get(id)?.includes('sight-published.test.ts')),
];

type Reader = (inputs: Entry['inputs']) => Record<string, Value>;

const NM = 550;
const PUPIL = 3;

const sphere = (dioptres: number): Refraction => ({ sphere: dioptres, cylinder: 0, axis: 180 });
/** The error whose path difference from the centre to the rim of the pupil is `waves`: W = D·r²/2. */
const defocus = (waves: number): number => (2 * waves * NM * 1e-3) / (PUPIL / 2) ** 2;

const wave = (refraction: Refraction) => transfer({ refraction, pupilMm: PUPIL, wavelengthNm: NM, model: 'wave' });
const atShare = (refraction: Refraction, nu: number) => wave(refraction)(nu * cutOffFrequency(PUPIL, NM), 0);

/** Rises or falls through 0 between a and b, by halving. */
function zero(f: (x: number) => number, a: number, b: number): number {
  let [low, high] = [a, b];
  for (let i = 0; i < 100; i += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > 0 === f(low) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Simpson's rule. */
function integral(f: (x: number) => number, a: number, b: number, steps = 400): number {
  let total = 0;
  for (let i = 0; i <= steps; i += 1) total += f(a + ((b - a) * i) / steps) * (i === 0 || i === steps ? 1 : i % 2 ? 4 : 2);
  return (total * (b - a)) / (3 * steps);
}

/** Volume under the transfer as a share of that without an error. */
export function strehl(refraction: Refraction, spokes = 16): number {
  const volume = (given: TransferOptions['refraction']): number => {
    const made = wave(given);
    const end = cutOffFrequency(PUPIL, NM);
    let total = 0;
    for (let spoke = 0; spoke < spokes; spoke += 1) {
      const [c, s] = [Math.cos((Math.PI * spoke) / spokes), Math.sin((Math.PI * spoke) / spokes)];
      total += integral((f) => f * made(f * c, f * s), 0, end);
    }
    return total;
  };
  return volume(refraction) / volume(SHARP);
}

const firstZero = (): number => zero(besselJ1, 3, 5) / Math.PI;
const perRadian = (pupil: number, um: number): number => cutOffFrequency(pupil, um * 1000) / RADIANS;

const READERS: [kind: RegExp, read: Reader][] = [
  [/^zernike-cyl/, ({ c22um, pupilMm }) => ({ cylMagnitude: -refractionOf({ c20: 0, c22: c22um, c2m2: 0 }, pupilMm).cylinder })],
  [/^zernike-refraction/, ({ rx, pupilMm }) => {
    const { c20, c22, c2m2 } = wavefront({ sphere: rx.sphere, cylinder: rx.cyl, axis: rx.axis }, pupilMm);
    return { c2_0: c20, c2_2: c22, c2_m2: c2m2, rms: Math.hypot(c20, c22, c2m2) };
  }],
  [/^zernike-index/, ({ n, m }) => ({ ...zernikeIndex(n, m) })],

  [/^mtf-diffraction/, ({ nu }) => ({ mtf: atShare(SHARP, nu) })],
  [/^mtf-at-rayleigh/, () => ({ mtfPercent: 100 * atShare(SHARP, 1 / 1.22) })],
  [/^cutoff-f2.8/, ({ fNumber, lambdaUm }) => {
    const focal = PUPIL * fNumber;
    const cutoff = perRadian(PUPIL, lambdaUm) / focal;
    return { cutoffLpMm: cutoff, rayleighLpMm: cutoff / firstZero() };
  }],
  // A hundredth of the telescope, for no pupil is so wide.
  [/^cutoff-star/, ({ apertureMm, focalMm, lambdaMm }) => {
    const cycles = 100 * perRadian(apertureMm / 100, lambdaMm * 1000);
    return { cyclesPerMm: cycles / focalMm, cyclesPerRad: cycles, cyclesPerArcsec: (cycles * RADIANS) / 3600 };
  }],
  [/^rayleigh-eye/, ({ pupilMm, lambdaUm }) => ({ deg: firstZero() / cutOffFrequency(pupilMm, lambdaUm * 1000) })],
  [/^airy-zeros/, () => ({ first: firstZero(), second: zero(besselJ1, 6, 8) / Math.PI, third: zero(besselJ1, 9, 11) / Math.PI })],
  [/^airy-encircled/, () => {
    const brightness = (x: number): number => discTransform(x) ** 2;
    const second = Math.max(...Array.from({ length: 3000 }, (_, i) => brightness(4 + i / 1000)));
    return { energyInFirstDark: integral((x) => (brightness(x) * x) / 2, 0, Math.PI * firstZero()), secondMax: second };
  }],
  // Path difference over the pupil: D·r²/2 from the centre of a sphere, J·r² from one meridian of a cylinder to the other.
  [/^pv-rms/, () => ({
    defocus: (PUPIL / 2) ** 2 / 2 / Math.abs(wavefront(sphere(1), PUPIL).c20),
    astigmatism: (PUPIL / 2) ** 2 / Math.abs(wavefront({ sphere: 1, cylinder: -2, axis: 180 }, PUPIL).c22),
  })],

  [/^strehl-defocus/, ({ W20waves }) => ({ strehl: strehl(sphere(defocus(W20waves)), 1) })],
  [/^strehl-marechal/, () => {
    const error = sphere(defocus(0.25));
    const phase = 2 * Math.PI * (wavefront(error, PUPIL).c20 / (NM * 1e-3));
    return { exact: strehl(error, 1), expForm: Math.exp(-(phase ** 2)), marechal: (1 - phase ** 2 / 2) ** 2, first: 1 - phase ** 2 };
  }],
  [/^strehl-astig/, ({ pvWaves }) => {
    const j = (pvWaves * NM * 1e-3) / (PUPIL / 2) ** 2;
    return { strehl: strehl({ sphere: j, cylinder: -2 * j, axis: 20 }) };
  }],
  [/^otf-defocus/, ({ W20waves, nu }) => ({ otf: atShare(sphere(defocus(W20waves)), nu) })],
  [/^w20/, ({ defocusD, pupilMm, lambdaUm }) => {
    const W20um = -2 * Math.sqrt(3) * wavefront(sphere(defocusD), pupilMm).c20;
    return { W20um, W20waves: W20um / lambdaUm };
  }],

  [/^blur-disc/, ({ pupilMm, defocusD }) => ({ arcmin: 60 * blurEllipse({ refraction: sphere(defocusD), pupilMm }).longer })],
  [/^geo-mtf/, ({ pupilMm, defocusD }) => {
    const made = transfer({ refraction: sphere(defocusD), pupilMm });
    return { cpd: zero((f) => made(f, 0), 15, 25) };
  }],
  // A tenth of the aperture; what the focus misses at a distance z is F − 1/z, and the blur angle makes a width over z.
  [/^sturm/, ({ F1, F2, apertureMm }) => {
    const widthAt = (vergence: number): number =>
      (10 * 1000 * RADIANS * blurEllipse({ refraction: { sphere: F1 - vergence, cylinder: F2 - F1, axis: 180 }, pupilMm: apertureMm / 10 }).longer) / vergence;
    return { clcDiameterMm: widthAt((F1 + F2) / 2), line1Mm: widthAt(F1), line2Mm: widthAt(F2) };
  }],

  [/^iso8596-landolt/, () => {
    const { outerDiameter, gap, stroke } = landolt(0);
    const minutes = (acuity: number): number => (Math.atan(gapSize(6, acuity) / 6000) / RADIANS) * 60;
    const reciprocal = [0.1, 0.5, 1, 2].every((acuity) => Math.abs(acuity * minutes(acuity) - 1) < 1e-12);
    return {
      outerArcmin: outerDiameter * minutes(1),
      gapArcmin: gap * minutes(1),
      strokeArcmin: stroke * minutes(1),
      positions: GAP_DIRECTIONS.length,
      acuity: reciprocal ? '1/gap(arcmin)' : 'another rule',
      guess: 1 / GAP_DIRECTIONS.length,
    };
  }],
  [/^iso8596-gap/, ({ distanceM, gapArcmin }) => ({ gapMm: gapSize(distanceM, 1 / gapArcmin) })],
];

export function compute({ id, inputs }: Entry): Record<string, Value> | null {
  return READERS.find(([kind]) => kind.test(id))?.[1](inputs) ?? null;
}
