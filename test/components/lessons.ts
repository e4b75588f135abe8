/** The lessons of `stories/lessons`, and the figures that each step may name: calculated from the case as it shows it. */
import type { Astigmatism, CompletePlan, PlanOutcome } from '../../core/index.js';
import { change, flatteningAndTorque, fromVector, sum, toVector } from '../../core/index.js';

/** The case at a step. */
export interface Shown {
  plan: CompletePlan;
  outcome: PlanOutcome;
}

interface Figures {
  question?: string[];
  text: string[];
  /** Labels of the step's own drawing. */
  labels?: string[];
}

/** Figures of each step, in the order of its text; `at` has the case at every step. */
type Lesson = (at: readonly Shown[]) => Figures[];

const D = (power: number): string => `${Math.abs(power).toFixed(2)} D`;
const deg = (degrees: number): string => `${Math.round(degrees)}°`;

/** Between two meridians, degrees up to 90. */
const between = (a: number, b: number): number => Math.abs(((a - b + 270) % 180) - 90);

/** Between the arrows of two astigmatisms on the double-angle diagram, degrees up to 180. */
function betweenArrows(a: Astigmatism, b: Astigmatism): number {
  const [u, v] = [toVector(a), toVector(b)];
  return (Math.acos((u.x * v.x + u.y * v.y) / (Math.hypot(u.x, u.y) * Math.hypot(v.x, v.y))) * 180) / Math.PI;
}

/** What a step of the surgery does, D. */
function effect({ outcome }: Shown, source: string): number {
  const { x, y } = outcome.steps.find((step) => step.source === source)!.vector;
  return Math.hypot(x, y);
}

function measured({ outcome: { before } }: Shown): string[] {
  return [D(before.magnitude), deg(before.meridian)];
}

/** What a group leaves on average: of the magnitudes, and of the vectors. */
export function means(meridians: number[], magnitude = 1): { ofMagnitudes: number; vector: Astigmatism; sum: number } {
  const total = sum(...meridians.map((meridian) => ({ magnitude, meridian })));
  return { ofMagnitudes: magnitude, vector: { ...total, magnitude: total.magnitude / meridians.length }, sum: total.magnitude };
}

/** Holds what a text says in words; the lesson would have to be written anew. */
function holds(said: string, truth: boolean): void {
  if (!truth) throw new Error(`It is not so that ${said}.`);
}

export const GROUPS = [[90, 30, 150], [85, 90, 95]] as const;

export const LESSONS: Record<string, Lesson> = {
  'double-angle': ([one, two, three]) => {
    const [a, b, c] = [one!, two!, three!].map(({ outcome }) => outcome.after) as [Astigmatism, Astigmatism, Astigmatism];
    holds('what is opposite cancels', sum(a, c).magnitude < 1e-12);
    return [
      { text: [...measured(one!), deg(a.meridian), deg(c.meridian)] },
      { text: [deg(b.meridian), deg(between(a.meridian, b.meridian)), deg(betweenArrows(a, b))] },
      { text: [deg(c.meridian), deg(between(a.meridian, c.meridian)), deg(betweenArrows(a, c)), ...measured(one!), ...measured(three!)] },
    ];
  },
  'on-and-off-the-steep-meridian': ([one, two, three]) => {
    holds('the cut lies on the steep meridian', between(two!.plan.incisionSite!, one!.outcome.before.meridian) === 0);
    return [
      { text: measured(one!) },
      { text: [deg(two!.plan.incisionSite!), D(effect(two!, 'incision')), D(two!.outcome.after.magnitude)] },
      { question: [deg(three!.plan.incisionSite!)], text: [deg(between(three!.plan.incisionSite!, three!.plan.steepMeridian)), D(three!.outcome.after.magnitude)] },
    ];
  },
  torque: ([one, two]) => {
    const { plan, outcome: { before, after } } = two!;
    const parts = flatteningAndTorque(change(before, after), before.meridian);
    holds('the effect is all torque, away from the cut', Math.abs(parts.flattening) < 1e-12 && between(after.meridian, plan.incisionSite!) > between(before.meridian, plan.incisionSite!));
    return [
      { text: measured(one!) },
      { question: [deg(plan.incisionSite!), D(effect(two!, 'incision'))], text: [deg(between(plan.incisionSite!, before.meridian)), D(after.magnitude), deg(after.meridian)] },
    ];
  },
  'back-surface': ([one, two, three]) => [
    { text: [D(one!.outcome.after.magnitude)] },
    { text: [D(effect(two!, 'backSurface')), D(two!.outcome.after.magnitude)] },
    { question: [deg(three!.plan.steepMeridian)], text: [D(effect(three!, 'backSurface')), D(three!.outcome.after.magnitude)] },
  ],
  'pair-of-arcs': ([one, two, three]) => {
    const [single, pair] = [effect(two!, 'arcs'), effect(three!, 'arcs')];
    holds('the pair does more than one and less than twice as much', single < pair && pair < 2 * single);
    return [
      { text: measured(one!) },
      { text: [deg(two!.plan.arcLength), String(two!.plan.age), D(single), D(two!.outcome.after.magnitude)] },
      { text: [D(pair), D(three!.outcome.after.magnitude)] },
    ];
  },
  'lens-off-its-meridian': ([one, two, three]) => {
    const { plan, outcome: { after } } = three!;
    const off = between(plan.lensMeridian!, plan.steepMeridian);
    holds('nothing remains on the meridian, and about a third 10° off', two!.outcome.after.magnitude < 1e-12 && Math.abs(after.magnitude / plan.lensCylinder! - 1 / 3) < 0.02);
    return [
      { text: measured(one!) },
      { text: [D(two!.plan.lensCylinder!)] },
      { question: [deg(off)], text: [deg(off), '2', D(plan.lensCylinder!), deg(off), D(2 * plan.lensCylinder! * Math.sin((off * Math.PI) / 180)), deg(after.meridian)] },
    ];
  },
  'mean-of-magnitudes': (at) => {
    const [first, second] = [means([...GROUPS[0]]), means([...GROUPS[1]])];
    const shown = at.map(({ outcome }) => outcome.after.meridian);
    holds('the eyes are those of the groups', shown.slice(0, 3).every((meridian, index) => between(meridian, GROUPS[0][index]!) < 1e-9) && shown[4] === GROUPS[1][2]);
    return [
      { text: measured(at[0]!) },
      { text: measured(at[1]!) },
      { text: [...measured(at[2]!), D(first.ofMagnitudes)] },
      { text: [D(first.vector.magnitude), D(first.ofMagnitudes), D(first.ofMagnitudes)], labels: GROUPS[0].map(deg) },
      { text: [D(second.ofMagnitudes), ...GROUPS[1].map(deg), D(second.ofMagnitudes), D(second.vector.magnitude), deg(second.vector.meridian), D(second.ofMagnitudes), D(second.sum), D(second.vector.magnitude), String(Math.round(second.vector.meridian))], labels: GROUPS[1].map(deg) },
      { text: [] },
    ];
  },
  'surgeons-chair': ([one, two, three]) => [
    { text: [0, 1, 2].map(() => deg(one!.outcome.before.meridian)) },
    { text: [0, 1].map(() => deg(two!.plan.incisionSite!)) },
    { text: [deg(three!.plan.incisionSite!)] },
  ],
};

/** Every figure in a text, with its unit. */
export function figuresIn(text: string): string[] {
  return [...text.matchAll(/\d+(?:\.\d+)?(?:\s?D\b|°)?/g)].map(([figure]) => figure.replaceAll(/\s/g, ' '));
}

/** The ends of the arrows in a drawing of a group, head to tail from the first: D on the double-angle plane. */
export function arrowsOf(path: string, scale = 60): Astigmatism[] {
  const pieces = path.split('M').filter(Boolean).map((piece) => piece.split('L').map((point) => point.trim().split(/\s+/).map(Number) as [number, number]));
  // A piece with three points is a head.
  return pieces.filter(({ length }) => length === 2).map((ends) => {
    const [[x1, y1], [x2, y2]] = ends as [[number, number], [number, number]];
    return fromVector({ x: (x2 - x1) / scale, y: (y1 - y2) / scale });
  });
}
