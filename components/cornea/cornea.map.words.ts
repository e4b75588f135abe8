import type { Words } from '../internal/language/language.js';

/** What is said about the map of the power. */
export const mapWords = {
  part: 'map',
  en: {
    name: 'Map of the power',
    heading: '{$power}, {$state}',
    axial: 'Axial power of the cornea',
    tangential: 'Tangential power of the cornea',
    before: 'before the operation',
    after: 'after the operation, as expected',
    difference: 'what the operation changes (after minus before)',
    reading: '{$power} at {$direction}, {$distance} from the centre',
    ask: 'Point at the cornea, or choose a place:',
    direction: 'Direction',
    distance: 'Distance from the centre',
    shape: 'Calculated from the keratometry, not measured point by point: a cornea that flattens towards the limbus as an average one does.',
    illustration: 'Illustration: how far the local flattening near incision and arcs reaches is assumed.',
  },
} as const satisfies Words;
