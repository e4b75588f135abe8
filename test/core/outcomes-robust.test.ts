/** How near the robust centres come to what they are defined by, and in how many passes over the eyes. */
import seedrandom from 'seedrandom';
import { describe, expect, test } from 'vitest';
import { spatialMedian, winsorisedCentroid } from '../../core/outcomes-robust.js';
import type { Vector } from '../../core/types.js';

const random = seedrandom('series with robust centres');
const drawn = (): Vector => ({ x: 6 * random() - 3, y: 6 * random() - 3 });
const quarter = (value: number): number => Math.round(value * 2) / 4;

/** Series of 3 to 40 eyes. */
const KINDS: [name: string, eye: (index: number) => Vector][] = [
  ['all over the place', drawn],
  ['in steps of 0.25 D', () => {
    const { x, y } = drawn();
    return { x: quarter(x), y: quarter(y) };
  }],
  ['with long tails', () => {
    const { x, y } = drawn();
    return { x: x ** 5, y: y ** 5 };
  }],
  ['close together but for two', (index) => {
    const { x, y } = drawn();
    return index < 2 ? { x, y } : { x: 1 + x / 100, y: y / 100 - 2 };
  }],
  ['along a slanting line', () => {
    const { x, y } = drawn();
    return { x: x + y / 20, y: x / 3 + y / 20 };
  }],
];

const series = KINDS.map(([name, eye]) => [name, Array.from({ length: 60 }, () => Array.from({ length: 3 + Math.floor(38 * random()) }, (_, index) => eye(index)))] as const);

/** An array that counts how often its first member is read. */
function counted(values: readonly number[]): { array: Float64Array; reads: () => number } {
  const array = Float64Array.from(values);
  let reads = 0;
  const get = (target: Float64Array, key: string | symbol): unknown => {
    reads += Number(key === '0');
    const value: unknown = Reflect.get(target, key, target);
    return typeof value === 'function' ? value.bind(target) : value;
  };
  return { array: new Proxy(array, { get }), reads: () => reads };
}

function centres(eyes: readonly Vector[], start?: Vector) {
  const [xs, ys] = [counted(eyes.map(({ x }) => x)), counted(eyes.map(({ y }) => y))];
  const mean = { x: eyes.reduce((sum, { x }) => sum + x, 0) / eyes.length, y: eyes.reduce((sum, { y }) => sum + y, 0) / eyes.length };
  const median = spatialMedian(xs.array, ys.array, start ?? mean);
  const medianPasses = xs.reads();
  const { mean: winsorised, drawnIn } = winsorisedCentroid(xs.array, ys.array, median);
  return { median, medianPasses, winsorised, drawnIn, winsorisedPasses: xs.reads() - medianPasses };
}

/** How far off a spatial median is, D: at eyes that hold it against the pull of the others not at all, elsewhere by Newton's step from it. */
function distanceToGo(eyes: readonly Vector[], { x, y }: Vector): number {
  const others = eyes.map((eye) => ({ x: eye.x - x, y: eye.y - y })).filter((d) => Math.hypot(d.x, d.y) > 1e-9);
  const sum = (of: (d: Vector, distance: number) => number): number => others.reduce((total, d) => total + of(d, Math.hypot(d.x, d.y)), 0);
  const [pullX, pullY] = [sum((d, r) => d.x / r), sum((d, r) => d.y / r)];
  if (others.length < eyes.length) return Math.hypot(pullX, pullY) <= eyes.length - others.length + 1e-7 ? 0 : Infinity;
  const [a, b, c] = [sum((d, r) => d.y ** 2 / r ** 3), sum((d, r) => (-d.x * d.y) / r ** 3), sum((d, r) => d.x ** 2 / r ** 3)];
  const determinant = a * c - b * b;
  return Math.hypot(c * pullX - b * pullY, a * pullY - b * pullX) / determinant;
}

describe.each(series)('eyes %s', (_, all) => {
  const found = all.map((eyes) => centres(eyes));

  test('the spatial median is where no pull is left, within 1e-7 D', () => {
    found.forEach(({ median }, index) => expect(distanceToGo(all[index]!, median), JSON.stringify(all[index])).toBeLessThan(1e-7));
  });

  test('the Winsorised centroid is where eyes pull by their distance, those beyond the reach as from there, within 1e-9 D', () => {
    found.forEach(({ median, winsorised, drawnIn }, index) => {
      const eyes = all[index]!;
      const sorted = eyes.map(({ x, y }) => Math.hypot(x - median.x, y - median.y)).sort((a, b) => a - b);
      const reach = Math.sqrt(Math.log(0.1) / Math.log(0.5)) * sorted[sorted.length >> 1]!;
      const pulls = eyes.map(({ x, y }) => {
        const [dx, dy] = [x - winsorised.x, y - winsorised.y];
        const share = Math.min(1, reach / Math.hypot(dx, dy));
        return { x: share * dx, y: share * dy, share };
      });
      const total = pulls.reduce((sum, { share }) => sum + share, 0);
      expect(Math.hypot(pulls.reduce((sum, { x }) => sum + x, 0), pulls.reduce((sum, { y }) => sum + y, 0)) / total).toBeLessThan(1e-9);
      expect(drawnIn).toBe(pulls.filter(({ share }) => share < 1 - 1e-8).length);
    });
  });

  // A step takes three passes or more. The median creeps towards an eye that is it, which few are, and gives up after 100 steps.
  test('few passes over the eyes are enough', () => {
    const [medians, centroids] = (['medianPasses', 'winsorisedPasses'] as const).map((which) => found.map((one) => one[which]).sort((a, b) => a - b)) as [number[], number[]];
    expect(medians[medians.length >> 1]).toBeLessThanOrEqual(70);
    expect(medians.at(-1)).toBeLessThanOrEqual(1300);
    expect(centroids.at(-1)).toBeLessThanOrEqual(60);
  });
});

describe('eyes on one line', () => {
  /** Eyes on a line through `from` at so many degrees, in any order. */
  const line = (places: readonly number[], degrees: number, from: Vector): Vector[] => {
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    return places.map((place) => ({ eye: { x: from.x + place * c, y: from.y + place * s }, turn: random() })).sort((a, b) => a.turn - b.turn).map(({ eye }) => eye);
  };

  test.each([0, 30, 90, 135, 211])('at %d° have the median of numbers as theirs, whatever the order of the rows', (degrees) => {
    for (let times = 0; times < 20; times += 1) {
      const from = drawn();
      const places = Array.from({ length: 3 + Math.floor(20 * random()) }, () => quarter(drawn().x));
      const sorted = [...places].sort((a, b) => a - b);
      const middle = (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2;
      const [expected] = line([middle], degrees, from);
      const { median } = centres(line(places, degrees, from));
      expect(Math.hypot(median.x - expected!.x, median.y - expected!.y)).toBeLessThan(1e-9);
    }
  });

  test('of 0, 1, 2 and 3 D it is 1.5 D, forwards and backwards', () => {
    const eyes = [0, 1, 2, 3].map((x) => ({ x, y: 0 }));
    for (const order of [eyes, [...eyes].reverse()]) expect(centres(order).median).toEqual({ x: 1.5, y: 0 });
  });

  test('in one place it is that place', () => {
    expect(centres(Array.from({ length: 4 }, () => ({ x: 0.5, y: -1 }))).median).toEqual({ x: 0.5, y: -1 });
  });

  test('an eye off the line by a hundredth of a dioptre makes it no line', () => {
    const eyes = [...[0, 1, 2, 3].map((x) => ({ x, y: 0 })), { x: 1.2, y: 0.01 }];
    expect(distanceToGo(eyes, centres(eyes).median)).toBeLessThan(1e-7);
  });
});

describe('from a place where the pulls of all eyes undo each other', () => {
  const around = [{ x: 1, y: 0 }, { x: 0, y: 1 }, { x: -1, y: 0 }, { x: 0, y: -1 }];

  test.each([['no eye', 0], ['one eye', 1], ['three eyes', 3]] as const)('with %s at it, it is the median', (_, here) => {
    expect(centres([...around, ...Array.from({ length: here }, () => ({ x: 0, y: 0 }))], { x: 0, y: 0 }).median).toEqual({ x: 0, y: 0 });
  });
});

describe('from a place that eyes share', () => {
  const shared = { x: 0.25, y: -0.5 };
  /** A series with eyes at one place, and by how much the pull of the others is stronger than they are many. */
  function held(): { eyes: Vector[]; more: number } {
    const others = Array.from({ length: 5 + Math.floor(20 * random()) }, () => ({ x: 6 * random() - 2, y: 6 * random() - 3 }));
    const units = others.map(({ x, y }) => ({ x: (x - shared.x) / Math.hypot(x - shared.x, y - shared.y), y: (y - shared.y) / Math.hypot(x - shared.x, y - shared.y) }));
    const pull = Math.hypot(units.reduce((sum, { x }) => sum + x, 0), units.reduce((sum, { y }) => sum + y, 0));
    const here = Math.max(1, Math.round(pull + 2 * random() - 1));
    return { eyes: [...others, ...Array.from({ length: here }, () => shared)], more: pull - here };
  }
  const all = Array.from({ length: 100 }, held);

  test('it leaves when and only when the others pull more than those at the place are many', () => {
    for (const { eyes, more } of all) {
      const { median } = centres(eyes, shared);
      expect(distanceToGo(eyes, median)).toBeLessThan(1e-7);
      expect(Math.hypot(median.x - shared.x, median.y - shared.y) === 0).toBe(more <= 0);
    }
  });

  test('few passes are enough from there', () => {
    const passes = all.filter(({ more }) => more > 0).map(({ eyes }) => centres(eyes, shared).medianPasses).sort((a, b) => a - b);
    expect(passes.length).toBeGreaterThan(20);
    expect(passes[passes.length >> 1]).toBeLessThanOrEqual(28);
  });
});

test('where more than half of the eyes are at one place, the Winsorised centroid is that place, and only the others are drawn in', () => {
  const eyes = [...Array.from({ length: 4 }, () => ({ x: 0.25, y: -0.5 })), { x: 1, y: 0 }, { x: 0.25, y: 2 }];
  const { median, winsorised, drawnIn } = centres(eyes);
  expect([median, winsorised, drawnIn]).toEqual([{ x: 0.25, y: -0.5 }, { x: 0.25, y: -0.5 }, 2]);
});
