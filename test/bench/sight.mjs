/** How fast pictures are blurred: whole new pictures, and the transform alone beside fft.js, ndarray-fft, mathjs and scipy. */
import FFT from 'fft.js';
import { others } from './transforms.mjs';
import { loaded } from './page.mjs';

export const title = 'Sight, milliseconds';

const SIDE = 512;
/** Twenty pictures a second. */
const GOAL = 50;
const RUNS = 15;
/** Of what takes a few milliseconds, which any other program on the machine can double. */
const SHORT_RUNS = 101;

export async function run() {
  const sight = await loaded('core/sight.ts');
  const planes = await loaded('core/sight-planes.ts');
  return [...pictures(sight), ...(await transforms(planes))];
}

function* pictures({ Blurrer }) {
  const shot = noise();
  const first = median(3, () => new Blurrer(shot).blur(look(6, 3, 0)));
  const kept = new Blurrer(shot);
  yield { what: `first picture of ${SIDE} × ${SIDE}, 6 mm, 3 D, all included`, value: first };
  for (const model of ['geometric', 'wave']) {
    for (const pupilMm of [2, 6]) {
      for (const dioptres of [0.5, 1, 3]) {
        const goal = model === 'geometric' ? { goal: GOAL } : {};
        const value = median(model === 'wave' ? 3 : RUNS, (i) => kept.blur({ ...look(pupilMm, dioptres, i), model }));
        yield { what: `each new picture, ${model}, ${pupilMm} mm, ${dioptres} D`, value, ...goal };
      }
    }
  }
  yield { what: 'longest slice of those, geometric, 6 mm, 3 D', value: longestSlice(kept, look(6, 3, 99)), goal: 3 };
}

/** A cylinder aslant with its circle of least blur in focus; every call turns it a little, so that nothing is known yet. */
const look = (pupilMm, dioptres, i) => ({ refraction: { sphere: dioptres / 2, cylinder: -dioptres, axis: 20 + i }, pupilMm, degreesPerPixel: 1 / 60 });

/** A plane of real numbers to its half spectrum: ours, and rows and gathered columns by fft.js. */
async function transforms({ ROWS_AT_ONCE, columnsForward, makeGrid, makeSpectrum, rowsForward }) {
  const plane = Float64Array.from({ length: SIDE * SIDE }, (_, i) => Math.sin(i * i));
  const grid = makeGrid(SIDE, SIDE);
  const spectrum = makeSpectrum(grid);
  const transform = () => {
    for (let y = 0; y < SIDE; y += ROWS_AT_ONCE) rowsForward(grid, plane.subarray(y * SIDE), y, spectrum);
    for (let block = 0; block < grid.blocks; block += 1) columnsForward(grid, block, spectrum);
  };
  const theirs = halfSpectrum(plane);
  const [value, beside] = inTurn(SHORT_RUNS, [transform, theirs.transform]);
  const ours = (x, y) => spectrum.re[(Math.floor(x / grid.lanes) * SIDE + y) * grid.lanes + (x % grid.lanes)];
  if (!(Math.abs(ours(37, 411) - theirs.re(37, 411)) < 1e-8)) throw new Error('The two transforms disagree.');
  const what = (name) => `a plane of ${SIDE} × ${SIDE} into frequencies; beside: ${name}`;
  const rows = [{ what: what('fft.js by rows and columns'), value, beside, ratio: value / beside, goal: 1 }];
  for (const { name, missing, time, check } of await others(plane, SIDE)) {
    if (missing) {
      rows.push({ what: what(`${name}, ${missing}`), value });
      continue;
    }
    const other = time();
    if (!(Math.abs(check(37, 411) - ours(37, 411)) < 1e-6)) throw new Error(`${name} disagrees.`);
    rows.push({ what: what(name), value, beside: other, ratio: value / other, ...(name.startsWith('scipy') ? {} : { goal: 1 }) });
  }
  return rows;
}

function halfSpectrum(plane) {
  const fft = new FFT(SIDE);
  const rows = Array.from({ length: SIDE }, () => fft.createComplexArray());
  const columns = Array.from({ length: SIDE / 2 + 1 }, () => fft.createComplexArray());
  const column = fft.createComplexArray();
  const transform = () => {
    for (let y = 0; y < SIDE; y += 1) fft.realTransform(rows[y], plane.subarray(y * SIDE, (y + 1) * SIDE));
    for (let x = 0; x <= SIDE / 2; x += 1) {
      for (let y = 0; y < SIDE; y += 1) {
        column[2 * y] = rows[y][2 * x];
        column[2 * y + 1] = rows[y][2 * x + 1];
      }
      fft.transform(columns[x], column);
    }
  };
  return { transform, re: (x, y) => columns[x][2 * y] };
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

function median(runs, task) {
  return inTurn(runs, [task])[0];
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
