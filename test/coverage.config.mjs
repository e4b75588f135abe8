import { fileURLToPath } from 'node:url';
import base from './web-test-runner.config.mjs';

/** The component tests in Chromium, which counts what it runs; percentages over all files together. */
export default {
  ...base,
  coverage: true,
  coverageConfig: {
    include: ['components/**/*.ts'],
    exclude: ['components/**/languages/**'],
    reportDir: fileURLToPath(new URL('out/coverage/components', import.meta.url)),
    reporters: ['text', 'text-summary', 'json'],
    threshold: { statements: 90, branches: 90, functions: 90, lines: 90 },
  },
};
