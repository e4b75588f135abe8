/**
 * `npm run test:visual`: pictures of the drawings beside those in `test/fixtures/pictures`, in each engine that is there.
 * `-- --engine webkit` for one; `-- --update` keeps the new pictures: look at each before it is committed. They hold for
 * the fonts of one machine, so this is no part of `npm test`. What differs is drawn into `test/out/pictures`.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { ENGINES, findEngine } from '../engines/find.mjs';

const { engine, update } = parseArgs({ options: { engine: { type: 'string' }, update: { type: 'boolean' } } }).values;
if (engine !== undefined && !ENGINES.includes(engine)) throw new Error(`--engine takes one of ${ENGINES.join(', ')}.`);

const root = fileURLToPath(new URL('../..', import.meta.url));
const wtr = fileURLToPath(new URL('../../node_modules/@web/test-runner/dist/bin.js', import.meta.url));
for (const name of engine ? [engine] : ENGINES) {
  try {
    findEngine(name, { install: false });
  } catch (error) {
    console.error(`${name} is not there: ${error.message}`);
    if (engine) process.exitCode = 1;
    continue;
  }
  const env = { ...process.env, ASTIG_ENGINES: name, ASTIG_UPDATE_PICTURES: update ? '1' : '', ASTIG_TEST_REPORT: fileURLToPath(new URL(`../out/visual-${name}.json`, import.meta.url)) };
  const { status } = spawnSync(process.execPath, [wtr, '--config', 'test/visual/config.mjs'], { cwd: root, env, stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
