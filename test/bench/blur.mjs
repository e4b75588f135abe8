/**
 * The live blur in a real browser while options change every 8 ms: how often a new picture comes, how old it is then, and
 * how long the page's main thread is held, once with the worker and once without.
 */
import { join } from 'node:path';
import { build } from 'esbuild';
import { workerFile } from '../worker-file.mjs';
import { hostPage, median, openBrowser, openPage, root, serve } from './page.mjs';

export const title = 'Live blur, options change every 8 ms, ms; beside: the same page without a blur';

const SECONDS = 3;
const RUNS = 3;

/** Twenty pictures a second, and the longest that the main thread may be held, ms. */
const GOAL = { picture: 50, task: 4 };

/** Colours in all, so that nothing is spared. */
const SCENES = {
  '512 × 512': { side: 512, goal: true },
  '512 × 512, waves': { side: 512, model: 'wave' },
  '2048 × 2048': { side: 2048 },
};

export async function run() {
  const server = await serve(await pages());
  const browser = await openBrowser();
  try {
    const rows = [];
    for (const [what, scene] of Object.entries(SCENES)) {
      const still = await measured(browser, server.url('/still.html'), scene);
      for (const place of ['worker', 'page']) rows.push(...table(place, what, scene, await measured(browser, server.url(`/${place}.html`), scene), still));
    }
    return rows;
  } finally {
    await browser.close();
    server.close();
  }
}

async function pages() {
  const common = { absWorkingDir: root, bundle: true, format: 'esm', target: 'es2022', minify: true, tsconfig: join(root, 'tsconfig.json'), logLevel: 'warning' };
  const { outputFiles } = await build({
    ...common,
    stdin: { contents: `export * from './components/internal/blur/blur-client.ts';`, resolveDir: root, sourcefile: 'blur.ts' },
    outdir: '/',
    write: false,
    plugins: [workerFile({ root, common })],
  });
  const scripts = Object.fromEntries(outputFiles.map(({ path, text }) => [path.replace('/stdin.js', '/blur.js'), text]));
  const page = (open) => hostPage({ body: '', script: `import { blurPicture } from '/blur.js';\n${open}\nglobalThis.bench = ${change};` });
  return {
    ...scripts,
    '/worker.html': page('const open = blurPicture;'),
    '/page.html': page('delete globalThis.Worker; const open = blurPicture;'),
    '/still.html': page('const open = () => ({ show() {}, dispose() {} });'),
  };
}

/* global open */
/** Runs in the page: a cylinder that turns for some seconds, after one that warms up. */
function change({ side, model }, seconds) {
  const data = new Uint8ClampedArray(4 * side * side);
  for (let i = 0, seed = 1; i < data.length; i += 1) data[i] = (seed = (seed * 16_807) % 2_147_483_647) % 256;
  const asked = new Map();
  const came = [];
  const begun = performance.now();
  let first = NaN;
  const client = open({ data, width: side, height: side }, {
    picture(_picture, { refraction: { axis } }) {
      if (came.length === 0) first = performance.now() - begun;
      came.push({ at: performance.now(), age: performance.now() - asked.get(axis) });
    },
    problem(error) {
      throw error;
    },
  });
  console.timeStamp('bench');
  return new Promise((done) => {
    let axis = 0;
    const timer = setInterval(() => {
      const now = performance.now();
      axis += 0.01;
      asked.set(axis, now);
      client.show({ refraction: { sphere: 1, cylinder: -2, axis }, pupilMm: 4, degreesPerPixel: 1 / 60, model });
      if (now < begun + 1000 * (seconds + 1)) return;
      clearInterval(timer);
      client.dispose();
      const kept = came.filter(({ at }) => at > begun + 1000);
      const ages = kept.map(({ age }) => age).sort((a, b) => a - b);
      done({ first, each: (1000 * seconds) / kept.length, age: ages[ages.length >> 1] ?? NaN, oldest: ages.at(-1) ?? NaN, pictures: kept.length });
    }, 8);
  });
}

async function measured(browser, url, scene) {
  const runs = [];
  for (let i = 0; i < RUNS; i += 1) runs.push(await measure(browser, url, scene));
  return Object.fromEntries(Object.keys(runs[0]).map((key) => [key, median(runs.map((one) => one[key]))]));
}

async function measure(browser, url, scene) {
  const { page } = await openPage(browser, url);
  await page.bringToFront();
  await page.waitForFunction(() => globalThis.bench);
  await page.tracing.start({ categories: ['-*', 'toplevel', 'v8', 'devtools.timeline'] });
  const result = await page.evaluate((given, seconds) => globalThis.bench(given, seconds), scene, SECONDS);
  const { traceEvents } = JSON.parse(Buffer.from(await page.tracing.stop()).toString('utf8'));
  await page.close();
  return { ...result, ...tasks(traceEvents) };
}

/**
 * Tasks after the one that made the scene. By the clock of the wall other processes count, and the clock of the thread was
 * seen to leap by 8 to 20 ms twice a second, once while a tenth of a millisecond passed: the shorter of the two is nearer.
 */
function tasks(events) {
  const mark = events.find(({ name, args }) => name === 'TimeStamp' && args.data?.message === 'bench');
  if (!mark) throw new Error('The trace does not show where the run began.');
  const times = events
    .filter(({ name, ph, pid, tid, ts }) => ph === 'X' && /RunTask$/.test(name) && pid === mark.pid && tid === mark.tid && ts > mark.ts)
    .map(({ tdur, dur }) => Math.min(tdur ?? dur, dur) / 1000)
    .sort((a, b) => b - a);
  return { longest: times[0], over: times.filter((time) => time > GOAL.task).length };
}

function table(place, what, scene, result, still) {
  const row = (figure, key, more) => ({ what: `${place}, ${what}: ${figure}`, value: result[key], ...more });
  return [
    row('time from one picture to the next', 'each', scene.goal ? { goal: GOAL.picture } : {}),
    row('age of the options when their picture comes, median', 'age'),
    row('the same, longest', 'oldest'),
    row('first picture, with all that has to be loaded', 'first'),
    row('longest task of the main thread', 'longest', { beside: still.longest, ratio: result.longest / still.longest, goal: GOAL.task }),
    row(`tasks over ${GOAL.task} ms, number`, 'over', { beside: still.over }),
  ];
}
