import { isServer } from 'lit';
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { askForCase } from './case-context.js';
import type { CaseModel } from './case-model.js';

type Host = ReactiveControllerHost & HTMLElement & { for: string };

/** Tag of the element that holds a case. */
const CASE_TAG = 'astig-case';

/**
 * Finds the case of a view: by `for="id"` anywhere in the same tree, else the nearest `<astig-case>` around it. Works
 * whichever of the two is defined, connected or inserted first.
 */
export class CaseController implements ReactiveController {
  model: CaseModel | null = null;
  #unsubscribe: (() => void) | null = null;
  #watcher: MutationObserver | null = null;

  constructor(private readonly host: Host) {
    host.addController(this);
    // The keys of a view that lies outside of its case do not bubble through it.
    host.addEventListener('keydown', (event) => {
      if (host.for) this.model?.moves?.byKey(event, host.localName);
    });
  }

  hostConnected(): void {
    this.find();
    if (this.model) return;
    // The case may be defined later than the view; ask again then.
    void customElements.whenDefined(CASE_TAG).then(() => {
      if (this.host.isConnected && !this.model) this.find();
    });
  }

  hostDisconnected(): void {
    this.model?.moves?.abandon(this.host);
    this.#take(null);
    this.#stopWatching();
  }

  /** Looks again, after `for` has changed. */
  find(): void {
    if (this.host.for) {
      this.#findById();
      return;
    }
    this.#stopWatching();
    this.#take(askForCase(this.host));
  }

  #findById(): void {
    const root = this.host.getRootNode() as Document | ShadowRoot;
    const element = root.getElementById?.(this.host.for) as (HTMLElement & { model?: CaseModel }) | null;
    this.#take(element?.model ?? null);
    if (!this.#watcher && !isServer) {
      // The case may come, go or change its id at any time, as lists in host pages do.
      this.#watcher = new MutationObserver(() => this.#findById());
      this.#watcher.observe(root, { subtree: true, childList: true, attributes: true, attributeFilter: ['id'] });
    }
  }

  #take(model: CaseModel | null): void {
    if (model === this.model) return;
    this.#unsubscribe?.();
    this.model = model;
    this.#unsubscribe = model?.subscribe(() => this.host.requestUpdate()) ?? null;
    this.host.requestUpdate();
  }

  #stopWatching(): void {
    this.#watcher?.disconnect();
    this.#watcher = null;
  }
}
