import { meridian } from './angle.js';
import { refused } from './check.js';
import { BACK_SURFACE_LIMITS } from './limits.js';
import { MODEL } from './model.js';
import type { Astigmatism, BackSurface } from './types.js';

/** A number of dioptres, an @, and a meridian in degrees. */
const MEASURED = /^\s*(\d+(?:\.\d+)?)\s*@\s*(\d+(?:\.\d+)?)\s*°?\s*$/;

/** What was read last: a plan that is moved keeps its back surface, and is asked for it again and again. */
let last: { text: string; read: Astigmatism } | null = null;

/**
 * What the posterior cornea adds to the front astigmatism. `omitted` adds nothing, `typical` the population mean
 * against the rule whatever the front is (one constant does as well as formulae with more terms), `"0.30@180"` what was measured.
 * @param _front kept so that a model which depends on the front surface can take its place.
 * @throws RangeError for anything else.
 */
export function backSurface(kind: BackSurface, _front?: Astigmatism): Astigmatism {
  if (kind === 'omitted') return { magnitude: 0, meridian: 180 };
  if (kind === 'typical') return { magnitude: MODEL.backSurface.typical, meridian: 180 };
  if (last?.text !== kind) last = { text: kind, read: measured(kind) };
  return { ...last.read };
}

function measured(kind: string): Astigmatism {
  const found = typeof kind === 'string' ? MEASURED.exec(kind) : null;
  const magnitude = Number(found?.[1]);
  const along = Number(found?.[2]);
  const { min, max } = BACK_SURFACE_LIMITS;
  if (found && magnitude >= min && magnitude <= max && along <= 180) return { magnitude, meridian: meridian(along) };
  throw refused('backSurface', kind, 'backSurface', { min, max });
}
