import type { Words } from '../internal/language/language.js';

/** What the controls behind the handles are called and say: the part of the texts that comes with them. */
export const corneaHandsWords = {
  part: 'cornea',
  en: {
    incisionControl: 'Site of the incision',
    arcControl: 'Site of the relaxing arc',
    arcEndControl: 'Length of the relaxing arc',
    lensControl: 'Meridian of the toric lens',
    incisionAt: 'incision at {$incision}',
    arcAt: 'arc at {$arc}',
    arcLong: 'arc {$length} degrees long',
    lensOn: 'lens on the meridian {$lensMeridian} degrees',
  },
} as const satisfies Words;
