import { readFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { build } from 'esbuild';

/** The scripts of workers, from the root, without an ending. */
export const WORKERS = ['components/internal/blur/blur-worker', 'components/outcomes/outcomes-worker'];

/** What works, in a worker or in the page, as one file with all that it needs: a bundler may copy it as it is, so it must not import. */
export async function bundleFile({ root, common }, file) {
  const { outputFiles } = await build({ ...common, entryPoints: [join(root, `${file}.ts`)], write: false });
  return outputFiles[0].contents;
}

/**
 * esbuild plugin: `new URL('./some-worker.js', import.meta.url)` and `import('./some-here.js')` lead to files of their own,
 * put where `assetNames` says. Left to itself esbuild leaves the one as it is, which leads nowhere from a bundle, and
 * makes chunks of the other, some of which every page would load for what it shares with them.
 */
export function workerFile(where) {
  // The name is relative to the chunk that it is in. A function, so that nothing can fail while the library is loaded.
  const address = (name) => ({ contents: `import file from 'own-file:${name}'; export default () => new URL(file, import.meta.url);`, loader: 'js' });
  return {
    name: 'worker-file',
    setup(build) {
      build.onLoad({ filter: /[\\/](start-worker|blur-client|outcomes\.client)\.ts$/ }, async ({ path }) => ({
        contents: redirected(await readFile(path, 'utf8'), path, where.root),
        loader: 'ts',
      }));
      build.onResolve({ filter: /^own-(file|address):/ }, ({ path }) => ({ path: path.split(':')[1] + '.js', namespace: path.split(':')[0] }));
      build.onLoad({ filter: /./, namespace: 'own-address' }, ({ path }) => address(path.replace('.js', '')));
      build.onLoad({ filter: /./, namespace: 'own-file' }, async ({ path }) => ({ contents: await bundleFile(where, path.replace('.js', '')), loader: 'file' }));
    },
  };
}

function redirected(source, path, root) {
  const [, before, name, after] = /(new URL\(|import\()'\.\/([\w-]+-(?:worker|here))\.js'(, import\.meta\.url\)|\))/.exec(source) ?? [];
  if (!name) throw new Error(`${path} does not name the file that works for it as it should.`);
  const found = `${before}'./${name}.js'${after}`;
  const address = before === 'import(' ? 'import(ownAddress().href)' : 'ownAddress()';
  const file = relative(root, join(dirname(path), name)).replaceAll('\\', '/');
  return `import ownAddress from 'own-address:${file}';\n${source.replace(found, address)}`;
}
