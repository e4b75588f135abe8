import type { EyeSourceId } from './eye-references.js';
import type { SourceId } from './references.js';

interface ShapeConstant {
  value: number;
  unit: string;
  source: readonly (SourceId | EyeSourceId)[];
  note: string;
}

export const SHAPE_CONSTANTS = {
  conic: { value: -0.26, unit: '', source: ['navarro1999'], note: 'conic constant Q of a cornea of which nothing is known: it flattens towards the limbus' },
  localFactor: {
    value: 2.5,
    unit: '',
    source: ['rainer1999', 'assumed'],
    note: 'local flattening at a cut for one dioptre of its effect: up to 0.7 D temporally and 1.2 D at 10:30 after 3.0 mm were read, the default model has 0.28 and 0.47 D there',
  },
  localReach: { value: 1.5, unit: 'mm', source: ['assumed'], note: 'how far along the radius the local flattening reaches to either side of the cut' },
  localTaper: { value: 25, unit: '°', source: ['assumed'], note: 'over which it fades beyond the ends of the cut' },
} as const satisfies Record<string, ShapeConstant>;
