import { imageOfCircle } from '../../core/eye-matrix.js';
import type { CrossSection, LineFocus } from '../../core/eye-pencil.js';
import { PLANNED_EYE, STRONGEST, excessAt, plannedBundle, sectionAt } from '../../core/eye-planned.js';
import type { PlannedBundle } from '../../core/eye-planned.js';
import { add, fromVector, toVector } from '../../core/numbers.js';
import type { Astigmatism, CompletePlan, PlanOutcome } from '../../core/numbers.js';
import type { Settings, Stop } from './pencil.settings.js';

/** A plane across the bundle, by its place in mm from the cornea. */
export interface Place {
  position: number;
  /** mm behind the retina, < 0 in front of it. */
  behind: number;
  /** By how much light that meets here is too strong for the retina, D. */
  excess: number;
}

export interface Scene {
  planned: PlannedBundle;
  /** What the cornea is left with, or had before, with the back surface where the plan counts it. */
  astigmatism: Astigmatism;
  /** Mean power of the cornea, D. */
  meanPower: number;
  front: LineFocus & Place;
  back: LineFocus & Place;
  circle: Place & { diameter: number };
  retina: Place;
  screen: Place & { section: CrossSection };
  /** Whether there is so little astigmatism that all light meets in one point. */
  point: boolean;
}

/** Below this, D, figures say that there is no astigmatism. */
const NONE = 0.005;

/** The cornea that is drawn. */
export function corneaShown({ flatK, steepK }: CompletePlan, { before, steps, after, meanPowerShift }: PlanOutcome, shows: Settings['shows']): { meanPower: number; astigmatism: Astigmatism } {
  const mean = (flatK + steepK) / 2;
  if (shows === 'after') return { meanPower: mean + meanPowerShift, astigmatism: after };
  const back = steps.find(({ source }) => source === 'backSurface');
  return { meanPower: mean, astigmatism: back ? fromVector(add(toVector(before), back.vector)) : before };
}

/** The bundle and what lies in it; null for more astigmatism than can be drawn. */
export function sceneOf(plan: CompletePlan, outcome: PlanOutcome, { shows, inFocus, pupil, screen }: Settings): Scene | null {
  const { meanPower, astigmatism } = corneaShown(plan, outcome, shows);
  if (astigmatism.magnitude > STRONGEST) return null;
  const planned = plannedBundle({ meanPower, astigmatism, pupil, focus: inFocus });
  const { front, back, circle } = planned;
  const retina = PLANNED_EYE.axialLength;
  const at = (position: number): Place => ({ position, behind: position - retina, excess: excessAt(planned, position) });
  const stops: Record<Stop, number> = { retina, 'front-line': front.position, circle: circle.position, 'back-line': back.position };
  const screened = typeof screen === 'number' ? retina + held(screen, astigmatism.magnitude, circle.position - retina) : stops[screen];
  return {
    planned,
    astigmatism,
    meanPower,
    front: { ...front, ...at(front.position) },
    back: { ...back, ...at(back.position) },
    circle: { ...circle, ...at(circle.position) },
    retina: at(retina),
    screen: { ...at(screened), section: crossed(planned, screened) },
    point: astigmatism.magnitude < NONE,
  };
}

/** Amounts of astigmatism, D, for which there is room: few, so that the scale stays while something is dragged. */
const ROOMS = [0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 6, 8, 12, 16, 20] as const;

/** Depth that is drawn in front of and behind the circle of least confusion for each dioptre of room, mm. The lines are about 0.4 mm a dioptre apart. */
const DEPTH = 0.35;

/** Room for an amount of astigmatism, D: the next one, or the present one while that serves and is not much too wide. */
export function roomFor(magnitude: number, present: number | null): number {
  const next = ROOMS.find((room) => room >= magnitude) ?? magnitude;
  return present !== null && present >= magnitude && present <= 1.6 * Math.max(next, ROOMS[0]) ? present : next;
}

/** Half the depth that is drawn, mm. */
export function depthOf(room: number): number {
  return DEPTH * room;
}

/** How far the screen goes to either side of the circle, mm, in steps of a slider. */
export function reachOf(magnitude: number, circleBehind: number): { min: number; max: number; step: number } {
  const room = roomFor(magnitude, null);
  const step = room <= 0.5 ? 0.005 : room <= 4 ? 0.01 : 0.05;
  const round = (value: number): number => Math.round(value / step) * step;
  const half = 0.9 * depthOf(room);
  return { min: round(circleBehind - half), max: round(circleBehind + half), step };
}

function held(behind: number, magnitude: number, circleBehind: number): number {
  const { min, max } = reachOf(magnitude, circleBehind);
  return Math.min(max, Math.max(min, behind));
}

function crossed(planned: PlannedBundle, z: number): CrossSection {
  const { longer, shorter, direction } = imageOfCircle(sectionAt(planned, z));
  return { longer: 2 * longer, shorter: 2 * shorter, direction };
}

/** Width for each mm of depth of a bundle of this pupil: how slender it is. */
export function openness(pupil: number): number {
  return pupil / (PLANNED_EYE.axialLength - PLANNED_EYE.lensDepth);
}
