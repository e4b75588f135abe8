import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, relative } from 'node:path';

/**
 * Reporter for @web/test-runner that writes `{ passed, failed, skipped, files }` as JSON and prints a line a file.
 * A file that could not be loaded or broke outside its tests counts as one failure.
 * @param {{ path: string }} options
 * @returns {import('@web/test-runner-core').Reporter}
 */
export function jsonReport({ path }) {
  return {
    onTestRunFinished({ sessions }) {
      const total = { passed: 0, failed: 0, skipped: 0, files: [] };
      for (const session of sessions) {
        const own = { passed: 0, failed: 0, skipped: 0 };
        count(session.testResults, own);
        if (!session.passed && own.failed === 0) own.failed = 1;
        for (const key of ['passed', 'failed', 'skipped']) total[key] += own[key];
        const file = relative(process.cwd(), session.testFile);
        total.files.push({ file, browser: session.browser.name, ...own });
        console.log(`${own.failed ? '✗' : '✓'} ${file}  ${own.passed} ok, ${own.failed} not ok, ${own.skipped} skipped`);
      }
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, JSON.stringify(total, undefined, 2));
    },
  };
}

function count(suite, own) {
  if (!suite) return;
  for (const test of suite.tests) own[test.skipped ? 'skipped' : test.passed ? 'passed' : 'failed'] += 1;
  for (const inner of suite.suites) count(inner, own);
}
