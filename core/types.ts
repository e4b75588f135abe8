/** The right or the left eye of the patient, never of the viewer. */
export type EyeSide = 'right' | 'left';

/** Whether the steep meridian stands upright, lies flat, or neither. */
export type Rule = 'with' | 'against' | 'oblique';

/** How a relaxing arc is cut: by hand with a guarded blade, or by a femtosecond laser. */
export type ArcMethod = 'blade' | 'laser';

/**
 * The posterior cornea: left out, a population estimate, or measured.
 * A measured one is written `D@steep meridian`, for instance `0.30@180`, and states what it *adds* to the total.
 */
export type BackSurface = 'omitted' | 'typical' | `${number}@${number}`;

/** Corneal astigmatism: dioptres ≥ 0 at the **steep** meridian, degrees in (0, 180]. */
export interface Astigmatism {
  magnitude: number;
  meridian: number;
}

/** A point of the double-angle plane in dioptres: x > 0 is against the rule, y > 0 is steep at 45°. */
export interface Vector {
  x: number;
  y: number;
}

/** Sphero-cylinder in spectacle notation: dioptres, and the cylinder **axis** in (0, 180]. */
export interface Refraction {
  sphere: number;
  cylinder: number;
  axis: number;
}

/** Power vector of Thibos, Wheeler & Horner (1997), dioptres. */
export interface PowerVector {
  m: number;
  j0: number;
  j45: number;
}

/** A bivariate normal distribution in the double-angle plane: dioptres and dioptres squared. */
export interface Spread {
  mean: Vector;
  covariance: [[number, number], [number, number]];
}

/** An ellipse in the double-angle plane: centre and semi-axes in dioptres, `angle` of the long axis in degrees from x. */
export interface Ellipse {
  cx: number;
  cy: number;
  a: number;
  b: number;
  angle: number;
}

/** What in the plan turns the cornea before into the cornea after. */
export type StepSource = 'backSurface' | 'incision' | 'arcs' | 'lens';

/** What in the eye or the patient speaks against relaxing arcs or against trusting the readings. */
export type Risk = 'collagen' | 'dry-eye' | 'radial-cuts' | 'ectasia';

/** The surgeon's own results, which replace the default model. Means in the frame of the cut, dioptres. */
export interface OwnFigures {
  incision?: {
    /** Mean flattening of the entered meridian. */
    flattening: number;
    /** Mean torque, > 0 counter-clockwise; 0 when left out. */
    torque?: number | null;
    /** Standard deviation per double-angle component. */
    sd: number;
    /** Number of eyes behind the figures. */
    eyes?: number | null;
  } | null;
  arcs?: {
    /** Mean achieved share of the effect that the table intends, 0–1.5. */
    share: number;
    /** Standard deviation along the cut meridian. */
    sdAlong: number;
    /** Standard deviation across it. */
    sdAcross: number;
    eyes?: number | null;
  } | null;
}

/** What a step stands on: the default model, the surgeon's own figures, or a measurement. */
export type Basis = 'model' | 'own' | 'measured';

/** One contribution to the result, as a vector to be added to the others. */
export interface PlanStep {
  source: StepSource;
  /** What is expected to happen, dioptres. */
  vector: Vector;
  /** What would happen if the whole intended effect were reached, dioptres. */
  intended: Vector;
  basis: Basis;
}

/** stop: do not proceed like this · think: allowed but unwise without a reason · note: worth knowing. */
export type CautionLevel = 'stop' | 'think' | 'note';

export interface Caution {
  /** Stable name. */
  id: string;
  level: CautionLevel;
  /** In English. */
  text: string;
  /** Id of a record in `references`. */
  source: string;
  /** Name of the text in `CAUTION_TEXT` and in the catalogues of other languages. */
  wording: string;
  /** The numbers in the text, by the names that they have there. */
  values: Readonly<Record<string, Quantity>>;
}

/** A number in a text: with its unit, and with how many decimals it is printed. */
export interface Quantity {
  value: number;
  unit: 'D' | '°' | 'mm' | 'µm' | '%' | '';
  digits: number;
}

/**
 * One eye and its plan. Degrees on the dial of ISO 8429, readings in dioptres, sizes in mm and µm.
 * A field that is missing, `undefined` or `null` takes the default; `null` in the completed plan means "none".
 */
export interface EyePlan {
  eye?: EyeSide | null;
  /** Flat keratometer reading, D. */
  flatK?: number | null;
  /** Steep keratometer reading, D. */
  steepK?: number | null;
  /** Steep meridian of the front surface, degrees. */
  steepMeridian?: number | null;
  /** Years; none = the arcs are calculated for 65. */
  age?: number | null;
  backSurface?: BackSurface | null;
  /** Where on the limbus the eye is entered, degrees 0–360; none = no incision modelled. */
  incisionSite?: number | null;
  /** mm. */
  incisionWidth?: number | null;
  /** The surgeon's own mean flattening, D; overrides the model. */
  incisionFlattening?: number | null;
  /** Centre of the first arc, degrees 0–360. */
  arcSite?: number | null;
  /** Degrees. */
  arcLength?: number | null;
  arcCount?: 0 | 1 | 2 | null;
  /** Diameter of the circle on which the arcs lie, mm. */
  arcZone?: number | null;
  /** µm. */
  arcDepth?: number | null;
  arcMethod?: ArcMethod | null;
  /** The surgeon's own flattening by all arcs together, D; overrides the model. */
  arcFlattening?: number | null;
  /** Corneal thickness measured where the arc will lie, µm. */
  localThickness?: number | null;
  /** Cylinder of a toric lens at the corneal plane, D. */
  lensCylinder?: number | null;
  /** Meridian on which the lens is placed, i.e. which it flattens, degrees. */
  lensMeridian?: number | null;
  /** Names of `Risk`, separated by spaces. */
  risks?: string | null;
  /** The surgeon's own results instead of the default model. */
  ownFigures?: OwnFigures | null;
}

/** A plan with every field present; `null` stands for "none". */
export type CompletePlan = {
  [Field in keyof Required<EyePlan>]: Field extends NullableField
    ? NonNullable<EyePlan[Field]> | null
    : NonNullable<EyePlan[Field]>;
};

/** Fields for which "none" is a meaningful answer. */
export type NullableField =
  | 'age'
  | 'incisionSite'
  | 'incisionFlattening'
  | 'arcSite'
  | 'arcDepth'
  | 'arcFlattening'
  | 'localThickness'
  | 'lensCylinder'
  | 'lensMeridian'
  | 'ownFigures';

/** Everything that follows from a plan. All numbers are finite. */
export interface PlanOutcome {
  /** Front surface as measured. */
  before: Astigmatism;
  steps: PlanStep[];
  /** What is expected to be left. */
  after: Astigmatism;
  /** What would be left if the whole intended effect were reached. */
  afterIntended: Astigmatism;
  /** Expected change of the mean corneal power, D (0 while flattening and steepening are equal). */
  meanPowerShift: number;
  /** Uncertainty of what is left. */
  spread: Spread;
  /** Probability (0–1) that what is left is at most `limit` dioptres. */
  chanceWithin(limit: number): number;
  cautions: Caution[];
}
