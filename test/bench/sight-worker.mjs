/** Runs in a worker: times whole pictures and then transforms, and posts the rows. */
import { Blurrer } from '../../core/sight.ts';
import { ROWS_AT_ONCE, columnsForward, makeGrid, makeSpectrum, rowsForward } from '../../core/sight-planes.ts';
import { byFft, byMathjs, byNdarray, planeOf } from './transforms.mjs';

const SIDE = 512;
/** Twenty pictures a second. */
const GOAL = 50;
const RUNS = 15;

const WHAT = `a plane of ${SIDE} × ${SIDE} into frequencies`;

/** Where two transforms are compared. */
const AT = [37, 411];

/** What is timed beside ours, how often, and how many times at once: a browser's clock goes by tenths of a millisecond. */
const OTHERS = [
  { name: 'fft.js by rows and columns', make: byFft, runs: 41, times: 5 },
  { name: 'ndarray-fft', make: byNdarray, runs: 11, times: 2 },
  { name: 'mathjs', make: byMathjs, runs: 3, times: 1 },
];

// An object as many a page has one: it must not make the whole numbers of the core slow ones. See `makeGrid`.
globalThis.sheet = { width: 8.5, height: 11 };

const whole = [...pictures()];
const { rows, ours } = transforms();
postMessage({ rows: [...whole, ...rows], ours });

function* pictures() {
  const shot = noise();
  const [first] = inTurn(3, [() => new Blurrer(shot).blur(look(6, 3, 0))]);
  const kept = new Blurrer(shot);
  yield { what: `first picture of ${SIDE} × ${SIDE}, 6 mm, 3 D, all included`, value: first };
  for (const model of ['geometric', 'wave']) {
    for (const pupilMm of [2, 6]) {
      for (const dioptres of [0.5, 1, 3]) {
        const goal = model === 'geometric' ? { goal: GOAL } : {};
        const [value] = inTurn(model === 'wave' ? 3 : RUNS, [(i) => kept.blur({ ...look(pupilMm, dioptres, i), model })]);
        yield { what: `each new picture, ${model}, ${pupilMm} mm, ${dioptres} D`, value, ...goal };
      }
    }
  }
  yield { what: 'longest slice of those, geometric, 6 mm, 3 D', value: longestSlice(kept, look(6, 3, 99)), goal: 3 };
}

/** A cylinder aslant with its circle of least blur in focus; every call turns it a little, so that nothing is known yet. */
function look(pupilMm, dioptres, i) {
  return { refraction: { sphere: dioptres / 2, cylinder: -dioptres, axis: 20 + i }, pupilMm, degreesPerPixel: 1 / 60 };
}

/** A plane of real numbers to its half spectrum beside the others, and what ours took and found, for one outside the browser. */
function transforms() {
  const plane = planeOf(SIDE);
  const ours = byCore(plane, SIDE);
  const rows = OTHERS.map((other) => beside(ours, plane, other));
  return { rows, ours: { what: WHAT, value: rows[0].value, side: SIDE, at: AT, found: ours.real(...AT) } };
}

function beside(ours, plane, { name, make, runs, times }) {
  const theirs = make(plane, SIDE);
  const [value, other] = inTurn(runs, [ours, theirs].map(({ once }) => () => repeat(times, once))).map((time) => time / times);
  if (!(Math.abs(ours.real(...AT) - theirs.real(...AT)) < 1e-6)) throw new Error(`${name} disagrees.`);
  return { what: `${WHAT}; beside: ${name}`, value, beside: other, ratio: value / other, goal: 1 };
}

function byCore(plane, side) {
  const grid = makeGrid(side, side);
  const spectrum = makeSpectrum(grid);
  const once = () => {
    for (let y = 0; y < side; y += ROWS_AT_ONCE) rowsForward(grid, plane.subarray(y * side), y, spectrum);
    for (let block = 0; block < grid.blocks; block += 1) columnsForward(grid, block, spectrum);
  };
  return { once, real: (x, y) => spectrum.re[(Math.floor(x / grid.lanes) * side + y) * grid.lanes + (x % grid.lanes)] };
}

function repeat(times, task) {
  for (let i = 0; i < times; i += 1) task();
}

function longestSlice(kept, given) {
  let longest = 0;
  for (const steps = kept.steps(given); ;) {
    const start = performance.now();
    const { done } = steps.next();
    longest = Math.max(longest, performance.now() - start);
    if (done) return longest;
  }
}

/** Median time of each task. They take turns, so that a busy spell of the machine meets all of them. */
function inTurn(runs, tasks) {
  const rounds = Array.from({ length: runs + 2 }, (_, i) => tasks.map((task) => timed(() => task(i)))).slice(2);
  return tasks.map((_, which) => rounds.map((times) => times[which]).sort((a, b) => a - b)[runs >> 1]);
}

function timed(task) {
  const start = performance.now();
  task();
  return performance.now() - start;
}

function noise() {
  const data = new Uint8ClampedArray(4 * SIDE * SIDE);
  let seed = 1;
  for (let i = 0; i < data.length; i += 1) {
    seed = (seed * 16_807) % 2_147_483_647;
    data[i] = seed % 256;
  }
  return { data, width: SIDE, height: SIDE };
}
