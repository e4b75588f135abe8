import { CONSTANTS } from './constants.js';
import type { ModelConstant } from './model.js';
import type { SourceId } from './references.js';

/** A figure on screen that can be asked where it comes from. */
export type FigureId = 'before' | 'after' | 'intended' | 'chance' | 'spread' | 'backSurface' | 'incision' | 'arcs' | 'lens' | 'meanPower' | 'surgery';

export interface Figure {
  title: string;
  /** What it is, in one or two sentences. */
  what: string;
  formula: string;
  /** Constants that enter, each with its own sources. */
  constants: readonly ModelConstant<unknown>[];
  /** Sources of the method itself. */
  sources: readonly SourceId[];
  /** For what it may be used. */
  range: string;
}

/** Every figure that the elements show. Marked as pure, so that a bundler keeps it out of what does not ask for it. */
export const FIGURES: Record<FigureId, Figure> = /* @__PURE__ */ (({ incision, arcs, backSurface, uncertainty }) => ({
  before: {
    title: 'Astigmatism before',
    what: 'The difference of the two keratometer readings, at the steep meridian. Front surface only.',
    formula: 'steep reading − flat reading; from radii: 337.5 / r',
    constants: [uncertainty.keratometry],
    sources: ['iso10343', 'iso8429'],
    range: 'readings of 28–75 D',
  },
  after: {
    title: 'Astigmatism that is expected to remain',
    what: 'The astigmatism before and what each step adds, summed as vectors with doubled angles.',
    formula: 'x = Σ C·cos 2θ, y = Σ C·sin 2θ; a cut of F dioptres at φ adds (−F·cos 2φ, −F·sin 2φ)',
    constants: [],
    sources: ['holladay1992', 'thibos1997'],
    range: 'regular astigmatism; thin surfaces',
  },
  intended: {
    title: 'What would remain if the whole intended effect were reached',
    what: 'The same sum with the full effect that the published table of arcs intends. Arcs usually achieve about half of it, so the truth tends to lie between the two figures.',
    formula: 'as above, with the achieved share set to 1',
    constants: [arcs.bladeShare, arcs.laserShare],
    sources: ['relaxingTable', 'roberts2018', 'naguib2022'],
    range: 'arcs of 30–90°',
  },
  chance: {
    title: 'Of 100 eyes like this',
    what: 'How many eyes with the same readings and the same plan would end with so little, if the errors are as large as published. It speaks of many eyes; it cannot know about this one.',
    formula: 'bivariate normal distribution over the disc |remaining| ≤ limit, averaged over the error of the marks',
    constants: [uncertainty.keratometry, uncertainty.backSurface, uncertainty.placement, uncertainty.lensRotation],
    sources: ['gjerdrum2020', 'khatib2020', 'kodavoor2020', 'assumed'],
    range: 'regular corneas; whole hundredths are finer than the knowledge behind them',
  },
  spread: {
    title: 'Uncertainty of what remains',
    what: 'The inner ellipse holds half, the outer one 95 of 100 of the results of eyes like this; the band of a curve, between its quartiles, the magnitudes of half of them.',
    formula: 'sum of the variances of readings, cuts, back surface, marks and lens; semi-axes √(−2·ln(1 − p)) standard deviations; band from the 25 to the 75 % point of the magnitude',
    constants: [uncertainty.keratometry, uncertainty.keratometryDryEye, uncertainty.backSurface, uncertainty.placement, uncertainty.lensRotation, incision.sdNarrow, incision.sdMiddle, incision.sdWide, arcs.sdAlongShare, arcs.sdAlongLeast, arcs.sdAcross],
    sources: [],
    range: 'independent, normally distributed errors',
  },
  backSurface: {
    title: 'Back surface of the cornea',
    what: 'What the posterior cornea adds to the front: measured, or the same typical value for every eye.',
    formula: 'typical: 0.27 D @ 180°',
    constants: [backSurface.typical],
    sources: ['savini2015'],
    range: 'published means go from 0.18 to 1.04 D; instruments agree poorly',
  },
  incision: {
    title: 'Flattening by the incision',
    what: 'The mean flattening of the entered meridian, not the mean size of the change, which is larger because it counts measurement noise.',
    formula: 'F = k(site) · max(0, 0.10 + 0.22 · (width − 2.2)) D',
    constants: [incision.base, incision.perMillimetre, incision.referenceWidth, incision.siteFactor, incision.sdNarrow, incision.sdMiddle, incision.sdWide],
    sources: ['ferreira2018', 'masket2009', 'kaufmann2005'],
    range: 'clear corneal incisions of 1.8–3.5 mm',
  },
  arcs: {
    title: 'Flattening by relaxing arcs',
    what: 'What the published table intends, times the share that trials have achieved.',
    formula: 'intended = 1.70 · (length / 60) · n^0.6 · [1 + 0.006 · (age − 65)] · g; expected = share · intended',
    constants: [arcs.atSixtyDegrees, arcs.countPower, arcs.perYear, arcs.referenceAge, arcs.ageLimits, arcs.againstFactor, arcs.bladeShare, arcs.laserShare, arcs.sdAlongShare, arcs.sdAlongLeast, arcs.sdAcross],
    sources: ['relaxingTable', 'kaufmann2005', 'wang2003'],
    range: 'arcs of 30–90° on a circle of about 11 mm, 85–90 % deep, ages 40–90',
  },
  lens: {
    title: 'Toric lens',
    what: 'The cylinder of the lens at the corneal plane, on the meridian on which it is placed. A lens that is turned by β leaves 2·C·sin β.',
    formula: 'adds (−L·cos 2ψ, −L·sin 2ψ)',
    constants: [uncertainty.placement, uncertainty.lensRotation],
    sources: ['felipe2011', 'iacle'],
    range: 'power stated at the corneal plane; the ratio to the plane of the lens differs from eye to eye',
  },
  meanPower: {
    title: 'Change of the mean corneal power',
    what: 'A cut flattens its meridian and steepens the one across it. While both are equal the mean power stays.',
    formula: 'D · (1 − c) / (2 · (1 + c)), c = flattening over steepening',
    constants: [arcs.couplingRatio],
    sources: ['faktorovich1999', 'clinOphthalmol2015'],
    range: 'arcs near the limbus and small clear corneal incisions',
  },
  surgery: {
    title: 'Amount of surgery',
    what: 'Number and length of the arcs, a toric lens, and the width of the entry. At equal chance the plan with less of it is ranked first.',
    formula: 'fewer arcs, then no lens, then shorter arcs, then the narrower entry',
    constants: [],
    sources: ['assumed'],
    range: 'an order of our own, for sorting only',
  },
}))(CONSTANTS);
