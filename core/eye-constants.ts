import type { EyeSourceId } from './eye-references.js';

/** A constant of the tracing, with its source. */
export interface EyeConstant {
  value: number;
  unit: string;
  source: readonly EyeSourceId[];
  note: string;
}

export const EYE_CONSTANTS = {
  corneaIndex: { value: 1.376, unit: '', source: ['gullstrand1909'], note: 'refractive index of the cornea' },
  aqueousIndex: { value: 1.336, unit: '', source: ['gullstrand1909'], note: 'refractive index of aqueous and vitreous' },
} as const satisfies Record<string, EyeConstant>;
