import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Long simulations: they would be run anew for each mutant, and find nothing that the quick tests do not. */
const LONG = ['simulation', 'outcomes-simulation', 'outcomes-random', 'scatter-simulation', 'random-attributes', 'explain-readability', 'hazards', 'eye-rays'];

/** The tests of the core for the mutants of the core, in one project as the runner wants it. */
export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    environment: 'node',
    testTimeout: 20_000,
    include: ['test/core/**/*.test.ts'],
    exclude: LONG.map((name) => `test/core/${name}.test.ts`),
  },
});
