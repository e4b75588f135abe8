/**
 * Light through the eye, of the first order, by plain arithmetic: schematic eyes, the bundle behind toric surfaces, what
 * glasses an eye needs. The frame is described in `eye-types.ts`. What draws while something moves imports this or one
 * of its parts, for `eye.ts` brings mathjs along.
 */
export { EYE_CONSTANTS, type EyeConstant } from './eye-constants.js';
export { corneaPowers, type Cornea, type CornealPower, type CornealPowers, type CornealSide } from './eye-cornea.js';
export { EYE_LIMITS } from './eye-limits.js';
export { SCHEMATIC_EYES, type SchematicEye } from './eye-models.js';
export {
  crossSection, leastConfusion, lineFoci, pencilOf, pencilThrough, rayAt, widthAlong,
  type CrossSection, type LeastConfusion, type LineFocus, type Pencil, type PencilOptions,
} from './eye-pencil.js';
export { FOCUSES, PLANNED_EYE, STRONGEST, excessAt, plannedBundle, sectionAt, type Focus, type PlannedBundle, type PlannedEye } from './eye-planned.js';
export { eyeReferences, type EyeSourceId } from './eye-references.js';
export { atSpectacles, lensToFit, residual, type FarPoint, type FittedLens, type Residual } from './eye-residual.js';
export { trace } from './eye-trace.js';
export type * from './eye-types.js';
