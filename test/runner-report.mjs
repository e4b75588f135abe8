import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, relative } from 'node:path';

/**
 * Reporter for @web/test-runner that writes `{ passed, failed, skipped, files, reasons }` as JSON and prints a line a file.
 * `reasons` says why tests were skipped, and how many for each reason: what stands in brackets at the end of their titles.
 * A file that could not be loaded or broke outside its tests counts as one failure.
 * @param {{ path: string }} options
 * @returns {import('@web/test-runner-core').Reporter}
 */
export function jsonReport({ path }) {
  return {
    onTestRunFinished({ sessions }) {
      const total = { passed: 0, failed: 0, skipped: 0, files: [], reasons: {} };
      for (const session of sessions) {
        const own = { passed: 0, failed: 0, skipped: 0 };
        count(session.testResults, own, total.reasons);
        if (!session.passed && own.failed === 0) own.failed = 1;
        for (const key of ['passed', 'failed', 'skipped']) total[key] += own[key];
        const file = relative(process.cwd(), session.testFile);
        total.files.push({ file, browser: session.browser.name, ...own });
        console.log(`${own.failed ? '✗' : '✓'} ${session.browser.name} ${file}  ${own.passed} ok, ${own.failed} not ok, ${own.skipped} skipped`);
      }
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, JSON.stringify(total, undefined, 2));
    },
  };
}

function count(suite, own, reasons) {
  if (!suite) return;
  for (const test of suite.tests) {
    own[test.skipped ? 'skipped' : test.passed ? 'passed' : 'failed'] += 1;
    if (test.skipped) {
      const reason = /\[([^\]]+)\]$/.exec(test.name)?.[1] ?? 'no reason given';
      reasons[reason] = (reasons[reason] ?? 0) + 1;
    }
  }
  for (const inner of suite.suites) count(inner, own, reasons);
}
