import { MODEL } from './model.js';
import type { ModelConstant } from './model.js';
import { SIGHT_MODEL } from './sight-model.js';

const ALL = { ...MODEL, sight: SIGHT_MODEL };

type Model = typeof ALL;

/** Without the value, which stands in the model: each constant there must have its record here. */
type Records = { [Group in keyof Model]: Record<keyof Model[Group], Omit<ModelConstant, 'value'>> };

const RECORDS = {
  incision: {
    base: { unit: 'D', source: ['ferreira2018', 'masket2009'], note: 'flattening of a temporal entry of the reference width' },
    perMillimetre: { unit: 'D/mm', source: ['ferreira2018', 'masket2009'], note: 'more flattening for each millimetre of width' },
    referenceWidth: { unit: 'mm', source: ['masket2009'], note: 'width at which the base holds' },
    siteFactor: { unit: '', source: ['ferreira2018', 'simsek1998', 'rainer1999', 'kohnen2002', 'pakravan2009', 'assumed'], note: 'temporal, superotemporal, superior, superonasal, nasal; inferonasal, inferior and inferotemporal are assumed' },
    sdNarrow: { unit: 'D', source: ['masket2009'], note: 'per component, width below 2.5 mm; includes measurement noise' },
    sdMiddle: { unit: 'D', source: ['assumed'], note: 'per component, width 2.5 mm to below 3.0 mm' },
    sdWide: { unit: 'D', source: ['masket2009', 'kaufmann2005'], note: 'per component, width 3.0 mm and above' },
  },
  arcs: {
    atSixtyDegrees: { unit: 'D', source: ['relaxingTable'], note: 'intended effect of one arc of 60° at age 65' },
    countPower: { unit: '', source: ['relaxingTable'], note: 'a pair gives 1.5 times one arc, not twice' },
    perYear: { unit: '1/year', source: ['relaxingTable'], note: 'more effect with each year of age' },
    referenceAge: { unit: 'years', source: ['relaxingTable'], note: 'age at which the age factor is 1; used when no age is given' },
    ageLimits: { unit: 'years', source: ['relaxingTable'], note: 'the age factor stays level outside' },
    againstFactor: { unit: '', source: ['relaxingTable', 'wang2003'], note: 'eyes steep near 180°: 1.04 in the table, up to 1.8 in the series; low confidence' },
    longest: { unit: '°', source: ['relaxingTable'], note: 'the table ends here, and so does the effect' },
    bladeShare: { unit: '', source: ['roberts2018', 'naguib2022', 'kaufmann2005'], note: 'achieved share of the intended effect, by blade' },
    laserShare: { unit: '', source: ['roberts2018'], note: 'achieved share of the intended effect, by laser' },
    sdAlongShare: { unit: '', source: ['kaufmann2005', 'assumed'], note: 'spread along the cut meridian as a share of the expected effect' },
    sdAlongLeast: { unit: 'D', source: ['assumed'], note: 'least spread along the cut meridian' },
    sdAcross: { unit: 'D', source: ['assumed'], note: 'spread across the cut meridian' },
    couplingRatio: { unit: '', source: ['faktorovich1999', 'clinOphthalmol2015'], note: 'flattening of the cut meridian over steepening across it' },
  },
  backSurface: {
    typical: { unit: 'D', source: ['eom2014', 'naeser2018', 'langenbucher2025'], note: 'what the back surface adds against the rule' },
  },
  uncertainty: {
    keratometry: { unit: 'D', source: ['gjerdrum2020'], note: 'per component' },
    keratometryDryEye: { unit: 'D', source: ['gjerdrum2020', 'assumed'], note: 'per component, with a dry eye: the upper end of the range' },
    backSurface: { unit: 'D', source: ['assumed'], note: 'per component, however the back surface is entered' },
    placement: { unit: '°', source: ['khatib2020', 'kodavoor2020'], note: 'marking and torsion of the eye, common to all that is placed by the marks' },
    lensRotation: { unit: '°', source: ['kodavoor2020', 'assumed'], note: 'the lens against its marks' },
  },
  cautions: {
    deepestShare: { unit: '', source: ['commonPractice'], note: 'depth as a share of the local thickness at which a cut may perforate' },
    steepest: { unit: 'D', source: ['commonPractice'], note: 'a steeper reading wants topography' },
    largestDifference: { unit: 'D', source: ['commonPractice'], note: 'a larger difference between the readings wants topography' },
    turned: { unit: '°', source: ['assumed'], note: 'a steep meridian that turns by more has been over-corrected' },
    noticeable: { unit: 'D', source: ['assumed'], note: 'smaller remainders are not called over-corrected or worse' },
    worthwhile: { unit: 'D', source: ['villegas2014'], note: 'less astigmatism does not disturb most eyes, so it is not worth a cut' },
    mostForArcs: { unit: 'D', source: ['relaxingTable'], note: 'the table ends here' },
    lensOff: { unit: '°', source: ['felipe2011'], note: 'a lens that is further off leaves a third of its cylinder or more' },
    shallowShare: { unit: '', source: ['commonPractice'], note: 'the effect is that of arcs at 80–90 % of the local thickness' },
    usualZone: { unit: 'mm', source: ['assumed'], note: 'the effect is that of arcs on a circle of about 11 mm' },
    shortestArc: { unit: '°', source: ['relaxingTable'], note: 'the table has no shorter arc' },
  },
  eye: {
    limbusDiameter: { unit: 'mm', source: ['rufer2005'], note: 'horizontal white-to-white' },
    lensDepth: { unit: 'mm', source: ['assumed'], note: 'from the corneal vertex to the plane of the lens' },
    aqueousIndex: { unit: '', source: ['commonPractice'], note: 'refractive index of the aqueous' },
  },
  sight: {
    wavelength: { unit: 'nm', source: ['assumed'], note: 'the one colour of the wave model: where the eye is most sensitive in daylight' },
    acuitySquare: { unit: 'logMAR/D²', source: ['hoshikawa2021'], note: 'acuity with the sphere corrected, against the cylinder' },
    acuityLinear: { unit: 'logMAR/D', source: ['hoshikawa2021'], note: 'the same' },
    acuitySharp: { unit: 'logMAR', source: ['hoshikawa2021'], note: 'acuity without a cylinder' },
    acuityMost: { unit: 'D', source: ['hoshikawa2021'], note: 'the eyes of the study had no more' },
    acuitySd: { unit: 'logMAR', source: ['hoshikawa2021', 'assumed'], note: 'of eyes about the curve: follows from R² 0.544 if the cylinders of the study were spread evenly over 0–3 D, which is assumed' },
    landoltRing: { unit: 'gaps', source: ['iso8596'], note: 'outer diameter of the ring; gap and stroke are 1' },
  },
} as const satisfies Records;

type Constants = { [Group in keyof Model]: { [Name in keyof Model[Group]]: ModelConstant<Model[Group][Name]> } };

/** Every constant of the model with its unit, its sources and a note. */
export const CONSTANTS = /* @__PURE__ */ documented();

function documented(): Constants {
  const groups = Object.entries(ALL).map(([group, values]) => {
    const records: Record<string, object> = RECORDS[group as keyof Model];
    return [group, Object.fromEntries(Object.entries(values).map(([name, value]) => [name, { value, ...records[name] }]))];
  });
  return Object.fromEntries(groups) as Constants;
}
