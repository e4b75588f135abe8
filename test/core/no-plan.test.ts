import { describe, expect, it } from 'vitest';
import { evaluatePlan } from '../../core/index.js';

describe('what is no plan', () => {
  it.each([null, undefined, 'right', 7, [], [{ eye: 'left' }]])('%o is refused in words', (nothing) => {
    expect(() => evaluatePlan(nothing as never)).toThrow(RangeError);
    expect(() => evaluatePlan(nothing as never)).toThrow(/^plan: .* is refused; allowed is an object with the fields of an eye/);
  });
});
