/**
 * What cautions say, in English. Values stand as `{$name}`, as in the catalogues of other languages, which have the
 * same names. A caution may have several wordings: that of its own name, or those that begin with it.
 */
export const CAUTION_TEXT = {
  'arc-over-incision': 'The arc and the incision overlap. Cut the arc after the entry is closed, or move one of them.',
  oblique: 'Oblique astigmatism is irregular more often than other astigmatism. Look at the topography.',
  'arc-too-long': 'An arc of {$length} is longer than any in the table ({$longest}). Its effect is counted as that of {$longest}.',
  'arc-short': 'The table has no arc shorter than {$shortest}. The effect of {$length} is extrapolated.',
  'thickness-unknown': 'The thickness where the arc will lie is not known. Measure at the site before any cut; the central thickness does not tell.',
  'thickness-unknown-depth': 'The depth of the arc is not given. Measure at the site before any cut; the central thickness does not tell.',
  'arc-too-deep': '{$depth} is {$share} of the local thickness ({$thickness}). From {$deepest} the cornea may be perforated.',
  'arc-shallow': '{$depth} is {$share} of the local thickness ({$thickness}). The effect is that of arcs at 80–90 %; shallower ones do less.',
  'arc-zone': 'The effect is that of arcs on a circle of about 11 mm. On one of {$zone} it differs; a smaller circle does more.',
  'hardly-any': 'There are only {$magnitude} to correct. Less than {$worthwhile} does not disturb most eyes.',
  'beyond-arcs': '{$magnitude} are more than the table of arcs covers ({$most}).',
  'age-unknown': 'No age is given; the arcs are calculated for {$age} years.',
  'age-outside': 'The table covers ages from {$youngest} to {$oldest}. At {$age} the nearer limit is used.',
  'irregular-cornea': 'With a reading of {$reading} the cornea may be irregular or thinning. No arcs without topography.',
  'irregular-cornea-difference': 'With a difference of {$difference} the cornea may be irregular or thinning. No arcs without topography.',
  'risk-collagen': 'Rheumatoid or another collagen disease: arcs are not offered.',
  'risk-collagen-arcs': 'Rheumatoid or another collagen disease: a cornea that may melt or heal badly should have no arcs.',
  'risk-dry-eye': 'Severe dry eye: treat it and measure again before planning; the readings cannot be relied on.',
  'risk-dry-eye-arcs': 'Severe dry eye: arcs cut corneal nerves and make it worse, and the readings cannot be relied on.',
  'risk-radial-cuts': 'Earlier radial cuts: arcs are not offered, and an incision that crosses one can open it.',
  'risk-radial-cuts-arcs': 'Earlier radial cuts: arcs that cross them can open them, and the effect cannot be foreseen.',
  'risk-ectasia': 'Ectasia or a thinning edge of the cornea: arcs are not offered, and the astigmatism may change.',
  'risk-ectasia-arcs': 'Ectasia or a thinning edge of the cornea: arcs weaken it further.',
  'over-correction': 'Over-correction is expected: the steep meridian turns from {$before} to {$after}.',
  'over-correction-if-full': 'If the full intended effect were reached, this eye would be over-corrected by {$magnitude}.',
  'more-than-before': 'The plan leaves more astigmatism ({$after}) than there is without it ({$before}).',
  'lens-off': 'The lens is {$off} off the steep meridian that it has to answer ({$answered}). At 10° a third of its effect is lost.',
  'back-surface-omitted': 'The back of the cornea is not taken into account. In an eye that is steep near 90° this tends to over-correct.',
  'back-surface-omitted-against': 'The back of the cornea is not taken into account. In an eye that is steep near 180° this tends to under-correct.',
} as const;

export type CautionWording = keyof typeof CAUTION_TEXT;
