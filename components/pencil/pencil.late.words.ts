import type { Words } from '../internal/language/language.js';

/** Texts of what comes on demand: refusals, and notes on the eye that is drawn. Catalogues hold them with the others. */
export const pencilLateWords = {
  part: 'pencil',
  en: {
    refused: 'These settings cannot be taken. What is drawn is made with the last good ones:',
    refusal: '{$setting}: {$value} is refused; allowed is {$accepted}.',

    model: 'A schematic eye, not this one. The cornea is one thin toric surface of {$power} on average with the astigmatism of the plan. {$depth} behind it (assumed) stands a thin round lens, whose power of {$lens} is chosen so that {$focus} lies on the retina: no other error in focus is assumed. The retina is {$length} behind the cornea, as in the eye of Bennett & Rabbetts (Clinical Visual Optics, 2nd ed., 1990; read second-hand). The index is {$index}, the pupil measures {$pupil} (assumed) and lies in the plane of the lens.',
    first: 'Rays close to the axis, of one colour, without diffraction: a real patch has softer edges.',
  },
} as const satisfies Words;
