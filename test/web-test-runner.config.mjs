import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { defaultReporter } from '@web/test-runner';
import { build } from 'esbuild';
import { browserCommands, launcherOf } from './browser-commands.mjs';
import { findEngine } from './engines/find.mjs';
import { jsonReport } from './runner-report.mjs';

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url));

/** `ASTIG_ENGINES=firefox,webkit npx wtr …` for others than Chromium; `npm test` runs this once for each engine. */
const engines = (process.env.ASTIG_ENGINES ?? 'chromium').split(',');

/** mathjs leans on CommonJS, which no browser loads: the one file that uses it is served as a bundle. */
function algebraBundle() {
  let bundle;
  return {
    name: 'algebra-bundle',
    async serve(context) {
      if (!/^\/core\/algebra\.(ts|js)$/.test(context.path)) return undefined;
      bundle ??= build({ entryPoints: [path('../core/algebra.ts')], bundle: true, format: 'esm', target: 'es2022', write: false });
      return { body: (await bundle).outputFiles[0].text, type: 'js' };
    },
  };
}

export default {
  rootDir: path('..'),
  files: ['test/components/**/*.test.ts'],
  nodeResolve: true,
  plugins: [
    algebraBundle(),
    // The plugin hands the file to esbuild as it stands and follows no `extends`, hence the tsconfig at the root.
    esbuildPlugin({ ts: true, json: true, target: 'es2022', tsconfig: path('../tsconfig.json') }),
    browserCommands(),
  ],
  browsers: engines.map((name) => launcherOf(name, findEngine(name, { install: true }))),
  // One after the other: what they measure in time must not depend on the others.
  concurrentBrowsers: 1,
  // One page at a time: focus and the pointer belong to the page in front.
  concurrency: 1,
  testFramework: { config: { timeout: 20_000, retries: 0 } },
  testsStartTimeout: 60_000,
  testsFinishTimeout: 300_000,
  // Lit's reminder of its development build says nothing about the tests.
  filterBrowserLogs: ({ args }) => !args.some((arg) => typeof arg === 'string' && arg.includes('Lit is in dev mode')),
  reporters: [
    defaultReporter({ reportTestResults: true, reportTestProgress: false }),
    jsonReport({ path: process.env.ASTIG_TEST_REPORT ?? path('out/components.json') }),
  ],
};
