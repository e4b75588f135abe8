import type { SourceId } from './references.js';

/** What counts as a good result throughout, D: less does not degrade acuity in most eyes (Villegas 2014, read). */
export const GOOD = 0.5;

/**
 * The constants of the default model. All of it is a teaching estimate and all of it gives way to the surgeon's own
 * figures. The values were chosen on the papers they are compared with, so they are "consistent with" those papers and
 * validated on nothing. Unit, source and note of each stand in `CONSTANTS`, which pages load only when they are asked for.
 */
export const MODEL = {
  incision: {
    /** F = siteFactor · max(0, base + perMillimetre · (width − referenceWidth)) */
    base: 0.1,
    perMillimetre: 0.22,
    referenceWidth: 2.2,
    /** By 45° from the temporal side over superior and nasal to inferior, interpolated between. */
    siteFactor: [1, 1.7, 2, 2.1, 2.2, 1.8, 1.5, 1.2],
    sdNarrow: 0.3,
    sdMiddle: 0.35,
    sdWide: 0.45,
  },
  arcs: {
    /** intended = atSixtyDegrees · (length/60) · count^countPower · (1 + perYear · (age − 65)) · ruleFactor */
    atSixtyDegrees: 1.7,
    countPower: 0.6,
    perYear: 0.006,
    referenceAge: 65,
    ageLimits: [40, 90],
    againstFactor: 1.15,
    longest: 90,
    bladeShare: 0.5,
    laserShare: 0.65,
    sdAlongShare: 0.45,
    sdAlongLeast: 0.25,
    sdAcross: 0.35,
    couplingRatio: 1,
  },
  backSurface: {
    typical: 0.27,
  },
  uncertainty: {
    keratometry: 0.15,
    keratometryDryEye: 0.25,
    backSurface: 0.15,
    placement: 5,
    lensRotation: 3,
  },
  cautions: {
    deepestShare: 0.9,
    steepest: 48,
    largestDifference: 4,
    turned: 60,
    noticeable: 0.1,
    worthwhile: 0.5,
    mostForArcs: 4,
    lensOff: 10,
    shallowShare: 0.8,
    usualZone: [10, 12],
    shortestArc: 30,
  },
  eye: {
    limbusDiameter: 11.7,
    lensDepth: 5,
    aqueousIndex: 1.336,
  },
} as const;

/** A constant with all that is known of it. */
export interface ModelConstant<Value = number> {
  value: Value;
  unit: string;
  source: readonly SourceId[];
  note: string;
}
