import type { AstigStep } from './step.js';
import { setSteps } from './steps.case.js';
import type { Base, CaseElement } from './steps.case.js';

/**
 * Every step with its text and its own pictures, for paper: copies of the views under a case of their own each, which
 * nobody can change.
 */
export function sequenceOf(host: Element, steps: readonly AstigStep[], base: Base): Element[] {
  const views = viewsOf(host);
  return steps.map((step, index) => {
    const section = document.createElement('section');
    const text = document.createElement('div');
    text.append(...[...step.childNodes].map((node) => node.cloneNode(true)));
    const eye = document.createElement('astig-case') as unknown as CaseElement;
    setSteps(eye, base, steps.slice(0, index + 1));
    const pictures = document.createElement('div');
    pictures.className = 'pictures';
    pictures.append(...views.map(copied));
    eye.append(pictures);
    section.append(text, eye);
    for (const element of section.querySelectorAll('[id]')) element.removeAttribute('id');
    return section;
  });
}

/** What shows the case between the steps. */
function viewsOf(host: Element): Element[] {
  return [...host.querySelectorAll('*')].filter(({ localName }) => /^astig-(?!case$|steps?$)/.test(localName));
}

function copied(view: Element): Element {
  const copy = view.cloneNode(true) as Element;
  copy.removeAttribute('for');
  copy.setAttribute('read-only', '');
  return copy;
}
