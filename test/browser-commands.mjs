/**
 * Commands a browser test can give to the server that drives its page, beyond those of @web/test-runner-commands.
 * `cdp`: one raw DevTools command, for what no library command covers: touch, forced colours, metrics.
 */

/** One DevTools session a page: emulation and touch points belong to the session that set them. */
const sessions = new WeakMap();

/** @returns {import('@web/test-runner-core').TestRunnerPlugin} */
export function browserCommands() {
  return {
    name: 'browser-commands',
    async executeCommand({ command, payload, session }) {
      if (command !== 'cdp') return undefined;
      if (typeof payload?.method !== 'string') throw new Error('cdp wants { method, params }.');
      if (typeof session.browser.getPage !== 'function' || session.browser.type !== 'puppeteer') {
        throw new Error(`cdp needs a browser driven by puppeteer, not ${session.browser.name}.`);
      }
      const devtools = await sessionOf(session.browser.getPage(session.id));
      // A command without a result would look to the runner like a command nobody knows.
      return (await devtools.send(payload.method, payload.params)) ?? {};
    },
  };
}

function sessionOf(page) {
  let opened = sessions.get(page);
  if (!opened) {
    opened = open(page);
    sessions.set(page, opened);
  }
  return opened;
}

async function open(page) {
  const devtools = await page.createCDPSession();
  // The runner hands one page from test file to test file, by way of about:blank. Closing the session there
  // takes back everything that was emulated, so no file inherits the dark scheme of another.
  const onNavigation = (frame) => {
    if (frame !== page.mainFrame() || frame.url() !== 'about:blank') return;
    page.off('framenavigated', onNavigation);
    sessions.delete(page);
    devtools.detach().catch(() => {});
  };
  page.on('framenavigated', onNavigation);
  return devtools;
}
