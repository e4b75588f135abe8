/**
 * A surgeon's own results: a table in, statistics and own figures for the next plan out. Nothing is kept or sent. Who
 * draws results that have already been read imports `outcomes-summary.js` or `outcomes-eyes.js` alone, without the reading.
 */
export { OUTCOME_CONSTANTS } from './outcomes-constants.js';
export { EXPORT_HEADINGS, exportTable, type ExportOptions } from './outcomes-export.js';
export {
  eyeResult, groupsOf, planOf, vectorsOf, type Grouping, type JudgeOptions, type OutcomeGroup, type OutcomeVector,
} from './outcomes-eyes.js';
export { type Mapping } from './outcomes-headings.js';
export { ownFigures, type OwnAdvice } from './outcomes-own.js';
export { outcomeReferences, type OutcomeSourceId } from './outcomes-references.js';
export { OUTCOME_LIMITS } from './outcomes-row.js';
export { SHARE_LIMITS, summarise } from './outcomes-summary.js';
export { readTable, readingTable, type Progress, type ReadOptions } from './outcomes-table.js';
export { COLUMN_TEXT, OUTCOME_TEXT, faultText, type OutcomeWording } from './outcomes-text.js';
export { OUTCOME_COLUMNS } from './outcomes-types.js';
export type * from './outcomes-types.js';
