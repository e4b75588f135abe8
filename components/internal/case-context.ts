import type { CaseModel } from './case-model.js';

/**
 * What is asked for. The same in every copy of the library on a page, of whatever version: views of the one then work on
 * the model of the other. So it needs another name when what views ask of a model changes.
 */
const CASE = Symbol.for('astigmatism-elements/case');

/**
 * By this a view asks for the model of the nearest case around it. The event is that of the open context protocol of web
 * components, so that it gets along with whatever else on the page speaks it.
 */
class CaseRequest extends Event {
  readonly context = CASE;
  readonly subscribe = false;

  constructor(
    readonly contextTarget: Element,
    readonly callback: (model: CaseModel) => void,
  ) {
    super('context-request', { bubbles: true, composed: true });
  }
}

/** The model of the nearest case around an element, if there is one yet. */
export function askForCase(element: Element): CaseModel | null {
  let found: CaseModel | null = null;
  element.dispatchEvent(new CaseRequest(element, (model) => (found = model)));
  return found;
}

/** Answers the elements inside a case. */
export function answerForCase(element: Element, model: CaseModel): void {
  element.addEventListener('context-request', (event) => {
    const { context, contextTarget, callback } = event as CaseRequest;
    if (context !== CASE || contextTarget === element) return;
    event.stopPropagation();
    callback(model);
  });
}
