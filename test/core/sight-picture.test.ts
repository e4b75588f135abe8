/** A picture before it is blurred: which colours are calculated, and how it goes on beyond its edges. */
import { describe, expect, test } from 'vitest';
import { channelsOf, checkedPicture, fillRows, type Picture, type Size } from '../../core/sight-picture.js';
import { lightOf, picture } from './sight-support.js';

describe('of red, green and blue', () => {
  const grey = picture(7, 5, (x, y) => (40 * x + 9 * y) % 256);
  const changed = (place: number): Picture => {
    const data = grey.data.slice();
    data[place] = data[place]! ^ 3;
    return { ...grey, data };
  };

  test('one is enough where all three are alike, whatever the alpha is', () => {
    expect(channelsOf(grey)).toEqual([0]);
    expect(channelsOf(changed(3))).toEqual([0]);
    expect(channelsOf(changed(4 * 34 + 3))).toEqual([0]);
  });

  test('all are taken where one is another at any pixel, the first and the last among them', () => {
    for (const pixel of [0, 1, 17, 34]) {
      for (const channel of [0, 1, 2]) expect([pixel, channel, channelsOf(changed(4 * pixel + channel))]).toEqual([pixel, channel, [0, 1, 2]]);
    }
  });

  test('a picture that is right comes back itself, and the largest and the smallest are right', () => {
    for (const [width, height] of [[1, 1], [2048, 1], [1, 2048]] as const) {
      const given = { data: new Uint8ClampedArray(4 * width * height), width, height };
      expect(checkedPicture(given) === given).toBe(true);
    }
  });
});

describe('beyond its edges a picture', () => {
  const [width, height, size, reach]: [number, number, Size, Size] = [5, 4, { width: 24, height: 18 }, { width: 6, height: 4 }];
  const shot = picture(width, height, (x, y) => [20 * x + 31 * y, 255 - 20 * x, 128]);

  /** Lower edge of the first, upper edge of the second: 0 for `hold` pixels, half a wave of a cosine, 1 for `hold`. */
  const passage = (i: number, n: number, hold: number): number => {
    if (i < hold) return 0;
    if (i >= n - hold) return 1;
    return Math.sin((Math.PI / 2) * ((i - hold + 0.5) / (n - 2 * hold))) ** 2;
  };

  const padded = (channel: number, from = 0, to = size.height): Float64Array => {
    const strip = new Float64Array(size.width * (to - from)).fill(NaN);
    fillRows(shot, channel, strip, size, reach, from, to);
    return strip;
  };

  const wanted = (channel: number, x: number, y: number): number => {
    const light = (column: number, row: number): number => lightOf(shot.data[4 * (row * width + column) + channel]!);
    const down = y < height ? 0 : passage(y - height, size.height - height, reach.height);
    const [top, bottom] = [Math.min(y, height - 1), y < height ? y : 0];
    const at = (column: number): number => light(column, top) * (1 - down) + light(column, bottom) * down;
    if (x < width) return at(x);
    const across = passage(x - width, size.width - width, reach.width);
    return at(width - 1) * (1 - across) + at(0) * across;
  };

  test.each([0, 1, 2])('goes on with its last pixels, then passes over into its first: channel %d', (channel) => {
    padded(channel).forEach((light, i) => {
      const [x, y] = [i % size.width, Math.floor(i / size.width)];
      expect(Math.abs(light - wanted(channel, x, y)), `${x}, ${y}`).toBeLessThan(1e-12);
    });
  });

  test('is the same in strips', () => {
    const whole = padded(0);
    for (let from = 0; from < size.height; from += 5) {
      const to = Math.min(size.height, from + 5);
      expect(padded(0, from, to)).toEqual(whole.slice(from * size.width, to * size.width));
    }
  });
});
