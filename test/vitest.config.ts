import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Tests of the package that read the source alone and so need no build. */
const SOURCE = ['accuracy', 'direction', 'languages', 'lessons', 'minify-templates', 'outcomes-languages'].map((name) => `test/package/${name}.test.ts`);

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  // The Storybook and browser caches live elsewhere; nothing here needs a CSS or asset pipeline.
  cacheDir: 'node_modules/.cache/vitest',
  test: {
    environment: 'node',
    testTimeout: 20_000,
    retry: 0,
    passWithNoTests: false,
    projects: [
      { extends: true, test: { name: 'core', include: ['test/core/**/*.test.ts', ...SOURCE] } },
      {
        extends: true,
        test: {
          name: 'package',
          include: ['test/package/**/*.test.ts'],
          exclude: SOURCE,
          globalSetup: ['test/package/build-once.ts'],
          // Each starts a compiler or a browser.
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'hosts',
          include: ['test/hosts/**/*.test.ts'],
          globalSetup: ['test/hosts/setup.ts'],
          // One page at a time: focus and the pointer belong to the page in front.
          fileParallelism: false,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
