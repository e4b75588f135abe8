import type { LitElement } from 'lit';
import type { CompletePlan, EyeSide } from '../../core/numbers.js';
import { withoutPlan } from '../internal/case-model.js';
import type { CaseModel, KUnit } from '../internal/case-model.js';
import { movesOf } from '../internal/case-moves.js';
import type { Language } from '../internal/language/language.js';
import { propose, samePlan } from '../internal/proposal.js';
import type { Choice } from './entry.choices.js';
import { isNumberField } from './entry.fields.js';
import type { NumberField } from './entry.fields.js';
import type { Action } from './entry.parts.js';
import { choiceField, chosenPatch, mirrored, sourceOf } from './entry.patches.js';
import { Typing } from './entry.typing.js';
import { entryWords } from './entry.words.js';

const TAG = 'astig-entry';

/** The form that is worked on, as it is at the moment of asking. */
export interface Form {
  readonly language: Language;
  model(): CaseModel | null;
  /** Whether nothing can be changed there. */
  fixed(): boolean;
}

/** What is done to the form: an event of it, and the field that it came from, which the event itself forgets. */
export type Deed = readonly [event: Event, target: HTMLInputElement];

/** What makes of typing, switching and pressing in the form movements of the plan. */
export class EntryHands {
  readonly typing: Typing;
  /** The eye for which mirroring is offered. */
  offer: EyeSide | null = null;
  /** What a screen reader is to hear of the last action. */
  spoken = '';
  /** What was shown last, to tell whether someone else has put another plan in its place. */
  #seen: { model: CaseModel; plan: CompletePlan; moving: boolean } | null = null;

  constructor(
    private readonly host: LitElement,
    private readonly form: Form,
  ) {
    this.typing = new Typing(host);
  }

  do([event, target]: Deed): void {
    const model = this.form.model();
    if (!model) return;
    if (event.type === 'click') this.#press(target.closest('button[data-action]'), model);
    else if (isNumberField(target)) this.#field(event, target, model);
    else if (event.type === 'change') this.#switch(target, model);
  }

  /** The form goes away; not every browser lets a field that is taken away lose the focus first. */
  leave(): void {
    const model = this.form.model();
    if (model) this.typing.leave(model);
  }

  /** Takes note of what has happened to the case. Views are drawn once a frame, and a key may come before that. */
  settle(): void {
    const model = this.form.model();
    const { typing } = this;
    const seen = this.#seen;
    if (seen && seen.model !== model) typing.leave(seen.model);
    // What was typed and offered was meant for the plan that is gone: it may have been another eye.
    if (!model || seen?.model !== model || this.form.fixed() || this.#isReplaced(model)) {
      typing.forget();
      this.offer = null;
    }
    if (model) typing.yieldTo(model.plan);
    if (this.offer !== model?.plan.eye) this.offer = null;
    this.#look(model);
  }

  /** Whether the page has put another plan in the place of the one that was shown. Then nothing can be taken back. */
  #isReplaced({ plan, moving, moves }: CaseModel): boolean {
    const seen = this.#seen;
    if (seen?.plan === plan || moves?.canUndo || moves?.canRedo) return false;
    return this.typing.moving || !(seen?.moving || moving);
  }

  #field(event: Event, { name, value }: HTMLInputElement & { name: NumberField }, model: CaseModel): void {
    if (event.type === 'input') {
      this.spoken = '';
      this.settle();
      this.typing.type(name, value, model);
      this.#done(model);
    } else if (event.type === 'keydown') {
      this.#key(event as KeyboardEvent, name, model);
    } else {
      // A field does not fire `change` when it is left as it was entered, but a movement may be under way all the same.
      this.typing.finish(name, model);
      this.spoken = this.typing.error(name, this.form.language) ?? this.spoken;
      this.#done(model);
    }
  }

  #key(event: KeyboardEvent, name: NumberField, model: CaseModel): void {
    if (!this.typing.has(name)) return;
    if (event.key === 'Escape') {
      this.typing.cancel(name, model);
      this.#done(model);
      event.preventDefault();
      event.stopPropagation();
    } else if ((event.ctrlKey || event.metaKey) && /^[zy]$/i.test(event.key)) {
      // While a text is unfinished, the browser's own undo works on the text, not the case's on the plan.
      event.stopPropagation();
    }
  }

  #switch({ name, value }: HTMLInputElement, model: CaseModel): void {
    if (name === 'kUnit') {
      this.typing.forget(['flatK', 'steepK']);
      model.owner.unitChosen(value as KUnit);
    } else if (name === 'risks') {
      const ticked = this.host.renderRoot.querySelectorAll<HTMLInputElement>('[name=risks]:checked');
      movesOf(model).choose({ risks: [...ticked].map((box) => box.value).join(' ') }, sourceOf('risks'), this.host);
    } else {
      const choice = name as Exclude<Choice, 'kUnit'>;
      movesOf(model).choose(chosenPatch(choice, value, model.plan, model.outcome), sourceOf(choiceField(choice)), this.host);
      if (choice === 'eye') this.#offerMirroring(model.plan);
    }
    // A switch that was not accepted goes back.
    this.#done(model);
  }

  #offerMirroring(plan: CompletePlan): void {
    const worthwhile = !samePlan(plan, propose(plan, mirrored(plan)).plan);
    this.offer = worthwhile ? plan.eye : null;
    this.spoken = worthwhile ? this.form.language.say(entryWords)(plan.eye === 'right' ? 'nowRight' : 'nowLeft') : '';
  }

  #press(button: HTMLButtonElement | null, model: CaseModel): void {
    if (!button || button.getAttribute('aria-disabled') === 'true') return;
    const action = button.dataset['action'] as Action;
    const moves = movesOf(model);
    if (action === 'undo') moves.undo(`${TAG} undo`);
    if (action === 'redo') moves.redo(`${TAG} redo`);
    if (action === 'reset') {
      this.typing.forget();
      moves.choose(withoutPlan(model.plan), `${TAG} reset`, this.host);
    }
    if (action === 'mirror') moves.choose(mirrored(model.plan), `${TAG} mirror`, this.host);
    if (action === 'mirror' || action === 'dismiss') {
      this.offer = null;
      // The offer's buttons go with it; the keyboard stays where the offer came from.
      this.host.renderRoot.querySelector<HTMLElement>('[name=eye]:checked')?.focus();
    }
    this.#done(model);
  }

  #done(model: CaseModel): void {
    this.#look(model);
    this.host.requestUpdate();
  }

  /** Remembers the plan as one that this form knows of. */
  #look(model: CaseModel | null): void {
    this.#seen = model && { model, plan: model.plan, moving: model.moving };
  }
}
