import { expect, test } from 'vitest';
import { backSurface } from '../../core/index.js';

test('a measured back surface is read anew where it is another, and nobody can change what was read', () => {
  const first = backSurface('0.30@175');
  expect(first).toEqual({ magnitude: 0.3, meridian: 175 });
  first.magnitude = 9;
  expect(backSurface('0.30@175')).toEqual({ magnitude: 0.3, meridian: 175 });
  expect(() => backSurface('0.30@190' as never)).toThrow(RangeError);
  expect(() => backSurface('0.30@190' as never)).toThrow(RangeError);
  expect(backSurface('0.40@20')).toEqual({ magnitude: 0.4, meridian: 20 });
  expect(backSurface('0.30@175')).toEqual({ magnitude: 0.3, meridian: 175 });
});
