import type { Words } from '../internal/language/language.js';

/** What the form says of a text that it cannot take: the part of its texts that comes with the typing. */
export const complaintWords = {
  part: 'entry',
  en: {
    empty: '{$field} is empty. Enter {$range}.',
    noNumber: '{$field}: {$text} is not a number. Enter {$range}.',
    noNumberD: '{$field}: {$text} is not a number of dioptres. Enter {$range}.',
    noNumberMillimetres: '{$field}: {$text} is not a number of millimetres. Enter {$range}.',
    noNumberMicrometres: '{$field}: {$text} is not a number of micrometres. Enter {$range}.',
    noNumberDegrees: '{$field}: {$text} is not a number of degrees. Enter {$range}.',
    noNumberYears: '{$field}: {$text} is not a number of years. Enter {$range}.',
    outside: '{$field}: {$value} is outside {$range}.',
    flatAboveSteep: '{$field}: {$value} is above the steep reading. Enter {$range}, or change the steep reading.',
    steepBelowFlat: '{$field}: {$value} is below the flat reading. Enter {$range}, or change the flat reading.',
    flatShorter: '{$field}: {$value} is shorter than the steep reading. Enter {$range}, or change the steep reading.',
    steepLonger: '{$field}: {$value} is longer than the flat reading. Enter {$range}, or change the flat reading.',
  },
} as const satisfies Words;
