/**
 * Published entries, or single fields of them (`id.field`), that no function of the core answers, with the reason.
 * Nothing may be left out silently: the tests compare this table with the fixture in both directions.
 */
const NOT_OURS = {
  sight: 'calculated by the functions on sight and compared in sight-published.test.ts',
  letters: 'the lines of a chart and their contrast belong to what is drawn, not to this core',
  surface: 'calculated by the functions on the shape of the cornea and compared in shape-published.test.ts',
  arcs: 'lengths of arcs in mm are plane geometry of the drawing; the core counts arcs in degrees',
  tolerances: 'manufacturing or fitting tolerances are not used by this core',
  given: 'stated as an input, not calculated',
  words: 'a sentence of a standard, nothing to calculate',
} as const;

const ids = (reason: keyof typeof NOT_OURS, ...list: string[]): [string, string][] => list.map((id) => [id, NOT_OURS[reason]]);

export const elsewhere: ReadonlyMap<string, string> = new Map([
  ...ids('sight', 'iso8596-landolt', 'iso8596-gap-5m', ...[3, 4, 5, 8, 12].map((j) => `zernike-index-${j}`)),
  ...ids('letters', 'iso8596-step', 'iso10938-tolerance'),
  ...ids('surface', 'corneal-area-sphere', ...['7.8--0.26', '7.7--0.26', '7.8--0.5'].map((shape) => `corneal-area-ellipse-${shape}`)),
  ...ids('surface', ...['7.8-10', '7.8-12', '7.5-10', '8.0-10', '7.8-3'].map((size) => `sag-sphere-${size}`)),
  ...ids('surface', 'sag-conic-7.8-10', 'sag-conic-7.8-12', 'ansiz8023-meridian.shapeFactorE', 'ansiz8023-meridian.asphericityQ'),
  ...ids('arcs', ...['7-45', '7-60', '7-90', '9-45', '9-60', '10-45', '11-60', '12-30', '12-90', '11.5-30'].map((size) => `arc-${size}`)),
  ...ids('tolerances', 'iso10343-testsurfaces', 'ansiz801-axis-tol', 'iso11979-2-toric'),
  ...ids('given', 'transpose-toric-mrcophth-1.base', 'transpose-toric-mrcophth-2.base'),
  ...ids('words', 'iso8429-axis.viewedFrom', 'risk-control-order', 'iso24157-zernike'),
]);
