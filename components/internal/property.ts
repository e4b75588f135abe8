import type { PropertyDeclaration, ReactiveElement } from 'lit';

type Decorator = (prototype: ReactiveElement, name: PropertyKey) => void;

/**
 * Lit's decorator of the same name in the one form that is used here: experimental, on fields. Lit's own serves every
 * form of decorators and is ten times as large.
 */
export function property(options?: PropertyDeclaration): Decorator {
  return (prototype, name) => (prototype.constructor as typeof ReactiveElement).createProperty(name, options);
}

/** A property that only the element itself sets. */
export function state(): Decorator {
  return property({ state: true, attribute: false });
}
