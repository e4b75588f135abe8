import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Long simulations: they would be run anew for each mutant, and find nothing that the quick tests do not. */
const LONG = ['simulation', 'outcomes-simulation', 'outcomes-random', 'scatter-simulation', 'random-attributes', 'explain-readability', 'hazards', 'eye-rays'];

/** They calculate every published figure when they are loaded, so each mutant would be tried on all tests; the tests of those figures see it anyway. */
const AT_ONCE = ['accuracy', 'accuracy-notes'];

/** The tests of the core for the mutants of the core, in one project as the runner wants it. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    environment: 'node',
    testTimeout: 20_000,
    include: ['test/core/**/*.test.ts'],
    exclude: [...LONG, ...AT_ONCE].map((name) => `test/core/${name}.test.ts`),
  },
});
