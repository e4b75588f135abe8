import { spawn } from 'node:child_process';
import { CORNER, Display } from './display.mjs';
import { freePort } from './free-port.mjs';
import { endWithUs } from './processes.mjs';
import { WebDriver } from './webdriver.mjs';

/**
 * Left to itself WebKit paints with the processor or with the graphics library, whichever is less busy, and their rims
 * differ: pictures of the same page would not be the same.
 */
const ONE_PAINTER = { WEBKIT_SKIA_ENABLE_CPU_RENDERING: '1' };

const VIEWPORT = { width: 800, height: 600, ...CORNER };

/**
 * Launcher of @web/test-runner for WebKit for GTK: its MiniBrowser on a screen of its own, driven by WebDriver.
 * One page, which goes from test file to test file. It says that it is of puppeteer's kind, for the runner's
 * commands then find a page with a mouse and a keyboard as puppeteer's has.
 */
export class WebKitLauncher {
  name = 'WebKit';
  type = 'puppeteer';
  concurrency = 1;

  /** @param {{ driver: string, browser: string, display: string, settings: string }} programs */
  constructor(programs) {
    this.programs = programs;
  }

  async initialize() {}

  async startSession(id, url) {
    this.started ??= this.start();
    await this.started;
    this.active = id;
    await this.page.setViewport(VIEWPORT);
    await this.page.goto(url);
  }

  async stopSession(id) {
    if (id !== this.active) throw new Error(`No page for session ${id}`);
    await this.page.release();
    await this.page.goto('about:blank');
    this.active = undefined;
    return {};
  }

  isActive(id) {
    return id !== undefined && id === this.active;
  }

  getBrowserUrl() {
    return this.page.url();
  }

  getPage(id) {
    if (!this.isActive(id)) throw new Error(`No page for session ${id}`);
    return this.page;
  }

  startDebugSession() {
    throw new Error('WebKit is shown on a screen that nobody sees: debug in another engine.');
  }

  async stop() {
    await this.page?.quit().catch(() => {});
    this.server?.kill();
    this.display?.stop();
  }

  async start() {
    const { driver, browser } = this.programs;
    this.display = await Display.start(this.programs);
    const port = await freePort();
    const env = { ...process.env, DISPLAY: this.display.name, GDK_BACKEND: 'x11', WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1', ...ONE_PAINTER };
    this.server = endWithUs(spawn(driver, [`--port=${port}`], { env, stdio: 'ignore' }));
    const address = `http://127.0.0.1:${port}`;
    await answers(`${address}/status`);
    this.page = await WebDriver.start(address, {
      browserName: 'MiniBrowser',
      'webkitgtk:browserOptions': { binary: browser, args: ['--automation'] },
    });
  }
}

async function answers(address) {
  for (let tries = 0; ; tries += 1) {
    try {
      return await fetch(address);
    } catch (error) {
      if (tries >= 100) throw new Error(`${address} does not answer.`, { cause: error });
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
}

/** What the tests can ask of WebKit. It has no touch: its driver turns touch into mouse without a word. */
export const webkit = {
  name: 'webkit',

  /** @param {ReturnType<typeof findEngine>} programs */
  launcher: (programs) => new WebKitLauncher(programs),

  emulate(page, shown, launcher) {
    if (shown.media || shown['forced-colors'] === 'active') throw new Error('WebKit shows neither print nor forced colours on a screen.');
    launcher.display.set({ dark: shown['prefers-color-scheme'] === 'dark', still: shown['prefers-reduced-motion'] === 'reduce' });
  },

  screenshot: (page) => page.screenshot(),
};
