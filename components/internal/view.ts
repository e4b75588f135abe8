import { LitElement, isServer } from 'lit';
import type { PropertyValues } from 'lit';
import { bareRootElsewhere } from './bare-root.js';
import { CaseController } from './case-controller.js';
import type { CaseModel } from './case-model.js';
import { nextFrame } from './frame.js';
import { LanguageController } from './language/language-controller.js';
import { keepOwnKeys } from './own-keys.js';
import { property } from './property.js';
import { STAMP, stampOf } from './stamp.js';

/**
 * What every element that shows a case has in common.
 *
 * @cssprop --astig-ground - ground
 * @cssprop --astig-ink - text
 * @cssprop --astig-quiet - notes and figures
 * @cssprop --astig-line - thin lines
 * @cssprop --astig-before - what was measured
 * @cssprop --astig-back-surface - back surface of the cornea
 * @cssprop --astig-incision - incision
 * @cssprop --astig-arcs - relaxing arcs
 * @cssprop --astig-lens - toric lens
 * @cssprop --astig-remaining - what remains
 * @cssprop --astig-cornea - cornea
 * @cssprop --astig-sclera - white of the eye
 * @cssprop --astig-pupil - pupil
 * @cssprop --astig-stop - the gravest cautions
 * @cssprop --astig-think - cautions to think about
 * @cssprop --astig-note - notes among the cautions
 * @cssprop --astig-focus - ring round what has the focus
 */
export abstract class AstigView extends LitElement {
  /** Id of the `<astig-case>` to show, in the same tree. Without it the nearest one around the element is shown. */
  @property() for = '';

  /** Shows the case but lets nobody change it here. */
  @property({ type: Boolean, attribute: 'read-only', reflect: true }) readOnly = false;

  /** The language of the reader. */
  protected readonly language = new LanguageController(this);

  readonly #caseController = new CaseController(this);

  /** The case that is shown, if there is one. */
  protected get model(): CaseModel | null {
    return this.#caseController.model;
  }

  /** Whether the user may change the plan here. */
  protected get editable(): boolean {
    return this.model !== null && !this.readOnly && !this.model.readOnly;
  }

  /** Whether a server has drawn this already. */
  readonly #served = this.shadowRoot !== null;

  /** What is being loaded for this view. */
  #coming: Promise<unknown> | null = null;

  constructor() {
    super();
    this.addEventListener('keydown', keepOwnKeys);
  }

  /** @internal */
  waitFor(coming: Promise<unknown>): void {
    this.#coming = Promise.all([this.#coming, coming]);
  }

  /** What comes on demand belongs to the picture: who waits for the one waits for the other. */
  protected override async getUpdateComplete(): Promise<boolean> {
    let done = await super.getUpdateComplete();
    while (this.#coming) {
      const coming = this.#coming;
      await coming;
      if (this.#coming === coming) this.#coming = null;
      done = await super.getUpdateComplete();
    }
    return done;
  }

  adoptedCallback(): void {
    this.waitFor(import('./restyle.js').then(({ restyle }) => restyle(this)));
  }

  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    return bareRootElsewhere(this) ?? super.createRenderRoot();
  }

  /**
   * Several movements can reach the page within one frame. They are drawn together before the next paint: each drawing in
   * between would cost a layout that nobody sees. The model and its events do not wait.
   */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.#served && !this.hasUpdated) await (await import('./take-over.js')).takeOver(this, this.#caseController, this.language);
    if (this.model?.moving) await nextFrame();
    await super.scheduleUpdate();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    // A server connects nothing, so the case is looked for here.
    if (isServer || (changed.has('for') && this.hasUpdated)) this.#caseController.find();
    if (isServer) this.setAttribute(STAMP, stampOf(this, this.model, this.language.tag));
  }
}
