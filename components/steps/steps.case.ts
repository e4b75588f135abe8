import type { LitElement, PropertyDeclaration } from 'lit';
import { FIELDS } from '../../core/numbers.js';
import type { CompletePlan, RefusedValue } from '../../core/numbers.js';
import type { CaseModel, KUnit } from '../internal/case-model.js';
import { upwards } from '../internal/tree.js';
import type { Shown } from './steps.plan.js';

/** What steps need of an `<astig-case>`. */
export type CaseElement = LitElement & Shown & { model: CaseModel; kUnit: KUnit; readOnly: boolean; refusals: readonly RefusedValue[] } & Record<string, unknown>;

const TAG = 'astig-case';

/** The case of some steps: named by its id, inside them, or around them. */
export function caseOf(steps: HTMLElement & { for: string }): CaseElement | null {
  let found: Element | null = null;
  if (steps.for) found = (steps.getRootNode() as Document).getElementById?.(steps.for);
  else found = steps.querySelector(TAG) ?? around(steps);
  return found && 'model' in found ? (found as CaseElement) : null;
}

function around(steps: Element): Element | null {
  for (const node of upwards(steps)) if ((node as Element).localName === TAG) return node as Element;
  return null;
}

/** The case as it was before the first step. */
export interface Base {
  plan: CompletePlan;
  kUnit: KUnit;
}

/** The same with what the host page has set since, at another step. */
export function withChanges(base: Base, before: CompletePlan, { plan, kUnit }: CaseElement): Base {
  const changed = FIELDS.filter((field) => before[field] !== plan[field]).map((field) => [field, plan[field]]);
  return { plan: { ...base.plan, ...Object.fromEntries(changed) } as CompletePlan, kUnit };
}

/**
 * Sets a case as it is after some steps: its own state, with what each of them names on top, in their order. Returns what is
 * refused; then the case keeps its last good plan.
 */
export function setSteps(eye: CaseElement, base: Base, steps: readonly Element[]): readonly RefusedValue[] {
  eye.kUnit = base.kUnit;
  eye.plan = base.plan;
  for (const step of steps) for (const [name, value] of settingsOf(eye, step)) (eye as Record<string, unknown>)[name] = value;
  return eye.refusals;
}

/** The properties of the case that a step names in its attributes, as the case itself would read them. */
function settingsOf(eye: CaseElement, step: Element): [string, unknown][] {
  const { elementProperties } = eye.constructor as typeof LitElement;
  return [...elementProperties].flatMap(([name, declaration]): [string, unknown][] => {
    const text = settable(declaration) ? step.getAttribute(attributeOf(String(name), declaration)) : null;
    return text === null ? [] : [[String(name), read(text, declaration)]];
  });
}

function settable({ attribute, type }: PropertyDeclaration): boolean {
  return attribute !== false && type !== Boolean;
}

function attributeOf(name: string, { attribute }: PropertyDeclaration): string {
  return typeof attribute === 'string' ? attribute : name.toLowerCase();
}

function read(text: string, { converter }: PropertyDeclaration): unknown {
  return typeof converter === 'object' ? converter.fromAttribute!(text) : text;
}
