import type { ModelConstant } from './model.js';

/** What reading and judging results stands on, each with unit and source. */
export const OUTCOME_CONSTANTS = {
  sameMagnitude: { value: 0.3, unit: 'D', source: ['assumed'], note: 'readings and a stated astigmatism that differ by more contradict each other; rounding to 0.25 D explains less' },
  readingsFrom: { value: 36, unit: 'D', source: ['assumed'], note: 'steep meridians that all lie between this and the next figure look like readings' },
  readingsTo: { value: 52, unit: 'D', source: ['assumed'], note: 'steep readings of corneas without disease lie below it' },
  readingsEyes: { value: 5, unit: 'eyes', source: ['assumed'], note: 'so many meridians do not lie so close together by chance: (16/180)^5 is 1 in 180 000' },
  nasalShare: { value: 0.3, unit: '', source: ['assumed'], note: 'share of nasal entries from which sites look like meridians' },
  leastEyes: { value: 20, unit: 'eyes', source: ['commonPractice', 'assumed'], note: 'eyes behind an own figure; the mean of 20 is known to about 0.07 D' },
  surgeonSd: { value: 0.15, unit: 'D', source: ['assumed'], note: 'how far the mean flattening of surgeons lies from the model, and their mean torque from 0; published means of 1.6 to 3.0 mm lie within 0.2 D of it' },
  shareSd: { value: 0.15, unit: '', source: ['roberts2018', 'naguib2022', 'assumed'], note: 'how far the achieved share of surgeons lies from the model; published ones lie within 0.1 of it' },
  scatterWeight: { value: 10, unit: 'degrees of freedom', source: ['assumed'], note: 'weight of the scatter of the model against that of the own eyes' },
  sameWidth: { value: 0.3, unit: 'mm', source: ['assumed'], note: 'widths that differ by more do not belong to one figure' },
} as const satisfies Record<string, ModelConstant>;
