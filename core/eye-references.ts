import type { Reference } from './references.js';

/**
 * Sources of the schematic eyes. `status` is that of the constants taken from it: `memory` means that radii, distances
 * and indices were recalled and not read, however well the eye made of them agrees with figures that were.
 */
export const eyeReferences = {
  gullstrand1909: {
    authors: 'Gullstrand A',
    title: 'Appendix to Helmholtz’s Treatise on Physiological Optics',
    journal: 'Helmholtz H, Treatise on Physiological Optics, vol. 1',
    year: 1909,
    pages: '',
    doi: '',
    status: 'read',
    fromMemory: ['title'],
    use: 'exact schematic eye: radii, distances, indices, as tabled by Atchison & Smith, Optics of the Human Eye, 2000, p. 252',
  },
  leGrand1980: {
    authors: 'Le Grand Y, El Hage SG',
    title: 'Physiological Optics',
    journal: 'Springer',
    year: 1980,
    pages: '',
    doi: '',
    status: 'memory',
    use: 'full theoretical eye, relaxed and accommodated; its cardinal points were read second-hand',
  },
  emsley1952: {
    authors: 'Emsley HH',
    title: 'Visual Optics',
    journal: 'Hatton Press',
    year: 1952,
    pages: '',
    doi: '',
    status: 'read',
    fromMemory: ['the reduced eye', 'publisher'],
    use: 'Gullstrand–Emsley simplified eye, read second-hand, and the reduced eye',
  },
  bennettRabbetts1990: {
    authors: 'Bennett AG, Rabbetts RB',
    title: 'Clinical Visual Optics, 2nd ed.',
    journal: 'Butterworths',
    year: 1990,
    pages: '',
    doi: '',
    status: 'read',
    fromMemory: ['publisher'],
    use: 'schematic eye at five levels of accommodation, read second-hand',
  },
  navarro1999: {
    authors: 'Escudero-Sanz I, Navarro R',
    title: 'Off-axis aberrations of a wide-angle schematic eye model',
    journal: 'J Opt Soc Am A',
    year: 1999,
    pages: '16:1881-1891',
    doi: '',
    status: 'memory',
    use: 'radii, distances, indices and conic constants; its power and focus were read',
  },
  liouBrennan1997: {
    authors: 'Liou HL, Brennan NA',
    title: 'Anatomically accurate, finite model eye for optical modeling',
    journal: 'J Opt Soc Am A',
    year: 1997,
    pages: '14:1684-1695',
    doi: '',
    status: 'memory',
    use: 'radii, distances, graded index and conic constants; its power and axial length were read, and so was this citation',
  },
} as const satisfies Record<string, Reference>;

/** Key of a record in `eyeReferences`. */
export type EyeSourceId = keyof typeof eyeReferences;
