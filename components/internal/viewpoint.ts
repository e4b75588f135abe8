import { temporalSite } from '../../core/numbers.js';
import type { EyeSide } from '../../core/numbers.js';

/** From where the eye is seen: facing the patient, from above the head, or from the temporal side. */
export type Viewpoint = 'facing' | 'above' | 'temporal';

export const VIEWPOINTS: readonly Viewpoint[] = ['facing', 'above', 'temporal'];

/**
 * How far the drawing is turned, degrees counter-clockwise. A surgeon at the head sees the eye upside down; one at the
 * side has the temporal limbus nearest, at the bottom. The view is never mirrored.
 */
export function viewpointTurn(viewpoint: Viewpoint, eye: EyeSide): number {
  if (viewpoint === 'above') return 180;
  return viewpoint === 'temporal' ? 270 - temporalSite(eye) : 0;
}
