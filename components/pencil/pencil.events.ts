/**
 * Fired when the user turns the bundle or moves the screen through it. The plan stays as it is, so there is no
 * `astig-input` and no `astig-change`. Bubbles out of shadow roots.
 */
export class AstigViewEvent extends Event {
  constructor(
    /** Degrees from the front, -180 to 180. */
    readonly turn: number,
    /** Degrees above the axis. */
    readonly tilt: number,
    /** Where the screen stands: mm behind the retina, or the place that it follows. */
    readonly screen: number | string,
    /** Whether the movement has ended. */
    readonly settled: boolean,
    /** Tag and part that was moved, for instance `astig-pencil screen`. */
    readonly source: string,
  ) {
    super('astig-view', { bubbles: true, composed: true });
  }
}

declare global {
  interface HTMLElementEventMap {
    'astig-view': AstigViewEvent;
  }
}
