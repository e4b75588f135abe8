/** From a clinical figure by which the model was set to what the model says in its place; one reader a kind of figure. */
import {
  MODEL, TORSION, arcFlattening, backSurface, expectedAcuity, incisionFlattening, type SourceId, type TorsionSourceId,
} from '../../core/index.js';
import clinical from '../fixtures/clinical.json' with { type: 'json' };
import { meanMagnitude } from './published.js';

export interface ClinicalEntry {
  id: string;
  source: SourceId | TorsionSourceId | null;
  /** Where there is no record of the source in the core. */
  citation?: string;
  what: string;
  unit: string;
  // Each kind has inputs of its own; the reader of a kind knows them.
  // eslint-disable-next-line @typescript-eslint/no-explicit-any
  inputs: any;
  published: number;
  over?: number;
  added?: number;
  step: number;
  status: 'read' | 'derived';
  note?: string;
}

export const entries = clinical.entries as unknown as ClinicalEntry[];

/** The entries of one kind, each with its id in front, as a table of tests wants them. */
export const clinicalFigures = (kind: RegExp): [id: string, entry: ClinicalEntry][] => entries.filter(({ id }) => kind.test(id)).map((entry) => [entry.id, entry]);

/** What is compared: the printed figure with what it is divided by or what is added to it. */
export const target = ({ published, over = 1, added = 0 }: ClinicalEntry): number => published / over + added;

const incision = (width: number, site: number) => incisionFlattening({ width, site, eye: 'right' });

/** Mean size of what an entry induces in the model: the mean vector with its scatter, as a magnitude. */
function meanInduced(width: number): number {
  const { flattening, sd } = incision(width, 180);
  return meanMagnitude({ mean: { x: -flattening, y: 0 }, covariance: [[sd * sd, 0], [0, sd * sd]] }, flattening + 9 * sd);
}

const arcs = (length: number, count: 1 | 2, age: number, method: 'blade' | 'laser' = 'blade') => arcFlattening({ length, count, age, rule: 'with', method });

const READERS: [kind: RegExp, read: (inputs: ClinicalEntry['inputs']) => number][] = [
  [/^flattening-/, ({ width, site }) => incision(width, site).flattening],
  [/^induced-/, ({ width }) => meanInduced(width)],
  [/^site-/, ({ degrees }) => incision(MODEL.incision.referenceWidth, (540 - degrees) % 360).flattening / incision(MODEL.incision.referenceWidth, 180).flattening],
  [/^arcs-/, ({ length, count, age }) => arcs(length, count, age).expected],
  [/^share-/, ({ method }) => arcs(60, 1, 65, method).expected / arcs(60, 1, 65, method).intended],
  [/^coupling-/, () => MODEL.arcs.couplingRatio],
  [/^back-/, () => backSurface('typical').magnitude],
  [/^uncertainty-keratometry$/, () => MODEL.uncertainty.keratometry],
  [/^uncertainty-keratometryDryEye$/, () => MODEL.uncertainty.keratometryDryEye],
  [/^placement-/, () => MODEL.uncertainty.placement],
  [/^limbus$/, () => MODEL.eye.limbusDiameter],
  [/^torsion-usual/, () => TORSION.usual.value],
  [/^torsion-most$/, () => TORSION.most.value],
  [/^acuity-/, ({ cylinder }) => expectedAcuity(cylinder).logMAR - expectedAcuity(0).logMAR],
];

export function compute({ id, inputs }: ClinicalEntry): number {
  const reader = READERS.find(([kind]) => kind.test(id));
  if (!reader) throw new Error(`No reader for the clinical figure “${id}”.`);
  return reader[1](inputs);
}
