import type { RefusalWording } from '../../core/numbers.js';
import type { Words } from './language/language.js';

/** Why a value is refused, and what would be accepted. Values come with their units. */
export const refusalWords = {
  part: 'refusals',
  en: {
    refused: '{$field}: {$value} is refused; allowed is {$limits}.',
    none: 'none',
    range: '{$min} to {$max}',
    whole: '{$min} to {$max}, a whole number',
    choice: '{$choices}',
    risks: '{$choices}, separated by spaces',
    backSurface: 'omitted, typical, or D@steep meridian such as 0.30@180 ({$min} to {$max}, 0 to 180°)',
    figures: 'an object with incision, arcs or both',
    figuresPart: 'an object with the figures, or nothing',
    steepBelowFlat: '{$min} to {$max}, for it must not be below the flat reading',
    flatAboveSteep: 'at most the steep reading ({$max})',
    steepRadius: 'at most {$max}, for the steep radius must not be longer than the flat one',
    arcSite: '0 to 360°, for an arc is planned',
    arcSites: '0 to 360°, for arcs are planned',
    lensMeridian: '0 to 180°, for a lens of {$cylinder} is planned',
    together: 'only together with “{$field}” ({$limits})',
  },
} as const satisfies Words<RefusalWording | 'refused' | 'none'>;
