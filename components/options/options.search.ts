import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { FIELDS } from '../../core/numbers.js';
import type { Caution, CompletePlan } from '../../core/numbers.js';
import { cautionsAgainstArcs, suggestPlans } from '../../core/options.js';
import type { PlanLimits, SuggestedPlan } from '../../core/options.js';
import { PLANNED } from './options.plan.js';

/** The fields on which the suggestions rest: all but what is searched for, also those that are yet to come. */
const SEARCHED = FIELDS.filter((field) => !(PLANNED as readonly string[]).includes(field));

/** Longest wait for an idle moment, ms. */
const LONGEST_WAIT = 250;

/** What was found for an eye. */
export interface Found {
  options: readonly SuggestedPlan[];
  /** Why no arcs are offered in this eye; empty when they are. */
  against: readonly Caution[];
}

interface Question {
  key: string;
  plan: CompletePlan;
  limits: PlanLimits;
}

/**
 * Looks for plans. A search takes some ten milliseconds: it is made at once for the first list, later in an idle moment,
 * never while something is being moved, and never twice for the same eye and limits.
 */
export class PlanSearch implements ReactiveController {
  /** The last list that was found; null before the first. */
  found: Found | null = null;

  #answered = '';
  #question: Question | null = null;
  #callOff: (() => void) | null = null;
  #waiters: (() => void)[] = [];

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#rest();
  }

  /** Whether the list is not, or not yet, that of the eye and the limits asked for last. */
  get stale(): boolean {
    return this.#question !== null && this.#question.key !== this.#answered;
  }

  /** Resolves when the search that waits for an idle moment is over or called off; null when none waits. */
  get waiting(): Promise<void> | null {
    return this.#callOff && new Promise((resolve) => this.#waiters.push(resolve));
  }

  /** Drops the list, for what comes is about another eye. */
  forget(): void {
    this.#rest();
    this.found = null;
    this.#answered = '';
  }

  /** Sees to it that there will be a list for this eye and these limits. */
  ask(plan: CompletePlan, limits: PlanLimits, moving: boolean): void {
    this.#question = { key: keyOf(plan, limits), plan, limits };
    if (!this.stale || moving) this.#rest();
    else if (!this.found) this.#search();
    else this.#callOff ??= whenIdle(() => this.#search());
  }

  #search(): void {
    const { key, plan, limits } = this.#question!;
    this.#answered = key;
    this.found = { options: suggestPlans(plan, limits), against: limits.arcs === 0 ? [] : cautionsAgainstArcs(plan) };
    this.#rest();
    this.host.requestUpdate();
  }

  /** Nothing waits any more. */
  #rest(): void {
    this.#callOff?.();
    this.#callOff = null;
    for (const resolve of this.#waiters.splice(0)) resolve();
  }
}

function keyOf(plan: CompletePlan, limits: PlanLimits): string {
  // The width in the plan counts only where no blades are named.
  const width = limits.widths ? null : plan.incisionWidth;
  return JSON.stringify([SEARCHED.map((field) => plan[field]), width, limits]);
}

/** Runs a task when the browser has nothing more urgent to do; returns what calls it off. */
function whenIdle(task: () => void): () => void {
  if (typeof requestIdleCallback === 'function') {
    const handle = requestIdleCallback(task, { timeout: LONGEST_WAIT });
    return () => cancelIdleCallback(handle);
  }
  // Not every engine has idle moments; there the task waits for the paint that is due.
  const timer = setTimeout(task, 0);
  return () => clearTimeout(timer);
}
