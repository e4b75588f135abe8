import { isServer } from 'lit';

/** What a part that comes on demand needs of its view. */
interface Waiting {
  requestUpdate(): void;
  /** Has the view's `updateComplete` wait for something. */
  await(coming: Promise<unknown>): void;
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

  /** The part, or null while it is on its way. A load that failed is tried again with the next drawing. */
  need(): Part | null {
    if (!this.#loading && !isServer) {
      this.#loading = true;
      this.view.await(this.#take());
    }
    return this.part;
  }

  async #take(): Promise<void> {
    try {
      this.part = await this.load();
      this.view.requestUpdate();
    } catch (error) {
      this.#loading = false;
      reportError(error);
    }
  }
}
