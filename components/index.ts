export { AstigCase } from './case/case.js';
export { AstigCornea } from './cornea/cornea.js';
export type { Viewpoint } from './cornea/viewpoint.js';
export { AstigEntry } from './entry/entry.js';
export { AstigChangeEvent, AstigInputEvent } from './internal/events.js';
export type { KUnit } from './internal/case-model.js';
export { AstigSummary } from './summary/summary.js';
export { AstigVectors } from './vectors/vectors.js';
export type * from '../core/types.js';
