import { basename, resolve } from 'node:path';
import { build } from 'esbuild';

/**
 * The one classic script, for pages without a server such as slides on a disk: browsers load no modules from there, and
 * nothing on demand. So what is lazy elsewhere is inside; what starts a worker has no address here and does without.
 *
 * Only what needs `heavy` stays outside, as a classic script of its own beside the one script, which loads it on demand:
 * `name.classic.js` loads `name.classic.part.js`.
 *
 * @param {{ root: string, common: object, plugins: object[], entry: string, heavy: string, outfile: string }} options
 * `heavy` is a file; paths are from `root`
 * @returns {Promise<string[]>} the files, from `root`
 */
export async function buildClassic({ root, common, plugins, entry, heavy, outfile }) {
  const classic = { ...common, absWorkingDir: root, bundle: true, format: 'iife', define: { 'import.meta.url': 'undefined' } };
  const parts = await lazyEntriesWith({ root, common, plugins, entry, heavy });
  const files = parts.map((part) => ({ part, file: outfile.replace(/\.js$/, `.${basename(part).replace(/\.[jt]s$/, '')}.js`) }));
  await build({
    ...classic,
    entryPoints: [entry],
    outfile,
    plugins: [loadedLater(root, files), ...plugins],
    // Only while it runs for the first time a script is told where it comes from.
    banner: { js: '(()=>{"use strict";const astigScript=document.currentScript;' },
    footer: { js: '})();' },
  });
  for (const { part, file } of files) {
    const contents = `import * as all from './${part}'; document.currentScript.hand(all);`;
    await build({ ...classic, stdin: { contents, resolveDir: root, loader: 'js' }, outfile: file, plugins });
  }
  return [outfile, ...files.map(({ file }) => file)];
}

/** Files that are imported on demand and bring `heavy` along. */
async function lazyEntriesWith({ root, common, plugins, entry, heavy }) {
  const { metafile } = await build({
    ...common, absWorkingDir: root, bundle: true, format: 'esm', splitting: true, entryPoints: [entry], outdir: root, write: false, metafile: true, plugins,
  });
  const { inputs } = metafile;
  const reaches = (file, seen = new Set()) => {
    if (file === heavy) return true;
    if (seen.has(file) || !inputs[file]) return false;
    seen.add(file);
    return inputs[file].imports.some(({ kind, path }) => kind === 'import-statement' && reaches(path, seen));
  };
  if (reaches(entry)) throw new Error(`${entry} brings ${heavy} along at once.`);
  const lazy = Object.values(inputs).flatMap(({ imports }) => imports.filter(({ kind }) => kind === 'dynamic-import').map(({ path }) => path));
  return [...new Set(lazy)].filter((path) => reaches(path)).sort();
}

/** esbuild plugin: an import on demand of one of the parts waits for its script instead. */
function loadedLater(root, files) {
  return {
    name: 'loaded-later',
    setup({ onResolve, onLoad, resolve: find }) {
      onResolve({ filter: /./ }, async ({ kind, path, pluginData, ...from }) => {
        if (kind !== 'dynamic-import' || pluginData === 'found' || files.length === 0) return undefined;
        const found = await find(path, { ...from, kind, pluginData: 'found' });
        const later = files.find(({ part }) => resolve(root, part) === found.path);
        return later ? { path: basename(later.file), namespace: 'later' } : found;
      });
      // What an import on demand gives is waited for, and this is a promise in all but name.
      onLoad({ filter: /./, namespace: 'later' }, ({ path }) => ({
        contents: `export function then(resolve, reject) {
          const script = document.createElement('script');
          script.src = new URL(${JSON.stringify(path)}, astigScript.src).href;
          script.hand = resolve;
          script.onerror = () => reject(new Error('Could not load ' + script.src));
          document.head.append(script);
        }`,
      }));
    },
  };
}
