import type { Reference, SourceId } from './references.js';

/** Sources on how eyes turn between sitting and lying. Those of the model are in `references`. */
export const torsionReferences = {
  gessTorsion: {
    authors: 'Gess AJ',
    title: 'Cyclotorsional movement may not affect eye measurements',
    journal: 'American Academy of Ophthalmology, Editors’ Choice',
    year: null,
    pages: '',
    doi: '',
    status: 'read',
    fromMemory: ['title'],
    use: '1.4 ± 2.04° from sitting to lying in 310 eyes; earlier reports of extremes of 10 to 24°; a note on the study, not the study',
  },
  kang2012: {
    authors: 'Kang SY, Lim JW, Kim HM, Song JS',
    title: 'Comparison of Manual and Automated Methods to Measure Position-Induced Ocular Cyclotorsion',
    journal: 'J Clin Exp Ophthalmol',
    year: 2012,
    pages: '3(2)',
    doi: '',
    status: 'read',
    use: 'by marks at 0 and 180° and a degree gauge −0.53 ± 2.30°, by iris 1.08 ± 2.61°, counter-clockwise positive; the two ways agreed no better than within 6.1°; abstract only',
  },
} as const satisfies Record<string, Reference>;

/** Key of a record in `torsionReferences`. */
export type TorsionSourceId = keyof typeof torsionReferences;

interface TorsionConstant {
  value: number;
  unit: string;
  source: readonly (SourceId | TorsionSourceId)[];
  note: string;
}

/** How far eyes turn between sitting and lying. */
export const TORSION = {
  usual: { value: 6, unit: '°', source: ['gessTorsion', 'kang2012'], note: 'mean and two standard deviations: 1.4 + 2·2.04 = 5.5 and 1.08 + 2·2.61 = 6.3; more should be read again' },
  most: { value: 25, unit: '°', source: ['gessTorsion', 'assumed'], note: 'just above the greatest that was ever reported (24°); more is taken for a slip' },
} as const satisfies Record<string, TorsionConstant>;
