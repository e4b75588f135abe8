import type { LitElement } from 'lit';
import type { CaseModel } from './case-model.js';

/** Attribute in which a server leaves the stamp of what it has drawn. */
export const STAMP = 'data-served';

/**
 * Stamp of all that a drawing depends on. A page must not take over what a server has drawn of other figures, since what
 * it takes over it does not write again.
 */
export function stampOf(view: LitElement, model: CaseModel | null, language: string): string {
  const own = [...(view.constructor as typeof LitElement).elementProperties.keys()].map((name) => view[name as keyof LitElement]);
  const text = JSON.stringify([own, language, model && [model.plan, model.kUnit, model.readOnly, model.refusals.map(({ message }) => message)]]);
  let sum = 0;
  for (let index = 0; index < text.length; index++) sum = (Math.imul(sum, 31) + text.charCodeAt(index)) | 0;
  return sum.toString(36);
}
