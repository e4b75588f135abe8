import type { Words } from '../internal/language/language.js';

export const stepsWords = {
  part: 'steps',
  en: {
    name: 'Steps',
    back: 'Back',
    next: 'Next',
    at: 'Step {$step} of {$count}',
    refused: 'This step cannot be shown:',
    noCase: 'Nothing to walk through yet: this needs an astig-case inside it, around it, or its id in “for”.',
    predict: 'Predict first: what will remain?',
    plane: 'Your expectation on the double-angle plane',
    magnitude: 'Magnitude',
    meridian: 'Steep meridian',
    show: 'Show the result',
    verdict: 'You expected {$guess}; the estimate is {$result}. The difference is {$error}.',
  },
} as const satisfies Words;
