import { noChange } from 'lit';
import { Directive, directive } from 'lit/directive.js';
import type { ChildPart } from 'lit/directive.js';
import { setCommittedValue } from 'lit/directive-helpers.js';

/**
 * A piece of a list that stays as it is while `of` is the same, and of which nothing stays, be it a focus, where another
 * `key` comes in its place: Lit's `guard` and `keyed` in one.
 */
class Kept extends Directive {
  #key: unknown;
  #of: readonly unknown[] = [];

  override render(_key: unknown, _of: readonly unknown[], make: () => unknown): unknown {
    return make();
  }

  override update(part: ChildPart, [key, of, make]: Parameters<this['render']>): unknown {
    if (key !== this.#key) setCommittedValue(part);
    else if (of.every((value, index) => value === this.#of[index])) return noChange;
    this.#key = key;
    this.#of = of;
    return make();
  }
}

export const kept = directive(Kept);
