import type { Words } from '../internal/language/language.js';

export const sweepWords = {
  part: 'sweep',
  en: {
    name: '{$eye}, remaining astigmatism by the site of the incision',
    // Beside the name of the eye; the longest that fits is taken.
    shown: 'astigmatism expected to remain, by the site of the incision',
    shownShort: 'expected to remain, by site of the incision',
    shownShorter: 'expected to remain',
    shownShortest: 'remaining',
    clock: "o'clock",
    asking: 'Not shown until the question is answered.',

    control: 'Site of the incision',
    incisionAt: 'incision at {$incision}: {$amount} dioptres remaining',
    hint: 'Drag the marker, click in the plot, or use the arrow keys.',
    hintWithout: 'No incision is planned: click in the plot to plan one.',
    planBest: 'Plan it at the best site, {$site}',
    planTemporal: 'Plan it at the temporal site, {$site}',

    // In the plot and below it.
    at: '{$site} {$place}',
    flag: '{$at}: {$power}',
    flagShort: '{$site}: {$power}',
    named: '{$place}: {$power}',
    best: 'best',
    bestAt: 'best {$site}',
    bestWith: 'best {$site}: {$power}',
    bestTwo: 'best {$site} or {$other}: {$power}',
    keyCurve: 'Expected to remain',
    keyBand: 'Half of all eyes like this',
    keyBest: 'Best site {$at}: {$power}',
    keyBestTwo: 'Best site {$at} or {$other}: {$power}',
    keyNamed: 'Temporal {$temporal}, superior {$superior}',
    keyIncision: 'Incision {$at}: {$power}',

    // The pieces that can be asked for their source stand apart, as they read in their sentence.
    caption: 'What is {$remaining} when only the {$incision} moves round the limbus.',
    captionRemaining: 'expected to remain',
    captionIncision: 'incision',
    bandCaption: 'Half of all eyes like this end in the {$band}: errors add to a small remainder more often than they take from it.',
    captionBand: 'shaded band',

    described: '{$eye}: astigmatism expected to remain, by the site of the incision, with all else as planned.',
    same: 'The same at every site: {$amount} dioptres.',
    least: 'Least with the incision at {$incision}: {$amount} dioptres.',
    leastTwo: 'Least with the incision at {$incision}, or at {$other}: {$amount} dioptres.',
    namedSites: 'Temporal: {$temporal} dioptres. Superior: {$superior} dioptres.',
    none: 'No incision is planned.',
    present: 'Present incision at {$incision}: {$amount} dioptres remaining.',
    half: 'With it, half of all eyes like this would end between {$low} and {$high} dioptres.',
  },
} as const satisfies Words;
