import { expect } from 'vitest';
import { RefusedValue } from '../../core/index.js';

/** What a call is refused with, which must be a refusal and no other error. */
export function refusalOf(call: () => unknown): RefusedValue {
  let thrown: unknown;
  try {
    call();
  } catch (error) {
    thrown = error;
  }
  expect(thrown).toBeInstanceOf(RefusedValue);
  return thrown as RefusedValue;
}
