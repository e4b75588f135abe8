import type { Words } from '../internal/language/language.js';

/** Texts of the form. What its fields are called stands in `fieldWords`, since messages elsewhere name them too. */
export const entryWords = {
  part: 'entry',
  en: {
    form: 'Measurements and plan',
    theEye: 'The eye',
    readings: 'Readings',
    incision: 'Incision',
    arcs: 'Relaxing arcs',
    lens: 'Toric lens',

    right: 'Right',
    left: 'Left',
    omitted: 'Not counted',
    typical: 'Typical',
    measured: 'Measured',
    no: 'No',
    yes: 'Yes',
    noArcs: 'None',
    oneArc: 'One',
    pair: 'Pair',
    blade: 'Blade',
    laser: 'Laser',
    collagen: 'Collagen disease',
    'dry-eye': 'Dry eye',
    'radial-cuts': 'Earlier radial cuts',
    ectasia: 'Ectasia',

    range: '{$low}\u00a0to\u00a0{$high}',
    span: '{$low}–{$high}',
    mayBeEmpty: '{$limits}, may stay empty',
    emptyAsEstimated: '{$limits}, empty: as estimated',
    emptyCountsAs: '{$limits}, empty counts as {$age}',
    equal: 'both readings are equal',
    bothPlaces: '{$place}; and {$opposite}',
    ofThickness: '{$share} of the thickness',

    refused: 'The page has set values that cannot be taken. The last good plan is still shown; it cannot be changed here until this is mended.',
    nowRight: 'Now the right eye. Nothing has been mirrored: all degrees are as they were entered.',
    nowLeft: 'Now the left eye. Nothing has been mirrored: all degrees are as they were entered.',
    mirrorRight: 'Mirror the sites and meridians for the right eye',
    mirrorLeft: 'Mirror the sites and meridians for the left eye',
    notNeeded: 'Not needed',
    undo: 'Undo',
    redo: 'Redo',
    reset: 'Back to the measured eye',
    moreIncision: 'More: own flattening by the incision',
    moreArcs: 'More: arc zone, own flattening by the arcs',
    unusual: '(differs from the usual)',
  },
} as const satisfies Words;

export type EntryId = keyof typeof entryWords.en;
