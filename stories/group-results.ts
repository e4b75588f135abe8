import { MODEL, chanceWithin, incisionFlattening } from '../core/index.js';
import type { SourceId, Spread } from '../core/index.js';

/** One published result of a group of eyes beside what the default model gives for such a group. */
export interface GroupResult {
  group: string;
  quantity: string;
  published: string;
  model: string;
  source: SourceId;
  /** What the comparison leaves open. */
  remark: string;
}

/** Upper end and step of the sums over the magnitude, D. */
const REACH = 8;
const STEP = 0.01;

/** Mean and standard deviation of the magnitude of a bivariate normal vector, D: sums of the chance to be above. */
export function magnitudeOf(spread: Spread): { mean: number; sd: number } {
  let mean = 0;
  let square = 0;
  for (let limit = STEP / 2; limit < REACH; limit += STEP) {
    const above = 1 - chanceWithin(spread, limit);
    mean += above * STEP;
    square += 2 * limit * above * STEP;
  }
  return { mean, sd: Math.sqrt(square - mean * mean) };
}

const isotropic = (mean: number, sd: number): Spread => ({ mean: { x: mean, y: 0 }, covariance: [[sd * sd, 0], [0, sd * sd]] });

const plusMinus = ({ mean, sd }: { mean: number; sd: number }): string => `${mean.toFixed(2)} ± ${sd.toFixed(2)} D`;

function temporalEntry(width: number): { flattening: string; induced: string } {
  const { flattening, sd } = incisionFlattening({ width, site: 180, eye: 'right' });
  return { flattening: `${flattening.toFixed(2)} D`, induced: plusMinus(magnitudeOf(isotropic(flattening, sd))) };
}

/** Arcs by blade that intend 1.5 D in an eye with 1.5 D, as in the trial; the readings' own error is left aside. */
function arcsOfTrial(): { induced: string; good: string } {
  const intended = 1.5;
  const { bladeShare, sdAlongShare, sdAlongLeast, sdAcross } = MODEL.arcs;
  const expected = intended * bladeShare;
  const along = Math.max(sdAlongLeast, sdAlongShare * expected);
  const effect: Spread = { mean: { x: expected, y: 0 }, covariance: [[along ** 2, 0], [0, sdAcross ** 2]] };
  const remaining: Spread = { ...effect, mean: { x: intended - expected, y: 0 } };
  return { induced: `${magnitudeOf(effect).mean.toFixed(2)} D`, good: `${Math.round(100 * chanceWithin(remaining, 0.5))} of 100` };
}

/** Group results of the papers that the model was chosen on. */
export function groupResults(): GroupResult[] {
  const [narrow, wide, usual] = [temporalEntry(2.2), temporalEntry(3), temporalEntry(2.4)];
  const oblique = incisionFlattening({ width: 2.4, site: 135, eye: 'right' }).flattening;
  const arcs = arcsOfTrial();
  return [
    { group: 'Temporal entry, 2.2 mm', quantity: 'mean size of the induced change', published: '0.35 ± 0.21 D', model: narrow.induced, source: 'masket2009', remark: 'these entries had a groove' },
    { group: 'Temporal entry, 3.0 mm', quantity: 'mean size of the induced change', published: '0.67 ± 0.48 D', model: wide.induced, source: 'masket2009', remark: '' },
    { group: 'Temporal entry, 2.4 mm', quantity: 'mean flattening', published: '0.13 D', model: usual.flattening, source: 'ferreira2018', remark: 'by hand' },
    { group: 'Superotemporal entry, 2.4 mm', quantity: 'mean flattening', published: '0.34 D', model: `${oblique.toFixed(2)} D`, source: 'ferreira2018', remark: 'by hand; by laser 0.21 D' },
    { group: 'Arcs by blade, 1.5 D intended', quantity: 'mean size of the induced change', published: '1.02 D', model: arcs.induced, source: 'roberts2018', remark: 'single arcs and pairs together; the published figure includes the scatter of readings and entry, the model’s does not' },
    { group: 'Arcs by blade, 1.5 D intended', quantity: 'eyes that end below 0.50 D', published: '20 of 100', model: arcs.good, source: 'roberts2018', remark: 'real scatter is larger' },
  ];
}
