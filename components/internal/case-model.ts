import { DEFAULTS, evaluatePlan } from '../../core/numbers.js';
import type { CompletePlan, EyePlan, PlanOutcome, RefusedValue } from '../../core/numbers.js';
import { propose, samePlan } from './proposal.js';

/** Unit in which keratometer readings are shown and typed. */
export type KUnit = 'D' | 'mm';

/** What the model asks of the element that owns it. */
export interface CaseOwner {
  /** The user changed the plan: show it in the properties, and tell the page. `type` is null when the page need not know. */
  planMoved(type: 'input' | 'change' | null, source: string, from: Element | null): void;
  /** The user wants readings in the other unit. */
  unitChosen(unit: KUnit): void;
}

/** How many plans can be taken back. */
const MEMORY = 200;

/**
 * One eye and its plan, without any document: holds the last good plan, what is refused of the newest input, what is
 * being moved, and what can be taken back. Views read it and ask it to change; the host's own settings come in by `assign`.
 */
export class CaseModel {
  plan: CompletePlan = DEFAULTS;
  outcome: PlanOutcome = evaluatePlan(DEFAULTS);
  /** Why the newest settings of the host page were not taken; empty when they were. */
  refusals: readonly RefusedValue[] = [];
  kUnit: KUnit = 'D';
  readOnly = false;

  #listeners = new Set<() => void>();
  /** The plan before the movement that is under way, and the fields that it has touched. */
  #draft: { before: CompletePlan; touched: Set<keyof CompletePlan>; by: Element | null } | null = null;
  #past: CompletePlan[] = [];
  #future: CompletePlan[] = [];

  constructor(private readonly owner: CaseOwner) {}

  /** Whether something is being moved right now. */
  get moving(): boolean {
    return this.#draft !== null;
  }

  get canUndo(): boolean {
    return this.#past.length > 0 && !this.#locked;
  }

  get canRedo(): boolean {
    return this.#future.length > 0 && !this.#locked;
  }

  /** Calls back after every change; returns what ends that. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  notify(): void {
    for (const listener of this.#listeners) listener();
  }

  /**
   * The host page's own settings, all of them. When one is refused, the last good plan stays as a whole.
   * What was done before cannot be taken back then: it may have been another eye.
   */
  assign(settings: EyePlan, refused: RefusedValue[] = []): void {
    const { plan, refusals } = propose(DEFAULTS, settings);
    this.refusals = [...refused, ...refusals];
    if (this.refusals.length > 0 || samePlan(plan, this.plan)) return;
    this.#past = [];
    this.#future = [];
    this.#draft = null;
    this.#take(plan);
  }

  /** Moves part of the plan on the user's behalf. What cannot be accepted leaves the plan as it is and is returned. */
  move(patch: EyePlan, source: string, from: Element | null): RefusedValue[] {
    if (this.#locked) return [];
    const { plan, refusals } = propose(this.plan, patch);
    if (samePlan(plan, this.plan)) return refusals;
    this.#draft ??= { before: this.plan, touched: new Set(), by: from };
    for (const field of Object.keys(patch) as (keyof CompletePlan)[]) this.#draft.touched.add(field);
    this.#take(plan);
    this.owner.planMoved('input', source, from);
    return refusals;
  }

  /** Ends a movement. Fires one change when the plan is not what it was. */
  commit(source: string, from: Element | null): void {
    const draft = this.#draft;
    if (!draft) return;
    this.#draft = null;
    if (samePlan(draft.before, this.plan)) {
      this.notify();
      return;
    }
    this.#past = [...this.#past, draft.before].slice(-MEMORY);
    this.#future = [];
    this.owner.planMoved('change', source, from);
  }

  /** Puts back what the movement has touched, and fires nothing. */
  cancel(): void {
    const draft = this.#draft;
    if (!draft) return;
    this.#draft = null;
    const old = Object.fromEntries([...draft.touched].map((field) => [field, draft.before[field]]));
    this.#take(propose(this.plan, old).plan);
    this.owner.planMoved(null, '', null);
  }

  /** The same, if it was this view that moved something and now goes away. */
  abandon(view: Element): void {
    if (this.#draft?.by === view) this.cancel();
  }

  /** Replaces parts of the plan in one go, as one step that can be taken back. */
  choose(patch: EyePlan, source: string, from: Element | null): RefusedValue[] {
    const refusals = this.move(patch, source, from);
    this.commit(source, from);
    return refusals;
  }

  /** Takes the last change back. `source` is given when the user asked for it, and then the page is told. */
  undo(source: string | null = null): void {
    this.#travel(this.#past, this.#future, source);
  }

  redo(source: string | null = null): void {
    this.#travel(this.#future, this.#past, source);
  }

  #travel(from: CompletePlan[], to: CompletePlan[], source: string | null): void {
    this.cancel();
    const plan = this.#locked ? undefined : from.pop();
    if (!plan) return;
    to.push(this.plan);
    this.#take(plan);
    this.owner.planMoved(source === null ? null : 'change', source ?? '', null);
  }

  chooseUnit(unit: KUnit): void {
    this.owner.unitChosen(unit);
  }

  /** While the host's settings are refused, the picture is of an older plan: nobody should work on it. */
  get #locked(): boolean {
    return this.readOnly || this.refusals.length > 0;
  }

  #take(plan: CompletePlan): void {
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
