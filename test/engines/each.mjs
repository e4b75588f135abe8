/** Runs a suite of its own in one engine or, one after the other, in all that are there. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { ENGINES, findEngine } from './find.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const wtr = fileURLToPath(new URL('../../node_modules/@web/test-runner/dist/bin.js', import.meta.url));

/**
 * `test/<suite>/config.mjs` in the engine named, or in each; `environment` tells the suite what it was asked for. An engine
 * that is missing is named, and is a failure only where it was asked for.
 */
export function inEachEngine({ suite, engine, environment }) {
  if (engine !== undefined && !ENGINES.includes(engine)) throw new Error(`--engine takes one of ${ENGINES.join(', ')}.`);
  for (const name of engine ? [engine] : ENGINES) {
    if (!isThere(name)) {
      if (engine) process.exitCode = 1;
      continue;
    }
    const report = fileURLToPath(new URL(`../out/${suite}-${name}.json`, import.meta.url));
    const env = { ...process.env, ...environment, ASTIG_ENGINES: name, ASTIG_TEST_REPORT: report };
    const { status } = spawnSync(process.execPath, [wtr, '--config', `test/${suite}/config.mjs`], { cwd: root, env, stdio: 'inherit' });
    if (status !== 0) process.exitCode = 1;
  }
}

function isThere(name) {
  try {
    findEngine(name, { install: false });
    return true;
  } catch (error) {
    console.error(`${name} is not there: ${error.message}`);
    return false;
  }
}
