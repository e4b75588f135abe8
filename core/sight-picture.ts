import { RefusedValue } from './check.js';
import { lightOfBytes } from './sight-light.js';
import { allowed } from './sight-limits.js';

/** Pixels as a canvas holds them: rows from the top, red, green, blue and alpha of each pixel in sRGB. */
export interface Picture {
  data: Uint8ClampedArray;
  /** px */
  width: number;
  /** px */
  height: number;
}

/** The picture itself when its sizes are whole, within the limits, and match its data; else it is refused. */
export function checkedPicture(picture: Picture): Picture {
  if (typeof picture !== 'object' || picture === null) throw new RefusedValue('picture', picture, 'data, width and height');
  const { data, width, height } = picture;
  for (const [field, side] of [['picture width', width], ['picture height', height]] as const) {
    if (!Number.isInteger(allowed('side', field, side))) throw new RefusedValue(field, side, 'a whole number of px');
  }
  if (!(data instanceof Uint8ClampedArray)) throw new RefusedValue('picture data', data, 'a Uint8ClampedArray');
  if (data.length !== 4 * width * height) throw new RefusedValue('length of picture data', data.length, `${4 * width * height} (4 × ${width} × ${height})`);
  return picture;
}

/** Which of red, green and blue have to be calculated: 0 alone where all three are equal, as in a chart. */
export function channelsOf({ data }: Picture): readonly number[] {
  for (let i = 0; i < data.length; i += 4) {
    if (data[i] !== data[i + 1] || data[i] !== data[i + 2]) return [0, 1, 2];
  }
  return [0];
}

/**
 * Rows `from` to `to` of one channel of a picture as light, padded to `size`, into `strip`, which begins with row `from`. Beyond the right and the bottom
 * edge the last pixel goes on; before the left and the top edge, which is at the far end of the plane, the first does; in
 * between one passes smoothly into the other.
 * @param reach how many pixels from an edge its own value has to hold, along the row and along the column.
 */
export function fillRows(picture: Picture, channel: number, strip: Float64Array, size: Size, reach: Size, from: number, to: number): void {
  const lights = lightOfBytes();
  const { data, width, height } = picture;
  const light = (x: number, y: number): number => lights[data[4 * (y * width + x) + channel]!]!;
  for (let y = from; y < to; y += 1) {
    const start = (y - from) * size.width;
    const [row, first] = [Math.min(y, height - 1), share(y - height, size.height - height, reach.height)];
    const at = (x: number): number => light(x, row) * (1 - first) + light(x, 0) * first;
    for (let x = 0; x < width; x += 1) strip[start + x] = at(x);
    const [right, left] = [at(width - 1), at(0)];
    for (let x = width; x < size.width; x += 1) strip[start + x] = right + (left - right) * share(x - width, size.width - width, reach.width);
  }
}

export interface Size {
  width: number;
  height: number;
}

/** How much of the far edge is in the i-th of n pixels of padding: 0, then a cosine from 0 to 1, then 1; 0 before the padding. */
function share(i: number, n: number, reach: number): number {
  const at = (i + 0.5 - reach) / (n - 2 * reach);
  return at <= 0 ? 0 : at >= 1 ? 1 : (1 - Math.cos(Math.PI * at)) / 2;
}
