/** `npm run build`: dist/ from scratch, and the size of what a page would load. */
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { CARRIERS } from './carriers.mjs';
import { minifyTemplates } from './minify-templates.mjs';
import { bundleWorker, workerFile } from './worker-file.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const dist = join(root, 'dist');
const common = {
  absWorkingDir: root,
  bundle: true,
  format: 'esm',
  target: 'es2022',
  minify: true,
  legalComments: 'none',
  charset: 'utf8',
  tsconfig: join(root, 'tsconfig.json'),
  logLevel: 'warning',
};

rmSync(dist, { recursive: true, force: true });
const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');
const { status } = spawnSync(process.execPath, [compiler, '-p', 'test/tsconfig.build.json'], { cwd: root, stdio: 'inherit' });
if (status !== 0) process.exit(status ?? 1);

// Some libraries need a bundler, and nobody should have to own one: the file that uses one carries it along.
for (const file of CARRIERS) await build({ ...common, entryPoints: [join(root, `${file}.ts`)], outfile: join(dist, `${file}.js`) });

// The worker of the blur stands where the modules look for it.
writeFileSync(join(dist, 'components/internal/blur/blur-worker.js'), await bundleWorker({ root, common }));

// One file for a page without a bundler. What few readers ask for (sources, other languages) comes when they do.
await build({
  ...common,
  entryPoints: { 'astigmatism-elements': join(root, 'components/define.ts') },
  outdir: dist,
  splitting: true,
  chunkNames: 'chunks/[name]-[hash]',
  assetNames: 'chunks/[name]-[hash]',
  plugins: [workerFile({ root, common }), minifyTemplates({ filter: /[\\/]components[\\/].*\.ts$/ })],
});

const folders = readdirSync(join(dist, 'components'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'internal')
  .map((entry) => entry.name);
const entries = [
  'astigmatism-elements.js',
  'components/index.js',
  'components/define.js',
  ...folders.flatMap((name) => [`components/${name}/${name}.js`, `components/${name}/define.js`]),
  'core/index.js',
  'core/outcomes.js',
  ...CARRIERS.map((file) => `${file}.js`),
].filter((name) => existsSync(join(dist, name)));

// An entry's size is what a bundler would have a page load for it alone, Lit and all; what comes on demand stands apart.
console.log(`${'minified'.padStart(10)} ${'gzip -9'.padStart(10)} ${'on demand'.padStart(10)}`);
for (const entry of entries) {
  const { minified, gzipped, later } = await sizes(entry);
  console.log(`${kilobytes(minified)} ${kilobytes(gzipped)} ${later > 0 ? kilobytes(later) : ''.padStart(10)}  ${relative(root, join(dist, entry))}`);
}

async function sizes(entry) {
  const { outputFiles, metafile } = await build({ ...common, entryPoints: [join(dist, entry)], splitting: true, outdir: dist, metafile: true, write: false, logLevel: 'error' });
  const outputs = Object.fromEntries(Object.entries(metafile.outputs).map(([path, output]) => [join(root, path), output]));
  const atOnce = new Set();
  const follow = (path) => {
    if (atOnce.has(path)) return;
    atOnce.add(path);
    for (const { kind, path: next, external } of outputs[path].imports) if (kind === 'import-statement' && !external) follow(join(root, next));
  };
  follow(outputFiles.find(({ path }) => outputs[path].entryPoint === relative(root, join(dist, entry)))?.path);
  const gzip = (files) => files.reduce((total, { contents }) => total + gzipSync(contents, { level: 9 }).length, 0);
  const [now, rest] = [true, false].map((wanted) => outputFiles.filter(({ path }) => atOnce.has(path) === wanted));
  return { minified: now.reduce((total, { contents }) => total + contents.length, 0), gzipped: gzip(now), later: gzip(rest) };
}

function kilobytes(bytes) {
  return `${(bytes / 1000).toFixed(1).padStart(7)} kB`;
}
