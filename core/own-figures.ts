import { refused, within } from './check.js';
import { OWN_LIMITS } from './limits.js';
import type { OwnFigures } from './types.js';

/**
 * The surgeon's own figures with every number checked, in a fixed order of fields so that equal figures are equal as text.
 * @throws RangeError that names the figure, its value and the limits.
 */
export function checkedFigures(given: OwnFigures | null | undefined): OwnFigures | null {
  if (given === null || given === undefined) return null;
  if (typeof given !== 'object' || Array.isArray(given)) throw refused('ownFigures', given, 'figures');
  const incision = part('incision', given.incision);
  const arcs = part('arcs', given.arcs);
  const figures: OwnFigures = {};
  if (incision) {
    figures.incision = {
      flattening: figure('incision.flattening', incision.flattening, 'flattening'),
      torque: figure('incision.torque', incision.torque ?? 0, 'torque'),
      sd: figure('incision.sd', incision.sd, 'sd'),
      eyes: counted('incision.eyes', incision.eyes),
    };
  }
  if (arcs) {
    figures.arcs = {
      share: figure('arcs.share', arcs.share, 'share'),
      sdAlong: figure('arcs.sdAlong', arcs.sdAlong, 'sd'),
      sdAcross: figure('arcs.sdAcross', arcs.sdAcross, 'sd'),
      eyes: counted('arcs.eyes', arcs.eyes),
    };
  }
  return figures.incision || figures.arcs ? figures : null;
}

/** One half of the figures; nothing at all is fine, anything else must be an object. */
function part<Part>(name: string, value: Part): Part {
  if (value === null || value === undefined || (typeof value === 'object' && !Array.isArray(value))) return value;
  throw refused(`ownFigures.${name}`, value, 'figuresPart');
}

function figure(name: string, value: unknown, limits: keyof typeof OWN_LIMITS): number {
  const { min, max, unit } = OWN_LIMITS[limits];
  return within(`ownFigures.${name}`, value, min, max, unit);
}

function counted(name: string, value: number | null | undefined): number | null {
  if (value === null || value === undefined) return null;
  const { min, max, unit } = OWN_LIMITS.eyes;
  if (!Number.isInteger(figure(name, value, 'eyes'))) throw refused(`ownFigures.${name}`, value, 'whole', { min, max, unit });
  return value;
}
