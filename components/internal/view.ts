import { LitElement } from 'lit';
import type { PropertyValues } from 'lit';
import { property } from 'lit/decorators.js';
import { CaseController } from './case-controller.js';
import type { CaseModel } from './case-model.js';
import { LanguageController } from './language/language-controller.js';

/** What every element that shows a case has in common. */
export abstract class AstigView extends LitElement {
  /** Id of the `<astig-case>` to show, in the same tree. Without it the nearest one around the element is shown. */
  @property() for = '';

  /** Shows the case but lets nobody change it here. */
  @property({ type: Boolean, attribute: 'read-only', reflect: true }) readOnly = false;

  /** The language of the reader. */
  protected readonly language = new LanguageController(this);

  private readonly caseController = new CaseController(this);

  /** The case that is shown, if there is one. */
  protected get model(): CaseModel | null {
    return this.caseController.model;
  }

  /** Whether the user may change the plan here. */
  protected get editable(): boolean {
    return this.model !== null && !this.readOnly && !this.model.readOnly;
  }

  /** Whether this frame has been drawn already while something is moved. */
  private drawn = false;

  /**
   * Several movements can reach the page within one frame. The first is drawn at once, the others together before the
   * next paint: each drawing in between would cost a layout that nobody sees. The model and its events do not wait.
   */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.model?.moving) {
      if (this.drawn) await new Promise(requestAnimationFrame);
      this.drawn = true;
      requestAnimationFrame(() => (this.drawn = false));
    }
    await super.scheduleUpdate();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('for') && this.hasUpdated) this.caseController.find();
  }
}
