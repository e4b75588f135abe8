/**
 * `npm test`: types, lint, core, package, hosts, and the components in Chromium, Firefox and WebKit; every step runs,
 * whatever the one before said. The last line of the output is `N passed, M failed`, where the type check and the lint
 * count as one check each. An engine that is missing is named; Chromium, and on a server (CI is set) any, is a failure.
 * Options: `--only core`, `--only package`, `--only hosts` or `--only components` for one runner alone; `--engine firefox`
 * for one engine alone.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { ENGINES, findEngine } from './engines/find.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const reports = mkdtempSync(join(tmpdir(), 'astig-test-'));
const coreReport = join(reports, 'core.json');
const packageReport = join(reports, 'package.json');
const hostsReport = join(reports, 'hosts.json');
const onServer = Boolean(process.env.CI);

const steps = {
  types: { run: [program('typescript', 'tsc'), '-p', 'tsconfig.json'], count: oneCheck },
  lint: {
    run: [program('eslint', 'eslint'), '-c', 'test/eslint.config.js', 'core', 'components', 'stories', 'test'],
    count: oneCheck,
  },
  core: vitest('core', coreReport),
  package: vitest('package', packageReport),
  hosts: vitest('hosts', hostsReport),
  ...Object.fromEntries(ENGINES.map((engine) => [engine, inEngine(engine)])),
};

/** Steps that run at the same time: both wait for their browsers rather than work, and two processors carry both. */
const TOGETHER = ['firefox', 'webkit'];

const { only, engine: onlyEngine } = parseArgs({ options: { only: { type: 'string' }, engine: { type: 'string' } } }).values;

const outcomes = [];
for (const round of rounds(chosenSteps())) outcomes.push(...(await Promise.all(round.map((name) => outcomeOf(name, round.length > 1)))));
rmSync(reports, { recursive: true, force: true });

console.log('');
for (const { name, passed, failed, skipped, note, seconds, reasons = {} } of outcomes) {
  const extras = [skipped ? `${skipped} skipped` : '', note].filter(Boolean).join(', ');
  console.log(
    `${failed ? '✗' : passed ? '✓' : '–'} ${name.padEnd(11)}${String(passed).padStart(6)} ok ${String(failed).padStart(4)} not ok` +
      `${seconds.toFixed(1).padStart(8)} s${extras ? `  (${extras})` : ''}`,
  );
  for (const [reason, count] of Object.entries(reasons)) console.log(`    ${count} skipped: ${reason}`);
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

function inEngine(engine) {
  const report = join(reports, `${engine}.json`);
  return {
    title: `components in ${engine}`,
    run: [program('@web/test-runner', 'wtr'), '--config', 'test/web-test-runner.config.mjs'],
    env: { ASTIG_ENGINES: engine, ASTIG_TEST_REPORT: report },
    count: (code) => counted(code, report, (read) => read),
    hinder: () => missing(engine),
  };
}

/** Undefined when the engine is there, else the outcome of a step that cannot be run. One engine must always be there. */
function missing(engine) {
  const obliged = onServer || engine === 'chromium';
  try {
    findEngine(engine, { install: obliged });
    return undefined;
  } catch (error) {
    console.error(error.message);
    return { passed: 0, failed: obliged ? 1 : 0, note: `not run: ${error.message}` };
  }
}

/** @param {boolean} named whether each line says from which step it is */
async function outcomeOf(name, named) {
  const step = steps[name];
  console.log(`\n── ${step.title ?? name}`);
  const begun = performance.now();
  const outcome = step.hinder?.() ?? step.count(await start(step, named ? `${name}│ ` : ''));
  return { name, ...outcome, seconds: (performance.now() - begun) / 1000 };
}

function rounds(names) {
  const alone = names.filter((name) => !TOGETHER.includes(name)).map((name) => [name]);
  const together = names.filter((name) => TOGETHER.includes(name));
  return together.length > 0 ? [...alone, together] : alone;
}

function chosenSteps() {
  const groups = { ...Object.fromEntries(Object.keys(steps).map((name) => [name, [name]])), components: ENGINES };
  if (only !== undefined && !Object.hasOwn(groups, only)) usage(`--only takes one of ${Object.keys(groups).join(', ')}.`);
  if (onlyEngine !== undefined && !ENGINES.includes(onlyEngine)) usage(`--engine takes one of ${ENGINES.join(', ')}.`);
  const names = only === undefined ? Object.keys(steps) : groups[only];
  return names.filter((name) => onlyEngine === undefined || name === onlyEngine || !ENGINES.includes(name));
}

function usage(message) {
  console.error(message);
  process.exit(2);
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

function start({ run, env = {} }, prefix) {
  return new Promise((resolve) => {
    const output = prefix ? 'pipe' : 'inherit';
    const child = spawn(process.execPath, run, { cwd: root, stdio: ['ignore', output, output], env: { ...process.env, ...env } });
    if (prefix) for (const stream of ['stdout', 'stderr']) createInterface({ input: child[stream] }).on('line', (line) => process[stream].write(`${prefix}${line}\n`));
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
  const { passed, failed, skipped, reasons } = read(JSON.parse(readFileSync(path, 'utf8')));
  if (passed + failed === 0) return { passed, failed: 1, skipped, note: 'no test was run' };
  if (code !== 0 && failed === 0) return { passed, failed: 1, skipped, note: `exit code ${code}` };
  return { passed, failed, skipped, reasons };
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
