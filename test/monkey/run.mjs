/**
 * `npm run test:monkey`: seeded random users. `-- --engine firefox --actions 20000 --seed 7`; without an engine in all that
 * are there, one after the other. What fails is repeated with the seed and the number of the action in its message.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { ENGINES, findEngine } from '../engines/find.mjs';

const { engine, actions, seed } = parseArgs({
  options: { engine: { type: 'string' }, actions: { type: 'string', default: '2000' }, seed: { type: 'string', default: '1' } },
}).values;
if (engine !== undefined && !ENGINES.includes(engine)) throw new Error(`--engine takes one of ${ENGINES.join(', ')}.`);
for (const [name, text] of Object.entries({ actions, seed })) if (!/^\d{1,9}$/.test(text)) throw new Error(`--${name} takes a whole number, not ${text}.`);

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
  const env = { ...process.env, ASTIG_ENGINES: name, ASTIG_MONKEY_ACTIONS: actions, ASTIG_MONKEY_SEED: seed, ASTIG_TEST_REPORT: fileURLToPath(new URL(`../out/monkey-${name}.json`, import.meta.url)) };
  const { status } = spawnSync(process.execPath, [wtr, '--config', 'test/monkey/config.mjs'], { cwd: root, env, stdio: 'inherit' });
  if (status !== 0) process.exitCode = 1;
}
