import { meridian, site, turn } from './angle.js';
import { RefusedValue, finite, within } from './check.js';
import { TORSION } from './cyclotorsion-constants.js';
import type { EyeSide } from './types.js';

/** Where one mark on the eye is read off the dial twice, degrees 0–360 as the viewer faces the patient. */
export interface MarkReadings {
  /** Where the mark was put while the patient sat. */
  seated: number;
  /** Where the same mark is seen when the patient lies. */
  lying: number;
}

/** How far an eye has turned between sitting and lying. */
export interface Cyclotorsion {
  /** Degrees, counter-clockwise on the dial as the viewer faces the patient; the shortest way, in either eye alike. */
  turn: number;
  /** Whether the upper end has turned towards the nose (`in`) or away from it (`out`). */
  direction: 'in' | 'out' | 'none';
  /** Whether it is more than is common, so that the readings should be repeated. */
  unusual: boolean;
}

/**
 * How far an eye has turned, from one mark read sitting and lying: lying − seated, the shortest way across 0°/360°.
 * @throws RangeError for a reading outside 0–360°, or a turn that no eye makes: then the mark or a figure is another one.
 */
export function cyclotorsion({ seated, lying }: MarkReadings, eye: EyeSide): Cyclotorsion {
  const from = within('markSeated', seated, 0, 360, '°');
  const turned = tenths(turn(from, within('markLying', lying, 0, 360, '°')));
  const most = TORSION.most.value;
  if (Math.abs(turned) > most) {
    const limits = [from - most, from + most].map((degrees) => tenths(site(degrees)));
    throw new RefusedValue('markLying', lying, `${limits.join(' to ')} °, for an eye whose mark was put at ${seated}° turns by at most ${most}°`);
  }
  // Counter-clockwise leads from above to 180°: the temporal side of a right eye, the nasal side of a left one.
  const outwards = eye === 'right' ? turned : -turned;
  return { turn: turned, direction: outwards > 0 ? 'out' : outwards < 0 ? 'in' : 'none', unusual: Math.abs(turned) > TORSION.usual.value };
}

/** Where a site that was planned on the seated patient is found on the dial when the patient lies, degrees in [0, 360). */
export function siteLying(planned: number, { turn: turned }: Pick<Cyclotorsion, 'turn'>): number {
  return tenths(site(planned + finite('turn', turned, '°'))) % 360;
}

/** The same for a meridian, degrees in (0, 180]. */
export function meridianLying(planned: number, { turn: turned }: Pick<Cyclotorsion, 'turn'>): number {
  return meridian(tenths(meridian(planned + finite('turn', turned, '°'))));
}

/** Nobody reads an eye more finely; and 0.1 + 0.2 would be more than 0.3. */
function tenths(degrees: number): number {
  return Math.round(degrees * 10) / 10 + 0;
}
