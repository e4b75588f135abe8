import { chromeLauncher, puppeteerCore } from '@web/test-runner-chrome';

/**
 * What a page is shown in is set by preferences of the browser, for WebDriver BiDi has no command for it.
 * Values as in Firefox's StaticPrefList.yaml and LookAndFeel.
 */
const PREFERENCES = {
  'prefers-color-scheme': { name: 'layout.css.prefers-color-scheme.content-override', values: { dark: 0, light: 1 } },
  'prefers-reduced-motion': { name: 'ui.prefersReducedMotion', values: { reduce: 1, 'no-preference': 0 } },
  'forced-colors': { name: 'browser.display.document_color_use', values: { active: 2, none: 1 } },
};

/** States of a touch point, as in nsIDOMWindowUtils. */
const TOUCH = { start: 2, move: 2, end: 4, cancel: 8 };

/** The browser's own window, through which a page gets touches as from a screen: those can scroll the page. */
const windows = new WeakMap();

/** Where the finger was last, for its lifting names no point. */
const fingers = new WeakMap();

/** What the tests can ask of Firefox, by WebDriver BiDi in the browser's own window. */
export const firefox = {
  name: 'firefox',

  launcher: ({ browser }) =>
    chromeLauncher({
      puppeteer: puppeteerCore,
      concurrency: 1,
      launchOptions: {
        browser: 'firefox',
        executablePath: browser,
        args: ['--remote-allow-system-access'],
        // As on a device with a touch screen, whatever this machine has.
        extraPrefsFirefox: { 'dom.w3c_touch_events.enabled': 1 },
      },
    }),

  async touch(page, { type, point }) {
    const at = point ?? fingers.get(page);
    fingers.set(page, at);
    await inBrowserWindow(page, touchInWindow, TOUCH[type], ...at);
  },

  async emulate(page, { media = '', ...features }) {
    const settings = Object.entries(PREFERENCES).map(([feature, { name, values }]) => [name, values[features[feature]] ?? null]);
    await inBrowserWindow(page, showInWindow, JSON.stringify(settings), media);
  },

  screenshot: (page) => page.screenshot({ encoding: 'base64' }),

  async print(page, { width, height, margin }) {
    const cm = 2.54 * margin;
    const paper = { page: { width: 2.54 * width, height: 2.54 * height }, margin: { top: cm, bottom: cm, left: cm, right: cm } };
    const { connection } = page.browser();
    const { result } = await connection.send('browsingContext.print', { context: page.mainFrame()._id, ...paper });
    return result.data;
  },
};

/* The two functions below run in the browser's own window, where these names are known. */
/* global gBrowser, Services, window, ChromeUtils */

function touchInWindow(state, x, y) {
  const { left, top } = gBrowser.selectedBrowser.getBoundingClientRect();
  const onScreen = (start, offset, at) => Math.round((start + offset + at) * window.devicePixelRatio);
  return new Promise((resolve) => {
    window.windowUtils.sendNativeTouchPoint(0, state, onScreen(window.mozInnerScreenX, left, x), onScreen(window.mozInnerScreenY, top, y), 1, 90, {
      QueryInterface: ChromeUtils.generateQI(['nsISynthesizedEventCallback']),
      onCompleteDispatch: resolve,
    });
  });
}

function showInWindow(settings, media) {
  for (const [name, value] of JSON.parse(settings)) {
    if (value === null) Services.prefs.clearUserPref(name);
    else Services.prefs.setIntPref(name, value);
  }
  gBrowser.selectedBrowser.browsingContext.mediumOverride = media;
}

async function inBrowserWindow(page, run, ...values) {
  const { connection } = page.browser();
  if (!windows.has(page)) {
    const tree = await connection.send('browsingContext.getTree', { 'moz:scope': 'chrome' });
    windows.set(page, tree.result.contexts[0].context);
  }
  const { result } = await connection.send('script.callFunction', {
    functionDeclaration: String(run),
    arguments: values.map((value) => ({ type: typeof value, value })),
    awaitPromise: true,
    target: { context: windows.get(page) },
  });
  if (result.type !== 'success') throw new Error(`Firefox: ${result.exceptionDetails?.text}`);
}
