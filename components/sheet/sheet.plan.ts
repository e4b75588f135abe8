import { MODEL, alongCircle, chordOf, meridianLying, site, siteLying, spanOf, turn } from '../../core/numbers.js';
import type { CompletePlan, Cyclotorsion } from '../../core/numbers.js';

/** Width of the limbus for which millimetres are told, mm. */
export const LIMBUS_WIDTH = MODEL.eye.limbusDiameter;

/** Where the ink goes, degrees. */
export const INK = [0, 90, 180, 270] as const;

/** One line of the sheet: something to be done at a place. Degrees, mm. */
export interface Item {
  /** Stands in the drawing and in the table. */
  number: number;
  kind: 'incision' | 'arc' | 'secondArc' | 'lens';
  /** As planned, on the seated patient: a site, or the meridian of a lens. */
  planned: number;
  /** Where it is found on a level dial when the patient lies; as planned while nothing is known of a turn. */
  lying: number;
  /** Ends on the dial when the patient lies, clockwise one first; none of a lens. */
  ends: readonly [number, number] | null;
  /** Length along its circle and straight from end to end, mm. */
  along: number | null;
  chord: number | null;
}

/** All that is planned, in the order of the operation. */
export function itemsOf(plan: CompletePlan, torsion: Cyclotorsion | null): Item[] {
  const { incisionSite, incisionWidth, arcSite, arcCount, arcLength, arcZone, lensCylinder, lensMeridian } = plan;
  const turned = { turn: torsion?.turn ?? 0 };
  const items: Item[] = [];
  const cut = (kind: Item['kind'], planned: number, span: number, diameter: number): void => {
    const ends = [planned - span / 2, planned + span / 2].map((end) => siteLying(end, turned)) as [number, number];
    items.push({ number: items.length + 1, kind, planned, lying: siteLying(planned, turned), ends, along: alongCircle(span, diameter), chord: chordOf(span, diameter) });
  };
  if (incisionSite !== null) cut('incision', incisionSite, spanOf(incisionWidth, LIMBUS_WIDTH), LIMBUS_WIDTH);
  if (arcSite !== null && arcCount > 0) cut('arc', arcSite, arcLength, arcZone);
  if (arcSite !== null && arcCount > 1) cut('secondArc', site(arcSite + 180), arcLength, arcZone);
  if (lensCylinder && lensMeridian !== null) {
    items.push({ number: items.length + 1, kind: 'lens', planned: lensMeridian, lying: meridianLying(lensMeridian, turned), ends: null, along: null, chord: null });
  }
  return items;
}

/** Where a place lies from the nearest ink mark, along the limbus. Both are on the eye, so it is the same sitting and lying. */
export interface FromMark {
  mark: number;
  /** The mark towards which it lies. */
  next: number;
  /** mm */
  length: number;
}

export function fromMark(planned: number): FromMark {
  const mark = site(Math.round(planned / 90) * 90);
  const away = turn(mark, planned);
  return { mark, next: site(mark + (away < 0 ? -90 : 90)), length: alongCircle(Math.abs(away), LIMBUS_WIDTH) };
}
