/**
 * Where the figures come from. One record a source. `status` says whether the figures taken from it were read in a
 * public copy or are recalled from memory; `fromMemory` names parts of the citation itself that were not on the page.
 */
export interface Reference {
  authors: string;
  title: string;
  journal: string;
  year: number | null;
  /** `volume:pages` */
  pages: string;
  doi: string;
  status: 'read' | 'memory';
  /** Parts of this citation that are recalled, not read. */
  fromMemory?: readonly string[];
  /** What is taken from it here. */
  use: string;
}

/* @__NO_SIDE_EFFECTS__ */
const record = (
  status: Reference['status'],
  [authors, title, journal, year, pages = '', doi = '']: [string, string, string, number | null, string?, string?],
  use: string,
  fromMemory?: readonly string[],
): Reference => ({ authors, title, journal, year, pages, doi, status, use, ...(fromMemory && { fromMemory }) });

export const references = {
  commonPractice: record('memory', ['–', 'Common practice', '–', null], 'what the trade does, without a published source'),
  assumed: record('memory', ['–', 'Assumed by this library', '–', null], 'a choice of ours, to be replaced by better knowledge'),

  iso8429: record('read', ['ISO', 'Ophthalmology – Graduated dial scale', 'ISO 8429', 1986], 'the dial: 0° at the viewer’s right, counter-clockwise, the same for both eyes'),
  iso10343: record('read', ['ISO', 'Ophthalmic instruments – Ophthalmometers', 'ISO 10343', 2014], 'keratometric constant 337.5'),
  thibos1997: record(
    'read',
    ['Thibos LN, Wheeler W, Horner D', 'Power vectors: an application of Fourier analysis to the description and statistical analysis of refractive error', 'Optom Vis Sci', 1997, '74:367-375'],
    'M, J0 and J45',
    ['title'],
  ),
  holladay1992: record(
    'read',
    ['Holladay JT, Cravy TV, Koch DD', 'Calculating the surgically induced refractive change following ocular surgery', 'J Cataract Refract Surg', 1992, '18:429'],
    'induced change as a difference in the double-angle plane',
    ['title'],
  ),
  naeser1994: record(
    'read',
    ['Naeser K et al.', 'Polar value analysis of refractive data', 'J Cataract Refract Surg', 1994, '20:162-168'],
    'the component along one meridian and the torque across it',
    ['title'],
  ),

  ferreira2018: record(
    'read',
    ['Ferreira TB, Ribeiro FJ, Pinheiro J, Ribeiro P, O’Neill JG', 'Comparison of surgically induced astigmatism and morphologic features resulting from femtosecond laser and manual clear corneal incisions for cataract surgery', 'J Refract Surg', 2018, '34:322-329'],
    'mean flattening of a 2.4 mm entry: 0.13 D temporal, 0.34 D superior-oblique',
    ['title', 'year', 'pages'],
  ),
  kaufmann2005: record(
    'read',
    ['Kaufmann C, Peter J, Ooi K, Phipps S, Cooper P, Goggin M', 'Limbal relaxing incisions versus on-axis incisions to reduce corneal astigmatism at the time of cataract surgery', 'J Cataract Refract Surg', 2005, '31:2261-2265'],
    'flattening of on-axis entries (median 0.41 D) and of paired arcs (median 1.21 D)',
    ['title'],
  ),
  masket2009: record(
    'read',
    ['Masket S, Wang L, Belani S', 'Induced astigmatism with 2.2- and 3.0-mm coaxial phacoemulsification incisions', 'J Refract Surg', 2009, '25:21-24'],
    'induced magnitude 0.35 ± 0.21 D at 2.2 mm and 0.67 ± 0.48 D at 3.0 mm',
    ['title', 'pages'],
  ),
  pakravan2009: record(
    'read',
    ['Pakravan M et al.', 'Nasal versus temporal approach for clear corneal phacoemulsification', 'J Ophthalmic Vis Res', 2009, '4:79-83'],
    'a nasal entry induces more than a temporal one',
    ['title'],
  ),
  kohnen2002: record(
    'read',
    ['Kohnen S, Neuber R, Kohnen T', 'Effect of temporal and nasal unsutured limbal tunnel incisions on induced astigmatism after phacoemulsification', 'J Cataract Refract Surg', 2002, '28:821-825'],
    'nasal 1.05 D against temporal 0.47 D',
    ['title'],
  ),
  simsek1998: record(
    'read',
    ['Simsek S, Yasar T, Demirok A, Cinal A, Yilmaz OF', 'Effect of superior and temporal clear corneal incisions on astigmatism after sutureless phacoemulsification', 'J Cataract Refract Surg', 1998, '24:515-518', '10.1016/S0886-3350(98)80294-0'],
    'superior 1.44 D against temporal 0.62 D',
    ['title'],
  ),
  rainer1999: record(
    'read',
    ['Rainer G, Menapace R, Vass C et al.', 'Corneal shape changes after temporal and superolateral 3.0 mm clear corneal incisions', 'J Cataract Refract Surg', 1999, '25:1121-1126'],
    'more local flattening at 10:30 than temporally',
    ['title'],
  ),

  relaxingTable: record(
    'read',
    ['author not shown on the page', 'Surgical correction of astigmatism with incisional techniques: tips and tricks', 'textbook chapter', null],
    'table of arc length and number by cylinder, age and rule, to which the intended effect was fitted (rms 0.19 D over 50 cells)',
  ),
  roberts2018: record(
    'read',
    ['Roberts HW, Wagh VK, Sullivan DL, Archer TJ, O’Brart DPS', 'Refractive outcomes after limbal relaxing incisions or femtosecond laser arcuate keratotomy to manage corneal astigmatism at the time of cataract surgery', 'J Cataract Refract Surg', 2018, '44:955-963'],
    'achieved share of the intended effect: 0.48 by blade, 0.73 by laser',
    ['title'],
  ),
  naguib2022: record(
    'read',
    ['Naguib MA, Elrashidy HEO, Samir G', 'Limbal relaxing incisions with phacoemulsification', 'Al-Azhar Assiut Med J', 2022, '20:33-38', '10.4103/azmj.azmj_22_21'],
    'achieved share 0.56–0.57 by blade',
    ['title'],
  ),
  wang2003: record(
    'read',
    ['Wang L, Misra M, Koch DD', 'Peripheral corneal relaxing incisions combined with cataract surgery', 'J Cataract Refract Surg', 2003, '29:712-722'],
    'arcs do more in eyes with against-the-rule astigmatism',
    ['volume and pages'],
  ),
  faktorovich1999: record(
    'read',
    ['Faktorovich EG, Maloney RK, Price FW', 'Effect of astigmatic keratotomy on spherical equivalent', 'Am J Ophthalmol', 1999, '127:260-269'],
    'flattening of the cut meridian over steepening across it: 0.84–0.95, not different from Gauss’s law',
    ['title'],
  ),
  clinOphthalmol2015: record(
    'read',
    ['authors not shown on the page', 'Limbal relaxing incisions: three years of follow-up', 'Clin Ophthalmol', 2015, '9:1581-1587', '10.2147/OPTH.S89024'],
    'central power unchanged after relaxing arcs, i.e. coupling 1',
    ['title'],
  ),

  langenbucher2025: record(
    'read',
    ['Langenbucher A et al.', '[Astigmatism of the whole cornea from its front surface]', 'Clin Exp Ophthalmol', 2025, '', '10.1111/ceo.70009'],
    'one constant for the back surface does as well as formulae with more terms',
    ['title'],
  ),
  eom2014: record(
    'read',
    ['Eom Y et al.', 'Toric intraocular lens calculations using ratio of anterior to posterior corneal cylinder power', 'Am J Ophthalmol', 2014, '158:717-724'],
    'the back surface adds 0.27 D against the rule in eyes steep near 180°',
  ),
  naeser2018: record(
    'read',
    ['Næser K, Savini G, Bregnhøj JF', 'Age-related changes in with-the-rule and oblique corneal astigmatism', 'Acta Ophthalmol', 2018, '96:600-606'],
    'the back surface adds about 0.25 D against the rule at every age',
  ),
  savini2015: record(
    'read',
    ['Savini G, Næser K', 'An analysis of the factors influencing the residual refractive astigmatism after cataract surgery with toric intraocular lenses', 'Invest Ophthalmol Vis Sci', 2015, '56:827-835'],
    'with front readings alone, eyes steep near 90° were over-corrected by 0.59 D and eyes steep near 180° under-corrected by 0.32 D',
    ['pages'],
  ),

  gjerdrum2020: record(
    'read',
    ['Gjerdrum B et al.', 'Repeatability of keratometry', 'Clin Ophthalmol', 2020, '14:3991-4003'],
    'within-subject standard deviation of corneal astigmatism 0.14–0.25 D, derived from the coefficient of repeatability',
    ['title'],
  ),
  khatib2020: record(
    'read',
    ['Khatib ZI et al.', 'Accuracy of manual axis marking', 'Indian J Ophthalmol', 2020, '68:455-458'],
    'mean error of manual marking 4.60°',
    ['title'],
  ),
  kodavoor2020: record(
    'read',
    ['Kodavoor SK et al.', 'Manual and digital marking of toric lenses', 'Indian J Ophthalmol', 2020, '68:3020-3024'],
    'misplacement of toric lenses 4.71 ± 3.12° by hand, 4.03 ± 2.99° digitally',
    ['title'],
  ),
  felipe2011: record(
    'read',
    ['Felipe A, Artigas JM, Díez-Ajenjo A et al.', 'Residual astigmatism produced by toric intraocular lens rotation', 'J Cataract Refract Surg', 2011, '37:1894-1901'],
    'a lens 10° off leaves a third of the cylinder',
    ['pages'],
  ),
  iacle: record(
    'read',
    ['Williams L (appendix)', 'The IACLE Contact Lens Course, module 3, appendix B', 'International Association of Contact Lens Educators', 1993],
    'power and axis that a rotated toric lens leaves',
  ),

  villegas2014: record(
    'read',
    ['Villegas EA, Alcón E, Artal P', 'Minimum amount of astigmatism that should be corrected', 'J Cataract Refract Surg', 2014, '40:13-19'],
    'less than 0.5 D does not degrade acuity in most eyes',
  ),
  duffey1988: record(
    'read',
    ['authors not shown on the page', 'Paired arcuate keratotomy', 'Arch Ophthalmol', 1988, '106:1130'],
    'in cadaver eyes arcs on a smaller circle do more',
  ),
  ueno2021: record(
    'read',
    ['Ueno Y et al.', 'Corneal irregularity by direction of astigmatism', 'Sci Rep', 2021, '11:15769'],
    'irregularity is greatest in oblique, then in against-the-rule astigmatism',
    ['title'],
  ),

  rufer2005: record(
    'read',
    ['Rüfer F, Schröder A, Erb C', 'White-to-white corneal diameter: normal values in healthy humans', 'Cornea', 2005, '24:259-261'],
    'horizontal white-to-white 11.71 ± 0.42 mm',
    ['title'],
  ),
  edmund1987: record(
    'read',
    ['Edmund C', 'Determination of the corneal thickness profile', 'Acta Ophthalmol', 1987],
    'thickness grows with the square of the distance from the centre',
    ['title', 'authors'],
  ),

  hoshikawa2021: record(
    'read',
    ['Hoshikawa R, Kamiya K, Fujimura F, Shoji N', 'Prediction of distance visual acuity in presbyopic astigmatic subjects', 'Sci Rep', 2021, '11:6958', '10.1038/s41598-021-85313-3'],
    'logMAR = 0.017·x² + 0.125·x − 0.116 for x ≤ 3 D, R² 0.544, 318 eyes; no difference between directions (P = .92)',
  ),
  smith1982: record(
    'memory',
    ['Smith G', 'Angular diameter of defocus blur discs', 'Am J Optom Physiol Opt', 1982, '59:885-889'],
    'blur angle = pupil × error in focus; the transfer 2·J1(x)/x is the Fourier transform of that disc',
    ['title', 'pages'],
  ),
  thibos2004: record(
    'memory',
    ['Thibos LN, Hong X, Bradley A, Applegate RA', 'Accuracy and precision of objective refraction from wavefront aberrations', 'J Vis', 2004, '4:329-351'],
    'M, J0 and J45 from Zernike coefficients of the second order; the factor for M was read in J Eur Opt Soc-Rapid 2023',
  ),
  iso24157: record('memory', ['ISO', 'Ophthalmic optics and instruments – Reporting aberrations of the human eye', 'ISO 24157', 2008], 'order, sign and norm of Zernike functions; the norm and the rule of sine and cosine were read elsewhere'),
  iso8596: record('read', ['ISO', 'Ophthalmic optics – Visual acuity testing – Standard optotype and its presentation', 'ISO 8596', 1994], 'Landolt ring: outer diameter 5, stroke and gap 1, eight positions; acuity 1 / gap in minutes of arc', ['year']),
} as const satisfies Record<string, Reference>;

/** Key of a record in `references`. */
export type SourceId = keyof typeof references;
