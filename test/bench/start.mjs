/** What a page pays before anything moves: bytes, time to the first drawing, memory. Beside a page with only Lit and one svg. */
import { CASE, bundle, hostPage, median, openBrowser, openPage, root, serve } from './page.mjs';

export const title = 'Start and memory; beside: a page with only Lit and one svg';

const LOADS = 15;
const CASES = 200;
const SLOWDOWNS = [1, 6];

/** The least that an element of this kind can be: Lit, one class, one svg. */
const LEAST = `
  import { LitElement, html } from 'lit';
  customElements.define('least-drawing', class extends LitElement {
    render() {
      return html\`<svg viewBox="-50 -50 100 100" width="200" height="200"><circle r="40"></circle></svg>\`;
    }
  });`;

export async function run() {
  const server = await serve(await pages());
  const browser = await openBrowser();
  try {
    return [...bytes(server), ...(await drawings(browser, server)), ...(await memory(browser, server))];
  } finally {
    await browser.close();
    server.close();
  }
}

async function pages() {
  return {
    '/library.js': await bundle(),
    '/least.js': await bundle({ stdin: { contents: LEAST, resolveDir: root } }),
    '/library.html': hostPage({ body: CASE, source: '/library.js' }),
    '/least.html': hostPage({ body: '<least-drawing></least-drawing>', source: '/least.js' }),
    '/library-many.html': hostPage({ body: '<main></main>', source: '/library.js' }),
    '/least-many.html': hostPage({ body: '<main></main>', source: '/least.js' }),
  };
}

function bytes(server) {
  const [value, beside] = ['/library', '/least'].map((page) => (server.size(`${page}.js`) + server.size(`${page}.html`)) / 1000);
  return [{ what: 'page and script, gzip -9, kB', value, beside, ratio: value / beside }];
}

async function drawings(browser, server) {
  const rows = [];
  for (const slowdown of SLOWDOWNS) {
    const times = { library: [], least: [] };
    for (let load = 0; load < LOADS; load += 1) {
      for (const name of Object.keys(times)) times[name].push(await firstDrawing(browser, server.url(`/${name}.html`), slowdown));
    }
    const [value, beside] = [median(times.library), median(times.least)];
    rows.push({ what: `first drawing, ms from the start of loading${slowdown === 1 ? '' : `, slowed down ${slowdown}×`}`, value, beside, ratio: value / beside });
  }
  return rows;
}

/** The browser's own time of the first paint that shows something: neither page has anything to show without script. */
async function firstDrawing(browser, url, slowdown) {
  const { page, cdp } = await openPage(browser);
  await cdp.send('Network.setCacheDisabled', { cacheDisabled: true });
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await page.goto(url, { waitUntil: 'load' });
  const time = await page.evaluate(
    () =>
      new Promise((done) => {
        new PerformanceObserver((list) => list.getEntriesByName('first-contentful-paint').forEach(({ startTime }) => done(startTime))).observe({ type: 'paint', buffered: true });
      }),
  );
  await page.close();
  return time;
}

async function memory(browser, server) {
  const library = await heaps(browser, server.url('/library-many.html'), CASE);
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
