/** The shape of a cornea and the curvature that a topographer would see. Frame, degrees and signs as in `eye-types.ts`. */
export { SHAPE_CONSTANTS } from './shape-constants.js';
export { LOCAL_LIMITS, localFlatteningAt, type LocalFlattening } from './shape-local.js';
export { shapeAfter, shapeBefore } from './shape-plan.js';
export { SHAPE_LIMITS, cornealPower, cornealSurface, reachOf, shapeFactors, type CornealPoint, type CornealShape, type ShapeFactors, type SurfacePoint } from './shape-surface.js';
