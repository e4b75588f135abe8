import { chromeLauncher } from '@web/test-runner-chrome';

/** One DevTools session a page: emulation and touch points belong to the session that set them. */
const sessions = new WeakMap();

const TOUCH = { start: 'touchStart', move: 'touchMove', end: 'touchEnd', cancel: 'touchCancel' };

/** What the tests can ask of Chromium, by its DevTools protocol. */
export const chromium = {
  name: 'chromium',

  launcher: ({ browser }) =>
    chromeLauncher({
      launchOptions: {
        executablePath: browser,
        args: [
          '--no-sandbox',
          '--disable-gpu',
          '--disable-background-networking',
          '--no-first-run',
          '--disable-component-update',
          '--disable-sync',
        ],
      },
    }),

  async touch(page, { type, point }) {
    await devtools(page, 'Input.dispatchTouchEvent', { type: TOUCH[type], touchPoints: point ? [{ x: point[0], y: point[1] }] : [] });
  },

  async emulate(page, { media = '', ...features }) {
    await devtools(page, 'Emulation.setEmulatedMedia', { media, features: Object.entries(features).map(([name, value]) => ({ name, value })) });
  },

  async screenshot(page) {
    return (await devtools(page, 'Page.captureScreenshot')).data;
  },

  async print(page, { width, height, margin }) {
    const margins = { marginTop: margin, marginBottom: margin, marginLeft: margin, marginRight: margin };
    return (await devtools(page, 'Page.printToPDF', { paperWidth: width, paperHeight: height, ...margins })).data;
  },

  cdp: (page, { method, params }) => devtools(page, method, params),
};

async function devtools(page, method, params) {
  if (!sessions.has(page)) sessions.set(page, page.createCDPSession());
  return (await sessions.get(page)).send(method, params);
}
