/** The same transform by others that a developer might take. Each does it once, and tells the real part it found at (x, y). */
import FFT from 'fft.js';
import { fft } from 'mathjs';
import ndarray from 'ndarray';
import transform from 'ndarray-fft';

/** A plane of numbers without any order. */
export function planeOf(side) {
  return Float64Array.from({ length: side * side }, (_, i) => Math.sin(i * i));
}

/** Rows, and columns that are gathered from them. */
export function byFft(plane, side) {
  const plan = new FFT(side);
  const rows = Array.from({ length: side }, () => plan.createComplexArray());
  const columns = Array.from({ length: side / 2 + 1 }, () => plan.createComplexArray());
  const column = plan.createComplexArray();
  const once = () => {
    for (let y = 0; y < side; y += 1) plan.realTransform(rows[y], plane.subarray(y * side, (y + 1) * side));
    for (let x = 0; x <= side / 2; x += 1) {
      for (let y = 0; y < side; y += 1) {
        column[2 * y] = rows[y][2 * x];
        column[2 * y + 1] = rows[y][2 * x + 1];
      }
      plan.transform(columns[x], column);
    }
  };
  return { once, real: (x, y) => columns[x][2 * y] };
}

export function byNdarray(plane, side) {
  const re = ndarray(new Float64Array(side * side), [side, side]);
  const im = ndarray(new Float64Array(side * side), [side, side]);
  const once = () => {
    re.data.set(plane);
    im.data.fill(0);
    transform(1, re, im);
  };
  return { once, real: (x, y) => re.get(y, x) };
}

export function byMathjs(plane, side) {
  const rows = Array.from({ length: side }, (_, y) => [...plane.subarray(y * side, (y + 1) * side)]);
  let found;
  return { once: () => (found = fft(rows)), real: (x, y) => found[y][x].re };
}
