import type { Words } from './language/language.js';

/** Places on the limbus and directions on the eye. Hours are those of a clock face, seen from the front. */
export const placeWords = {
  part: 'places',
  en: {
    temporal: 'temporal',
    superotemporal: 'superotemporal',
    superior: 'superior',
    superonasal: 'superonasal',
    nasal: 'nasal',
    inferonasal: 'inferonasal',
    inferior: 'inferior',
    inferotemporal: 'inferotemporal',
    hour: "{$hour} o'clock",
    halfPast: 'half past {$hour}',
    minutes: "{$hour}:{$minutes} o'clock",
    placed: '{$place}, {$clock}',
    spokenSite: '{$degrees} degrees, {$place}, {$clock}',
  },
} as const satisfies Words;
