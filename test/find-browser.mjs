/**
 * `node test/find-browser.mjs [--install] [engine …]`: prints the path of each engine's browser, or what to do about a
 * missing one. With `--install` the system's package manager is asked for those that are missing. Fails unless all are there.
 */
import { realpathSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ENGINES, findEngine } from './engines/find.mjs';

/**
 * A browser of the Chromium family.
 * @param {{ install?: boolean }} [options] `install: true` lets the package manager be asked.
 * @returns {string} path of the executable
 * @throws Error that says what to do, when there is none
 */
export function findBrowser(options) {
  return findEngine('chromium', options).browser;
}

function report() {
  const install = process.argv.includes('--install');
  const named = process.argv.filter((word) => ENGINES.includes(word));
  for (const engine of named.length > 0 ? named : ENGINES) {
    try {
      console.log(`${engine}: ${findEngine(engine, { install }).browser}`);
    } catch (error) {
      console.error(error.message);
      process.exitCode = 1;
    }
  }
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) report();
