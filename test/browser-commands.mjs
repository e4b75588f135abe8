/**
 * Commands a browser test can give to the server that drives its page, beyond those of @web/test-runner-commands:
 * `engine`, its name; `touch`; `emulate`, ways in which a page is shown; `screenshot`; `print`, how many sheets the page takes; `cdp`, one raw DevTools command, in
 * Chromium only. What was emulated ends with the test file, so that none inherits the dark scheme of another.
 */
import { chromium } from './engines/chromium.mjs';
import { firefox } from './engines/firefox.mjs';
import { sheets } from './engines/sheets.mjs';
import { webkit } from './engines/webkit.mjs';

const ALL = { chromium, firefox, webkit };

/** Which engine a launcher starts. */
const engines = new WeakMap();

/**
 * @param {import('./engines/find.mjs').EngineName} name
 * @param {Record<string, string>} programs as `findEngine` finds them
 * @returns {import('@web/test-runner-core').BrowserLauncher}
 */
export function launcherOf(name, programs) {
  const engine = ALL[name];
  const launcher = engine.launcher(programs);
  engines.set(launcher, engine);
  const stop = launcher.stopSession.bind(launcher);
  launcher.stopSession = async (id) => {
    await engine.emulate(launcher.getPage(id), {}, launcher);
    return stop(id);
  };
  return launcher;
}

/** @returns {import('@web/test-runner-core').TestRunnerPlugin} */
export function browserCommands() {
  return {
    name: 'browser-commands',
    async executeCommand({ command, payload, session: { id, browser } }) {
      const engine = engines.get(browser);
      if (command === 'engine') return engine.name;
      if (!['touch', 'emulate', 'screenshot', 'print', 'cdp'].includes(command)) return undefined;
      if (!engine[command]) throw new Error(`${engine.name} has no command ${command}.`);
      if (command === 'print') return { sheets: sheets(await engine.print(browser.getPage(id), payload)) };
      // A command without a result would look to the runner like a command nobody knows.
      return (await engine[command](browser.getPage(id), payload, browser)) ?? {};
    },
  };
}
