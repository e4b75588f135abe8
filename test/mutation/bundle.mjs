import { build } from 'esbuild';
import { basename, dirname, join } from 'node:path';
import { readdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { Script, constants } from 'node:vm';

/** Packages that are no part of what is tested: loaded once, not with each script. The rest goes into the scripts. */
const OUTSIDE = ['vitest', 'fast-check', 'mathjs', 'seedrandom', 'papaparse', 'fft.js', 'node:*'];

/**
 * Long simulations, sums over grids, and the reading of texts: they would be run anew for each mutant and find nothing that
 * the quick tests do not. `accuracy` calculates all published figures when it is loaded, which their own tests see, and
 * `coupling` puts another module in the place of one, which scripts do not.
 */
const LEFT_OUT = [
  'simulation', 'outcomes-simulation', 'outcomes-random', 'scatter-simulation', 'scatter-steps', 'spread-rules', 'options-search', 'random-attributes',
  'explain-languages', 'explain-readability', 'hazards', 'eye-rays', 'coupling', 'accuracy', 'accuracy-notes',
];

/** The test files of a folder as scripts that are called with `require`; those that `wanted` names, or all but the long ones. */
export async function bundled(folder, wanted) {
  const names = readdirSync(folder).filter((name) => name.endsWith('.test.ts')).map((name) => basename(name, '.test.ts'));
  const files = names.filter((name) => (wanted ? wanted.includes(name) : !LEFT_OUT.includes(name))).map((name) => join(folder, `${name}.test.ts`));
  const { outputFiles } = await build({
    entryPoints: files, bundle: true, write: false, format: 'cjs', platform: 'node', target: 'node20', outdir: folder, external: OUTSIDE, logLevel: 'error',
    define: { 'import.meta.url': JSON.stringify(pathToFileURL(join(folder, 'any.test.ts')).href) },
  });
  return new Map(outputFiles.map(({ path, text }) => {
    const filename = join(dirname(path), basename(path).replace(/js$/, 'ts'));
    return [filename.slice(folder.length + 1), new Script(`(require) => { const module = { exports: {} }, exports = module.exports;\n${text}\n}`, { filename, importModuleDynamically: constants.USE_MAIN_CONTEXT_DEFAULT_LOADER })];
  }));
}
