import type { LitElement, PropertyValues } from 'lit';
import type { CaseController } from './case-controller.js';
import type { Language } from './language/language.js';
import { STAMP, stampOf } from './stamp.js';

type Updating = LitElement & { update(changed: PropertyValues): void };

/**
 * Prepares the first rendering of a view that a server has drawn: waits for its case, and makes sure that Lit takes over
 * what is there only when it is of the same figures and made by the same templates. Otherwise all is drawn anew.
 */
export async function takeOver(view: LitElement, cases: CaseController, { tag }: Language): Promise<void> {
  if (!cases.model) {
    await customElements.whenDefined('astig-case');
    // Only then it reads its attributes.
    await new Promise((resolve) => setTimeout(resolve));
    cases.find();
  }
  const same = view.getAttribute(STAMP) === stampOf(view, cases.model, tag);
  view.removeAttribute(STAMP);
  if (!('litElementHydrateSupport' in globalThis)) {
    // Lit has put the styles elsewhere, and would draw beside what is there.
    view.shadowRoot!.replaceChildren();
    view.renderOptions.renderBefore = null;
    return;
  }
  if (!same) spoil(view.shadowRoot!);
  drawnAnewIfItFails(view as Updating);
}

/** Lit refuses a root in which it does not find what its templates say. */
function drawnAnewIfItFails(view: Updating): void {
  const update = view.update;
  view.update = (changed) => {
    delete (view as Partial<Updating>).update;
    try {
      update.call(view, changed);
    } catch {
      clear(view.shadowRoot!);
      update.call(view, changed);
    }
  };
}

/** Takes the name of its template from what is there, so that Lit refuses it. */
function spoil(root: ShadowRoot): void {
  for (const node of root.childNodes) if (node instanceof Comment) node.data = 'lit-part';
}

/** All but the styles, which Lit expects to be there already. */
function clear(root: ShadowRoot): void {
  for (const node of [...root.childNodes]) if (node.nodeName !== 'STYLE') node.remove();
}
