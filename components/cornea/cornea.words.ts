import type { Words } from '../internal/language/language.js';

export const corneaWords = {
  part: 'cornea',
  en: {
    facing: 'seen from the front',
    above: 'seen by the surgeon at the head, upside down',
    temporal: 'seen by the surgeon at the temporal side',
    facingCaption: 'Seen from the front.',
    aboveCaption: 'Seen by the surgeon at the head, upside down.',
    temporalCaption: 'Seen by the surgeon at the temporal side.',
    hint: 'Drag a handle, click the ring, or use the arrow keys.',
    spreadHint: 'The shaded sector holds the remaining steep meridian of half of all eyes like this.',

    name: '{$eye}, {$view}',
    described: '{$name}.',
    hardlyAny: 'The cornea has hardly any astigmatism.',
    steep: 'The cornea is steep along {$meridian} degrees by {$power} dioptres, {$rule}.',
    entry: 'Incision {$width} mm wide at {$incision}.',
    oneArc: 'One relaxing arc {$length} degrees long, at {$arc}.',
    pair: 'A pair of relaxing arcs, each {$length} degrees long, at {$arc}, and opposite.',
    lens: 'Toric lens of {$lensPower} dioptres on the meridian {$lensMeridian} degrees.',
    nothingRemains: 'Hardly anything is expected to remain.',
    remains: 'Expected to remain: {$power} dioptres, steep along {$meridian} degrees.',

    keyBefore: 'Before {$astigmatism}',
    keyIncision: 'Incision {$width} at {$site} {$place}',
    keyArc: 'Arc {$length} at {$site} {$place}',
    keyPair: 'Pair of arcs {$length} at {$site} {$place}',
    keyLens: 'Lens {$power} on {$meridian}',
    keyAfter: 'Remaining, as expected, {$astigmatism}',
  },
} as const satisfies Words;
