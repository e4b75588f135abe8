import type { Words } from '../internal/language/language.js';

export const summaryWords = {
  part: 'summary',
  en: {
    name: 'Summary, {$eye}',
    before: 'Before, {$eye}',
    after: 'Remaining, as expected',
    intended: 'Remaining, if all of the intended effect were reached',
    none: 'no astigmatism',

    chance: 'About {$eyes} of 100 eyes like this would end with {$limit} or less.',
    chances: '({$middle}: {$middleEyes}, {$wide}: {$wideEyes} of 100)',

    steps: 'What each step does',
    step: 'Step',
    expected: 'Expected',
    reached: 'If fully reached',
    own: 'own figure',
    adds: 'adds {$astigmatism}',
    flattens: 'flattens {$meridian} by {$power}',
    noEffect: 'no effect',
    nothingPlanned: 'No incision, arc or toric lens is planned yet.',
    meanPower: 'Mean corneal power',
    noShift: 'no change expected',
    shift: '{$power} expected',

    cautions: 'Cautions',
    caution: '{$level}:',
    sourceOf: 'Source of: {$text}',
    refused: 'These settings cannot be taken. What is shown is the last good plan:',

    remains: 'Expected to remain: {$power}.',
    remainsAt: 'Expected to remain: {$power} at {$meridian}.',
  },
} as const satisfies Words;
