import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { defaultReporter } from '@web/test-runner';
import { build } from 'esbuild';
import { browserCommands, launcherOf } from './browser-commands.mjs';
import { builtFile } from './built-file.mjs';
import { CARRIERS } from './carriers.mjs';
import { findEngine } from './engines/find.mjs';
import { freePort } from './engines/free-port.mjs';
import { jsonReport } from './runner-report.mjs';

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url));

/** `ASTIG_ENGINES=firefox,webkit npx wtr …` for others than Chromium; `npm test` runs this once for each engine. */
const engines = (process.env.ASTIG_ENGINES ?? 'chromium').split(',');

/** Serves each file that carries a library as a bundle. */
function carriers() {
  const bundles = new Map();
  return {
    name: 'carriers',
    async serve(context) {
      const file = CARRIERS.find((carrier) => [`/${carrier}.ts`, `/${carrier}.js`].includes(context.path));
      if (!file) return undefined;
      if (!bundles.has(file)) bundles.set(file, build({ entryPoints: [path(`../${file}.ts`)], bundle: true, format: 'esm', target: 'es2022', write: false }));
      return { body: (await bundles.get(file)).outputFiles[0].text, type: 'js' };
    },
  };
}

/** The address of a worker is no import, so nothing turns its `.js` into the `.ts` that there is. */
function workerSource(context, next) {
  context.path = context.path.replace(/^(\/components\/.*-worker)\.js$/, '$1.ts');
  return next();
}

export default {
  rootDir: path('..'),
  // Any: two runs at the same time would take the same one.
  port: await freePort(),
  files: ['test/components/**/*.test.ts'],
  nodeResolve: true,
  middleware: [workerSource],
  plugins: [
    carriers(),
    // The plugin hands the file to esbuild as it stands and follows no `extends`, hence the tsconfig at the root.
    esbuildPlugin({ ts: true, json: true, target: 'es2022', tsconfig: path('../tsconfig.json') }),
    browserCommands(),
    builtFile(path('..')),
  ],
  browsers: engines.map((name) => launcherOf(name, findEngine(name, { install: true }))),
  // One after the other: what they measure in time must not depend on the others.
  concurrentBrowsers: 1,
  // One page at a time: focus and the pointer belong to the page in front.
  concurrency: 1,
  testFramework: { config: { timeout: 60_000, retries: 0 } },
  testsStartTimeout: 60_000,
  testsFinishTimeout: 300_000,
  // Lit's reminder of its development build says nothing about the tests.
  filterBrowserLogs: ({ args }) => !args.some((arg) => typeof arg === 'string' && arg.includes('Lit is in dev mode')),
  reporters: [
    defaultReporter({ reportTestResults: true, reportTestProgress: false }),
    jsonReport({ path: process.env.ASTIG_TEST_REPORT ?? path('out/components.json') }),
  ],
};
