import { fromVector } from '../../core/numbers.js';
import type { BackSurface, CompletePlan, PlanOutcome, StepSource, Vector } from '../../core/numbers.js';

type Numbers = Partial<Record<keyof CompletePlan, number | null>>;

/** Directions, and after how many degrees each comes round again. */
const TURNS: Numbers = { steepMeridian: 180, lensMeridian: 180, incisionSite: 360, arcSite: 360 };
const AMOUNTS = ['flatK', 'steepK', 'age', 'incisionWidth', 'arcLength', 'arcZone', 'arcDepth', 'localThickness'] as const;

/** What is cut or put in, the field without which there is none, and the field of its effect, D. */
const EFFECTS = [
  { source: 'incision', field: 'incisionFlattening', present: (plan: CompletePlan) => plan.incisionSite !== null, fields: ['incisionSite', 'incisionWidth'] },
  { source: 'arcs', field: 'arcFlattening', present: (plan: CompletePlan) => plan.arcCount > 0 && plan.arcSite !== null, fields: ['arcSite', 'arcCount', 'arcLength', 'arcZone', 'arcDepth', 'arcMethod'] },
  { source: 'lens', field: 'lensCylinder', present: (plan: CompletePlan) => Boolean(plan.lensCylinder), fields: ['lensMeridian'] },
] as const;

/** A state of the case: its plan and what follows from it. */
export interface Shown {
  plan: CompletePlan;
  outcome: PlanOutcome;
}

/**
 * The plan on the way from one state to another, `share` 0–1. Amounts change evenly, directions go the shorter way round,
 * and what comes or goes grows or shrinks in dioptres where it lies. What cannot be halved is of the new plan at once.
 */
export function between(from: Shown, to: Shown, share: number): CompletePlan {
  const plan = { ...to.plan } as CompletePlan & Record<string, unknown>;
  const set = (field: keyof CompletePlan, value: unknown): void => void ((plan as Record<string, unknown>)[field] = value);
  for (const field of AMOUNTS) {
    const [a, b] = [from.plan[field], to.plan[field]];
    if (a !== null && b !== null) set(field, a + (b - a) * share);
  }
  for (const [field, turn] of Object.entries(TURNS) as [keyof CompletePlan, number][]) {
    const [a, b] = [from.plan[field] as number | null, to.plan[field] as number | null];
    if (a !== null && b !== null) set(field, turned(a, b, turn, share));
  }
  if (from.plan.backSurface !== to.plan.backSurface) set('backSurface', backSurfaceBetween(added(from, 'backSurface'), added(to, 'backSurface'), share));
  for (const { source, field, present, fields } of EFFECTS) {
    const [before, after] = [present(from.plan), present(to.plan)];
    if (!before && !after) continue;
    if (before && !after) for (const name of fields) set(name, from.plan[name]);
    const [a, b] = [effect(from, source, field), effect(to, source, field)];
    if (before !== after || a !== b) set(field, a + (b - a) * share);
  }
  return plan;
}

/** What a step flattens, D: the own figure, which may be negative, or what the model expects. */
function effect(shown: Shown, source: StepSource, field: keyof CompletePlan): number {
  const own = shown.plan[field];
  const { x, y } = added(shown, source);
  return typeof own === 'number' && (x || y) ? own : Math.hypot(x, y);
}

/** What a step adds, D; nothing where there is none. */
function added({ outcome }: Shown, source: StepSource): Vector {
  return outcome.steps.find((one) => one.source === source)?.vector ?? { x: 0, y: 0 };
}

/** On the straight way between two vectors, written as if it had been measured. */
function backSurfaceBetween(a: Vector, b: Vector, share: number): BackSurface {
  const { magnitude, meridian } = fromVector({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });
  return `${Number(magnitude.toFixed(4))}@${Number(meridian.toFixed(2))}`;
}

/** From one direction towards another by the shorter way, degrees in (0, turn]. */
export function turned(from: number, to: number, turn: number, share: number): number {
  const way = ((((to - from) % turn) + 1.5 * turn) % turn) - turn / 2;
  const at = (((from + way * share) % turn) + turn) % turn;
  return at || (turn === 180 ? turn : 0);
}
