import type { CompletePlan, EyePlan, RefusedValue } from '../../core/numbers.js';
import type { CaseModel } from './case-model.js';
import { AstigChangeEvent, AstigInputEvent } from './events.js';
import { propose, samePlan } from './proposal.js';
import { holds } from './tree.js';

/** How many plans can be taken back. */
const MEMORY = 200;

/**
 * The user's hand on the plan of a case: moves it, tells the page, and takes back what was done. Comes with what the plan
 * can be changed by; a page on which nobody changes it never loads this.
 */
export class CaseMoves {
  /** The plan before the movement that is under way, the fields that it has touched, and whose it is. */
  #draft: { before: CompletePlan; touched: Set<keyof CompletePlan>; source: string; by: Element | null } | null = null;
  #past: CompletePlan[] = [];
  #future: CompletePlan[] = [];
  /** Whether the page is on its way from one plan to another: what lies between is to be seen, not spoken. */
  gliding = false;
  /** Whether the reader is asked what a plan will bring: what shows other plans shows nothing meanwhile. */
  asking?: boolean;
  /** Called when the host page sets another plan, before it is taken. */
  onForget: (() => void) | null = null;

  constructor(private readonly model: CaseModel) {}

  /** Whether something is being moved right now. */
  get moving(): boolean {
    return this.gliding || this.#draft !== null;
  }

  get canUndo(): boolean {
    return this.#past.length > 0 && !this.#locked;
  }

  get canRedo(): boolean {
    return this.#future.length > 0 && !this.#locked;
  }

  /** The host page has set another plan: what was done before cannot be taken back, for it may have been another eye. */
  forget(): void {
    this.onForget?.();
    this.#past = [];
    this.#future = [];
    this.#draft = null;
  }

  /**
   * Moves part of the plan on the user's behalf. What cannot be accepted leaves the plan as it is and is returned. What
   * another view has moved and not let go, such as a text that is being typed, is committed first: it is no part of this.
   */
  move(patch: EyePlan, source: string, from: Element | null): RefusedValue[] {
    const { model } = this;
    if (this.#locked) return [];
    if (this.#draft?.by !== from) this.#end();
    const { plan, refusals } = propose(model.plan, patch);
    if (samePlan(plan, model.plan)) return refusals;
    this.#draft ??= { before: model.plan, touched: new Set(), source, by: from };
    for (const field of Object.keys(patch) as (keyof CompletePlan)[]) this.#draft.touched.add(field);
    model.take(plan);
    this.#tell(AstigInputEvent, source, from);
    return refusals;
  }

  /** Ends the movement of a view. Fires one change when the plan is not what it was. */
  commit(source: string, from: Element | null): void {
    if (this.#draft?.by === from) this.#end(source);
  }

  #end(source?: string): void {
    const draft = this.#draft;
    if (!draft) return;
    this.#draft = null;
    if (samePlan(draft.before, this.model.plan)) {
      this.model.notify();
      return;
    }
    this.#past = [...this.#past, draft.before].slice(-MEMORY);
    this.#future = [];
    this.#tell(AstigChangeEvent, source ?? draft.source, draft.by);
  }

  /** Puts back what the movement has touched, and fires nothing. */
  cancel(): void {
    const draft = this.#draft;
    if (!draft) return;
    this.#draft = null;
    const old = Object.fromEntries([...draft.touched].map((field) => [field, draft.before[field]]));
    this.model.take(propose(this.model.plan, old).plan);
    this.model.owner.planMoved();
  }

  /** The same, if it was this view that moved something, and gives it up or goes away. */
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

  /** Takes back or does again at the usual keys: Ctrl or Cmd with Z, with Shift and Z, or with Y. */
  byKey(event: KeyboardEvent, source: string): void {
    const key = event.key.toLowerCase();
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.defaultPrevented) return;
    const back = key === 'z' && !event.shiftKey;
    const forth = (key === 'z' && event.shiftKey) || (key === 'y' && !event.shiftKey);
    if (!(back ? this.canUndo : forth && this.canRedo)) return;
    event.preventDefault();
    if (back) this.undo(`${source} undo`);
    else this.redo(`${source} redo`);
  }

  #travel(from: CompletePlan[], to: CompletePlan[], source: string | null): void {
    const { model } = this;
    this.cancel();
    const plan = this.#locked ? undefined : from.pop();
    if (!plan) return;
    to.push(model.plan);
    model.take(plan);
    if (source === null) model.owner.planMoved();
    else this.#tell(AstigChangeEvent, source, null);
  }

  #tell(Kind: typeof AstigInputEvent | typeof AstigChangeEvent, source: string, from: Element | null): void {
    const { owner, plan, outcome } = this.model;
    owner.planMoved();
    // A view that names its case by `for` may lie outside of it; the case is told all the same.
    const target = from && holds(owner, from) ? from : owner;
    target.dispatchEvent(new Kind(plan, outcome, source));
  }

  /** While the host's settings are refused, the picture is of an older plan: nobody should work on it. */
  get #locked(): boolean {
    return this.model.readOnly || this.model.refusals.length > 0;
  }
}

/** The user's hand on a case, made when it is first needed. */
export function movesOf(model: CaseModel): CaseMoves {
  return (model.moves ??= new CaseMoves(model));
}
