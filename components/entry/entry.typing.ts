import type { CompletePlan, EyePlan, RefusedValue } from '../../core/numbers.js';
import type { CaseModel } from '../internal/case-model.js';
import { movesOf } from '../internal/case-moves.js';
import type { Language } from '../internal/language/language.js';
import { emptyText, notNumberText, orderText, outsideText, rangeBeside, refusedText } from './entry.complaints.js';
import type { Complaint } from './entry.complaints.js';
import { NUMBER_FIELDS, converted, isPlanned, specOf, valueOf } from './entry.fields.js';
import type { FieldSpec, NumberField } from './entry.fields.js';
import { shownValue } from './entry.numbers.js';
import { put, sourceOf } from './entry.patches.js';
import { isUnfinished, readNumber } from './entry.reading.js';

/** What is wrong with a text. While it is being typed, `early` says that it may yet come right. */
interface Problem {
  message: Complaint;
  early: boolean;
}

/** A text that was typed and is not yet, or not only, in the plan. */
interface Typed {
  text: string;
  problem: Problem | null;
  /** Whether the field has been left, or Enter pressed. */
  finished: boolean;
  /** The plan's value before the typing: what stands while the text is wrong. */
  base: number | null;
  /** The plan's value after it: when that is another one later, someone else has set it. */
  at: number | null;
}

const PARTNER: Partial<Record<NumberField, NumberField>> = { flatK: 'steepK', steepK: 'flatK' };

/**
 * The texts being typed into the form. What can be read moves the plan at once; what cannot stays in its field, and is
 * tried again together with everything typed later, since two values may be acceptable only together.
 */
export class Typing {
  private readonly typed = new Map<NumberField, Typed>();
  /** Whether typing has begun a movement of the plan that is not yet committed. */
  moving = false;
  private last: NumberField = 'age';
  private before: CompletePlan | null = null;

  constructor(private readonly from: Element) {}

  /** Whether a field holds a text that is not committed. */
  has(id: NumberField): boolean {
    return this.typed.has(id);
  }

  /** What was typed into a field, where that is what it shows. */
  text(id: NumberField): string | undefined {
    return this.typed.get(id)?.text;
  }

  /** What is to be said of a field, once it is sure that more typing will not mend it. */
  error(id: NumberField, language: Language): string | null {
    const typed = this.typed.get(id);
    return typed?.problem && (typed.finished || !typed.problem.early) ? typed.problem.message(language) : null;
  }

  /** Takes a text as it is being typed. */
  type(id: NumberField, text: string, model: CaseModel): void {
    this.last = id;
    if (!this.moving) this.before = model.plan;
    const value = valueOf(model.plan, id);
    const old = this.typed.get(id);
    const base = old && Object.is(old.at, value) ? old.base : value;
    this.typed.set(id, { text, problem: null, finished: false, base, at: value });
    const source = sourceOf(NUMBER_FIELDS[id].planField);
    this.judge(model, movesOf(model).move(this.patch(model), source, this.from));
    this.restore(model, source);
    for (const [each, typed] of this.typed) typed.at = valueOf(model.plan, each);
    this.moving = model.moving;
  }

  /** The field is left: what is accepted is committed, what is wrong stays where it is. */
  finish(id: NumberField, model: CaseModel): void {
    const left = this.typed.get(id);
    if (left) left.finished = true;
    for (const [each, { problem }] of this.typed) if (!problem) this.typed.delete(each);
    this.leave(model);
  }

  /** Commits what has been accepted. */
  leave(model: CaseModel): void {
    if (this.moving) movesOf(model).commit(sourceOf(NUMBER_FIELDS[this.last].planField), this.from);
    this.moving = false;
  }

  /** Puts back what the plan holds. */
  cancel(id: NumberField, model: CaseModel): void {
    this.typed.delete(id);
    if (this.moving) movesOf(model).abandon(this.from);
    this.moving = false;
  }

  /** Drops what was typed, everywhere or in the fields named. */
  forget(ids?: readonly NumberField[]): void {
    for (const id of ids ?? [...this.typed.keys()]) this.typed.delete(id);
  }

  /** Lets go of texts whose field has gone or been set from elsewhere, but for a wrong one that is still being typed. */
  yieldTo(plan: CompletePlan): void {
    for (const [id, { at, problem, finished }] of this.typed) {
      const gone = !isPlanned(NUMBER_FIELDS[id].group, plan);
      if (gone || (!Object.is(valueOf(plan, id), at) && (!problem || finished))) this.typed.delete(id);
    }
  }

  /** All that can be read; a text that cannot counts as the value from before it. */
  private patch(model: CaseModel): EyePlan {
    const patch: EyePlan = {};
    for (const [id, typed] of this.typed) {
      const read = readField(id, typed, model);
      typed.problem = isProblem(read) ? read : null;
      put(patch, id, isProblem(read) ? typed.base : read, model.plan, this.before ?? model.plan);
    }
    return patch;
  }

  /** Says why the model did not take what could be read. */
  private judge(model: CaseModel, refused: readonly RefusedValue[]): void {
    for (const [id, typed] of this.typed) {
      const spec = specOf(id, model.kUnit);
      const refusal = refused.find(({ field }) => field === spec.planField);
      if (!refusal || typed.problem) continue;
      const { bare } = readNumber(typed.text, spec.limits.unit);
      const partner = PARTNER[id];
      typed.problem = partner ? wrongOrder(spec, bare, this.shown(partner, model)) : { message: refusedText(spec, bare, refusal), early: false };
    }
  }

  /** A refused text may follow an accepted one: then the value from before the typing stands again. */
  private restore(model: CaseModel, source: string): void {
    const patch: EyePlan = {};
    for (const [id, { problem, base }] of this.typed) {
      if (problem && !Object.is(valueOf(model.plan, id), base)) put(patch, id, base, model.plan, this.before ?? model.plan);
    }
    if (Object.keys(patch).length > 0) movesOf(model).move(patch, source, this.from);
  }

  /** The number in a reading's field, in the unit that is shown: the typed one when it can be read. */
  private shown(id: NumberField, model: CaseModel): number {
    const typed = this.typed.get(id);
    const read = typed ? readField(id, typed, model) : null;
    const value = typeof read === 'number' ? read : valueOf(model.plan, id)!;
    return converted(id, model.kUnit, value);
  }
}

function isProblem(read: number | null | Problem): read is Problem {
  return typeof read === 'object' && read !== null;
}

/** A text as a value in the plan's own unit, null for none, or what is wrong with it. */
function readField(id: NumberField, { text, base }: Typed, model: CaseModel): number | null | Problem {
  const spec = specOf(id, model.kUnit);
  const { min, max, unit } = spec.limits;
  const { bare, value } = readNumber(text, unit);
  if (bare === '' && spec.empty !== null) return null;
  if (value !== null && value >= min && value <= max) return exactly(id, value, base, model);
  const message = bare === '' ? emptyText(spec) : value === null ? notNumberText(spec, text) : outsideText(spec, bare);
  return { message, early: isUnfinished(bare, min, max) };
}

function wrongOrder(spec: FieldSpec, bare: string, other: number): Problem {
  const range = rangeBeside(spec, other);
  return { message: orderText(spec, bare, range), early: isUnfinished(bare, range.min, range.max) };
}

/**
 * A shown number in the plan's own unit. What is shown is rounded, so a number that shows the value from before the
 * typing means that value; and one that shows the other reading means the other reading, or a cornea without
 * astigmatism could be refused for its fifth decimal.
 */
function exactly(id: NumberField, shown: number, base: number | null, model: CaseModel): number {
  const partner = PARTNER[id];
  const known = [base, partner ? valueOf(model.plan, partner) : null];
  const meant = known.find((value) => value !== null && Number(shownValue(id, value, model)) === shown);
  return meant ?? converted(id, model.kUnit, shown);
}
