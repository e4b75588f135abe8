import type { Words } from '../internal/language/language.js';

/** What the pictures stand for and what they leave out. Catalogues hold these texts with the others. */
export const notesWords = {
  part: 'sight',
  en: {
    chartLines: 'Lines of the chart from the top: {$lines}.',
    printSizes: 'Height of a small x, from the top: {$heights}. The third is about that of a newspaper.',
    seenFrom: 'Seen from {$distance}, the picture is {$degrees} wide.',
    seenAngle: 'The picture is {$degrees} wide in your sight.',
    lifeSize: 'At arm’s length that is as wide as {$width}; the screen may show it larger or smaller.',
    nearFocus: 'As if the eye were focused for this distance.',
    lamps: 'Real lamps are brighter than any screen, and glare more.',
    simulation: 'A simulation of the blur from the cornea alone, not a promise.',
    leftOut: 'It leaves out the cataract, all other errors of the eye, and what the brain makes up for: many people read more than such a picture lets one think.',
    leastBlurMeans: 'All else is taken to be in focus as well as it can be: the blur is the same in every direction.',
    lineMeans: 'With a focal line on the retina, lines in one direction look sharper than those across it.',
    glassesMean: 'With glasses that correct sphere and cylinder in full.',
    backSurface: 'Both pictures count the back surface of the cornea.',
  },
} as const satisfies Words;
