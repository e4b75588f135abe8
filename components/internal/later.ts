import { isServer } from 'lit';

/** After a load that failed, ms: a page that is dragged while it is offline shall not report it with every movement. */
const RETRY = 5000;

/** What a part that comes on demand needs of its view. */
export interface Waiting {
  requestUpdate(): void;
  /** Has the view's `updateComplete` wait for something. */
  waitFor(coming: Promise<unknown>): void;
}

/**
 * A part of a view that is loaded when it is first needed, so that a page without need of it never does. The view is drawn
 * without it at first and again when it is there; who waits for the view's `updateComplete` waits for that.
 */
export class Later<Part> {
  /** The part, once it is there. */
  part: Part | null = null;
  #loading = false;

  constructor(
    private readonly view: Waiting,
    private readonly load: () => Promise<Part>,
  ) {}

  /** The part, or null while it is on its way. A load that failed is tried again with a later drawing. */
  need(): Part | null {
    if (!this.#loading && !isServer) {
      this.#loading = true;
      this.view.waitFor(this.#take());
    }
    return this.part;
  }

  async #take(): Promise<void> {
    try {
      this.part = await this.load();
      this.view.requestUpdate();
    } catch (error) {
      reportError(error);
      setTimeout(() => (this.#loading = false), RETRY);
    }
  }
}
