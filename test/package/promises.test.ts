import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AstigCase, AstigCornea, AstigOutcomes } from '../../components/index.js';
import { inventedResults } from '../../stories/results.js';
import { Host, htmlPage } from './browser.js';
import type { Opened } from './browser.js';
import { elements, readJson, root } from './built.js';

/** What Lit leaves: lists of its own versions, by which it warns of several copies while developing, and what decorators wrote. */
const LIT = ['litElementVersions', 'litHtmlVersions', 'litPropertyMetadata', 'reactiveElementVersions'];

/** What belongs to this test and to what drives the browser. */
const OURS = /^(globalsBefore|violations|(__|puppeteer___)aria\w+)$/;

/** Nothing but scripts and workers of the same origin, no style but adopted sheets, and no string taken for markup or script. */
const STRICT = `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; worker-src 'self'; img-src data: blob:; trusted-types lit-html astigmatism-elements; require-trusted-types-for 'script'">`;

const CASE = `<astig-case eye="right" flat-k="43" steep-k="44" steep-meridian="90" incision-site="180" arc-count="1" arc-site="90" arc-length="40">
  ${elements.filter((name) => name !== 'case').map((name) => `<astig-${name}></astig-${name}>`).join('\n')}
</astig-case>`;

interface Declaration {
  tagName: string;
  cssParts?: { name: string }[];
}

/** Tags with the parts that a page is told of. */
const documented = new Set(
  readJson<{ modules: { declarations: Declaration[] }[] }>('dist/custom-elements.json')
    .modules.flatMap(({ declarations }) => declarations)
    .flatMap(({ tagName, cssParts = [] }) => cssParts.map(({ name }) => `${tagName} ${name}`)),
);

/** Runs before everything else in the page. */
const BEFORE = `
  window.globalsBefore = Object.getOwnPropertyNames(window);
  window.violations = [];
  document.addEventListener('securitypolicyviolation', (event) => violations.push(event.violatedDirective + ' ' + event.blockedURI + ' ' + event.sample));`;

let host: Host;
let disk: string;

beforeAll(async () => {
  host = await Host.start();
  disk = mkdtempSync(join(tmpdir(), 'astig-disk-'));
});

afterAll(async () => {
  rmSync(disk, { recursive: true, force: true });
  await host.stop();
});

const built = (name: string): string => readFileSync(join(root, 'dist', name), 'utf8');

/** A page with the one module file, under a strict policy. */
function served(body: string): Promise<Opened> {
  const chunks = readdirSync(join(root, 'dist/chunks')).map((name) => [`/chunks/${name}`, built(`chunks/${name}`)]);
  const scripts = `<script src="/before.js"></script><script type="module" src="/astigmatism-elements.js"></script>`;
  const page = htmlPage(body, { head: `${STRICT}${scripts}` });
  return host.open({ files: { '/': page, '/before.js': BEFORE, '/astigmatism-elements.js': built('astigmatism-elements.js'), ...Object.fromEntries(chunks) } });
}

/** A page on the disk with the classic script beside it, as slides have it. */
function opened(body: string): Promise<Opened> {
  writeFileSync(join(disk, 'astigmatism-elements.classic.js'), built('astigmatism-elements.classic.js'));
  writeFileSync(join(disk, 'slide.html'), htmlPage(`${body}<script>${BEFORE}</script><script src="astigmatism-elements.classic.js"></script>`));
  return host.open({ address: pathToFileURL(join(disk, 'slide.html')).href });
}

/** Uses what there is: keys, a drag, the source of a figure, a plan of the page's own, and other texts. */
async function use(page: Page): Promise<void> {
  await page.evaluate(() => (document.querySelector('astig-cornea') as AstigCornea).updateComplete);
  await page.evaluate(() => document.querySelector('astig-cornea')!.shadowRoot!.querySelector<HTMLElement>('input.incision')!.focus());
  await page.keyboard.press('ArrowUp');
  await page.evaluate(() => document.querySelector('astig-cornea')!.scrollIntoView({ block: 'center' }));
  const { x, y } = await page.$eval('astig-cornea', ({ shadowRoot }) => {
    const box = shadowRoot!.querySelector('[part=arc-handle]')!.getBoundingClientRect();
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  });
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 80, y + 30, { steps: 5 });
  await page.mouse.up();
  await page.$eval('astig-summary', ({ shadowRoot }) => shadowRoot!.querySelector<HTMLElement>('.sourced')!.click());
  await page.waitForFunction(() => document.querySelector('astig-summary')!.shadowRoot!.querySelector('.source:popover-open h2'));
  await page.evaluate(() => {
    const held = document.querySelector('astig-case') as AstigCase;
    held.plan = { ...held.plan, lensCylinder: 1.5, lensMeridian: 90 };
  });
  await page.evaluate((text) => {
    const results = document.querySelector('astig-outcomes') as AstigOutcomes;
    results.data = text;
  }, inventedResults(300));
  await page.waitForFunction(() => /: 300 of 300/.test(document.querySelector('astig-outcomes')!.shadowRoot!.querySelector('[role=status]')!.textContent));
  await new Promise((resolve) => setTimeout(resolve, 500));
}

describe.each([
  ['the module file, under a strict policy', served, 1],
  ['the classic script, from the disk', opened, 0],
] as const)('%s', (_, open, readers) => {
  let page: Page;
  let said: string[];
  let asked: string[];

  beforeAll(async () => {
    ({ page, said, asked } = await open(CASE));
    await use(page);
  });

  afterAll(() => page.close());

  it('works', async () => {
    const plan = await page.$eval('astig-case', (held) => (held as AstigCase).plan);
    expect(plan.incisionSite).toBe(181);
    expect(plan.arcSite).not.toBe(90);
    expect(await page.$eval('astig-summary', ({ shadowRoot }) => shadowRoot!.textContent)).toContain('Toric lens');
  });

  it('reads a table of results, in a worker where there may be one', async () => {
    expect(page.workers().filter((worker) => worker.url().includes('outcomes-worker'))).toHaveLength(readers);
    const shown = await page.$eval('astig-outcomes', ({ shadowRoot }) => [shadowRoot!.querySelectorAll('ellipse').length, shadowRoot!.querySelectorAll('[role=option]').length]);
    expect(shown).toEqual([6, 10]);
  });

  it('says nothing on the console', () => {
    expect(said).toEqual([]);
  });

  it('asks for nothing but the library’s own files', () => {
    const foreign = asked.slice(1).filter((address) => !/^(data:,|.*\/(before|astigmatism-elements(\.classic)?|chunks\/[\w.-]+)\.js)$/.test(address));
    expect(foreign).toEqual([]);
    expect(asked.every((address) => address.startsWith(host.origin) || /^(file|data):/.test(address))).toBe(true);
  });

  it('stores nothing', async () => {
    const stored = await page.evaluate(async () => ({
      local: Object.keys(localStorage),
      session: Object.keys(sessionStorage),
      cookies: document.cookie,
      databases: location.protocol === 'file:' ? [] : await indexedDB.databases(),
      caches: 'caches' in window && location.protocol !== 'file:' ? await caches.keys() : [],
      name: window.name,
    }));
    expect(stored).toEqual({ local: [], session: [], cookies: '', databases: [], caches: [], name: '' });
  });

  it('leaves no global but Lit’s own', async () => {
    const added = await page.evaluate(() => {
      const { globalsBefore } = window as unknown as { globalsBefore: string[] };
      return Object.getOwnPropertyNames(window).filter((name) => !globalsBefore.includes(name));
    });
    expect(added.filter((name) => !OURS.test(name)).sort()).toEqual(LIT);
  });

  it('shows no part that the manifest does not document', async () => {
    const shown = await page.$$eval('astig-case *', (all) =>
      all.flatMap(({ localName, shadowRoot }) => [...shadowRoot!.querySelectorAll('[part]')].flatMap(({ part }) => [...part].map((name) => `${localName} ${name}`))));
    expect(shown.length).toBeGreaterThan(50);
    expect([...new Set(shown)].filter((name) => !documented.has(name))).toEqual([]);
  });

  it('breaks no policy', async () => {
    expect(await page.evaluate(() => (window as unknown as { violations: string[] }).violations)).toEqual([]);
  });
});

describe('markup in a setting is text', () => {
  const MARKUP = `<b>bold</b><img src="x" onerror="window.broken = true">`;

  it('in attributes of the case, of views, and in the plan', async () => {
    const { page, said } = await served(CASE);
    await page.evaluate((markup) => {
      const held = document.querySelector('astig-case') as AstigCase;
      for (const name of ['eye', 'flat-k', 'k-unit', 'back-surface', 'arc-method', 'risks']) held.setAttribute(name, markup);
      for (const view of held.querySelectorAll('*')) for (const name of ['viewpoint', 'widths', 'sites', 'lenses', 'most-arcs', 'lang', 'read-only']) view.setAttribute(name, markup);
    }, MARKUP);
    await new Promise((resolve) => setTimeout(resolve, 300));
    const found = await page.$$eval('astig-case *', (all) => all.map(({ shadowRoot }) => ({ elements: shadowRoot!.querySelectorAll('img, b').length, text: shadowRoot!.textContent })));
    expect(found.map((view) => view.elements)).toEqual(found.map(() => 0));
    expect(found.some(({ text }) => text.includes('<b>bold</b>'))).toBe(true);
    expect(await page.evaluate(() => 'broken' in window)).toBe(false);
    expect(said).toEqual([]);
    await page.close();
  });
});
