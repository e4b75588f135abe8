import { DEFAULTS, evaluatePlan } from '../../core/numbers.js';
import type { CompletePlan, EyePlan, PlanOutcome, RefusedValue } from '../../core/numbers.js';
import type { CaseMoves } from './case-moves.js';
import { propose, samePlan } from './proposal.js';

/** Unit in which keratometer readings are shown and typed. */
export type KUnit = 'D' | 'mm';

/** The element that owns a model. */
export interface CaseOwner extends Element {
  /** The user changed the plan: show it in the properties. */
  planMoved(): void;
  /** The user wants readings in the other unit. */
  unitChosen(unit: KUnit): void;
}

/**
 * One eye and its plan: holds the last good plan and what is refused of the newest settings of the host page, which come in
 * by `assign`. Views read it; what changes it on the user's behalf does so through its `moves`.
 */
export class CaseModel {
  plan: CompletePlan = DEFAULTS;
  outcome: PlanOutcome = evaluatePlan(DEFAULTS);
  /** Why the newest settings of the host page were not taken; empty when they were. */
  refusals: readonly RefusedValue[] = [];
  kUnit: KUnit = 'D';
  readOnly = false;
  /** What the user does and takes back; null until something on the page can change the plan. See `movesOf`. */
  moves: CaseMoves | null = null;

  #listeners = new Set<() => void>();

  constructor(readonly owner: CaseOwner) {}

  /** Whether something is being moved right now. */
  get moving(): boolean {
    return this.moves?.moving ?? false;
  }

  /** Calls back after every change; returns what ends that. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  notify(): void {
    for (const listener of this.#listeners) listener();
  }

  /** The host page's own settings, all of them. When one is refused, the last good plan stays as a whole. */
  assign(settings: EyePlan, refused: RefusedValue[] = []): void {
    const { plan, refusals } = propose(DEFAULTS, settings);
    this.refusals = [...refused, ...refusals];
    if (this.refusals.length > 0 || samePlan(plan, this.plan)) return;
    this.moves?.forget();
    this.take(plan);
  }

  /** Puts an acceptable plan in the place of the present one. */
  take(plan: CompletePlan): void {
    this.plan = Object.freeze(plan);
    this.outcome = evaluatePlan(plan);
  }
}

/** The fields that say what was measured; the others say what is planned. */
const MEASURED = ['eye', 'flatK', 'steepK', 'steepMeridian', 'age', 'backSurface', 'localThickness', 'risks', 'ownFigures'] as const;

/** The measured eye without anything planned. */
export function withoutPlan(plan: CompletePlan): CompletePlan {
  return { ...DEFAULTS, ...Object.fromEntries(MEASURED.map((field) => [field, plan[field]])) };
}
