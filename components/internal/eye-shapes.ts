import { MODEL } from '../../core/numbers.js';
import type { Astigmatism, CompletePlan } from '../../core/numbers.js';
import { alongAcross, arcPath, at, polar, polyline } from './geometry.js';
import type { Ends } from './line.js';

/** Radius of the limbus, mm. */
export const LIMBUS = MODEL.eye.limbusDiameter / 2;

/** Length of a petal of the bow-tie for one dioptre, mm, up to the longest. */
export const PETAL = { perDioptre: 1.8, longest: 5.4 } as const;

/** How far the tunnel of the incision reaches into the cornea, mm. For the picture only. */
export const TUNNEL = 1.6;

/** Below this nothing is drawn for an astigmatism: its direction would be noise, D. */
export const LEAST_DRAWN = 0.05;

/** How a drawing of the eye from the front stands: px for one mm, and degrees by which it is turned. */
export interface Frame {
  scale: number;
  turn: number;
}

/** The two petals that show how much a cornea is astigmatic and where it is steep. */
export function bowTie({ magnitude, meridian }: Astigmatism, { scale, turn }: Frame, petal: { perDioptre: number; longest: number } = PETAL): string {
  if (magnitude < LEAST_DRAWN) return '';
  const length = Math.min(petal.perDioptre * magnitude, petal.longest) * scale;
  const petals = [meridian + turn, meridian + turn + 180].map((tip) => {
    const beside = (degrees: number, share: number): string => at(polar(tip + degrees, share * length));
    return `M0,0C${beside(38, 0.55)},${beside(19, 1)},${beside(0, 1)}C${beside(-19, 1)},${beside(-38, 0.55)},0,0Z`;
  });
  return petals.join('');
}

/** A line right across the cornea. */
export function meridianLine(degrees: number, { scale, turn }: Frame, radius: number = LIMBUS): Ends {
  const end = polar(degrees + turn, radius * scale);
  return { x1: -end.x, y1: -end.y, x2: end.x, y2: end.y };
}

/** The incision to scale: the entry along the limbus, whose chord is the width, and the tunnel inwards. */
export function incisionShape(site: number, width: number, { scale, turn }: Frame): { entry: string; tunnel: string } {
  const half = width / 2;
  const reach = (Math.asin(half / LIMBUS) * 180) / Math.PI;
  const facing = site + turn;
  const radius = LIMBUS * scale;
  const edge = Math.sqrt(LIMBUS ** 2 - half ** 2) * scale;
  const inner = (LIMBUS - TUNNEL) * scale;
  const corner = half * scale;
  const tunnel = [alongAcross(facing, edge, -corner), alongAcross(facing, inner, -corner * 0.85), alongAcross(facing, inner, corner * 0.85), alongAcross(facing, edge, corner)];
  return { entry: arcPath(radius, facing - reach, facing + reach), tunnel: polyline(tunnel) };
}

/** The planned arcs to scale, one path each. */
export function arcShapes({ arcSite, arcZone, arcCount, arcLength }: CompletePlan, { scale, turn }: Frame): string[] {
  if (arcSite === null) return [];
  const radius = (arcZone / 2) * scale;
  const centres = [arcSite, arcSite + 180].slice(0, arcCount);
  return centres.map((centre) => arcPath(radius, centre + turn - arcLength / 2, centre + turn + arcLength / 2));
}
