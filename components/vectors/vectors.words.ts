import type { Words } from '../internal/language/language.js';

export const vectorsWords = {
  part: 'vectors',
  en: {
    before: 'before',
    residual: 'remaining',

    keyBefore: 'before {$astigmatism}',
    keyBackSurface: 'back surface adds {$astigmatism}',
    keyIncision: 'incision flattens {$meridian} by {$power}',
    keyArc: 'arc flattens {$meridian} by {$power}',
    keyArcs: 'arcs flatten {$meridian} by {$power}',
    keyLens: 'toric lens flattens {$meridian} by {$power}',
    keyResidual: 'remaining {$astigmatism}',

    saidBefore: 'Before: {$astigmatism}.',
    saidBackSurface: 'The back surface adds {$astigmatism}.',
    saidIncision: 'The incision flattens {$meridian} by {$power}.',
    saidArc: 'The arc flattens {$meridian} by {$power}.',
    saidArcs: 'The arcs flatten {$meridian} by {$power}.',
    saidLens: 'The toric lens flattens {$meridian} by {$power}.',
    saidResidual: 'Remaining, as expected: {$astigmatism}.',

    name: 'Vector diagram',
    diagram: 'Vector diagram, angles doubled.',
    nothing: 'Vector diagram. There is no astigmatism, neither before nor after.',
    caption: 'Angles are doubled here, so that meridians at right angles to each other cancel.',
    spreadCaption: 'Half of all eyes like this would end in the inner ellipse, 95 of 100 in the outer one. The shaded circle is {$good}.',
  },
} as const satisfies Words;
