import type { OutcomeWording } from './outcomes-text.js';
import type { ArcMethod, Astigmatism, Ellipse, EyeSide, Quantity, Vector } from './types.js';

/** What a column of the table may hold. A heading with one of these names is always understood. */
export const OUTCOME_COLUMNS = [
  'label', 'eye',
  'flatBefore', 'steepBefore', 'magnitudeBefore', 'meridianBefore',
  'flatAfter', 'steepAfter', 'magnitudeAfter', 'meridianAfter',
  'incisionSite', 'incisionWidth',
  'arcCount', 'arcLength', 'arcSite', 'arcMethod',
  'lensCylinder', 'lensMeridian',
  'age', 'predictedMagnitude', 'predictedMeridian',
] as const;

export type OutcomeColumn = (typeof OUTCOME_COLUMNS)[number];

/** A sentence without a language: its name in `OUTCOME_TEXT` and the values in it; `text` is the sentence in English. */
export interface Said {
  id: OutcomeWording;
  values: Readonly<Record<string, Quantity | string>>;
  text: string;
}

/** One eye as operated on. Corneal astigmatism in D at its steep meridian, sites in degrees 0–360, widths in mm. */
export interface OutcomeRecord {
  /** Line of the text on which the row begins, from 1. */
  line: number;
  /** As given, never looked into. Whoever holds the record decides what becomes of it. */
  label: string | null;
  eye: EyeSide;
  before: Astigmatism;
  after: Astigmatism;
  /** Readings before, D; none where the table states the astigmatism only. */
  readings: { flat: number; steep: number } | null;
  incision: { site: number; width: number } | null;
  arcs: { count: 1 | 2; site: number; length: number; method: ArcMethod } | null;
  /** Cylinder at the corneal plane, and the meridian on which the lens was placed, i.e. which it flattens. */
  lens: { cylinder: number; meridian: number } | null;
  age: number | null;
  /** What the surgeon's plan expected to remain, front of the cornea and lens together. */
  predicted: Astigmatism | null;
}

/** What is wrong with one cell, or with a row as a whole. */
export interface Fault {
  column: OutcomeColumn | null;
  /** The heading of the cell, as given. */
  heading: string | null;
  /** Number of the cell in its row, from 1. */
  position: number | null;
  value: string;
  reason: Said;
}

/** A row that is not counted, with everything that speaks against it; at least one fault. */
export interface RefusedRow {
  line: number;
  /** Line on which the row ends; more than `line` where a quoted cell runs over several. */
  lastLine: number;
  cells: readonly string[];
  faults: readonly Fault[];
}

/** A column of the text and what it was taken for. */
export interface Heading {
  /** Number of the column, from 0. */
  index: number;
  text: string;
  column: OutcomeColumn | null;
  /** Unit that the heading names, where it is one of these. */
  unit: 'D' | 'mm' | null;
  by: 'user' | 'words' | null;
  /** Why it was not matched, or why the match should be looked at. */
  why: Said | null;
}

export type Delimiter = ',' | ';' | '\t';

/** A table as read. Every row below the heading is in `records` or in `refused`, never in both. */
export interface OutcomeTable {
  delimiter: Delimiter;
  /** Decimal sign of the numbers; null where none has decimals. */
  decimal: '.' | ',' | 'mixed' | null;
  headings: Heading[];
  records: OutcomeRecord[];
  /** The cells of each record, as given. */
  cells: (readonly string[])[];
  refused: RefusedRow[];
  /** Rows below the heading that are not blank. */
  rows: number;
  blankLines: number;
  /** What keeps the table from being read: columns that are missing or named twice. */
  problems: Said[];
  /** What was assumed, and what looks odd. */
  notes: Said[];
}

/** One eye with what follows from it; every vector in the double-angle plane, D. */
export interface EyeResult {
  record: OutcomeRecord;
  /** Surgically induced: corneal astigmatism after minus before. */
  induced: Vector;
  /** The induced change in the frame of the incision: flattening of the entered meridian, torque > 0 counter-clockwise. */
  incision: { flattening: number; torque: number } | null;
  /** What remains: cornea after, lens, and the back surface where it is taken into account. */
  remaining: Vector;
  /** What the plan expected to remain. */
  predicted: Vector | null;
  /** Where the prediction comes from: the table, or the model with what was done. */
  basis: 'table' | 'model';
  /** Remaining minus predicted. */
  error: Vector;
}

/** Eyes with a magnitude up to a limit, and the Wilson interval of that share. Shares are 0–1. */
export interface ShareWithin {
  limit: number;
  eyes: number;
  share: number;
  low: number;
  high: number;
}

/** A series of vectors in numbers. What the series is too short for is null, and `omitted` says why. */
export interface OutcomeSummary {
  n: number;
  /** Level of ellipses and intervals, 0–1. */
  p: number;
  centroid: Vector | null;
  meanMagnitude: number | null;
  medianMagnitude: number | null;
  /** Sample covariance (n − 1), D². */
  covariance: [[number, number], [number, number]] | null;
  /** Holds the true mean with confidence p. */
  ellipseOfMean: Ellipse | null;
  /** Holds the next eye with probability p. */
  ellipseOfEyes: Ellipse | null;
  /** Hotelling's T² of the centroid against 0. */
  t2: number | null;
  /** Chance of a T² at least as large if the true mean were 0. */
  pValue: number | null;
  robust: {
    /** Point with the least sum of distances to all eyes. */
    spatialMedian: Vector;
    /** Mean in which eyes that lie far off count as if they lay nearer: at the radius that holds nine of ten in a normal series. */
    winsorisedCentroid: Vector;
    /** Number of eyes that are drawn in for it. */
    drawnIn: number;
  } | null;
  within: ShareWithin[];
  omitted: { figures: readonly (keyof OutcomeSummary)[]; reason: Said }[];
  /** Why the mean magnitude is not the magnitude of the mean; null without eyes. */
  meanAgainstCentroid: Said | null;
}

/** How an own figure came about. */
export interface OwnEvidence {
  /** Eyes that count for it. */
  eyes: number;
  /** Mean of these eyes: D of flattening, or the achieved share of the intended effect. */
  observed: number | null;
  /** What the model says about the same eyes. */
  model: number | null;
  /** How much the own eyes count against the model, 0–1. */
  weight: number | null;
  /** Standard error of the figure that is advised, in its unit. */
  error: number | null;
  /** Why this figure, or why none. */
  reason: Said;
  /** What to look at before using it. */
  notes: Said[];
}
