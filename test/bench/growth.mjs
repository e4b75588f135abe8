/** How cost grows with size: each at 1, 10 and 100 times, and the exponent by which it grows (1: in proportion). */
import { CASE, bundle, hostPage, median, openBrowser, openPage, serve } from './page.mjs';
import { loadCore } from './core.mjs';

export const title = 'Growth, ms at 100 times the size; beside: at once the size; ratio: the exponent (1 = in proportion)';

const TIMES = [1, 10, 100];
const RUNS = 5;

/** More than in proportion, with room for what is measured at so small a size. */
const GOAL = 1.15;

export async function run() {
  const core = await loadCore();
  const { Blurrer } = core;
  return [
    row('evaluatePlan, 1000 plans', TIMES.map((times) => timed(() => plans(core, 1000 * times)))),
    row('chanceWithin, 100 plans', TIMES.map((times) => timed(() => chances(core, 100 * times)))),
    ...(Blurrer ? [row('blur, pixels of 64 × 64', TIMES.map((times) => blurTime(Blurrer, Math.round(64 * Math.sqrt(times)))))] : []),
    ...(await cases()),
  ];
}

function plans({ evaluatePlan }, count) {
  for (let i = 0; i < count; i += 1) evaluatePlan({ flatK: 42, steepK: 44, steepMeridian: i % 180, age: 70, incisionSite: i % 360, arcSite: i % 360, arcCount: 2 });
}

function chances({ evaluatePlan }, count) {
  for (let i = 0; i < count; i += 1) evaluatePlan({ flatK: 42, steepK: 44, steepMeridian: i % 180, incisionSite: 20 }).chanceWithin(0.25 + (i % 4) / 4);
}

function blurTime(Blurrer, side) {
  const kept = new Blurrer({ data: Uint8ClampedArray.from({ length: 4 * side * side }, (_, i) => (i * 7919) % 256), width: side, height: side });
  let axis = 0;
  return timed(() => kept.blur({ refraction: { sphere: 1, cylinder: -2, axis: (axis += 1) }, pupilMm: 4, degreesPerPixel: 1 / 60 }));
}

/** Cases that are put into a page at once, with all that shows them, until they are drawn. */
async function cases() {
  const server = await serve({ '/library.js': await bundle(), '/page.html': hostPage({ body: '<main></main>', source: '/library.js' }) });
  const browser = await openBrowser();
  try {
    const { page } = await openPage(browser, server.url('/page.html'));
    const fill = (count) => page.evaluate(fillPage, CASE, count);
    await fill(1);
    const times = [];
    for (const count of TIMES) {
      const runs = [];
      for (let index = 0; index < 3; index += 1) runs.push(await fill(count));
      times.push(median(runs));
    }
    return [row('cases drawn on one page', times)];
  } finally {
    await browser.close();
    server.close();
  }
}

/** Runs in the page. */
async function fillPage(markup, count) {
  const main = document.querySelector('main');
  const start = performance.now();
  main.innerHTML = markup.repeat(count);
  for (const view of main.querySelectorAll('astig-case, astig-case *')) if (view.updateComplete) await view.updateComplete;
  await new Promise(requestAnimationFrame);
  const time = performance.now() - start;
  main.replaceChildren();
  await new Promise(requestAnimationFrame);
  return time;
}

function timed(task) {
  task();
  return median(
    Array.from({ length: RUNS }, () => {
      const start = performance.now();
      task();
      return performance.now() - start;
    }),
  );
}

/** The slope of a straight line through the logarithms, by least squares. */
function exponent(times) {
  const points = times.map((time, index) => [Math.log(TIMES[index]), Math.log(time)]);
  const [mx, my] = [0, 1].map((at) => points.reduce((sum, point) => sum + point[at], 0) / points.length);
  return points.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0) / points.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}

function row(what, times) {
  return { what: `${what} (times ${TIMES.join(', ')}: ${times.map((time) => time.toFixed(2)).join(', ')} ms)`, value: times.at(-1), beside: times[0], ratio: exponent(times), exponent: true, goal: GOAL, times };
}
