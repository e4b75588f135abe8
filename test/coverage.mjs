/**
 * `npm run coverage`: which lines and branches of the core its tests reach (must be all), and which of the components
 * theirs do in Chromium (90 in 100). `-- --only core` or `-- --only components` for one. Reports in test/out/coverage.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const root = fileURLToPath(new URL('..', import.meta.url));
const script = (path) => fileURLToPath(new URL(`../node_modules/${path}`, import.meta.url));

const STEPS = {
  core: [
    script('vitest/vitest.mjs'), 'run', '--config=test/vitest.config.ts', '--project=core', '--coverage.enabled', '--coverage.provider=v8',
    '--coverage.reportOnFailure', '--coverage.include=core/**/*.ts', '--coverage.exclude=test/**', '--coverage.reporter=text', '--coverage.reporter=json', '--coverage.reportsDirectory=test/out/coverage/core',
    '--coverage.thresholds.lines=100', '--coverage.thresholds.branches=100',
  ],
  components: [script('@web/test-runner/dist/bin.js'), '--config', 'test/coverage.config.mjs'],
};

const { only } = parseArgs({ options: { only: { type: 'string' } } }).values;
if (only !== undefined && !Object.hasOwn(STEPS, only)) throw new Error(`--only takes one of ${Object.keys(STEPS).join(', ')}.`);
for (const name of only ? [only] : Object.keys(STEPS)) {
  const { status } = spawnSync(process.execPath, STEPS[name], { cwd: root, stdio: 'inherit', env: { ...process.env, ASTIG_ENGINES: 'chromium' } });
  if (status !== 0) process.exitCode = 1;
}
