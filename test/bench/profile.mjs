/**
 * `node test/bench/profile.mjs [slowdown]`: a CPU profile of the drag, readable build, as self time and total time of
 * functions in µs an event. For looking, not for the table: sampling costs time of its own.
 */
import { drag } from './drag.mjs';
import { libraryPage } from './floor.mjs';
import { bundle, openBrowser, openPage, serve } from './page.mjs';

const ROWS = 30;

const slowdown = Number(process.argv[2] ?? 1);
const source = await bundle({ readable: true });
const files = filesOf(source);
const server = await serve({ '/library.html': libraryPage(), '/library.js': source });
const browser = await openBrowser();
const { page, cdp } = await openPage(browser, server.url('/library.html'));
await cdp.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
await drag(page, cdp);
const before = await page.evaluate(() => globalThis.bench.count.moves);
await cdp.send('Profiler.enable');
await cdp.send('Profiler.setSamplingInterval', { interval: 100 });
await cdp.send('Profiler.start');
await drag(page, cdp, { events: 600 });
const { profile } = await cdp.send('Profiler.stop');
const moves = (await page.evaluate(() => globalThis.bench.count.moves)) - before;
await browser.close();
server.close();

const { self, total } = times(profile);
print('self', self);
print('total', total);

/** Time of functions by name; a function that is its own caller counts once. */
function times({ nodes, samples, timeDeltas }) {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const parents = new Map(nodes.flatMap(({ id, children = [] }) => children.map((child) => [child, id])));
  const self = new Map();
  const total = new Map();
  samples.forEach((id, index) => {
    const names = new Set();
    for (let at = id; at !== undefined; at = parents.get(at)) names.add(nameOf(byId.get(at)));
    add(self, nameOf(byId.get(id)), timeDeltas[index]);
    for (const name of names) add(total, name, timeDeltas[index]);
  });
  return { self, total };
}

function nameOf({ callFrame: { functionName, lineNumber, url } }) {
  return `${functionName || '(anonymous)'}${url.endsWith('.js') ? `  ${files[lineNumber]}` : ''}`;
}

/** The file of each line: a readable bundle names every file above its part. */
function filesOf(text) {
  let file = '';
  return text.split('\n').map((line) => (file = /^\/\/ (\S+\.[jt]s)$/.exec(line)?.[1] ?? file));
}

function add(map, key, value) {
  map.set(key, (map.get(key) ?? 0) + value);
}

function print(kind, map) {
  console.log(`\n${kind} time, µs an event, ${moves} events`);
  const rows = [...map].filter(([name]) => !/^\((idle|root)\)/.test(name)).sort((a, b) => b[1] - a[1]);
  for (const [name, time] of rows.slice(0, ROWS)) console.log(`${(time / moves).toFixed(1).padStart(8)}  ${name}`);
}
