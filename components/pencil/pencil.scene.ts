import { crossSection, leastConfusion, lineFoci, rayAt } from '../../core/eye-pencil.js';
import type { CrossSection, LineFocus, Pencil } from '../../core/eye-pencil.js';
import type { Matrix } from '../../core/eye-matrix.js';
import { PLANNED_EYE, STRONGEST, excessAt, plannedPencil } from '../../core/eye-planned.js';
import type { PlannedPencil } from '../../core/eye-planned.js';
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
  planned: PlannedPencil;
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
  const planned = plannedPencil({ meanPower, astigmatism, pupil, focus: inFocus });
  const { pencil } = planned;
  const retina = PLANNED_EYE.axialLength;
  const at = (position: number): Place => ({ position, behind: position - retina, excess: excessAt(planned, position) });
  const [strong, weak] = lineFoci(pencil) as [LineFocus, LineFocus];
  const least = leastConfusion(pencil)!;
  const stops: Record<Stop, number> = { retina, 'front-line': strong.position, circle: least.position, 'back-line': weak.position };
  const screened = typeof screen === 'number' ? retina + held(screen, astigmatism.magnitude, least.position - retina) : stops[screen];
  return {
    planned,
    astigmatism,
    meanPower,
    front: { ...strong, ...at(strong.position) },
    back: { ...weak, ...at(weak.position) },
    circle: { ...at(least.position), diameter: least.diameter },
    retina: at(retina),
    screen: { ...at(screened), section: crossSection(pencil, screened) },
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

/** Section of the bundle in a plane, as the image of a circle of radius 1; mm. */
export function sectionMatrix(pencil: Pencil, z: number): Matrix {
  const [right, up] = [rayAt(pencil, { x: 1, y: 0 }, z), rayAt(pencil, { x: 0, y: 1 }, z)];
  return [right.x, up.x, right.y, up.y];
}

/** Width for each mm of depth of a bundle of this pupil: how slender it is. */
export function openness(pupil: number): number {
  return pupil / (PLANNED_EYE.axialLength - PLANNED_EYE.lensDepth);
}
