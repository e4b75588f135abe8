/**
 * Schematic eyes of the literature, ready to be traced. They are averages and thought models, none is anybody’s eye. The
 * retina is where the relaxed eye has its focus, and accommodation does not move it.
 */
import type { EyeSourceId } from './eye-references.js';
import type { Gradient, Surface } from './eye-types.js';

export interface SchematicEye {
  name: string;
  source: EyeSourceId;
  /** Whether the constants were read in a public copy or are recalled from memory. */
  status: 'read' | 'memory';
  surfaces: readonly Surface[];
  /** From the corneal vertex to the retina, mm: where the relaxed eye is in focus. */
  axialLength: number;
  /** Position in `surfaces` of the one that lies in the plane of the pupil. */
  stop: number;
  /** Conic constant Q of each surface, where the eye has aspheric ones; no part of a trace of the first order. */
  conic?: readonly number[];
}

/** The last distance is to the retina, at `axialLength` from the first surface. */
function eye(
  [name, source, status]: [string, EyeSourceId, SchematicEye['status']],
  axialLength: number,
  stop: number,
  surfaces: [radius: number, indexAfter: number, gapAfter?: number, gradient?: Gradient][],
  conic?: readonly number[],
): SchematicEye {
  const before = surfaces.reduce((sum, [, , gap = 0]) => sum + gap, 0);
  return {
    name,
    source,
    status,
    axialLength,
    stop,
    surfaces: surfaces.map(([radius, indexAfter, gapAfter = axialLength - before, gradient]) => ({ radius, indexAfter, gapAfter, ...(gradient && { gradient }) })),
    ...(conic && { conic }),
  };
}

/** The eye of Bennett & Rabbetts; what accommodation changes. */
const bennettRabbetts = (dioptres: string, depth: number, front: number, thickness: number, back: number): SchematicEye =>
  eye([`Bennett–Rabbetts, ${dioptres} D`, 'bennettRabbetts1990', 'read'], 24.09, 1, [[7.8, 1.336, depth], [front, 1.422, thickness], [back, 1.336]]);

export const SCHEMATIC_EYES = {
  gullstrand: eye(['Gullstrand, exact', 'gullstrand1909', 'read'], 24.387, 2, [
    [7.7, 1.376, 0.5], [6.8, 1.336, 3.1], [10, 1.386, 0.546], [7.911, 1.406, 2.419], [-5.76, 1.386, 0.635], [-6, 1.336],
  ]),
  leGrand: eye(['Le Grand, full theoretical', 'leGrand1980', 'memory'], 24.197, 2, [
    [7.8, 1.3771, 0.55], [6.5, 1.3374, 3.05], [10.2, 1.42, 4], [-6, 1.336],
  ]),
  leGrandAccommodated: eye(['Le Grand, accommodated', 'leGrand1980', 'memory'], 24.197, 2, [
    [7.8, 1.3771, 0.55], [6.5, 1.3374, 2.65], [6, 1.427, 4.5], [-5.5, 1.336],
  ]),
  gullstrandEmsley: eye(['Gullstrand–Emsley, simplified', 'emsley1952', 'read'], 23.896, 1, [
    [7.8, 4 / 3, 3.6], [10, 1.416, 3.6], [-6, 4 / 3],
  ]),
  gullstrandEmsleyAccommodated: eye(['Gullstrand–Emsley, accommodated', 'emsley1952', 'read'], 23.896, 1, [
    [7.8, 4 / 3, 3.2], [5, 1.416, 4], [-5, 4 / 3],
  ]),
  emsleyReduced: eye(['Emsley, reduced', 'emsley1952', 'memory'], 200 / 9, 0, [[50 / 9, 4 / 3]]),
  bennettRabbetts: bennettRabbetts('0', 3.6, 11, 3.7, -6.47515),
  bennettRabbetts2: bennettRabbetts('2.5', 3.475, 8.6, 3.825, -5.909),
  bennettRabbetts5: bennettRabbetts('5', 3.37, 7, 3.93, -5.504),
  bennettRabbetts7: bennettRabbetts('7.5', 3.28, 6, 4.02, -5.063),
  bennettRabbetts10: bennettRabbetts('10', 3.21, 5.2, 4.09, -4.75),
  navarro: eye(['Navarro', 'navarro1999', 'memory'], 24.004, 2, [
    [7.72, 1.376, 0.55], [6.5, 1.3374, 3.05], [10.2, 1.42, 4], [-6, 1.336],
  ], [-0.26, 0, -3.1316, -1]),
  liouBrennan: eye(['Liou–Brennan', 'liouBrennan1997', 'memory'], 23.95, 2, [
    [7.77, 1.376, 0.5],
    [6.4, 1.336, 3.16],
    [12.4, 1.368, 1.59, { axial: 0.049057, axialSquare: -0.015427, radial: -0.001978 }],
    [Infinity, 1.407, 2.43, { axial: 0, axialSquare: -0.006605, radial: -0.001978 }],
    [-8.1, 1.336],
  ], [-0.18, -0.6, -0.94, 0, 0.96]),
} as const satisfies Record<string, SchematicEye>;
