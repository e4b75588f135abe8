/**
 * `npm run test:mutation`: small changes are made to the core, one at a time, and its quick tests are asked whether they notice.
 * `-- core/angle.ts core/arcs.ts` for some files alone, `-- --concurrency 1` and every other option of Stryker too. What has
 * been found is kept in test/out/stryker-incremental.json, so that the next run tries what has changed since. Scores and what
 * is known of the mutants that live: test/mutation.md.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const stryker = fileURLToPath(new URL('../../node_modules/@stryker-mutator/core/bin/stryker.js', import.meta.url));
const given = process.argv.slice(2);
const files = given.filter((word) => /^core\/.*\.ts(:.*)?$/.test(word));
const options = given.filter((word) => !files.includes(word));
const { status } = spawnSync(process.execPath, [stryker, 'run', 'test/stryker.config.json', ...(files.length > 0 ? ['--mutate', files.join()] : []), ...options], { cwd: root, stdio: 'inherit' });
process.exitCode = status ?? 1;
