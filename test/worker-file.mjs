import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';

const FOLDER = 'components/internal/blur';

/** What blurs, in the worker or in the page, as one file with all that it needs. */
async function bundleFile({ root, common }, name) {
  const { outputFiles } = await build({ ...common, entryPoints: [join(root, FOLDER, `${name}.ts`)], write: false });
  return outputFiles[0].contents;
}

/** The script of the worker. A bundler may take it for a mere asset and copy it as it is, so it must not import. */
export const bundleWorker = (where) => bundleFile(where, 'blur-worker');

/**
 * esbuild plugin: `new URL('./blur-worker.js', import.meta.url)` and `import('./blur-here.js')` lead to files of their own,
 * put where `assetNames` says. Left to itself esbuild leaves the one as it is, which leads nowhere from a bundle, and
 * makes chunks of the other, some of which every page would load for what it shares with them.
 */
export function workerFile(where) {
  // The name is relative to the chunk that it is in. A function, so that nothing can fail while the library is loaded.
  const address = (name) => ({ contents: `import file from 'own-file:${name}'; export default () => new URL(file, import.meta.url);`, loader: 'js' });
  return {
    name: 'worker-file',
    setup(build) {
      build.onLoad({ filter: /[\\/]blur[\\/](start-worker|blur-client)\.ts$/ }, async ({ path }) => ({
        contents: redirected(await readFile(path, 'utf8'), path),
        loader: 'ts',
      }));
      build.onResolve({ filter: /^own-(file|address):/ }, ({ path }) => ({ path: path.split(':')[1] + '.js', namespace: path.split(':')[0] }));
      build.onLoad({ filter: /./, namespace: 'own-address' }, ({ path }) => address(path.replace('.js', '')));
      build.onLoad({ filter: /./, namespace: 'own-file' }, async ({ path }) => ({ contents: await bundleFile(where, path.replace('.js', '')), loader: 'file' }));
    },
  };
}

function redirected(source, path) {
  const [, before, name, after] = /(new URL\(|import\()'\.\/(blur-worker|blur-here)\.js'(, import\.meta\.url\)|\))/.exec(source) ?? [];
  if (!name) throw new Error(`${path} does not name the file that blurs as it should.`);
  const found = `${before}'./${name}.js'${after}`;
  const address = before === 'import(' ? 'import(ownAddress().href)' : 'ownAddress()';
  return `import ownAddress from 'own-address:${name}';\n${source.replace(found, address)}`;
}
