/** Fired when the user, by a button or a key, goes to another step. Bubbles out of shadow roots. */
export class AstigStepEvent extends Event {
  constructor(
    /** Number of the step that is shown now, from 1. */
    readonly step: number,
    /** How many steps there are. */
    readonly count: number,
    /** Tag and part that was used: `astig-steps next`, `astig-steps back`, `astig-steps keyboard` or `astig-steps show`. */
    readonly source: string,
  ) {
    super('astig-step', { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    'astig-step': AstigStepEvent;
  }
}
