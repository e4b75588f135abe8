import type { Words } from '../internal/language/language.js';

/** What only the form says. It comes with the form. */
export const formWords = {
  part: 'options',
  en: {
    relaxing: 'Relaxing arcs',
    toric: 'Toric lens',
    none: 'None',
    one: 'One',
    upToTwo: 'Up to two',
    no: 'No',
    yes: 'Yes',
    temporal: 'Temporal, {$site}',
    superior: 'Superior, {$site}',
    onSteep: 'On the steep meridian, {$meridian} or {$opposite}',
    otherSites: 'Other places, in degrees',
    widthsIn: 'Widths of the blades, mm',
    lensesIn: 'Cylinders of the lenses, D',
    sitesNote: '{$min} to {$max}, at most {$most} places in all; may stay empty',
    widthsNote: '{$allowed}; empty: the width in the plan',
    lensesNote: '{$allowed}; at the corneal plane; empty: 1 to 4\u00a0D in half dioptres',
  },
} as const satisfies Words;
