import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AstigCase, AstigCornea } from '../../components/index.js';
import { Host, htmlPage } from './browser.js';
import type { Files } from './browser.js';
import { root } from './built.js';
import { HYDRATION, bundled, served } from './served.js';

const VIEWS = ['cornea', 'vectors', 'summary', 'entry', 'sweep', 'options', 'explain', 'sheet', 'pencil', 'outcomes'];

/** Drawings and sections in each of them, of which there must never be two. */
const DRAWINGS = [1, 1, 1, 0, 1, 0, 1, 2, 1, 1];

/** An invented eye. */
const EYE = `eye="left" flat-k="43" steep-k="44" steep-meridian="180" age="70" incision-site="0" arc-site="180" arc-count="1" arc-length="30"`;

const views = VIEWS.map((name) => `<div><astig-${name}></astig-${name}></div>`).join('\n');
const TEMPLATE = `<astig-case ${EYE}>${views}</astig-case>`;

/** What a reader sees before and after: every text and every drawing. */
const SHOWN = ['Left eye', '1.00 D @ 180°', 'against the rule', '270', 'Remaining, as expected'];

let host: Host;
let drawn: string;
let takeOver: string;

beforeAll(async () => {
  host = await Host.start();
  drawn = served(TEMPLATE);
  takeOver = await bundled(`${HYDRATION} import 'astigmatism-elements/define.js';`);
});

afterAll(() => host.stop());

function pageOf(width: number, markup = drawn, lang = 'en'): string {
  return htmlPage(`<div id="column">${markup}</div><p id="after">After</p>`, {
    lang,
    head: `<style>body { margin: 20px; font: 16px/1.4 'Liberation Sans', Arial, sans-serif } #column { width: ${width}px }</style>`,
  });
}

/** Text of each view without its styles, and what is ticked in it. */
function texts(page: Page): Promise<string[]> {
  return page.$$eval('astig-case *', (all) =>
    all.flatMap(({ localName, shadowRoot }) => {
      if (!shadowRoot) return [];
      const text = [...shadowRoot.children].filter((child) => child.localName !== 'style').map((child) => child.textContent).join(' ');
      const ticked = [...shadowRoot.querySelectorAll<HTMLInputElement>('input:checked')].map(({ name, value }) => `${name}=${value}`);
      return [[localName, text.replace(/\s+/g, ' ').trim(), ...ticked].join(' ')];
    }),
  );
}

/** The title of the sweep is longer where there is room, which a server cannot know. */
function withoutSweep(list: readonly string[]): string[] {
  return list.filter((text) => !text.startsWith('astig-sweep'));
}

/** Boxes of the views and of what stands in them and after them, whole px. */
function boxes(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const inside = [...document.querySelectorAll('astig-case *')].flatMap((view) => [view, ...(view.shadowRoot?.querySelectorAll('svg, figure, figcaption, ul, table, section, fieldset, p') ?? [])]);
    return [...inside, document.querySelector('#after')!].map((element) => {
      const { x, y, width, height } = element.getBoundingClientRect();
      return `${element.localName} ${[x, y, width, height].map(Math.round).join(' ')}`;
    });
  });
}

/** Remembers every node that the server has drawn, and every shift of the layout from now on. */
function mark(page: Page): Promise<void> {
  return page.evaluate(() => {
    const nodes = [...document.querySelectorAll('astig-case *')].flatMap((view) => [...(view.shadowRoot?.querySelectorAll('*') ?? [])]);
    const shifts: number[] = [];
    new PerformanceObserver((list) => shifts.push(...list.getEntries().map((entry) => (entry as unknown as { value: number }).value))).observe({ type: 'layout-shift' });
    Object.assign(window, { marked: { nodes, shifts } });
  });
}

function marks(page: Page): Promise<{ drawn: number; gone: number; shifted: number }> {
  return page.evaluate(() => {
    const { nodes, shifts } = (window as unknown as { marked: { nodes: Element[]; shifts: number[] } }).marked;
    return { drawn: nodes.length, gone: nodes.filter(({ isConnected }) => !isConnected).length, shifted: shifts.reduce((sum, shift) => sum + shift, 0) };
  });
}

/** Runs scripts one after the other and waits until everything has been drawn, measured and drawn again. */
async function run(page: Page, ...scripts: string[]): Promise<void> {
  for (const url of scripts) await page.addScriptTag({ url, type: url.includes('classic') ? '' : 'module' });
  await page.evaluate(async () => {
    for (let frame = 0; frame < 5; frame++) await new Promise(requestAnimationFrame);
    for (const view of document.querySelectorAll('astig-case *')) await (view as unknown as { updateComplete?: Promise<unknown> }).updateComplete;
    await new Promise((resolve) => setTimeout(resolve, 300));
  });
}

function drawings(page: Page): Promise<number[]> {
  return page.$$eval('astig-case *', (all) => all.filter(({ shadowRoot }) => shadowRoot).map(({ shadowRoot }) => shadowRoot!.querySelectorAll('figure.plate, section').length));
}

function builtFiles(): Files {
  const chunks = readdirSync(join(root, 'dist/chunks')).map((name) => `/chunks/${name}`);
  const names = ['/astigmatism-elements.js', '/astigmatism-elements.classic.js', ...chunks];
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(root, `dist${name}`), 'utf8')]));
}

describe('what a server draws', () => {
  it('shows the figures and the drawings before any script', async () => {
    const { page, said } = await host.open({ files: { '/': pageOf(360) } });
    const all = (await texts(page)).join('\n');
    for (const text of [...SHOWN, 'eye=left', 'arcMethod=blade', 'lens=no']) expect(all).toContain(text);
    expect(all).not.toContain('eye=right');
    const sizes = await page.$$eval('astig-cornea, astig-vectors, astig-sweep', (list) =>
      list.map(({ shadowRoot }) => shadowRoot!.querySelector('svg')!.getBoundingClientRect().width));
    expect(sizes).toEqual([360, 360, 360]);
    const incision = await page.$eval('astig-cornea', ({ shadowRoot }) => shadowRoot!.querySelector('[part=incision]')!.getBoundingClientRect().height);
    expect(incision).toBeGreaterThan(5);
    expect(said).toEqual([]);
    await page.close();
  });

  it('is each view’s own case, the nearest around it', () => {
    const html = served(`<astig-case eye="left"><astig-summary></astig-summary><p><astig-case eye="right"><astig-summary></astig-summary></astig-case></p><astig-summary></astig-summary></astig-case>`);
    expect(html.match(/Summary, (left|right) eye/gi)).toEqual(['Summary, left eye', 'Summary, right eye', 'Summary, left eye']);
  });

  it('is of a plan that is given as a property', () => {
    const html = served('<astig-case .plan=${plan}><astig-summary></astig-summary></astig-case>', { plan: { flatK: 42, steepK: 44.5, steepMeridian: 95 } });
    expect(html.replaceAll('\u00a0', ' ')).toContain('2.50 D @ 95°');
  });

  it('says what is refused', () => {
    expect(served(`<astig-case steep-k="444"><astig-summary></astig-summary></astig-case>`)).toContain('444');
  });

  it('has no message where there is no case', () => {
    expect(served(`<astig-cornea></astig-cornea>`)).toContain('this needs an astig-case around it');
  });
});

describe('a page takes over what the server has drawn', () => {
  it.each([360, 544, 900])('without a warning, a new node or a shift, in a column of %i px', async (width) => {
    const { page, said } = await host.open({ files: { '/': pageOf(width), '/page.js': takeOver } });
    const before = { texts: await texts(page), boxes: await boxes(page) };
    await mark(page);
    await run(page, '/page.js');
    expect(said).toEqual([]);
    expect(await marks(page)).toEqual({ drawn: expect.any(Number) as number, gone: 0, shifted: 0 });
    expect((await marks(page)).drawn).toBeGreaterThan(500);
    expect(withoutSweep(await texts(page))).toEqual(withoutSweep(before.texts));
    expect(await boxes(page)).toEqual(before.boxes);
    expect(await page.$$eval('[data-served], [defer-hydration]', ({ length }) => length)).toBe(0);
    await page.close();
  });

  it('and works on it', async () => {
    const { page, said } = await host.open({ files: { '/': pageOf(360), '/page.js': takeOver } });
    await run(page, '/page.js');
    await page.evaluate(() => {
      const changes: string[] = [];
      document.addEventListener('astig-change', (event) => changes.push((event as unknown as { source: string }).source));
      Object.assign(window, { changes });
      document.querySelector('astig-cornea')!.shadowRoot!.querySelector<HTMLElement>('input.incision')!.focus();
    });
    await page.keyboard.press('ArrowUp');
    const handle = await page.$eval('astig-cornea', ({ shadowRoot }) => {
      const { x, y, width, height } = shadowRoot!.querySelector('[part=arc-handle]')!.getBoundingClientRect();
      return { x: x + width / 2, y: y + height / 2 };
    });
    await page.mouse.move(handle.x, handle.y);
    await page.mouse.down();
    await page.mouse.move(handle.x + 10, handle.y + 60, { steps: 4 });
    await page.mouse.up();
    const state = await page.evaluate(() => {
      const { incisionSite, arcSite } = document.querySelector<AstigCase>('astig-case')!.plan;
      return { incisionSite, arcSite, changes: (window as unknown as { changes: string[] }).changes };
    });
    expect(state.incisionSite).toBe(1);
    expect(state.arcSite).not.toBe(180);
    expect(state.changes).toEqual(['astig-cornea incision-handle', 'astig-cornea arc-handle']);
    expect((await texts(page))[0]).toContain(`Arc 30° at ${state.arcSite}°`);
    expect(said).toEqual([]);
    await page.close();
  });

  it('when the rest of a view can only be drawn in a page', async () => {
    const html = served(`<astig-case ${EYE}><astig-sight></astig-sight></astig-case>`);
    expect(html).toContain('Letter chart');
    const { page, said } = await host.open({ files: { '/': pageOf(900, html), '/page.js': takeOver } });
    await mark(page);
    await run(page, '/page.js');
    expect(said).toEqual([]);
    expect((await marks(page)).gone).toBe(0);
    await page.waitForFunction(() => document.querySelector('astig-sight')!.shadowRoot!.querySelector('canvas, [part~=picture] *'));
    await page.close();
  });

  it('when views are defined before their case', async () => {
    const [first, second] = [await bundled(`${HYDRATION} import 'astigmatism-elements/cornea/define.js'; globalThis.rest = () => import('astigmatism-elements/define.js');`), 'void rest();'];
    const { page, said } = await host.open({ files: { '/': pageOf(360), '/first.js': first, '/second.js': second } });
    await mark(page);
    await run(page, '/first.js', '/second.js');
    expect(said).toEqual([]);
    expect((await marks(page)).gone).toBe(0);
    await page.close();
  });
});

describe('what a page must not take over is drawn anew', () => {
  it('another eye than the server’s', async () => {
    const { page, said } = await host.open({ files: { '/': pageOf(360), '/page.js': takeOver } });
    await page.evaluate(() => {
      document.querySelector('astig-case')!.setAttribute('steep-meridian', '90');
      (document.querySelector('astig-cornea') as AstigCornea).viewpoint = 'above';
    });
    await run(page, '/page.js');
    const all = (await texts(page)).join('\n');
    expect(all).toContain('1.00 D @ 90°');
    expect(all).not.toContain('1.00 D @ 180°');
    expect(await drawings(page)).toEqual(DRAWINGS);
    expect(said).toEqual([]);
    await page.close();
  });

  it('English texts, once another language is there', async () => {
    const { page, said } = await host.open({ files: { '/': pageOf(360, drawn, 'de'), '/page.js': takeOver } });
    await run(page, '/page.js');
    await page.waitForFunction(() => /Linkes Auge/.test(document.querySelector('astig-cornea')!.shadowRoot!.textContent));
    const all = (await texts(page)).join('\n');
    expect(all).toContain('1,00');
    expect(all).not.toMatch(/1\.00|Left eye|Remaining|Estimates/);
    expect(said).toEqual([]);
    await page.close();
  });

  it.each([
    ['Lit’s support for hydration is missing', ['/astigmatism-elements.js']],
    ['the templates are those of the one file', ['/hydration.js', '/astigmatism-elements.js']],
    ['the templates are those of the classic script', ['/hydration.js', '/astigmatism-elements.classic.js']],
  ])('when %s', async (_, scripts) => {
    const files = { ...builtFiles(), '/': pageOf(360), '/hydration.js': await bundled(HYDRATION) };
    const { page, said } = await host.open({ files });
    const before = { texts: await texts(page), boxes: await boxes(page) };
    await run(page, ...scripts);
    expect(await drawings(page)).toEqual(DRAWINGS);
    expect({ texts: await texts(page), boxes: await boxes(page) }).toEqual(before);
    expect(said).toEqual([]);
    await page.close();
  });
});
