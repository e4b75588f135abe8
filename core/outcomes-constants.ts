import type { ModelConstant } from './model.js';

/** What reading and judging results stands on, each with unit and source. */
export const OUTCOME_CONSTANTS = {
  sameMagnitude: { value: 0.3, unit: 'D', source: ['assumed'], note: 'readings and a stated astigmatism that differ by more contradict each other; rounding to 0.25 D explains less' },
  nasalShare: { value: 0.3, unit: '', source: ['assumed'], note: 'share of nasal entries from which sites look like meridians' },
  leastEyes: { value: 20, unit: 'eyes', source: ['commonPractice', 'assumed'], note: 'eyes behind an own figure; the mean of 20 is known to about 0.07 D' },
  surgeonSd: { value: 0.15, unit: 'D', source: ['assumed'], note: 'how far the mean flattening of surgeons lies from the model, and their mean torque from 0; published means of 1.6 to 3.0 mm lie within 0.2 D of it' },
  shareSd: { value: 0.15, unit: '', source: ['roberts2018', 'naguib2022', 'assumed'], note: 'how far the achieved share of surgeons lies from the model; published ones lie within 0.1 of it' },
  scatterWeight: { value: 10, unit: 'degrees of freedom', source: ['assumed'], note: 'weight of the scatter of the model against that of the own eyes' },
  sameWidth: { value: 0.3, unit: 'mm', source: ['assumed'], note: 'widths that differ by more do not belong to one figure' },
} as const satisfies Record<string, ModelConstant>;
