import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  // The Storybook and browser caches live elsewhere; nothing here needs a CSS or asset pipeline.
  cacheDir: 'node_modules/.cache/vitest',
  test: {
    include: ['test/core/**/*.test.ts', 'test/package/**/*.test.ts'],
    environment: 'node',
    testTimeout: 20_000,
    retry: 0,
    passWithNoTests: false,
  },
});
