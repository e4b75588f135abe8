import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';
import type { Browser, Frame, Page } from 'puppeteer-core';
import { afterAll, beforeAll, expect, inject } from 'vitest';
import type { AstigCase } from '../../components/index.js';
import { root } from '../package/built.js';

/** A document with elements in it. */
export type Place = Page | Frame;

export interface Opened {
  page: Page;
  /** Everything on the console, and errors that nobody caught. */
  said: string[];
  /** Addresses that were asked for after the page itself. */
  asked: string[];
}

let browser: Browser;
const pages: Page[] = [];

/** To be called once in a test file. */
export function hosts(): void {
  beforeAll(async () => {
    browser = await puppeteer.connect({ browserWSEndpoint: inject('browser') });
  });
  afterAll(async () => {
    await Promise.all(pages.map((page) => page.close()));
    await browser.disconnect();
  });
}

/** Where an example is served; what a bundler makes is elsewhere. */
export const example = (name: string): string => `${inject('origin')}/stories/hosts/${name}/`;
export const bundledExample = (name: string): string => `${inject('origin')}/test/out/hosts/${name}/`;
export const onDisk = (path: string): string => pathToFileURL(join(root, path)).href;

interface Ways {
  /** Runs in the page ahead of everything. */
  before?: () => void;
  /** A script that is served instead of what is at an address. */
  script?: (url: string) => string | undefined;
  width?: number;
  height?: number;
  touch?: boolean;
}

/** Opens a page in front of all others. */
export async function open(address: string, { before, script, width = 1100, height = 900, touch = false }: Ways = {}): Promise<Opened> {
  const page = await browser.newPage();
  pages.push(page);
  const said: string[] = [];
  const asked: string[] = [];
  page.on('console', (message) => said.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => said.push(String(error)));
  page.on('request', (request) => asked.push(request.url()));
  if (before) await page.evaluateOnNewDocument(before);
  if (script) {
    await page.setRequestInterception(true);
    page.on('request', (request) => {
      const body = script(request.url());
      void (body === undefined ? request.continue() : request.respond({ contentType: 'text/javascript', body }));
    });
  }
  await page.setViewport({ width, height, hasTouch: touch });
  await page.goto(address, { waitUntil: 'load' });
  await page.bringToFront();
  asked.shift();
  return { page, said, asked };
}

/** Waits until an element has drawn and two frames have passed, so that what it has measured is drawn too. */
export async function drawn(place: Place, selector = 'astig-cornea'): Promise<void> {
  await place.waitForFunction((wanted) => document.querySelector(wanted)?.shadowRoot?.querySelector('svg, form, section, table, p'), {}, selector);
  await place.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
}

export async function plan(place: Place, selector = 'astig-case'): Promise<AstigCase['plan']> {
  return place.$eval(selector, (held) => (held as AstigCase).plan);
}

/** Where something of a drawing is, CSS px of the document it stands in. */
export async function centre(place: Place, part: string, selector = 'astig-cornea'): Promise<{ x: number; y: number }> {
  return place.$eval(
    selector,
    ({ shadowRoot }, wanted) => {
      const box = shadowRoot!.querySelector(wanted)!.getBoundingClientRect();
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    },
    part,
  );
}

/**
 * Drags the incision by the mouse to the other side of where its handle lies at a direction, degrees, and expects it
 * there. `from` is where the document lies in the window.
 */
export async function dragIncision(page: Page, degrees: number, { place = page as Place, selector = 'astig-cornea', from = { x: 0, y: 0 }, release = true } = {}): Promise<void> {
  await place.$eval(selector, (drawing) => drawing.scrollIntoView({ block: 'center', behavior: 'instant' }));
  await drawn(place, selector);
  const handle = await centre(place, '[part~=incision-handle] .knob', selector);
  const target = await towards(place, degrees, selector);
  await page.mouse.move(from.x + handle.x, from.y + handle.y);
  await page.mouse.down();
  await page.mouse.move(from.x + target.x, from.y + target.y, { steps: 8 });
  if (release) await page.mouse.up();
}

/** Where a direction of the dial lies, at the distance of the incision's handle. */
export async function towards(place: Place, degrees: number, selector = 'astig-cornea'): Promise<{ x: number; y: number }> {
  const limbus = await centre(place, '[part~=limbus]', selector);
  const handle = await centre(place, '[part~=incision-handle] .knob', selector);
  const reach = Math.hypot(handle.x - limbus.x, handle.y - limbus.y);
  const angle = (degrees * Math.PI) / 180;
  return { x: limbus.x + reach * Math.cos(angle), y: limbus.y - reach * Math.sin(angle) };
}

export function expectNear(site: number | null | undefined, degrees: number, most = 2): void {
  expect(site).toBeTypeOf('number');
  expect(Math.abs(((site! - degrees + 540) % 360) - 180), `${site}° should be ${degrees}°`).toBeLessThanOrEqual(most);
}

/** Puts the keyboard's focus on what a selector finds inside an element. */
export async function focus(place: Place, inner: string, selector = 'astig-cornea'): Promise<void> {
  await place.$eval(selector, ({ shadowRoot }, wanted) => shadowRoot!.querySelector<HTMLElement>(wanted)!.focus(), inner);
}
