/** What a page pays before anything moves: bytes, time to the first drawing, memory. Beside a page with only Lit and one svg. */
import { bundleOneFile } from '../one-file.mjs';
import { CASE, MAIN, bundle, hostPage, medians, openBrowser, openPage, pause, root, serve } from './page.mjs';

export const title = 'Start and memory; beside: a page with only Lit and one svg';

const LOADS = 15;
const CASES = 200;
const SLOWDOWNS = [1, 6];

/** In which all that comes by itself after the first drawing has come, ms. */
const AFTER = 300;

/** The least that an element of this kind can be: Lit, one class, one svg. */
const LEAST = `
  import { LitElement, html } from 'lit';
  customElements.define('least-drawing', class extends LitElement {
    render() {
      return html\`<svg viewBox="-50 -50 100 100" width="200" height="200"><circle r="40"></circle></svg>\`;
    }
  });`;

/** Pages of the library, built as it is published: one file at once, the rest when it is asked for. */
const PAGES = {
  main: { what: 'main job', body: MAIN, source: ['case', 'cornea', 'vectors', 'summary'].map((name) => `import './components/${name}/define.ts';`).join('\n') },
  all: { what: 'all elements, six views shown', body: CASE, source: "import './components/define.ts';" },
};

export async function run() {
  const server = await serve(await pages());
  const browser = await openBrowser();
  try {
    const { least, ...library } = await loads(browser, server, ['least', ...Object.keys(PAGES)]);
    const rows = Object.entries(library).flatMap(([name, found]) => table(PAGES[name].what, found, least));
    return [...rows, ...(await memory(browser, server))];
  } finally {
    await browser.close();
    server.close();
  }
}

async function pages() {
  const empty = (source) => hostPage({ body: '<main></main>', source });
  const files = {
    '/least.js': await bundle({ stdin: { contents: LEAST, resolveDir: root } }),
    '/least.html': hostPage({ body: '<least-drawing></least-drawing>', source: '/least.js' }),
    '/least-many.html': empty('/least.js'),
    '/main-many.html': empty('/main/main.js'),
  };
  for (const [name, { body, source }] of Object.entries(PAGES)) {
    for (const { path, contents } of await bundleOneFile(root, { name, source })) files[`/${name}/${path}`] = contents;
    files[`/${name}.html`] = hostPage({ body, source: `/${name}/${name}.js` });
  }
  return files;
}

/** By page, for each slowdown: the medians. The pages take turns, so that whatever else the machine does falls on all of them. */
async function loads(browser, server, names) {
  const results = Object.fromEntries(names.map((name) => [name, []]));
  for (const slowdown of SLOWDOWNS) {
    const found = Object.fromEntries(names.map((name) => [name, []]));
    for (let load = 0; load < LOADS; load += 1) {
      for (const name of names) found[name].push(await firstDrawing(browser, server.url(`/${name}.html`), slowdown));
    }
    for (const name of names) results[name].push(medians(found[name]));
  }
  return results;
}

function table(what, library, least) {
  const row = (figure, value, beside) => ({ what: `${what}: ${figure}`, value, beside, ratio: value / beside });
  return [
    row('on the wire before the first drawing, kB', library[0].atFirst, least[0].atFirst),
    row('on the wire in the end, nothing touched, kB', library[0].whole, least[0].whole),
    ...SLOWDOWNS.map((slowdown, index) => row(`first drawing, ms from the start of loading${slowdown === 1 ? '' : `, slowed down ${slowdown}×`}`, library[index].first, least[index].first)),
  ];
}

/** The browser's own time of the first paint that shows something: neither page has anything to show without script. */
async function firstDrawing(browser, url, slowdown) {
  const { page, cdp } = await openPage(browser);
  await cdp.send('Network.setCacheDisabled', { cacheDisabled: true });
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await page.goto(url, { waitUntil: 'load' });
  const first = await page.evaluate(
    () =>
      new Promise((done) => {
        new PerformanceObserver((list) => list.getEntriesByName('first-contentful-paint').forEach(({ startTime }) => done(startTime))).observe({ type: 'paint', buffered: true });
      }),
  );
  await pause(AFTER * slowdown);
  const files = await page.evaluate(() => performance.getEntries().filter(({ transferSize }) => transferSize > 0).map(({ responseEnd, transferSize }) => ({ responseEnd, transferSize })));
  await page.close();
  const size = (some) => some.reduce((total, { transferSize }) => total + transferSize, 0) / 1000;
  return { first, atFirst: size(files.filter(({ responseEnd }) => responseEnd <= first)), whole: size(files) };
}

async function memory(browser, server) {
  const library = await heaps(browser, server.url('/main-many.html'), MAIN);
  const least = await heaps(browser, server.url('/least-many.html'), '<least-drawing></least-drawing>');
  const row = (what, key) => ({ what, value: library[key], beside: least[key], ratio: library[key] / least[key] });
  return [
    row(`script heap a case of four elements, kB, ${CASES} on one page`, 'each'),
    row('nodes of the document a case', 'nodes'),
    row(`script heap left when all ${CASES} are removed, kB`, 'left'),
  ];
}

async function heaps(browser, url, markup) {
  const { page, cdp } = await openPage(browser, url);
  await cdp.send('Performance.enable');
  const fill = (count) =>
    page.evaluate(
      async (text, times) => {
        document.querySelector('main').innerHTML = text.repeat(times);
        for (let frame = 0; frame < 3; frame += 1) await new Promise(requestAnimationFrame);
      },
      markup,
      count,
    );
  // What is compiled and cached once shall not count as any case's own.
  await fill(CASES);
  await fill(0);
  const empty = await heap(cdp);
  await fill(CASES);
  const full = await heap(cdp);
  await fill(0);
  const left = await heap(cdp);
  await page.close();
  return { each: (full.kilobytes - empty.kilobytes) / CASES, nodes: (full.nodes - empty.nodes) / CASES, left: left.kilobytes - empty.kilobytes };
}

async function heap(cdp) {
  await cdp.send('HeapProfiler.collectGarbage');
  await cdp.send('HeapProfiler.collectGarbage');
  const { metrics } = await cdp.send('Performance.getMetrics');
  const read = (name) => metrics.find((metric) => metric.name === name).value;
  return { kilobytes: read('JSHeapUsedSize') / 1000, nodes: read('Nodes') };
}
