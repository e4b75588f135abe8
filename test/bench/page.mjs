/** What the benchmarks share: the bundle, a server that holds its pages in memory, a browser, and counting. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import puppeteer from 'puppeteer-core';
import { findBrowser } from '../find-browser.mjs';
import { minifyTemplates } from '../minify-templates.mjs';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** All elements that follow a plan lie inside the window, so that nothing is spared by being out of sight. */
const WINDOW = { width: 1440, height: 3200 };

/** An invented eye, with every kind of part that the elements can show. */
const caseWith = (...views) => `<astig-case eye="right" flat-k="42.5" steep-k="44.25" steep-meridian="180" age="70" back-surface="typical"
  incision-site="20" incision-width="2.75" arc-site="0" arc-length="45" arc-count="2" arc-depth="500">
  <div class="columns">${views.map((name) => `<astig-${name}></astig-${name}>`).join('')}</div>
</astig-case>`;

/** All that follows a plan while it moves. */
export const CASE = caseWith('cornea', 'vectors', 'summary', 'entry', 'sweep', 'options');

/** What the main job shows: four elements with the case. */
export const MAIN = caseWith('cornea', 'vectors', 'summary');

/** The two drawings alone, which is what others are asked to draw. */
export const PAIR = caseWith('cornea', 'vectors');

/** The library, or any other entry, as a page would load it. `readable` keeps names and lines for a profile. */
export async function bundle({ readable = false, ...entry } = {}) {
  const { outputFiles } = await build({
    absWorkingDir: root,
    ...(entry.stdin ? {} : { entryPoints: [join(root, 'components/define.ts')] }),
    format: 'esm',
    ...entry,
    bundle: true,
    write: false,
    target: 'es2022',
    minify: !readable,
    legalComments: 'none',
    charset: 'utf8',
    tsconfig: join(root, 'tsconfig.json'),
    plugins: [minifyTemplates({ filter: /[\\/]components[\\/].*\.ts$/ })],
    logLevel: 'warning',
  });
  return outputFiles[0].text;
}

/** A module of the library, or one in words as `contents`, bundled for Node and loaded. */
export async function loaded(entry, contents) {
  const folder = join(root, 'test/out');
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `bench-${entry.replace(/\W/g, '-')}.mjs`);
  const from = contents ? { stdin: { contents, resolveDir: root, loader: 'ts' } } : { entryPoints: [join(root, entry)] };
  writeFileSync(file, await bundle({ ...from, platform: 'node' }));
  return import(`${pathToFileURL(file)}?${Date.now()}`);
}

/** A host page with the two columns that a wide window has room for. */
export function hostPage({ body, script = '', source = '' }) {
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Benchmark</title><link rel="icon" href="data:,">
<style>
  body { margin: 0 auto; max-width: 75rem; padding: 1rem; font: 1rem/1.5 sans-serif; background: #fff; }
  .columns { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 22rem), 1fr)); gap: 2rem; }
</style>
${source && `<script type="module" src="${source}"></script>`}</head>
<body>${body}${script && `<script type="module">${script}</script>`}</body></html>`;
}

/** Serves `files` (path → text) compressed, as a real server does. */
export async function serve(files) {
  const packed = new Map(Object.entries(files).map(([path, text]) => [path, gzipSync(text, { level: 9 })]));
  const server = createServer(({ url }, answer) => {
    const body = packed.get(url);
    if (!body) return answer.writeHead(404).end();
    const type = url.endsWith('.js') ? 'text/javascript' : 'text/html';
    answer.writeHead(200, { 'content-type': `${type}; charset=utf-8`, 'content-encoding': 'gzip', 'cache-control': 'no-store' }).end(body);
  });
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  return {
    url: (path) => `http://127.0.0.1:${server.address().port}${path}`,
    close: () => server.close(),
  };
}

export async function openBrowser() {
  return puppeteer.launch({
    executablePath: findBrowser(),
    headless: true,
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
    defaultViewport: WINDOW,
  });
}

/** A new page and its DevTools session. What goes wrong in the page ends the benchmark, or it would time nothing. */
export async function openPage(browser, url) {
  const page = await browser.newPage();
  page.on('pageerror', (error) => {
    throw error;
  });
  const cdp = await page.createCDPSession();
  if (url) await page.goto(url, { waitUntil: 'load' });
  return { page, cdp };
}

export function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

/** Median of each field of records that have the same fields. */
export function medians(records) {
  return Object.fromEntries(Object.keys(records[0]).map((key) => [key, median(records.map((record) => record[key]))]));
}

export function pause(ms) {
  return new Promise((done) => setTimeout(done, ms));
}
