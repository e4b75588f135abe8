import type { SourceId } from './references.js';

/**
 * The constants of the default model, each with its unit and source. All of it is a teaching estimate and all of it
 * gives way to the surgeon's own figures. The values were chosen on the papers they are compared with, so they are
 * "consistent with" those papers and validated on nothing.
 */
export interface ModelConstant<Value = number> {
  value: Value;
  unit: string;
  source: readonly SourceId[];
  note: string;
}

/** What counts as a good result throughout, D: less does not degrade acuity in most eyes (Villegas 2014, read). */
export const GOOD = 0.5;

/* @__NO_SIDE_EFFECTS__ */
function constant<Value>(value: Value, unit: string, source: readonly SourceId[], note: string): ModelConstant<Value> {
  return { value, unit, source, note };
}

export const MODEL = {
  incision: {
    /** F = siteFactor · max(0, base + perMillimetre · (width − referenceWidth)) */
    base: constant(0.1, 'D', ['ferreira2018', 'masket2009'], 'flattening of a temporal entry of the reference width'),
    perMillimetre: constant(0.22, 'D/mm', ['ferreira2018', 'masket2009'], 'more flattening for each millimetre of width'),
    referenceWidth: constant(2.2, 'mm', ['masket2009'], 'width at which the base holds'),
    /** By 45° from the temporal side over superior and nasal to inferior, interpolated between. */
    siteFactor: constant(
      [1, 1.7, 2, 2.1, 2.2, 1.8, 1.5, 1.2] as const,
      '',
      ['ferreira2018', 'simsek1998', 'rainer1999', 'kohnen2002', 'pakravan2009', 'assumed'],
      'temporal, superotemporal, superior, superonasal, nasal; inferonasal, inferior and inferotemporal are assumed',
    ),
    sdNarrow: constant(0.3, 'D', ['masket2009'], 'per component, width below 2.5 mm; includes measurement noise'),
    sdMiddle: constant(0.35, 'D', ['assumed'], 'per component, width 2.5 mm to below 3.0 mm'),
    sdWide: constant(0.45, 'D', ['masket2009', 'kaufmann2005'], 'per component, width 3.0 mm and above'),
  },
  arcs: {
    /** intended = atSixtyDegrees · (length/60) · count^countPower · (1 + perYear · (age − 65)) · ruleFactor */
    atSixtyDegrees: constant(1.7, 'D', ['relaxingTable'], 'intended effect of one arc of 60° at age 65'),
    countPower: constant(0.6, '', ['relaxingTable'], 'a pair gives 1.5 times one arc, not twice'),
    perYear: constant(0.006, '1/year', ['relaxingTable'], 'more effect with each year of age'),
    referenceAge: constant(65, 'years', ['relaxingTable'], 'age at which the age factor is 1; used when no age is given'),
    ageLimits: constant([40, 90] as const, 'years', ['relaxingTable'], 'the age factor stays level outside'),
    againstFactor: constant(1.15, '', ['relaxingTable', 'wang2003'], 'eyes steep near 180°: 1.04 in the table, up to 1.8 in the series; low confidence'),
    longest: constant(90, '°', ['relaxingTable'], 'the table ends here, and so does the effect'),
    bladeShare: constant(0.5, '', ['roberts2018', 'naguib2022', 'kaufmann2005'], 'achieved share of the intended effect, by blade'),
    laserShare: constant(0.65, '', ['roberts2018'], 'achieved share of the intended effect, by laser'),
    sdAlongShare: constant(0.45, '', ['kaufmann2005', 'assumed'], 'spread along the cut meridian as a share of the expected effect'),
    sdAlongLeast: constant(0.25, 'D', ['assumed'], 'least spread along the cut meridian'),
    sdAcross: constant(0.35, 'D', ['assumed'], 'spread across the cut meridian'),
    couplingRatio: constant(1, '', ['faktorovich1999', 'clinOphthalmol2015'], 'flattening of the cut meridian over steepening across it'),
  },
  backSurface: {
    typical: constant(0.27, 'D', ['eom2014', 'naeser2018', 'langenbucher2025'], 'what the back surface adds against the rule'),
  },
  uncertainty: {
    keratometry: constant(0.15, 'D', ['gjerdrum2020'], 'per component'),
    keratometryDryEye: constant(0.25, 'D', ['gjerdrum2020', 'assumed'], 'per component, with a dry eye: the upper end of the range'),
    backSurface: constant(0.15, 'D', ['assumed'], 'per component, however the back surface is entered'),
    placement: constant(5, '°', ['khatib2020', 'kodavoor2020'], 'marking and torsion of the eye, common to all that is placed by the marks'),
    lensRotation: constant(3, '°', ['kodavoor2020', 'assumed'], 'the lens against its marks'),
  },
  cautions: {
    deepestShare: constant(0.9, '', ['commonPractice'], 'depth as a share of the local thickness at which a cut may perforate'),
    steepest: constant(48, 'D', ['commonPractice'], 'a steeper reading wants topography'),
    largestDifference: constant(4, 'D', ['commonPractice'], 'a larger difference between the readings wants topography'),
    turned: constant(60, '°', ['assumed'], 'a steep meridian that turns by more has been over-corrected'),
    noticeable: constant(0.1, 'D', ['assumed'], 'smaller remainders are not called over-corrected or worse'),
    worthwhile: constant(0.5, 'D', ['villegas2014'], 'less astigmatism does not disturb most eyes, so it is not worth a cut'),
    mostForArcs: constant(4, 'D', ['relaxingTable'], 'the table ends here'),
    lensOff: constant(10, '°', ['felipe2011'], 'a lens that is further off leaves a third of its cylinder or more'),
    shallowShare: constant(0.8, '', ['commonPractice'], 'the effect is that of arcs at 80–90 % of the local thickness'),
    usualZone: constant([10, 12] as const, 'mm', ['assumed'], 'the effect is that of arcs on a circle of about 11 mm'),
    shortestArc: constant(30, '°', ['relaxingTable'], 'the table has no shorter arc'),
  },
  eye: {
    limbusDiameter: constant(11.7, 'mm', ['rufer2005'], 'horizontal white-to-white'),
    lensDepth: constant(5, 'mm', ['assumed'], 'from the corneal vertex to the plane of the lens'),
    aqueousIndex: constant(1.336, '', ['commonPractice'], 'refractive index of the aqueous'),
  },
  sight: {
    wavelength: constant(555, 'nm', ['assumed'], 'the one colour of the wave model: where the eye is most sensitive in daylight'),
    /** logMAR = square · cylinder² + linear · cylinder + sharp */
    acuitySquare: constant(0.017, 'logMAR/D²', ['hoshikawa2021'], 'acuity with the sphere corrected, against the cylinder'),
    acuityLinear: constant(0.125, 'logMAR/D', ['hoshikawa2021'], 'the same'),
    acuitySharp: constant(-0.116, 'logMAR', ['hoshikawa2021'], 'acuity without a cylinder'),
    acuityMost: constant(3, 'D', ['hoshikawa2021'], 'the eyes of the study had no more'),
    acuitySd: constant(0.14, 'logMAR', ['hoshikawa2021', 'assumed'], 'of eyes about the curve: follows from R² 0.544 if the cylinders of the study were spread evenly over 0–3 D, which is assumed'),
    landoltRing: constant(5, 'gaps', ['iso8596'], 'outer diameter of the ring; gap and stroke are 1'),
  },
} as const;
