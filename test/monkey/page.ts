/** The page on which the monkey plays, and how it finds its way through shadow roots. */
import '../../components/define.js';
import { focused as focusedIn } from '../../components/internal/focused.js';
import type { AstigCase } from '../../components/case/case.js';

/** The elements that are there; a new one is added here. Some of them twice, one of them outside of the case. */
export const TAGS = ['astig-cornea', 'astig-vectors', 'astig-summary', 'astig-entry', 'astig-sweep', 'astig-options', 'astig-sight', 'astig-explain', 'astig-pencil', 'astig-sheet', 'astig-outcomes'] as const;

/** What must never be read on the screen, nor stand in a drawing. */
export const FAULT = /\bNaN\b|\bundefined\b|\bInfinity\b|\[object |\{\$\w+\}/;

export interface Playground {
  root: HTMLElement;
  eye: AstigCase;
  inside: HTMLElement;
  /** Elements that have been taken out of the page. */
  away: HTMLElement[];
  /** A gesture begins: what went before it, such as the end of typing in a field that is left, is not its doing. */
  gesture: () => void;
  /** What is being done now, for the report of what does not end. */
  doing: string;
}

/** Everything in a case, and one more drawing that finds the case by its id. */
export function playground(): Playground {
  const root = document.createElement('div');
  const eye = document.createElement('astig-case');
  eye.id = 'eye';
  eye.plan = { eye: 'right', flatK: 42.5, steepK: 44.25, steepMeridian: 10, age: 70, incisionSite: 180, arcSite: 10, arcCount: 1, arcDepth: 500, localThickness: 650 };
  const inside = document.createElement('div');
  inside.append(...TAGS.map((tag) => document.createElement(tag)));
  eye.append(inside);
  const outside = document.createElement('astig-vectors');
  outside.setAttribute('for', 'eye');
  root.append(eye, outside);
  document.body.append(root);
  return { root, eye, inside, away: [], gesture: () => {}, doing: '' };
}

/** The views that are in the page now. */
export function views({ root }: Playground): HTMLElement[] {
  return [...root.querySelectorAll<HTMLElement>(TAGS.join())];
}

/** All elements that match, in every shadow root. */
export function deepAll<Found extends Element = HTMLElement>(root: ParentNode, selector: string): Found[] {
  const found: Found[] = [...root.querySelectorAll<Found>(selector)];
  for (const element of root.querySelectorAll('*')) if (element.shadowRoot) found.push(...deepAll<Found>(element.shadowRoot, selector));
  return found;
}

/** What has the focus, inside all shadow roots; null for the page itself. */
export function focused(): Element | null {
  const at = focusedIn(document);
  return at === document.body ? null : at;
}
