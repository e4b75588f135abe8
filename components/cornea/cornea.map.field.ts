import type { CompletePlan, PlanOutcome } from '../../core/numbers.js';
import { cornealPower, reachOf, shapeAfter, shapeBefore } from '../../core/shape.js';
import type { CornealPoint } from '../../core/shape.js';
import { RADII } from '../internal/dial-layout.js';

/** What is shown: the cornea as measured, as it is expected to be, or what the one adds to the other. */
export type MapState = 'before' | 'after' | 'difference';

/** Which power: the mean from the centre to a point, or that of the curvature just there. */
export type MapPower = 'axial' | 'tangential';

export const MAP_STATES: readonly MapState[] = ['before', 'after', 'difference'];
export const MAP_POWERS: readonly MapPower[] = ['axial', 'tangential'];

/** Power over the cornea. */
export interface PowerField {
  /** Distance from the centre up to which there is one, mm. */
  zone: number;
  /** Whether local flattening at cuts is in it, which is an illustration. */
  illustrated: boolean;
  /** Power at a point of the zone, D. Points further out have that of the edge in their direction. */
  at(point: CornealPoint): number;
}

export interface FieldInput {
  plan: CompletePlan;
  outcome: Pick<PlanOutcome, 'before' | 'steps' | 'meanPowerShift'>;
  state: MapState;
  power: MapPower;
}

/** The power that a map of one eye shows, from the toric conicoids before and after the plan. */
export function powerField({ plan, outcome, state, power }: FieldInput): PowerField {
  const shapes = { before: shapeBefore(plan), after: shapeAfter(plan, outcome) };
  const zone = Math.min(RADII.limbus, ...Object.values(shapes).map(reachOf));
  const before = cornealPower(shapes.before, power);
  const after = cornealPower(shapes.after, power);
  return {
    zone,
    illustrated: state !== 'before' && (shapes.after.local ?? []).length > 0,
    at: ({ distance, direction }) => {
      const point = { distance: Math.min(distance, zone), direction };
      if (state === 'difference') return after(point) - before(point);
      return (state === 'before' ? before : after)(point);
    },
  };
}
