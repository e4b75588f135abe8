import { basename, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { rollup } from 'rollup';
import { minify } from 'terser';
import { minifyTemplates } from './minify-templates.mjs';
import { workerFile } from './worker-file.mjs';

/** Folder, beside the one file, of what comes on demand. */
const CHUNKS = 'chunks';

/** The one file of all elements. */
export const ALL = { name: 'astigmatism-elements', source: "import './components/define.ts';" };

/** What every bundle has in common. */
export const settings = (root) => ({
  absWorkingDir: root,
  bundle: true,
  format: 'esm',
  target: 'es2022',
  minify: true,
  legalComments: 'none',
  charset: 'utf8',
  tsconfig: join(root, 'tsconfig.json'),
  logLevel: 'warning',
});

/**
 * The library as one file for a page without a bundler. What few readers ask for (sources, other languages) is in chunks
 * that come when they do.
 *
 * esbuild reads TypeScript and cuts at every `import()`, but it also puts whatever the pieces share into chunks of their
 * own, which every page would load. Rollup knows that the main file is there before any other, and joins them.
 *
 * A chunk imports from the main file by letters that change with it, so its name holds a hash of what it has become: else a
 * browser could give a new main file the chunk of an old one.
 * @returns {Promise<{ path: string, contents: string | Uint8Array }[]>} the file called `name` first
 */
export async function bundleOneFile(root, { name, source }) {
  const common = settings(root);
  const { outputFiles } = await build({
    ...common,
    stdin: { contents: source, resolveDir: root, sourcefile: `${name}.ts`, loader: 'ts' },
    entryNames: 'main',
    chunkNames: '[name]-[hash]',
    assetNames: '[name]-[hash]',
    outdir: root,
    splitting: true,
    write: false,
    plugins: [workerFile({ root, common }), minifyTemplates({ filter: /[\\/]components[\\/].*\.ts$/ })],
  });
  const pieces = new Map(outputFiles.map((file) => [basename(file.path), file]));
  const bundle = await rollup({ input: 'main.js', plugins: [inMemory(pieces)] });
  const { output } = await bundle.generate({ format: 'es', entryFileNames: `${name}.js`, chunkFileNames: ({ name }) => `${CHUNKS}/${name.replace(/-[A-Z0-9]{8}$/, '')}-[hash:6].js` });
  // What no chunk imports is the work of the blur, which the page loads by its address.
  const modules = new Set(output.flatMap(({ moduleIds }) => moduleIds));
  const assets = [...pieces.keys()].filter((file) => !modules.has(file));
  const chunks = output.map(async ({ fileName, code }) => ({ path: fileName, contents: await shortened(addressed(code, fileName, assets)) }));
  return [...(await Promise.all(chunks)), ...assets.map((file) => ({ path: `${CHUNKS}/${file}`, contents: pieces.get(file).contents }))];
}

/** rollup plugin: modules that are on no disk. */
function inMemory(pieces) {
  const file = (specifier) => basename(specifier);
  return { name: 'in-memory', resolveId: (specifier) => (pieces.has(file(specifier)) ? file(specifier) : null), load: (id) => pieces.get(id).text };
}

/** The code with the addresses of assets as they are from the folder in which it stands. */
function addressed(code, fileName, assets) {
  const from = (file) => (fileName.startsWith(`${CHUNKS}/`) ? `./${file}` : `./${CHUNKS}/${file}`);
  return assets.reduce((text, file) => text.replaceAll(`"./${file}"`, `"${from(file)}"`), code);
}

async function shortened(code) {
  const { code: short } = await minify(code, { module: true, ecma: 2022, compress: { passes: 2 }, format: { ecma: 2022 } });
  return short;
}

/** Size of a bundle's main file, and of all that may follow it, bytes by `gzip -9`. */
export function sizeOf([main, ...later]) {
  const gzip = ({ contents }) => gzipSync(contents, { level: 9 }).length;
  return { minified: Buffer.byteLength(main.contents), gzipped: gzip(main), later: later.reduce((total, file) => total + gzip(file), 0) };
}
