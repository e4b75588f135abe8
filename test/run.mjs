/**
 * `npm test`: types, lint, core, package, hosts, components; every step runs, whatever the one before said. The last line of the
 * output is `N passed, M failed`, where the type check and the lint count as one check each.
 * Options: `--only core`, `--only package`, `--only hosts` or `--only components` for one runner alone.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';

const root = fileURLToPath(new URL('..', import.meta.url));
const reports = mkdtempSync(join(tmpdir(), 'astig-test-'));
const coreReport = join(reports, 'core.json');
const packageReport = join(reports, 'package.json');
const hostsReport = join(reports, 'hosts.json');
const componentsReport = join(reports, 'components.json');

const steps = {
  types: { run: [program('typescript', 'tsc'), '-p', 'tsconfig.json'], count: oneCheck },
  lint: {
    run: [program('eslint', 'eslint'), '-c', 'test/eslint.config.js', 'core', 'components', 'stories', 'test'],
    count: oneCheck,
  },
  core: vitest('core', coreReport),
  package: vitest('package', packageReport),
  hosts: vitest('hosts', hostsReport),
  components: {
    run: [program('@web/test-runner', 'wtr'), '--config', 'test/web-test-runner.config.mjs'],
    count: (code) => counted(code, componentsReport, (report) => report),
  },
};

const { only } = parseArgs({ options: { only: { type: 'string' } } }).values;
if (only !== undefined && !Object.hasOwn(steps, only)) {
  console.error(`--only takes one of ${Object.keys(steps).join(', ')}.`);
  process.exit(2);
}

const outcomes = [];
for (const [name, step] of Object.entries(steps)) {
  if (only !== undefined && only !== name) continue;
  console.log(`\n── ${name}`);
  const begun = performance.now();
  const code = await start(step.run);
  outcomes.push({ name, ...step.count(code), seconds: (performance.now() - begun) / 1000 });
}
rmSync(reports, { recursive: true, force: true });

console.log('');
for (const { name, passed, failed, skipped, note, seconds } of outcomes) {
  const extras = [skipped ? `${skipped} skipped` : '', note].filter(Boolean).join(', ');
  console.log(
    `${failed ? '✗' : '✓'} ${name.padEnd(11)}${String(passed).padStart(6)} ok ${String(failed).padStart(4)} not ok` +
      `${seconds.toFixed(1).padStart(8)} s${extras ? `  (${extras})` : ''}`,
  );
}
const total = (key) => outcomes.reduce((sum, outcome) => sum + outcome[key], 0);
process.exitCode = total('failed') ? 1 : 0;
console.log(`${total('passed')} passed, ${total('failed')} failed`);

function vitest(project, report) {
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  return {
    run: [program('vitest', 'vitest'), 'run', '--config=test/vitest.config.ts', `--project=${project}`, ...reporters],
    count: (code) => counted(code, report, fromVitest),
  };
}

/** The script behind a package's command, so that no shell and no `.cmd` file stands in between. */
function program(name, command) {
  const require = createRequire(import.meta.url);
  // Not every package exports its own package.json, but every one has it beside its folder in node_modules.
  const home = require.resolve.paths(name).map((folder) => join(folder, name, 'package.json')).find(readable);
  if (!home) throw new Error(`${name} is not installed; run npm ci.`);
  const { bin } = JSON.parse(readFileSync(home, 'utf8'));
  return join(dirname(home), typeof bin === 'string' ? bin : bin[command]);
}

function readable(path) {
  try {
    readFileSync(path);
    return true;
  } catch {
    return false;
  }
}

function start(args) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, {
      cwd: root,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, ASTIG_TEST_REPORT: componentsReport },
    });
    child.on('error', () => resolve(1));
    child.on('close', (code) => resolve(code ?? 1));
  });
}

function oneCheck(code) {
  return code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** A runner that says nothing, runs nothing, or fails without naming a test is one failure. */
function counted(code, path, read) {
  if (!readable(path)) return { passed: 0, failed: 1, note: `the runner left no report, exit code ${code}` };
  const { passed, failed, skipped } = read(JSON.parse(readFileSync(path, 'utf8')));
  if (passed + failed === 0) return { passed, failed: 1, skipped, note: 'no test was run' };
  if (code !== 0 && failed === 0) return { passed, failed: 1, skipped, note: `exit code ${code}` };
  return { passed, failed, skipped };
}

function fromVitest(report) {
  const unloadable = report.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((test) => test.status === 'failed'),
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloadable.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}
