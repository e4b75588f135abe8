/** What is said of the values that would be accepted, in English. Catalogues of other languages have the same names. */
export const REFUSAL_TEXT = {
  range: '{$min} to {$max} {$unit}',
  whole: '{$min} to {$max} {$unit}, a whole number',
  choice: '{$choices}',
  risks: '{$choices}, separated by spaces',
  backSurface: 'omitted, typical, or D@steep meridian such as 0.30@180 ({$min} to {$max} D, 0 to 180°)',
  figures: 'an object with incision, arcs or both',
  figuresPart: 'an object with the figures, or nothing',
  steepBelowFlat: '{$min} to {$max} D, for it must not be below flatK ({$min} D)',
  flatAboveSteep: 'at most steepK ({$max} D)',
  steepRadius: 'at most {$max} mm, for the steep radius must not be longer than the flat one',
  arcSite: '0 to 360 °, for an arc is planned',
  arcSites: '0 to 360 °, for arcs are planned',
  lensMeridian: '0 to 180 °, for a lens of {$cylinder} D is planned',
  together: 'only together with {$field} ({$limits})',
} as const;

export type RefusalWording = keyof typeof REFUSAL_TEXT;
