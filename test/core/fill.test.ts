/** Values in texts. */
import { expect, test } from 'vitest';
import { filled } from '../../core/fill.js';

test('values stand where their names stood, as often as they do', () => {
  expect(filled('{$a} of {$b}, {$a}', { a: 1, b: 2 }, String)).toBe('1 of 2, 1');
});

test('a name without a value stays, so that it is seen', () => {
  expect(filled('{$a} of {$b}', { a: 1 }, String)).toBe('1 of {$b}');
});

test('what looks like a name inside a value is not filled again', () => {
  expect(filled('{$a}', { a: '{$b}', b: 'wrong' }, String)).toBe('{$b}');
});
