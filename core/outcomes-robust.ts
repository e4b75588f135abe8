import type { Vector } from './types.js';

/**
 * Centres that a slip in the table hardly moves. Both turn with the dial: a median taken of x and of y apart would
 * depend on where 0° is. The spatial median hardly minds how far off an eye is, but uses only 79 % of what a normal
 * series tells. The Winsorised centroid uses 99 % of it and is moved a little more by slips. Leaving the farthest
 * tenth of the eyes out altogether would use 74 %, no more than the median does, which is why it is not done.
 */

/** Share of the eyes of a normal series that the Winsorised centroid takes as they are. */
const TAKEN = 0.9;

/** Radius that holds this share over the radius that holds half of the eyes; both are Rayleigh's. */
const REACH = Math.sqrt(Math.log(1 - TAKEN) / Math.log(0.5));

/** Within this distance, D, a point is taken to be where an eye is. */
const SAME = 1e-9;

/**
 * Point with the least sum of distances to all points, to about 1e-8 D: nearer, the sums differ by their rounding alone.
 * Of an even number of eyes that lie on one line every point between the two in the middle has it; the one half way is
 * taken, as for a median of numbers, so that the order of the rows does not matter.
 * Weiszfeld's iteration as mended by Vardi & Zhang (2000), which does not stop where it meets an eye: tables rounded to
 * 0.25 D have many at the same place. It always comes nearer but may only creep, so a step by Newton's method is taken
 * instead wherever that comes nearer still.
 */
export function spatialMedian(xs: Float64Array, ys: Float64Array, start: Vector): Vector {
  const half = onLine(xs, ys);
  if (half) return half;
  let point = start;
  for (let step = 0; step < 100; step += 1) {
    const next = nearer(xs, ys, point);
    const moved = Math.hypot(next.x - point.x, next.y - point.y);
    point = next;
    if (moved < SAME / 10) break;
  }
  // Towards an eye that is itself the median it can only creep, so the nearest one is tried.
  const eye = nearest(xs, ys, point);
  return distances(xs, ys, eye) <= distances(xs, ys, point) ? eye : point;
}

/** The median of eyes that all lie on one line; null for others. */
function onLine(xs: Float64Array, ys: Float64Array): Vector | null {
  const [x, y] = [xs[0]!, ys[0]!];
  let [far, most] = [0, 0];
  for (let i = 1; i < xs.length; i += 1) {
    const distance = (xs[i]! - x) ** 2 + (ys[i]! - y) ** 2;
    if (distance > most) [far, most] = [i, distance];
  }
  const length = Math.sqrt(most) || 1;
  const [alongX, alongY] = [(xs[far]! - x) / length, (ys[far]! - y) / length];
  if (xs.some((other, i) => Math.abs((other - x) * alongY - (ys[i]! - y) * alongX) > SAME)) return null;
  const along = xs.map((other, i) => (other - x) * alongX + (ys[i]! - y) * alongY).sort();
  const middle = (along[(along.length - 1) >> 1]! + along[along.length >> 1]!) / 2;
  return { x: x + middle * alongX, y: y + middle * alongY };
}

function nearer(xs: Float64Array, ys: Float64Array, { x, y }: Vector): Vector {
  const { weights, pullX, pullY, here, xx, xy, yy } = forces(xs, ys, x, y);
  const pull = Math.hypot(pullX, pullY);
  // Eyes at this very place hold it with their number; it moves by what the pull of the others has more than that.
  if (pull <= here) return { x, y };
  const step = (1 - here / pull) / weights;
  const safe = { x: x + step * pullX, y: y + step * pullY };
  if (here > 0) return safe;
  const determinant = xx * yy - xy * xy;
  const newton = { x: (yy * pullX - xy * pullY) / determinant, y: (xx * pullY - xy * pullX) / determinant };
  const least = distances(xs, ys, safe);
  // A full step passes over the bottom of a narrow valley or over an eye; a shorter one does not.
  for (let part = 1; part > 1e-3; part /= 2) {
    const tried = { x: x + part * newton.x, y: y + part * newton.y };
    if (distances(xs, ys, tried) < least) return tried;
  }
  return safe;
}

/** First and second derivatives of the sum of distances, and the number of points that are at the place itself. */
function forces(xs: Float64Array, ys: Float64Array, x: number, y: number): Record<'weights' | 'pullX' | 'pullY' | 'here' | 'xx' | 'xy' | 'yy', number> {
  let [weights, pullX, pullY, here, xx, xy, yy] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < xs.length; i += 1) {
    const dx = xs[i]! - x;
    const dy = ys[i]! - y;
    const distance = Math.sqrt(dx * dx + dy * dy);
    if (distance < SAME) {
      here += 1;
      continue;
    }
    const cube = distance * distance * distance;
    weights += 1 / distance;
    pullX += dx / distance;
    pullY += dy / distance;
    xx += (dy * dy) / cube;
    xy -= (dx * dy) / cube;
    yy += (dx * dx) / cube;
  }
  return { weights, pullX, pullY, here, xx, xy, yy };
}

function nearest(xs: Float64Array, ys: Float64Array, { x, y }: Vector): Vector {
  let best = 0;
  let least = Infinity;
  for (let i = 0; i < xs.length; i += 1) {
    const distance = (xs[i]! - x) ** 2 + (ys[i]! - y) ** 2;
    if (distance < least) [best, least] = [i, distance];
  }
  return { x: xs[best]!, y: ys[best]! };
}

function distances(xs: Float64Array, ys: Float64Array, { x, y }: Vector): number {
  let sum = 0;
  for (let i = 0; i < xs.length; i += 1) sum += Math.sqrt((xs[i]! - x) ** 2 + (ys[i]! - y) ** 2);
  return sum;
}

/**
 * Mean of the points, in which those farther from it than 1.8 times the distance of the middle one count as if they lay at
 * that distance (Huber's estimator in the plane). `middle` is the spatial median, from which that distance is taken.
 */
export function winsorisedCentroid(xs: Float64Array, ys: Float64Array, middle: Vector): { mean: Vector; drawnIn: number } {
  const sorted = xs.map((x, i) => Math.hypot(x - middle.x, ys[i]! - middle.y)).sort();
  const reach = REACH * sorted[sorted.length >> 1]!;
  let [mean, drawnIn] = [middle, 0];
  for (let step = 0; step < 100; step += 1) {
    // Never 0: half of the eyes lie within reach of the middle, where this begins.
    let [x, y, total] = [0, 0, 0];
    drawnIn = 0;
    for (let i = 0; i < xs.length; i += 1) {
      const distance = Math.sqrt((xs[i]! - mean.x) ** 2 + (ys[i]! - mean.y) ** 2);
      const far = distance > reach + SAME;
      const weight = far ? reach / distance : 1;
      drawnIn += Number(far);
      x += weight * (xs[i]! - middle.x);
      y += weight * (ys[i]! - middle.y);
      total += weight;
    }
    const next = { x: middle.x + x / total, y: middle.y + y / total };
    const moved = Math.hypot(next.x - mean.x, next.y - mean.y);
    mean = next;
    if (moved < SAME / 1000) break;
  }
  return { mean, drawnIn };
}
