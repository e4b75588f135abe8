import { finite } from './check.js';
import type { Astigmatism, EyeSide, Rule } from './types.js';

/** Radians in a degree. */
export const RADIANS = Math.PI / 180;

/**
 * A meridian as printed: degrees in (0, 180], so that the horizontal one is 180 and never 0 (ISO 8429).
 * @throws RangeError when `degrees` is not finite.
 */
export function meridian(degrees: number): number {
  const turned = modulo(finite('meridian', degrees, '°'), 180);
  return turned === 0 ? 180 : turned;
}

/**
 * A place on the limbus: degrees in [0, 360), counter-clockwise from the viewer's right.
 * @throws RangeError when `degrees` is not finite.
 */
export function site(degrees: number): number {
  return modulo(finite('site', degrees, '°'), 360);
}

/** Degrees of a clock hour as seen facing the patient: 3 → 0, 12 → 90, 9 → 180, 6 → 270. Parts of hours are allowed. */
export function siteFromClock(hour: number): number {
  return site(90 - 30 * finite('clock hour', hour, 'h'));
}

/** Clock hour of a site in (0, 12], with decimals: 180 → 9, 135 → 10.5. */
export function clockFromSite(degrees: number): number {
  const hour = modulo(90 - site(degrees), 360) / 30;
  return hour === 0 ? 12 : hour;
}

/** Signed turn from one site to another, degrees in (-180, 180]. */
export function turn(from: number, to: number): number {
  const difference = modulo(to - from, 360);
  return difference > 180 ? difference - 360 : difference;
}

/** Distance between two meridians, degrees in [0, 90]. */
export function meridianDistance(a: number, b: number): number {
  const difference = modulo(a - b, 180);
  return Math.min(difference, 180 - difference);
}

/** Temporal is at 180° in a right eye and at 0° in a left eye. */
export function temporalSite(eye: EyeSide): number {
  return eye === 'right' ? 180 : 0;
}

/** The same place in the fellow eye: temporal stays temporal, superior stays superior. */
export function mirrorSite(degrees: number): number {
  return site(180 - degrees);
}

/** The mirrored meridian of the fellow eye. */
export function mirrorMeridian(degrees: number): number {
  return meridian(180 - degrees);
}

/**
 * Clock direction from the temporal side, degrees in [0, 360): 0 temporal, 90 superior, 180 nasal, 270 inferior,
 * whichever eye it is.
 */
export function fromTemporal(degrees: number, eye: EyeSide): number {
  return eye === 'right' ? site(180 - degrees) : site(degrees);
}

const OCTANTS = [
  'temporal',
  'superotemporal',
  'superior',
  'superonasal',
  'nasal',
  'inferonasal',
  'inferior',
  'inferotemporal',
] as const;

/** One of the eight names of a place on the limbus. */
export type SiteName = (typeof OCTANTS)[number];

/** Name of a site in the given eye; each name covers 45° around its centre. */
export function siteName(degrees: number, eye: EyeSide): SiteName {
  return OCTANTS[Math.round(fromTemporal(degrees, eye) / 45) % 8]!;
}

/** With the rule: steep within 30° of 90; against the rule: within 30° of 180; else oblique. The limits count as within. */
export function ruleOf(a: Pick<Astigmatism, 'meridian'>): Rule {
  if (meridianDistance(a.meridian, 90) <= 30) return 'with';
  return meridianDistance(a.meridian, 180) <= 30 ? 'against' : 'oblique';
}

/** Mathematical modulo: never negative. What is in range comes back untouched; what rounds up to the divisor is 0. */
function modulo(value: number, divisor: number): number {
  const remainder = value % divisor;
  const positive = remainder < 0 ? remainder + divisor : remainder + 0;
  return positive >= divisor ? 0 : positive;
}
